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

    private static final int RINGS = 6;
    private static final int AROUND = 14;

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
                unit(
                        along.cross(
                                Math.abs(along.x()) < 0.7 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0)));
        Vec3 third = along.cross(across);
        double core = FreeJet.coreM(exitAreaM2);
        double[][] ends = new double[near.size()][];
        for (int i = 0; i < ends.length; i++) {
            ends[i] = local(near.get(i), exit, along, across, third);
        }
        double[] share = new double[near.size()];
        double[] way = new double[near.size()];
        int[] rays = new int[near.size()];
        Vec3 turn = Vec3.ZERO;
        double total = 0;
        for (int ring = 0; ring < RINGS; ring++) {
            double inside = (ring + 0.5) / RINGS;
            double r0 = FreeJet.radiusM(inside, 0, exitAreaM2);
            double r1 = FreeJet.radiusM(inside, core, exitAreaM2);
            double r2 = FreeJet.radiusM(inside, REACH_M, exitAreaM2);
            for (int k = 0; k < AROUND; k++) {
                double angle = 2 * Math.PI * (k + 0.5 * (ring % 2)) / AROUND;
                double c = Math.cos(angle);
                double s = Math.sin(angle);
                int met = -1;
                double first = Double.POSITIVE_INFINITY;
                for (int i = 0; i < ends.length; i++) {
                    double x = meets(near.get(i), ends[i], core, r0, r1, r2, c, s);
                    if (x < first) {
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
                    double r = FreeJet.radiusM(inside, first, exitAreaM2);
                    Vec3 where =
                            exit.plus(along.times(first))
                                    .plus(across.times(r * c))
                                    .plus(third.times(r * s));
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

    /** Ends of a limb along the jet and across it; a box stands as it is in such axes. */
    private static double[] local(
            Obstacle obstacle, Vec3 exit, Vec3 along, Vec3 across, Vec3 third) {
        return switch (obstacle) {
            case Obstacle.Limb limb -> {
                Vec3 a = limb.from().minus(exit);
                Vec3 b = limb.to().minus(exit);
                yield new double[] {
                    dot(a, along), dot(a, across), dot(a, third),
                    dot(b, along), dot(b, across), dot(b, third)
                };
            }
            case Obstacle.Box box -> {
                Vec3 m = box.middle().minus(exit);
                double[] of = new double[12];
                of[0] = dot(m, along);
                of[1] = dot(m, across);
                of[2] = dot(m, third);
                for (int k = 0; k < 3; k++) {
                    of[3 + 3 * k] = dot(box.axes().get(k), along);
                    of[4 + 3 * k] = dot(box.axes().get(k), across);
                    of[5 + 3 * k] = dot(box.axes().get(k), third);
                }
                yield of;
            }
        };
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    /** Distance along the jet at which a ray meets an obstacle; infinite where it does not. */
    private static double meets(
            Obstacle obstacle,
            double[] of,
            double core,
            double r0,
            double r1,
            double r2,
            double c,
            double s) {
        double t =
                switch (obstacle) {
                    case Obstacle.Limb limb ->
                            Math.min(of[0], of[3]) - limb.radiusM() > core
                                    ? Obstacle.MISSED
                                    : Obstacle.Limb.meets(
                                            0,
                                            r0 * c,
                                            r0 * s,
                                            core,
                                            r1 * c,
                                            r1 * s,
                                            of[0],
                                            of[1],
                                            of[2],
                                            of[3],
                                            of[4],
                                            of[5],
                                            limb.radiusM());
                    case Obstacle.Box box ->
                            Obstacle.Box.meets(
                                    0, r0 * c, r0 * s, core, r1 * c, r1 * s, of, box.halfM());
                };
        if (t <= 1) {
            return t * core;
        }
        t =
                switch (obstacle) {
                    case Obstacle.Limb limb ->
                            Math.max(of[0], of[3]) + limb.radiusM() < core
                                    ? Obstacle.MISSED
                                    : Obstacle.Limb.meets(
                                            core,
                                            r1 * c,
                                            r1 * s,
                                            REACH_M,
                                            r2 * c,
                                            r2 * s,
                                            of[0],
                                            of[1],
                                            of[2],
                                            of[3],
                                            of[4],
                                            of[5],
                                            limb.radiusM());
                    case Obstacle.Box box ->
                            Obstacle.Box.meets(
                                    core, r1 * c, r1 * s, REACH_M, r2 * c, r2 * s, of, box.halfM());
                };
        return t <= 1 ? core + t * (REACH_M - core) : Double.POSITIVE_INFINITY;
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
            double wide = FreeJet.radiusM(outermost, Math.clamp(x + reach, 0, REACH_M), exitAreaM2);
            if (mayMeet(obstacle, exit, along, to.minus(along.times(x)).length(), wide)) {
                near.add(obstacle);
            }
        }
        return near;
    }

    /** Whether it comes within a width of the axis and does not hold the exit. */
    private static boolean mayMeet(
            Obstacle obstacle, Vec3 exit, Vec3 along, double off, double wide) {
        boolean comesNear =
                switch (obstacle) {
                    case Obstacle.Limb limb ->
                            new Obstacle.Limb(
                                                    limb.name(),
                                                    limb.from(),
                                                    limb.to(),
                                                    limb.radiusM() + wide)
                                            .meets(exit, exit.plus(along.times(REACH_M)))
                                    <= 1;
                    case Obstacle.Box box -> off <= box.reachM() + wide;
                };
        return comesNear && obstacle.meets(exit, exit.plus(along.times(1e-6))) > 1;
    }
}
