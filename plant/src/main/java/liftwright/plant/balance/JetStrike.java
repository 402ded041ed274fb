package liftwright.plant.balance;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.FreeJet;
import liftwright.rig.Vec3;

/**
 * What the jet of one fan strikes of the rig itself. The jet is a bundle of rays that carry equal
 * shares of its momentum ({@link FreeJet#radiusM}); a ray pushes what it meets first along the jet.
 * Jets of neighbours superpose in momentum (Reichardt 1942, from memory), so each fan has a bundle
 * of its own.
 *
 * @param force on the rig for each newton of thrust
 * @param turn moment of that force about the centre of mass for each newton of thrust, m
 * @param hits what is met
 */
public record JetStrike(Vec3 force, Vec3 turn, List<Hit> hits) {

    /** A jet that meets nothing. */
    public static final JetStrike NONE = new JetStrike(Vec3.ZERO, Vec3.ZERO, List.of());

    /** How far jets are followed, m: beyond, nothing of the rig is near. */
    public static final double REACH_M = 2.5;

    private static final int RINGS = 8;
    private static final int AROUND = 16;

    /**
     * One thing met.
     *
     * @param share of the jet's momentum that pushes it
     * @param distanceM from the exit, mean over the rays
     */
    public record Hit(Obstacle obstacle, double share, double distanceM) {}

    public JetStrike {
        hits = List.copyOf(hits);
    }

    /** Share of the thrust that is lost along the jet. */
    public double share() {
        double sum = 0;
        for (Hit hit : hits) {
            sum += hit.share;
        }
        return sum;
    }

    /**
     * The jet of one fan.
     *
     * @param exit place of the fan, m
     * @param along unit direction of the jet
     * @param centre of mass of the whole, m
     */
    public static JetStrike of(
            Vec3 exit, Vec3 along, double exitAreaM2, List<Obstacle> obstacles, Vec3 centre) {
        List<Obstacle> near = near(exit, along, exitAreaM2, obstacles);
        if (near.isEmpty()) {
            return NONE;
        }
        Vec3 across =
                unit(along.cross(Math.abs(along.x()) < 0.7 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0)));
        Vec3 third = along.cross(across);
        double core = FreeJet.coreM(exitAreaM2);
        double[] share = new double[near.size()];
        double[] way = new double[near.size()];
        int[] rays = new int[near.size()];
        Vec3 turn = Vec3.ZERO;
        double total = 0;
        for (int ring = 0; ring < RINGS; ring++) {
            double inside = (ring + 0.5) / RINGS;
            for (int k = 0; k < AROUND; k++) {
                double angle = 2 * Math.PI * (k + 0.5 * (ring % 2)) / AROUND;
                Vec3 out = across.times(Math.cos(angle)).plus(third.times(Math.sin(angle)));
                Vec3 a = at(exit, along, out, inside, 0, exitAreaM2);
                Vec3 b = at(exit, along, out, inside, core, exitAreaM2);
                Vec3 c = at(exit, along, out, inside, REACH_M, exitAreaM2);
                int met = -1;
                double first = Double.POSITIVE_INFINITY;
                for (int i = 0; i < near.size(); i++) {
                    double t = near.get(i).meets(a, b);
                    double x = t * core;
                    if (t > 1) {
                        t = near.get(i).meets(b, c);
                        x = core + t * (REACH_M - core);
                    }
                    if (t <= 1 && x < first) {
                        first = x;
                        met = i;
                    }
                }
                if (met >= 0) {
                    double push = near.get(met).catches() / (RINGS * AROUND);
                    share[met] += push;
                    way[met] += first;
                    rays[met]++;
                    total += push;
                    Vec3 where = at(exit, along, out, inside, first, exitAreaM2);
                    turn = turn.plus(where.minus(centre).cross(along).times(push));
                }
            }
        }
        if (total == 0) {
            return NONE;
        }
        List<Hit> hits = new ArrayList<>();
        for (int i = 0; i < near.size(); i++) {
            if (rays[i] > 0) {
                hits.add(new Hit(near.get(i), share[i], way[i] / rays[i]));
            }
        }
        return new JetStrike(along.times(total), turn, hits);
    }

    private static Vec3 at(
            Vec3 exit, Vec3 along, Vec3 out, double inside, double x, double exitAreaM2) {
        return exit.plus(along.times(x))
                .plus(out.times(FreeJet.radiusM(inside, x, exitAreaM2)));
    }

    private static Vec3 unit(Vec3 v) {
        return v.times(1 / v.length());
    }

    /** What lies before the exit and within reach of its outermost ray; not what holds the exit. */
    private static List<Obstacle> near(
            Vec3 exit, Vec3 along, double exitAreaM2, List<Obstacle> obstacles) {
        List<Obstacle> near = new ArrayList<>();
        double outermost = (RINGS - 0.5) / RINGS;
        for (Obstacle obstacle : obstacles) {
            Vec3 to = obstacle.middle().minus(exit);
            double x = to.x() * along.x() + to.y() * along.y() + to.z() * along.z();
            double reach = obstacle.reachM();
            if (x < -reach || x > REACH_M + reach) {
                continue;
            }
            double off = to.minus(along.times(x)).length();
            double wide = FreeJet.radiusM(outermost, Math.max(0, x + reach), exitAreaM2);
            boolean holdsTheExit = obstacle.meets(exit, exit.plus(along.times(1e-6))) <= 1;
            if (off <= reach + wide && !holdsTheExit) {
                near.add(obstacle);
            }
        }
        return near;
    }
}
