package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;

/** Against a library's solver, programme after programme from the basis of the one before. */
class WarmProgramTest {

    /** A programme whose rows stay while all else changes. */
    private static final class Drawn {
        final double[] c;
        final double[][] a;
        final double[] b;
        final double[] lower;
        final double[] upper;

        Drawn(RandomGenerator random) {
            int rows = random.nextInt(1, 5);
            int columns = random.nextInt(rows + 1, 25);
            a = new double[rows][columns];
            boolean whole = random.nextInt(3) == 0;
            for (double[] row : a) {
                for (int j = 0; j < columns; j++) {
                    double number = random.nextDouble(-1, 1);
                    row[j] = whole ? Math.rint(2 * number) : number;
                }
            }
            c = new double[columns];
            lower = new double[columns];
            upper = new double[columns];
            b = new double[rows];
            change(random);
        }

        void change(RandomGenerator random) {
            boolean reachable = random.nextInt(4) > 0;
            for (int j = 0; j < c.length; j++) {
                if (random.nextInt(3) == 0) {
                    c[j] = random.nextInt(5) == 0 ? 0 : random.nextDouble(-1, 1);
                }
                switch (random.nextInt(6)) {
                    case 0 -> upper[j] = lower[j];
                    case 1 -> {
                        lower[j] = 0;
                        upper[j] = random.nextDouble(0.2, 2);
                    }
                    case 2 -> {
                        lower[j] = random.nextDouble(0, 0.5);
                        upper[j] = lower[j] + random.nextDouble(0.2, 2);
                    }
                    default -> {}
                }
            }
            for (int i = 0; i < b.length; i++) {
                b[i] = reachable ? 0 : random.nextDouble(-c.length / 3.0, c.length / 3.0);
            }
            for (int j = 0; reachable && j < c.length; j++) {
                double x = lower[j] + random.nextDouble() * (upper[j] - lower[j]);
                for (int i = 0; i < b.length; i++) {
                    b[i] += a[i][j] * x;
                }
            }
        }

        WarmProgram programme() {
            WarmProgram programme = new WarmProgram(b.length, c.length);
            for (int i = 0; i < b.length; i++) {
                for (int j = 0; j < c.length; j++) {
                    programme.coefficient(i, j, a[i][j]);
                }
            }
            return programme;
        }

        void set(WarmProgram programme) {
            for (int j = 0; j < c.length; j++) {
                programme.worth(j, c[j]);
                programme.bounds(j, lower[j], upper[j]);
            }
            for (int i = 0; i < b.length; i++) {
                programme.right(i, b[i]);
            }
        }

        /** Weak duality, typed anew: a point within rows and bounds, and prices that bound it. */
        void check(double[] x, double[] price) {
            double value = 0;
            double bound = 0;
            for (int i = 0; i < b.length; i++) {
                double sum = 0;
                for (int j = 0; j < c.length; j++) {
                    sum += a[i][j] * x[j];
                }
                assertThat(sum).isCloseTo(b[i], within(1e-8));
                bound += price[i] * b[i];
            }
            for (int j = 0; j < c.length; j++) {
                assertThat(x[j]).isBetween(lower[j] - 1e-9, upper[j] + 1e-9);
                double worth = c[j];
                for (int i = 0; i < b.length; i++) {
                    worth -= price[i] * a[i][j];
                }
                value += c[j] * x[j];
                bound += Math.max(worth * lower[j], worth * upper[j]);
            }
            assertThat(bound).isCloseTo(value, within(1e-9 * (1 + Math.abs(value))));
        }

        Optional<Double> byLibrary() {
            var model = new ExpressionsBasedModel();
            Expression[] rows = new Expression[b.length];
            for (int i = 0; i < b.length; i++) {
                rows[i] = model.addExpression("row" + i).level(b[i]);
            }
            for (int j = 0; j < c.length; j++) {
                var x = model.addVariable("x" + j).lower(lower[j]).upper(upper[j]).weight(c[j]);
                for (int i = 0; i < b.length; i++) {
                    rows[i].set(x, a[i][j]);
                }
            }
            Optimisation.Result result = model.maximise();
            return result.getState().isFeasible()
                    ? Optional.of(result.getValue())
                    : Optional.empty();
        }
    }

