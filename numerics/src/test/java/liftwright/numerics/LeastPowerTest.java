package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/**
 * By its own proof made again here with another minimiser, and between the two sides of a library's
 * linear programme on chords of the powers.
 */
class LeastPowerTest {

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Drawn(double[] shaft, double[] heat, double[][] a, double[] b) {
        double power(int j, double x) {
            return shaft[j] * Math.pow(x, 1.5) + heat[j] * x * x;
        }
    }

    /** Fans about a centre: lift, roll, pitch and, mostly, yaw; some symmetric, some dead. */
    private static Drawn drawn(RandomGenerator random, int most) {
        int columns = random.nextInt(4, most + 1);
        int rows = random.nextInt(3, 5);
        double[][] a = new double[rows][columns];
        double[] shaft = new double[columns];
        double[] heat = new double[columns];
        boolean ring = random.nextInt(3) == 0;
        int dead = random.nextInt(3) == 0 ? random.nextInt(columns) : -1;
        double[] inside = new double[rows];
        for (int j = 0; j < columns; j++) {
            if (j == dead) {
                continue;
            }
            double angle = 2 * Math.PI * j / columns;
            double thrust = ring ? 1 : random.nextDouble(0.3, 1.5);
            double x = ring ? Math.cos(angle) : random.nextDouble(-1, 1);
            double y = ring ? Math.sin(angle) : random.nextDouble(-1, 1);
            double yaw = ring ? 0.1 - 0.2 * (j % 2) : random.nextDouble(-0.3, 0.3);
            double[] column = {thrust, thrust * y, thrust * x, thrust * yaw};
            double share = random.nextDouble();
            for (int i = 0; i < rows; i++) {
                a[i][j] = column[i] * 3 / columns;
                inside[i] += a[i][j] * share;
            }
            shaft[j] = thrust * random.nextDouble(20, 60);
            heat[j] = random.nextBoolean() ? 0 : thrust * random.nextDouble(1, 20);
        }
        double[] b = new double[rows];
        if (random.nextBoolean()) {
            b = inside;
        } else {
            b[0] = random.nextDouble(0.2, 2.5);
        }
        return new Drawn(shaft, heat, a, b);
    }

    /** Least of power less worth over 0 to 1, by golden section. */
    private static double least(Drawn d, int j, double worth) {
        double low = 0;
        double high = 1;
        double golden = (Math.sqrt(5) - 1) / 2;
        for (int step = 0; step < 90; step++) {
            double left = high - golden * (high - low);
            double right = low + golden * (high - low);
            if (d.power(j, left) - worth * left < d.power(j, right) - worth * right) {
                high = right;
            } else {
                low = left;
            }
        }
        double middle = (low + high) / 2;
        return Math.min(Math.min(0, d.power(j, 1) - worth), d.power(j, middle) - worth * middle);
    }

