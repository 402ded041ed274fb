package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class FanUnitTest {

    private static final int AT = 3;

    /** Coefficients of a small to large unit; every third has a current limit that may bite. */
    private static double[] unit(RandomGenerator random) {
        double[] unit = new double[AT + FanUnit.COEFFICIENTS];
        Arrays.fill(unit, 0, AT, Double.NaN); // nothing outside the block may be read
        unit[AT + FanUnit.THRUST] = Math.exp(random.nextDouble(-15, -9));
        unit[AT + FanUnit.TORQUE] = Math.exp(random.nextDouble(-18, -13));
        unit[AT + FanUnit.KV] = random.nextDouble(20, 200);
        unit[AT + FanUnit.RESISTANCE] = Math.exp(random.nextDouble(-5, -2));
        unit[AT + FanUnit.NO_LOAD] = random.nextInt(4) == 0 ? 0 : random.nextDouble(0, 3);
        unit[AT + FanUnit.NO_LOAD_SLOPE] = random.nextBoolean() ? 0 : random.nextDouble(0, 2e-3);
        unit[AT + FanUnit.SWITCHING] = random.nextBoolean() ? 0 : random.nextDouble(0, 0.1);
        unit[AT + FanUnit.FIXED] = random.nextBoolean() ? 0 : random.nextDouble(0, 10);
        unit[AT + FanUnit.CURRENT_LIMIT] =
                random.nextInt(3) == 0 ? random.nextDouble(0.5, 200) : Double.POSITIVE_INFINITY;
        if (random.nextBoolean()) {
            unit[AT + FanUnit.THRUST_DRIFT] = random.nextDouble(-0.3, 0.3);
            unit[AT + FanUnit.TORQUE_DRIFT] = random.nextDouble(-0.3, 0.3);
            unit[AT + FanUnit.REFERENCE_SPEED] = random.nextDouble(100, 3000);
        }
        return unit;
    }

    private static double[] operate(double[] unit, double volt, double duty) {
        double[] point = new double[FanUnit.RESULTS + 2];
        FanUnit.operate(unit, AT, volt, duty, point, 1);
        return Arrays.copyOfRange(point, 1, 1 + FanUnit.RESULTS);
    }

    private static double bus(double[] unit, double volt, double duty) {
        return operate(unit, volt, duty)[FanUnit.BUS_CURRENT];
    }

    /**
     * Referee: torque balance by bisection on speed, written from the equations and not from the
     * kernel. {speed, winding current, duty, bus current}.
     */
    private static double[] referee(double[] unit, double volt, double duty) {
        double kv = unit[AT + FanUnit.KV];
        double r = unit[AT + FanUnit.RESISTANCE];
        DoubleUnaryOperator torque = w -> torque(unit, w);
        double a = unit[AT + FanUnit.NO_LOAD];
        double b = unit[AT + FanUnit.NO_LOAD_SLOPE];
        double limit = unit[AT + FanUnit.CURRENT_LIMIT];
        double speed = speed(kv, r, torque, a, b, duty * volt);
        double current = (duty * volt - speed / kv) / r;
        double d = duty;
        if (current > limit) {
            double lowered =
                    bisect(
                            share -> {
                                double w = speed(kv, r, torque, a, b, share * volt);
                                return (share * volt - w / kv) / r - limit;
                            },
                            0,
                            duty);
            d = lowered;
            speed = speed(kv, r, torque, a, b, d * volt);
            current = limit;
        }
        double bus =
                d * current
                        + unit[AT + FanUnit.SWITCHING] * current * (1 - d)
                        + unit[AT + FanUnit.FIXED] / volt;
        return new double[] {speed, current, d, bus};
    }

    private static double speed(
            double kv, double r, DoubleUnaryOperator torque, double a, double b, double driven) {
        if (driven <= a * r) {
            return 0;
        }
        return bisect(
                w -> {
                    double drawn = (driven - w / kv) / r;
                    return torque.applyAsDouble(w) - (drawn - a - b * w) / kv;
                },
                0,
                driven * kv);
    }

    private static double torque(double[] unit, double w) {
        return power(
                unit[AT + FanUnit.TORQUE],
                unit[AT + FanUnit.TORQUE_DRIFT],
                unit[AT + FanUnit.REFERENCE_SPEED],
                w);
    }

    /** c Ω^(2+e) / Ω_ref^e, written otherwise than in the kernel. */
    private static double power(double c, double e, double reference, double w) {
        return w == 0 ? 0 : c * Math.pow(w, 2 + e) / (e == 0 ? 1 : Math.pow(reference, e));
    }

    private static double bisect(DoubleUnaryOperator rising, double low, double high) {
        double from = low;
        double to = high;
        for (int i = 0; i < 200; i++) {
            double middle = (from + to) / 2;
            if (rising.applyAsDouble(middle) > 0) {
                to = middle;
            } else {
                from = middle;
            }
        }
        return (from + to) / 2;
    }

    @Test
    void agreesWithBisectionOfTheTorqueBalance() {
        int[] limited = {0};
        int[] standing = {0};
        Seeded.check(
                1000,
                random -> {
                    double[] unit = unit(random);
                    double volt = random.nextDouble(5, 120);
                    double duty = random.nextInt(5) == 0 ? 1 : random.nextDouble(0, 1);
                    if (random.nextInt(10) == 0) {
                        duty *= 1e-3; // the region where the motor does not turn
                    }
                    double[] point = operate(unit, volt, duty);
                    double[] referee = referee(unit, volt, duty);
                    assertThat(point[FanUnit.SPEED]).isCloseTo(referee[0], near(referee[0]));
                    assertThat(point[FanUnit.WINDING_CURRENT])
                            .isCloseTo(referee[1], near(referee[1]));
                    assertThat(point[FanUnit.DUTY]).isCloseTo(referee[2], near(referee[2]));
                    assertThat(point[FanUnit.BUS_CURRENT]).isCloseTo(referee[3], near(referee[3]));
                    boolean lowered = point[FanUnit.STATE] == FanUnit.CURRENT_LIMITED;
                    assertThat(lowered).isEqualTo(referee[2] < duty);
                    limited[0] += lowered ? 1 : 0;
                    standing[0] += point[FanUnit.SPEED] == 0 ? 1 : 0;
                });
        if (System.getProperty("seed") == null) {
            assertThat(limited[0]).as("cases at the limit").isGreaterThan(50);
            assertThat(standing[0]).as("cases standing still").isGreaterThan(20);
        }
    }

    private static org.assertj.core.data.Offset<Double> near(double size) {
        return within(1e-9 * (Math.abs(size) + 0.01));
    }

    @Test
    void powerCloses() {
        Seeded.check(
                1000,
                random -> {
                    double[] unit = unit(random);
                    double volt = random.nextDouble(0.2, 120);
                    double[] point = operate(unit, volt, random.nextDouble(0, 1));
                    double[] account = new double[FanUnit.ACCOUNTS + 1];
                    double[] shifted = new double[FanUnit.RESULTS + 2];
                    System.arraycopy(point, 0, shifted, 2, point.length);
                    FanUnit.account(unit, AT, volt, shifted, 2, account, 1);
                    double drawn = volt * point[FanUnit.BUS_CURRENT];
                    double spent =
                            account[1 + FanUnit.SHAFT_W]
                                    + account[1 + FanUnit.COPPER_W]
                                    + account[1 + FanUnit.IRON_W]
                                    + account[1 + FanUnit.SWITCHING_W]
                                    + account[1 + FanUnit.FIXED_W];
                    assertThat(spent).isCloseTo(drawn, within(1e-9 * (1 + drawn)));
                    double w = point[FanUnit.SPEED];
                    double thrust =
                            power(
                                    unit[AT + FanUnit.THRUST],
                                    unit[AT + FanUnit.THRUST_DRIFT],
                                    unit[AT + FanUnit.REFERENCE_SPEED],
                                    w);
                    assertThat(account[1 + FanUnit.THRUST_N])
                            .isCloseTo(thrust, within(1e-12 * thrust));
                    assertThat(account[1 + FanUnit.TORQUE_NM])
                            .isCloseTo(torque(unit, w), within(1e-12 * torque(unit, w)));
                    assertThat(FanUnit.speedAtThrustRadps(unit, AT, thrust))
                            .isCloseTo(w, within(1e-12 * w));
                    assertThat(account[1 + FanUnit.SHAFT_W])
                            .isCloseTo(
                                    account[1 + FanUnit.TORQUE_NM] * w, within(1e-9 * (1 + drawn)));
                });
    }

    @Test
    void slopeIsTheDerivativeOfTheBusCurrent() {
        Seeded.check(
                1000,
                random -> {
                    double[] unit = unit(random);
                    double volt = random.nextDouble(2, 120);
                    double duty = random.nextDouble(0, 1);
                    double step = 1e-4 * volt;
                    double[] below = operate(unit, volt - step, duty);
                    double[] above = operate(unit, volt + step, duty);
                    boolean seam =
                            below[FanUnit.STATE] != above[FanUnit.STATE]
                                    || below[FanUnit.SPEED] == 0 != (above[FanUnit.SPEED] == 0);
                    double slope = operate(unit, volt, duty)[FanUnit.BUS_SLOPE];
                    if (!seam) {
                        double measured =
                                (above[FanUnit.BUS_CURRENT] - below[FanUnit.BUS_CURRENT])
                                        / (2 * step);
                        assertThat(slope)
                                .isCloseTo(measured, within(1e-4 * (Math.abs(measured) + 1e-2)));
                    }
                });
    }

    @Test
    void isContinuousAcrossBothSeamsAndRisesWithVoltageUntilTheLimit() {
        Seeded.check(
                300,
                random -> {
                    double[] unit = unit(random);
                    unit[AT + FanUnit.CURRENT_LIMIT] = random.nextDouble(1, 80);
                    double duty = random.nextDouble(0.05, 1);
                    double[] before = operate(unit, 1e-6, duty);
                    int steps = 4000;
                    for (int i = 1; i <= steps; i++) {
                        double volt = 120.0 * i / steps;
                        double[] now = operate(unit, volt, duty);
                        double jump = now[FanUnit.BUS_CURRENT] - before[FanUnit.BUS_CURRENT];
                        double steepest =
                                Math.max(
                                        Math.abs(now[FanUnit.BUS_SLOPE]),
                                        Math.max(
                                                Math.abs(before[FanUnit.BUS_SLOPE]),
                                                1 / unit[AT + FanUnit.RESISTANCE]
                                                        + unit[AT + FanUnit.FIXED]));
                        assertThat(Math.abs(jump)).isLessThan(1.01 * steepest * 120 / steps);
                        assertThat(now[FanUnit.SPEED])
                                .isGreaterThanOrEqualTo(before[FanUnit.SPEED] * (1 - 1e-12));
                        assertThat(now[FanUnit.WINDING_CURRENT])
                                .isGreaterThanOrEqualTo(
                                        before[FanUnit.WINDING_CURRENT] * (1 - 1e-12))
                                .isLessThanOrEqualTo(unit[AT + FanUnit.CURRENT_LIMIT]);
                        if (now[FanUnit.STATE] == FanUnit.CURRENT_LIMITED) {
                            // Below its least voltage the controller's own power acts as a
                            // resistor.
                            double own =
                                    volt < FanUnit.LEAST_CONTROLLER_V
                                            ? unit[AT + FanUnit.FIXED]
                                            : 0;
                            assertThat(now[FanUnit.BUS_SLOPE]).isLessThanOrEqualTo(own);
                        }
                        before = now;
                    }
                });
    }

    @Test
    void thrustFallsWithThinAirOnlyThroughTheLoad() {
        double[] thick = new double[AT + FanUnit.COEFFICIENTS];
        double[] values = {2e-5, 3e-7, 70, 0.02, 1, 0, 0, 0, Double.POSITIVE_INFINITY};
        System.arraycopy(values, 0, thick, AT, values.length);
        double[] thin = thick.clone();
        thin[AT + FanUnit.THRUST] *= 0.9;
        thin[AT + FanUnit.TORQUE] *= 0.9;
        double[] a = operate(thick, 50, 1);
        double[] b = operate(thin, 50, 1);
        assertThat(b[FanUnit.SPEED]).isGreaterThan(a[FanUnit.SPEED]);
        double thrustRatio = 0.9 * Math.pow(b[FanUnit.SPEED] / a[FanUnit.SPEED], 2);
        // Between constant speed (0.9) and constant power (0.9^(1/3)).
        assertThat(thrustRatio).isBetween(0.9, Math.cbrt(0.9));
    }

    @Test
    void holdsAnAskedSpeedByFindingTheDuty() {
        int[] held = {0};
        Seeded.check(
                1000,
                random -> {
                    double[] unit = unit(random);
                    double volt = random.nextDouble(5, 120);
                    double full = operate(unit, volt, 1)[FanUnit.SPEED];
                    double wanted = full * random.nextDouble(0, 1.3);
                    double[] point = hold(unit, volt, wanted);
                    if (wanted <= full) {
                        assertThat(point[FanUnit.SPEED]).isCloseTo(wanted, near(wanted));
                        assertThat(point[FanUnit.STATE]).isEqualTo(FanUnit.FREE);
                        double[] again = operate(unit, volt, point[FanUnit.DUTY]);
                        assertThat(point[FanUnit.DUTY]).isBetween(0.0, 1 + 1e-12);
                        assertThat(again[FanUnit.SPEED]).isCloseTo(wanted, near(wanted));
                        assertThat(point[FanUnit.BUS_CURRENT])
                                .isCloseTo(
                                        again[FanUnit.BUS_CURRENT],
                                        near(again[FanUnit.BUS_CURRENT]));
                        slopeOfHeldSpeed(unit, volt, wanted, full);
                        held[0]++;
                    } else {
                        assertThat(point[FanUnit.SPEED]).isEqualTo(full);
                        boolean limited =
                                operate(unit, volt, 1)[FanUnit.STATE] == FanUnit.CURRENT_LIMITED;
                        assertThat(point[FanUnit.STATE])
                                .isEqualTo(limited ? FanUnit.CURRENT_LIMITED : FanUnit.SATURATED);
                    }
                });
        if (System.getProperty("seed") == null) {
            assertThat(held[0]).isGreaterThan(500);
        }
    }

    private static double[] hold(double[] unit, double volt, double speed) {
        double[] point = new double[FanUnit.RESULTS + 3];
        FanUnit.holdSpeed(unit, AT, volt, speed, point, 2);
        assertThat(point[0]).isZero();
        assertThat(point[1]).isZero();
        assertThat(point[2 + FanUnit.RESULTS]).isZero();
        return Arrays.copyOfRange(point, 2, 2 + FanUnit.RESULTS);
    }

    @Test
    void holdingNoSpeedIsDutyZero() {
        Seeded.check(
                100,
                random -> {
                    double[] unit = unit(random);
                    double volt = random.nextDouble(5, 120);
                    double[] point = hold(unit, volt, 0);
                    assertThat(point).containsExactly(operate(unit, volt, 0));
                    assertThat(point[FanUnit.SPEED]).isZero();
                    assertThat(point[FanUnit.DUTY]).isZero();
                    assertThat(point[FanUnit.STATE]).isEqualTo(FanUnit.FREE);
                });
    }

    private static void slopeOfHeldSpeed(double[] unit, double volt, double wanted, double full) {
        if (wanted > 0.99 * full || wanted <= 0) {
            return; // next to saturation the two sides differ
        }
        double step = 1e-5 * volt;
        double[] low = hold(unit, volt - step, wanted);
        double[] high = hold(unit, volt + step, wanted);
        double[] at = hold(unit, volt, wanted);
        double measured = (high[FanUnit.BUS_CURRENT] - low[FanUnit.BUS_CURRENT]) / (2 * step);
        assertThat(at[FanUnit.BUS_SLOPE])
                .isCloseTo(measured, within(1e-5 * (Math.abs(measured) + 1e-3)));
    }

    @Test
    void aDeadBusDrawsNothing() {
        Seeded.check(
                100,
                random -> {
                    double[] unit = unit(random);
                    for (double volt : new double[] {0, -1, -50}) {
                        double[] point = operate(unit, volt, random.nextDouble(0, 1));
                        assertThat(point[FanUnit.BUS_CURRENT]).isZero();
                        assertThat(point[FanUnit.BUS_SLOPE]).isZero();
                        assertThat(point[FanUnit.SPEED]).isZero();
                    }
                });
    }

    @Test
    void fixedLossIsAPowerAboveOneVoltAndAResistorBelow() {
        double[] unit = new double[AT + FanUnit.COEFFICIENTS];
        double[] values = {2e-5, 3e-7, 70, 0.02, 1, 0, 0, 5, Double.POSITIVE_INFINITY};
        System.arraycopy(values, 0, unit, AT, values.length);
        assertThat(bus(unit, 50, 0)).isCloseTo(0.1, within(1e-12));
        assertThat(bus(unit, 1, 0)).isCloseTo(5, within(1e-12));
        assertThat(bus(unit, 0.5, 0)).isCloseTo(2.5, within(1e-12));
        assertThat(operate(unit, 50, 0)[FanUnit.BUS_SLOPE]).isCloseTo(-0.002, within(1e-12));
        assertThat(operate(unit, 0.5, 0)[FanUnit.BUS_SLOPE]).isCloseTo(5, within(1e-12));
    }

    /** The worked motor of 700 rpm/V under 1e-7 N·m·s² at 44.4 V, full duty: 74.9932 A. */
    @Test
    void fullDutyDrawsTheWindingCurrent() {
        double[] unit = new double[AT + FanUnit.COEFFICIENTS];
        double[] values = {
            1e-5, 1e-7, 700 * Math.PI / 30, 0.020, 2.5, 0, 0.05, 0, Double.POSITIVE_INFINITY
        };
        System.arraycopy(values, 0, unit, AT, values.length);
        assertThat(bus(unit, 44.4, 1)).isCloseTo(74.9932, within(1e-3));
        // Half duty of the double voltage: the same motor point, half the bus current, and k_sw.
        assertThat(bus(unit, 88.8, 0.5)).isCloseTo(74.9932 / 2 + 0.05 * 74.9932 / 2, within(1e-3));
    }
}