    @Test
    void findsWhatTheLibraryFindsAndProvesIt() {
        int[] seen = new int[3];
        boolean deep = Seeded.deep();
        Seeded.check(
                deep ? 1000 : 200,
                random -> {
                    Drawn drawn = new Drawn(random);
                    WarmProgram programme = drawn.programme();
                    WarmProgram.Start start = programme.newStart();
                    for (int change = 0; change < 10; change++) {
                        drawn.set(programme);
                        Optional<Double> referee = drawn.byLibrary();
                        switch (programme.solve(start)) {
                            case FOUND -> {
                                seen[0]++;
                                assertThat(programme.gap()).isLessThan(1e-9);
                                assertThat(programme.miss()).isLessThan(1e-9);
                                drawn.check(programme.x(), programme.price());
                                // The library overlooks a point now and then.
                                seen[2] += referee.isPresent() ? 0 : 1;
                                referee.ifPresent(
                                        best ->
                                                assertThat(programme.value())
                                                        .isCloseTo(
                                                                best,
                                                                within(
                                                                        1e-7
                                                                                * (1
                                                                                        + Math.abs(
                                                                                                best)))));
                            }
                            case IMPOSSIBLE -> {
                                seen[1]++;
                                assertThat(programme.shortfall()).isPositive();
                                assertThat(referee).isEmpty();
                            }
                            case UNDECIDED -> throw new AssertionError("steps ran out");
                        }
                        drawn.change(random);
                    }
                });
        assertThat(seen[0]).isGreaterThan(1000);
        assertThat(seen[1]).isGreaterThan(100);
        assertThat(seen[2]).isLessThanOrEqualTo(seen[0] / 1000);
    }

    /** What it found before decides nothing: warm and cold come to the same value. */
    @Test
    void theStartDecidesNothing() {
        int[] steps = new int[2];
        Seeded.check(
                500,
                random -> {
                    Drawn drawn = new Drawn(random);
                    WarmProgram programme = drawn.programme();
                    WarmProgram.Start warm = programme.newStart();
                    for (int change = 0; change < 6; change++) {
                        drawn.set(programme);
                        WarmProgram.Outcome one = programme.solve(warm);
                        double value = programme.value();
                        steps[0] += programme.steps();
                        WarmProgram.Outcome other = programme.solve(programme.newStart());
                        steps[1] += programme.steps();
                        assertThat(one).isEqualTo(other);
                        if (one == WarmProgram.Outcome.FOUND) {
                            assertThat(programme.value())
                                    .isCloseTo(value, within(1e-10 * (1 + Math.abs(value))));
                        }
                        drawn.change(random);
                    }
                });
        assertThat(steps[0]).isLessThan(steps[1]);
    }

    /** max x + 2 y, x + y = 3, x ≤ 2.5, y ≤ 2: x 1, y 2; with y ≤ 0.4 no point. */
    @Test
    void aPlainCase() {
        WarmProgram programme = new WarmProgram(1, 2);
        programme.coefficient(0, 0, 1);
        programme.coefficient(0, 1, 1);
        programme.right(0, 3);
        programme.worth(0, 1);
        programme.worth(1, 2);
        programme.bounds(0, 0, 2.5);
        programme.bounds(1, 0, 2);
        WarmProgram.Start start = programme.newStart();
        assertThat(programme.solve(start)).isEqualTo(WarmProgram.Outcome.FOUND);
        assertThat(programme.x()[0]).isCloseTo(1, within(1e-12));
        assertThat(programme.x()[1]).isCloseTo(2, within(1e-12));
        assertThat(programme.price()[0]).isCloseTo(1, within(1e-12));
        programme.bounds(1, 0, 0.4);
        assertThat(programme.solve(start)).isEqualTo(WarmProgram.Outcome.IMPOSSIBLE);
        // 0.1 is missing of 3 + 2.9.
        assertThat(programme.shortfall()).isCloseTo(0.1 / 5.9, within(1e-12));
    }

