package liftwright.flight.run;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import liftwright.physics.FreeJet;
import liftwright.physics.Rotation;
import liftwright.rig.Vec3;

/**
 * Holds the paths of modules against each other, moment by moment. A jet reaches what lies within
 * nine tenths of its momentum as far as its axis is faster than a third of the speed at the exit,
 * or to the ground ({@link FreeJet}); thirds and tenths from memory. What runs along the ground
 * from there is not in it.
 */
final class Nearness {

    private static final double MOMENTUM = 0.9;
    private static final double SPEED_SHARE = 1.0 / 3;

    /**
     * A module that flew.
     *
     * @param path in metres from its own start
     * @param forwardM where that start is
     * @param afterS when it began
     */
    record Member(String name, FlightPath path, double forwardM, double rightM, double afterS) {}

    private final Shell shell;

    Nearness(Shell shell) {
        this.shell = shell;
    }

    /** Every two of them. */
    List<Near> of(List<Member> members) {
        double endS = 0;
        for (Member each : members) {
            endS =
                    Math.max(
                            endS,
                            each.afterS() + each.path().moments() / (double) FlightPath.PER_S);
        }
        List<Near> pairs = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            for (int j = i + 1; j < members.size(); j++) {
                pairs.add(pair(members.get(i), members.get(j), endS));
            }
        }
        return pairs;
    }

    private Near pair(Member one, Member other, double endS) {
        double least = Double.POSITIVE_INFINITY;
        double atS = 0;
        OptionalDouble jetS = OptionalDouble.empty();
        for (int k = 0; k <= endS * FlightPath.PER_S; k++) {
            double timeS = k / (double) FlightPath.PER_S;
            Placed a = new Placed(shell, one, timeS);
            Placed b = new Placed(shell, other, timeS);
            double apart = apartM(a, b);
            if (apart < least) {
                least = apart;
                atS = timeS;
            }
            if (jetS.isEmpty() && (a.blowsAt(b) || b.blowsAt(a))) {
                jetS = OptionalDouble.of(timeS);
            }
        }
        return new Near(one.name(), other.name(), least, atS, jetS);
    }

    private static double apartM(Placed a, Placed b) {
        double least = Double.POSITIVE_INFINITY;
        for (Shell.Ball ball : a.balls) {
            for (Shell.Ball of : b.balls) {
                double far = ball.at().minus(of.at()).length() - ball.radiusM() - of.radiusM();
                least = Math.min(least, far);
            }
        }
        return least;
    }

    /** The shell of a module where it is at a moment, scene axes; after its end it stays there. */
    private static final class Placed {

        final List<Shell.Ball> balls = new ArrayList<>();
        private final List<Shell.Jet> jets = new ArrayList<>();

        Placed(Shell shell, Member member, double timeS) {
            FlightPath path = member.path();
            double own = (timeS - member.afterS()) * FlightPath.PER_S;
            int k = Math.clamp(Math.round(own), 0, path.moments() - 1);
            double[] turn = new double[9];
            Rotation.matrix(path.turned(), 4 * k, turn);
            Vec3 place =
                    new Vec3(
                            path.placeM()[3 * k] + member.forwardM(),
                            path.placeM()[3 * k + 1] + member.rightM(),
                            path.placeM()[3 * k + 2]);
            for (Shell.Ball ball : shell.balls()) {
                balls.add(new Shell.Ball(turned(turn, ball.at()).plus(place), ball.radiusM()));
            }
            for (int fan = 0; fan < path.fans(); fan++) {
                if (path.thrustN()[path.fans() * k + fan] > 0) {
                    Shell.Jet jet = shell.jets().get(fan);
                    jets.add(
                            new Shell.Jet(
                                    turned(turn, jet.at()).plus(place),
                                    turned(turn, jet.along()),
                                    jet.exitM2()));
                }
            }
        }

        private static Vec3 turned(double[] m, Vec3 v) {
            return new Vec3(
                    m[0] * v.x() + m[1] * v.y() + m[2] * v.z(),
                    m[3] * v.x() + m[4] * v.y() + m[5] * v.z(),
                    m[6] * v.x() + m[7] * v.y() + m[8] * v.z());
        }

        private static double dot(Vec3 a, Vec3 b) {
            return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
        }

        boolean blowsAt(Placed other) {
            for (Shell.Jet jet : jets) {
                double longM = FreeJet.coreM(jet.exitM2()) / SPEED_SHARE;
                // z is down and the ground at 0: there a jet that goes down ends.
                double ground = jet.along().z() > 0 ? -jet.at().z() / jet.along().z() : longM;
                double reach = Math.min(longM, Math.max(0, ground));
                for (Shell.Ball ball : other.balls) {
                    Vec3 to = ball.at().minus(jet.at());
                    double along = dot(to, jet.along());
                    if (along <= 0 || along - ball.radiusM() > reach) {
                        continue;
                    }
                    double across = to.minus(jet.along().times(along)).length();
                    double radius = FreeJet.radiusM(MOMENTUM, Math.min(along, reach), jet.exitM2());
                    if (across - ball.radiusM() < radius) {
                        return true;
                    }
                }
            }
            return false;
        }
    }
}