    /** Least sum of the chords over {@code parts} equal parts of every column. */
    private static double byLibrary(Drawn d, int parts) {
        int columns = d.shaft.length;
        double[] cost = new double[columns * parts];
        double[][] a = new double[d.b.length][columns * parts];
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int j = 0; j < columns; j++) {
            for (int k = 0; k < parts; k++) {
                int at = j * parts + k;
                cost[at] = d.power(j, (k + 1.0) / parts) - d.power(j, (double) k / parts);
                for (int i = 0; i < d.b.length; i++) {
                    a[i][at] = d.a[i][j] / parts;
                }
                double[] one = new double[columns * parts];
                one[at] = 1;
                constraints.add(new LinearConstraint(one, Relationship.LEQ, 1));
            }
        }
        for (int i = 0; i < d.b.length; i++) {
            constraints.add(new LinearConstraint(a[i], Relationship.EQ, d.b[i]));
        }
        return new SimplexSolver(1e-9, 10, 1e-12)
                .optimize(
                        new MaxIter(100_000),
                        new LinearObjectiveFunction(cost, 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MINIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
    }

    @Test
    void itsProofHoldsWhenMadeAgain() {
        int[] seen = new int[2];
        Seeded.check(
                10_000,
                random -> {
                    Drawn d = drawn(random, 24);
                    var program = new LeastPower(d.b.length, d.shaft.length);
                    switch (program.solve(d.shaft, d.heat, d.a, d.b)) {
                        case LeastPower.Found found -> {
                            seen[0]++;
                            assertThat(found.gap()).isLessThan(1e-9);
                            proveAgain(d, program, found);
                        }
                        case LeastPower.Impossible _ -> {
                            seen[1]++;
                            assertThat(
                                            BoundedProgram.greatest(
                                                    new double[d.shaft.length],
                                                    d.a,
                                                    d.b,
                                                    ones(d.shaft.length)))
                                    .isInstanceOf(BoundedProgram.Impossible.class);
                        }
                        case LeastPower.Undecided _ -> throw new AssertionError("not proved");
                    }
                });
        assertThat(seen[0]).isGreaterThan(5000);
        assertThat(seen[1]).isGreaterThan(100);
    }

    private static void proveAgain(Drawn d, LeastPower program, LeastPower.Found found) {
        double value = 0;
        double bound = 0;
        double[] x = program.x();
        for (int i = 0; i < d.b.length; i++) {
            double sum = -d.b[i];
            for (int j = 0; j < x.length; j++) {
                sum += d.a[i][j] * x[j];
            }
            assertThat(sum).isCloseTo(0, within(1e-9));
            bound += program.price()[i] * program.unit() * d.b[i];
        }
        for (int j = 0; j < x.length; j++) {
            assertThat(x[j]).isBetween(0.0, 1.0);
            value += d.power(j, x[j]);
            double worth = 0;
            for (int i = 0; i < d.b.length; i++) {
                worth += program.price()[i] * program.unit() * d.a[i][j];
            }
            bound += least(d, j, worth);
        }
        assertThat(found.value()).isCloseTo(value, within(1e-9 * (1 + value)));
        assertThat(value - bound).isBetween(-1e-9 * (1 + value), 1e-9 * (1 + value));
    }

    private static double[] ones(int count) {
        double[] ones = new double[count];
        java.util.Arrays.fill(ones, 1);
        return ones;
    }

    @Test
    void liesBelowTheLibrarysChordsByNoMoreThanTheyCanMiss() {
        int[] seen = new int[1];
        Seeded.check(
                300,
                random -> {
                    Drawn d = drawn(random, 9);
                    int parts = 24;
                    var program = new LeastPower(d.b.length, d.shaft.length);
                    if (program.solve(d.shaft, d.heat, d.a, d.b)
                            instanceof LeastPower.Found found) {
                        seen[0]++;
                        double chords = byLibrary(d, parts);
                        double miss = 0;
                        for (int j = 0; j < d.shaft.length; j++) {
                            // A chord misses x^1.5 most in the first part, by 4/27 of its end.
                            miss += d.shaft[j] * 4 / 27 * Math.pow(1.0 / parts, 1.5);
                            miss += d.heat[j] / 4 / parts / parts;
                        }
                        assertThat(found.value()).isBetween(chords - miss, chords * (1 + 1e-7));
                    } else {
                        assertThatThrownBy(() -> byLibrary(d, parts))
                                .isInstanceOf(MathIllegalStateException.class);
                    }
                });
        assertThat(seen[0]).isGreaterThan(150);
    }

    /** Two alike share alike; x³ᐟ² against 2 x³ᐟ² in sum 1: slopes meet at √x = 2 √y. */
    @Test
    void plainCases() {
        var program = new LeastPower(1, 2);
        program.solve(
                new double[] {1, 2}, new double[2], new double[][] {{1, 1}}, new double[] {1});
        assertThat(program.x()).containsExactly(new double[] {0.8, 0.2}, within(1e-6));
        program.solve(
                new double[] {1, 2}, new double[2], new double[][] {{1, 1}}, new double[] {1.5});
        assertThat(program.x()).containsExactly(new double[] {1, 0.5}, within(1e-6));
    }

    /** A hexagon of alternating spins with rotor 1 dead hovers on the edge: rotor 4 must rest. */
    @Test
    void hoverOnTheEdgeIsProvedToo() {
        double[][] a = new double[4][6];
        double[] shaft = new double[6];
        for (int k = 1; k < 6; k++) {
            double angle = Math.toRadians(60 * k);
            a[0][k] = 0.4;
            a[1][k] = 0.4 * Math.sin(angle);
            a[2][k] = 0.4 * Math.cos(angle);
            a[3][k] = k % 2 == 0 ? 0.1 : -0.1;
            shaft[k] = 1;
        }
        var program = new LeastPower(4, 6);
        var found =
                (LeastPower.Found)
                        program.solve(shaft, new double[6], a, new double[] {1, 0, 0, 0});
        assertThat(program.x())
                .containsExactly(new double[] {0, 0.625, 0.625, 0, 0.625, 0.625}, within(1e-7));
        assertThat(found.value()).isCloseTo(4 * Math.pow(0.625, 1.5), within(1e-7));
    }

    @Test
    void whatCannotBeIsRefused() {
        var program = new LeastPower(1, 1);
        assertThatThrownBy(
                        () ->
                                program.solve(
                                        new double[] {-1},
                                        new double[1],
                                        new double[1][1],
                                        new double[1]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () ->
                                program.solve(
                                        new double[1],
                                        new double[1],
                                        new double[][] {{1}},
                                        new double[1]))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