    /**
     * The programme on which the simplex method went in circles for ever (Beale, Naval Research
     * Logistics Quarterly 2, 1955, 269–275, from memory): 1/20, with slacks of no worth.
     */
    @Test
    void nothingGoesInCircles() {
        double[][] a = {
            {0.25, -60, -1.0 / 25, 9, 1, 0, 0},
            {0.5, -90, -1.0 / 50, 3, 0, 1, 0},
            {0, 0, 1, 0, 0, 0, 1}
        };
        double[] c = {0.75, -150, 1.0 / 50, -6, 0, 0, 0};
        WarmProgram programme = new WarmProgram(3, 7);
        for (int j = 0; j < 7; j++) {
            for (int i = 0; i < 3; i++) {
                programme.coefficient(i, j, a[i][j]);
            }
            programme.worth(j, c[j]);
            programme.bounds(j, 0, 1000);
        }
        programme.right(2, 1);
        assertThat(programme.solve(programme.newStart())).isEqualTo(WarmProgram.Outcome.FOUND);
        assertThat(programme.value()).isCloseTo(0.05, within(1e-12));
        assertThat(programme.gap()).isLessThan(1e-12);
    }

    /**
     * The squashed cube whose corners all lie on one path of the simplex method (Klee and Minty,
     * 1972, in the form of Chvátal, Linear Programming, 1983): 100^(n−1).
     */
    @Test
    void aSquashedCube() {
        int n = 4;
        WarmProgram programme = new WarmProgram(n, 2 * n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                programme.coefficient(i, j, 2 * Math.pow(10, i - j));
            }
            programme.coefficient(i, i, 1);
            programme.coefficient(i, n + i, 1);
            programme.right(i, Math.pow(100, i));
            programme.worth(i, Math.pow(10, n - 1 - i));
            programme.bounds(i, 0, 1e7);
            programme.bounds(n + i, 0, 1e7);
        }
        assertThat(programme.solve(programme.newStart())).isEqualTo(WarmProgram.Outcome.FOUND);
        assertThat(programme.value()).isCloseTo(1e6, within(1e-6));
        assertThat(programme.gap()).isLessThan(1e-9);
    }

    /** All columns at their bounds are the only point: it is found, and proved. */
    @Test
    void onePointAloneIsFound() {
        Seeded.check(
                500,
                random -> {
                    Drawn drawn = new Drawn(random);
                    for (int i = 0; i < drawn.b.length; i++) {
                        drawn.b[i] = 0;
                        for (int j = 0; j < drawn.c.length; j++) {
                            drawn.b[i] += drawn.a[i][j] * drawn.upper[j];
                        }
                    }
                    // The first row alone lets no column be anywhere else.
                    for (int j = 0; j < drawn.c.length; j++) {
                        drawn.b[0] += (1 - drawn.a[0][j]) * drawn.upper[j];
                        drawn.a[0][j] = 1;
                    }
                    WarmProgram programme = drawn.programme();
                    drawn.set(programme);
                    assertThat(programme.solve(programme.newStart()))
                            .isEqualTo(WarmProgram.Outcome.FOUND);
                    double all = 0;
                    for (int j = 0; j < drawn.c.length; j++) {
                        all += drawn.c[j] * drawn.upper[j];
                    }
                    assertThat(programme.value()).isCloseTo(all, within(1e-9));
                    assertThat(programme.gap()).isLessThan(1e-9);
                });
    }

    @Test
    void boundsWithoutEndOrOutOfOrderAreRefused() {
        WarmProgram programme = new WarmProgram(1, 1);
        assertThatThrownBy(() -> programme.bounds(0, 0, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> programme.bounds(0, 1, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void allocatesNothing() {
        Drawn drawn = new Drawn(new java.util.SplittableRandom(5));
        WarmProgram programme = drawn.programme();
        WarmProgram.Start start = programme.newStart();
        var threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long bytes = Long.MAX_VALUE;
        for (int round = 0; round < 20; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int k = 0; k < 200; k++) {
                programme.bounds(0, 0, 0.2 + k % 7 * 0.3);
                drawn.set(programme);
                programme.solve(start);
            }
            bytes = Math.min(bytes, threads.getCurrentThreadAllocatedBytes() - before);
        }
        assertThat(bytes).isLessThan(200);
    }
}
