package liftwright.review.cause.truth;

import static liftwright.review.cause.truth.Solid.cross;
import static liftwright.review.cause.truth.Solid.dot;
import static liftwright.review.cause.truth.Solid.minus;
import static liftwright.review.cause.truth.Solid.plus;
import static liftwright.review.cause.truth.Solid.times;

import java.util.ArrayList;
import java.util.List;

/**
 * What a jet strikes: rays on a sunflower's lattice, equal shares of momentum each, walked by the
 * distance to the nearest thing. The law of the jet is that of a free jet: even at the exit; from
 * 6.1 diameters on a Gaussian with half its speed at 0.096 of the way; straight between.
 *
 * @param caught for each kind of thing (limbs, boxes): share of the momentum
 * @param moved the same, weighed with where it is caught: Σ share × place
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Jet(double[] caught, double[][] moved) {

    static final double REACH = 2.5;
    private static final int RAYS = 150;
    private static final double GOLDEN = Math.PI * (3 - Math.sqrt(5));
    private static final double NEAR = 2e-4;

    /** Radius within which a share of the momentum flows, so far from the exit. */
    static double radius(double share, double way, double diameter) {
        double core = 6.1 * diameter;
        double gauss = 0.096 * Math.sqrt(Math.log(1 / (1 - share)) / Math.log(4));
        double exit = diameter / 2 * Math.sqrt(share);
        double mixed = Math.min(1, way / core);
        return (1 - mixed) * exit + mixed * gauss * Math.max(way, core);
    }

    static Jet strike(double[] exit, double[] along, double diameter, List<? extends Thing> all) {
        return strike(exit, along, diameter, all, RAYS);
    }

    static Jet strike(
            double[] exit, double[] along, double diameter, List<? extends Thing> all, int rays) {
        Jet jet = new Jet(new double[2], new double[2][3]);
        List<Thing> things = near(exit, along, diameter, all, rays);
        if (things.isEmpty()) {
            return jet;
        }
        double[] across = cross(along, Math.abs(along[1]) < 0.7 ? Solid.RIGHT : Solid.FORWARD);
        across = times(1 / Math.sqrt(dot(across, across)), across);
        double core = 6.1 * diameter;
        for (int ray = 0; ray < rays; ray++) {
            double share = (ray + 0.5) / rays;
            double[] out = Solid.turn(along, ray * GOLDEN, across);
            double exit0 = radius(share, 0, diameter);
            double gauss = radius(share, core, diameter) / core;
            double slope = (gauss * core - exit0) / core;
            double way = 0;
            while (way < REACH) {
                double r = exit0 + slope * Math.min(way, core);
                r = way > core ? gauss * way : r;
                double x = exit[0] + way * along[0] + r * out[0];
                double y = exit[1] + way * along[1] + r * out[1];
                double z = exit[2] + way * along[2] + r * out[2];
                Thing nearest = things.getFirst();
                double least = Double.POSITIVE_INFINITY;
                for (Thing each : things) {
                    double distance = each.distance(x, y, z);
                    if (distance < least) {
                        least = distance;
                        nearest = each;
                    }
                }
                if (least < NEAR) {
                    int kind =
                            switch (nearest) {
                                case Thing.Round _ -> 0;
                                case Thing.Block _ -> 1;
                            };
                    double push = nearest.catches() / rays;
                    jet.caught[kind] += push;
                    jet.moved[kind] = plus(jet.moved[kind], times(push, new double[] {x, y, z}));
                    break;
                }
                way += 0.97 * least; // rays lean, so a step along the jet is a little longer
            }
        }
        return jet;
    }

    /** What comes near enough to be struck, without what holds the exit. */
    private static List<Thing> near(
            double[] exit, double[] along, double diameter, List<? extends Thing> all, int rays) {
        List<Thing> near = new ArrayList<>();
        double outermost = 1 - 0.5 / rays;
        double core = 6.1 * diameter;
        double atCore = radius(outermost, core, diameter);
        for (Thing each : all) {
            double way = 0;
            boolean comes = false;
            double distance = each.distance(exit);
            if (distance <= 0) {
                continue;
            }
            while (way < REACH && !comes) {
                // Not narrower than the jet, which widens by less than a fifth of the way.
                double free = distance - atCore * Math.max(1, way / core);
                comes = free < 0.01;
                way += Math.max(0.005, 0.5 * free);
                distance = each.distance(plus(exit, times(way, along)));
            }
            if (comes) {
                near.add(each);
            }
        }
        return near;
    }

    /** Force for each newton of thrust. */
    double[] force(double[] along, double[] factors) {
        return times(factors[0] * caught[0] + factors[1] * caught[1], along);
    }

    /** Moment of that force about a point. */
    double[] moment(double[] along, double[] about, double[] factors) {
        double[] sum = {0, 0, 0};
        for (int kind = 0; kind < 2; kind++) {
            double[] lever = minus(moved[kind], times(caught[kind], about));
            sum = plus(sum, times(factors[kind], cross(lever, along)));
        }
        return sum;
    }
}
