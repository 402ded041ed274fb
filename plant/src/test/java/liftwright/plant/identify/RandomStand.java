package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import liftwright.physics.FanUnit;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.table.CurrentKind;

/** A fan unit drawn at random and what a stand reads off it; the fan is solved by the kernel. */
final class RandomStand {

    final double[] unit = new double[FanUnit.COEFFICIENTS];
    final CurrentKind kind;
    final double fullV;
    double thrustScatter = 0.01;
    double currentScatter = 0.01;
    double voltScatter = 0.003;
    boolean tellsDuty = true;
    boolean tellsSpeed = true;

    RandomStand(RandomGenerator random, boolean drifts) {
        kind = random.nextBoolean() ? CurrentKind.BUS : CurrentKind.WINDING;
        fullV = random.nextDouble(12, 60);
        double topA = random.nextDouble(15, 120);
        // As far from the middle as what is assumed of an undeclared motor says.
        double drop = 0.053 * Math.exp(0.6 * bounded(random));
        double noLoad = 0.03 * Math.exp(0.6 * bounded(random));
        double speed = random.nextDouble(800, 4000);
        double kv = speed / (fullV * (1 - drop));
        unit[FanUnit.KV] = kv;
        unit[FanUnit.RESISTANCE] = drop * fullV / topA;
        unit[FanUnit.NO_LOAD] = noLoad * topA;
        unit[FanUnit.TORQUE] = (1 - noLoad) * topA / kv / (speed * speed);
        unit[FanUnit.THRUST] = random.nextDouble(40, 90) * unit[FanUnit.TORQUE];
        unit[FanUnit.SWITCHING] = kind == CurrentKind.BUS ? random.nextDouble(0.01, 0.09) : 0;
        unit[FanUnit.FIXED] = 2;
        unit[FanUnit.CURRENT_LIMIT] = Double.POSITIVE_INFINITY;
        unit[FanUnit.REFERENCE_SPEED] = speed;
        if (drifts) {
            double sign = random.nextBoolean() ? 1 : -1;
            unit[FanUnit.THRUST_DRIFT] = sign * random.nextDouble(0.08, 0.2);
            unit[FanUnit.TORQUE_DRIFT] = -sign * random.nextDouble(0.08, 0.2);
        }
    }

    private static double bounded(RandomGenerator random) {
        return Math.clamp(random.nextGaussian(), -2, 2);
    }

    FanPriors priors() {
        return new FanPriors(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                new Quantity(
                        0.05,
                        Dimension.NONE,
                        new Tolerance(0.04, 0.04, Tolerance.Form.BOUND, Tolerance.Scope.SHARED)),
                unit[FanUnit.FIXED],
                0.1);
    }

    /** Coefficient at another reference speed. */
    double at(double referenceRadps, int coefficient, int drift) {
        return unit[coefficient]
                * Math.pow(referenceRadps / unit[FanUnit.REFERENCE_SPEED], unit[drift]);
    }

    /** Rows at three voltages and some duties, from 1 on. */
    List<BenchPoint> rows(RandomGenerator random, int duties) {
        List<double[]> exact = new ArrayList<>();
        double topT = 0;
        double topA = 0;
        for (int level = 0; level < 3; level++) {
            for (int k = 0; k < duties; k++) {
                double volt = fullV * (1 - 0.12 * level);
                double duty = duties == 1 ? 1 : 0.4 + 0.6 * k / (duties - 1);
                double[] point = new double[FanUnit.RESULTS];
                FanUnit.operate(unit, 0, volt, duty, point, 0);
                double thrust = FanUnit.thrustN(unit, 0, point[FanUnit.SPEED]);
                double amp =
                        point[
                                kind == CurrentKind.BUS
                                        ? FanUnit.BUS_CURRENT
                                        : FanUnit.WINDING_CURRENT];
                exact.add(new double[] {volt, duty, amp, point[FanUnit.SPEED], thrust});
                topT = Math.max(topT, thrust);
                topA = Math.max(topA, amp);
            }
        }
        List<BenchPoint> rows = new ArrayList<>();
        for (double[] one : exact) {
            rows.add(
                    new BenchPoint(
                            rows.size() + 1,
                            one[0] * (1 + voltScatter * random.nextGaussian()),
                            tellsDuty ? OptionalDouble.of(one[1]) : OptionalDouble.empty(),
                            OptionalDouble.of(read(random, one[2], topA, currentScatter)),
                            tellsSpeed ? OptionalDouble.of(one[3]) : OptionalDouble.empty(),
                            OptionalDouble.of(read(random, one[4], topT, thrustScatter)),
                            OptionalDouble.empty(),
                            1,
                            0,
                            Optional.empty()));
        }
        return rows;
    }

    private static double read(RandomGenerator random, double size, double top, double share) {
        return size + share * Math.hypot(size, 0.1 * top) * random.nextGaussian();
    }
}
