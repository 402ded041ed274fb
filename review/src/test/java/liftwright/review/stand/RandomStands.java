package liftwright.review.stand;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.quantity.Tolerance;
import liftwright.rig.stand.Stand;

/** Stands as people plan them, good ones and bad ones. */
final class RandomStands {

    private RandomStands() {}

    static Stand next(RandomGenerator random) {
        double thrust = random.nextDouble(5, 300);
        boolean levered = random.nextBoolean();
        double ratio = levered ? random.nextDouble(0.4, 2.5) : 1;
        double rating = thrust * ratio * random.nextDouble(1.05, 4);
        Optional<Stand.Lever> lever = Optional.empty();
        if (levered) {
            double cellArm = random.nextDouble(0.1, 0.4);
            lever =
                    Optional.of(
                            new Stand.Lever(
                                    around(random, cellArm * ratio, 0.002),
                                    around(random, cellArm, 0.002)));
        }
        boolean warms = random.nextBoolean();
        return new Stand(
                "",
                thrust,
                0.02,
                new Stand.Cell(
                        rating,
                        random.nextDouble(0.0002, 0.003),
                        maybe(random, 0.0005),
                        warms ? Optional.of(random.nextDouble(1e-5, 1e-4)) : Optional.empty(),
                        warms ? Optional.of(random.nextDouble(1, 15)) : Optional.empty(),
                        maybe(random, rating * 0.004),
                        maybe(random, rating * 0.002),
                        random.nextBoolean()
                                ? Optional.of(doubt(random, 0.005))
                                : Optional.empty()),
                lever,
                random.nextInt(4) == 0
                        ? Optional.empty()
                        : Optional.of(
                                new Stand.Doubted(random.nextDouble(0, 0.06), doubt(random, 0.05))),
                jet(random),
                random.nextInt(3) == 0
                        ? new Stand.Clearance.Measured(doubt(random, 0.01))
                        : new Stand.Clearance.Placed(
                                pick(random, 2, 3, 5, 10), pick(random, 1, 2, 4)),
                random.nextBoolean()
                        ? Optional.of(new Stand.Air(doubt(random, 3), doubt(random, 800)))
                        : Optional.empty(),
                new Stand.Repeats(random.nextInt(2, 21), random.nextDouble(0.001, 0.02)),
                List.of());
    }

    private static Optional<Stand.Jet> jet(RandomGenerator random) {
        double exit = random.nextDouble(0.004, 0.03);
        return switch (random.nextInt(3)) {
            case 0 -> Optional.empty();
            case 1 ->
                    Optional.of(
                            new Stand.Jet.Placed(
                                    exit * random.nextDouble(0.005, 0.15),
                                    random.nextDouble(0.1, 3),
                                    exit));
            default ->
                    Optional.of(
                            new Stand.Jet.Measured(
                                    new Stand.Doubted(
                                            random.nextDouble(0.02, 0.1), doubt(random, 0.01))));
        };
    }

    private static double pick(RandomGenerator random, double... of) {
        return of[random.nextInt(of.length)];
    }

    private static Optional<Double> maybe(RandomGenerator random, double most) {
        return random.nextBoolean()
                ? Optional.of(random.nextDouble(most / 20, most))
                : Optional.empty();
    }

    private static Stand.Doubted around(RandomGenerator random, double si, double share) {
        return new Stand.Doubted(si, doubt(random, si * share));
    }

    private static Stand.Doubt doubt(RandomGenerator random, double most) {
        return new Stand.Doubt(
                random.nextDouble(most / 10, most),
                random.nextBoolean() ? Tolerance.Form.NORMAL : Tolerance.Form.BOUND);
    }
}
