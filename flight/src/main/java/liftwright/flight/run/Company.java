package liftwright.flight.run;

import java.util.ArrayList;
import java.util.List;
import liftwright.flight.motion.JetAir;
import liftwright.physics.Rotation;
import liftwright.rig.Vec3;

/**
 * Modules that fly in step, each pushed by the jets of the others as they were at the start of the
 * tick. One whose flight is over stays as it is, and blows as it did last; none blows or is blown
 * before it begins.
 */
final class Company {

    /** Pushes below this share of the weight are not told. */
    private static final double TOLD = 0.01;

    /** One of them. */
    private static final class Member {

        final String name;
        final Flying flying;
        final Vec3 start;
        final long waits;
        final JetAir jets = new JetAir();
        final double[] turn = new double[9];
        double mostN;
        long mostTick;
        boolean over;

        Member(String name, Flying flying, Vec3 start, long waits) {
            this.name = name;
            this.flying = flying;
            this.start = start;
            this.waits = waits;
        }
    }

    private final double[] exitM2;
    private final double tickS;
    private final boolean blows;
    private final List<Member> members = new ArrayList<>();
    private final double[] at = new double[3];
    private final double[] way = new double[3];

    /**
     * @param exitM2 of every fan
     * @param blows whether they push each other
     */
    Company(double[] exitM2, double tickS, boolean blows) {
        this.exitM2 = exitM2;
        this.tickS = tickS;
        this.blows = blows;
    }

    /**
     * Adds a module.
     *
     * @param start where, from the start of the first, m
     * @param afterS how long after the first it begins
     */
    void add(String name, Flying flying, Vec3 start, double afterS) {
        members.add(new Member(name, flying, start, Math.round(afterS / tickS)));
    }

    /** Flies all of them to their ends. */
    List<FlightOutcome> fly() {
        members.forEach(one -> one.flying.begin());
        boolean goesOn = true;
        for (long tick = 0; goesOn; tick++) {
            goesOn = false;
            for (Member one : members) {
                one.over = tick >= one.waits && (one.over || !one.flying.goesOn());
                goesOn |= !one.over;
            }
            if (blows && goesOn) {
                blow(tick);
            }
            for (Member one : members) {
                if (tick < one.waits) {
                    one.flying.rest();
                } else if (!one.over) {
                    one.flying.go();
                    look(one, tick);
                }
            }
        }
        return members.stream().map(one -> one.flying.outcome()).toList();
    }

    private void look(Member one, long tick) {
        double pushN = one.flying.scene().motion().blownN();
        if (pushN > one.mostN && sceneS(tick) >= 0) {
            one.mostN = pushN;
            one.mostTick = tick;
        }
    }

    /** Who is pushed enough to be told of. */
    List<Pushed> pushed() {
        return members.stream()
                .filter(one -> one.mostN > TOLD * one.flying.weightN())
                .map(
                        one ->
                                new Pushed(
                                        one.name,
                                        one.mostN,
                                        one.mostN / one.flying.weightN(),
                                        sceneS(one.mostTick)))
                .toList();
    }

    /** On the clock of the first, whose flight begins when it is let go. */
    private double sceneS(long tick) {
        return tick * tickS - members.getFirst().flying.heldS();
    }

    private void blow(long tick) {
        for (Member one : members) {
            one.jets.clear();
            if (tick < one.waits || one.over) {
                continue;
            }
            for (Member other : members) {
                // What is flown no more blows no more.
                if (other != one && tick >= other.waits && !other.over) {
                    jets(other, one);
                }
            }
        }
        for (Member one : members) {
            one.flying.scene().motion().blow(one.jets, one.flying.state());
        }
    }

    /** What leaves one's fans, in the axes of the other's start. */
    private void jets(Member from, Member to) {
        Scene scene = from.flying.scene();
        double[] y = from.flying.state().y;
        Rotation.matrix(y, liftwright.flight.motion.BodyState.QW, from.turn);
        double[] m = from.turn;
        for (int fan = 0; fan < exitM2.length; fan++) {
            double thrust = from.flying.thrustN(fan);
            if (thrust <= 0) {
                continue;
            }
            Vec3 place = scene.frame().fans().get(fan).at();
            Vec3 axis = scene.frame().fans().get(fan).axis();
            for (int k = 0; k < 3; k++) {
                double row = m[3 * k] * place.x() + m[3 * k + 1] * place.y();
                at[k] = y[k] + row + m[3 * k + 2] * place.z();
                way[k] = -(m[3 * k] * axis.x() + m[3 * k + 1] * axis.y() + m[3 * k + 2] * axis.z());
            }
            at[0] += from.start.x() - to.start.x();
            at[1] += from.start.y() - to.start.y();
            at[2] += from.start.z() - to.start.z();
            double exitMps = Math.sqrt(thrust / (scene.frame().densityKgpm3() * exitM2[fan]));
            to.flying
                    .scene()
                    .motion()
                    .meet(to.jets, to.flying.state(), at, way, exitM2[fan], exitMps);
        }
    }
}
