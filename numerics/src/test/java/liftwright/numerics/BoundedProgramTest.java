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

/** Against a library's two-phase simplex, and by its own proof. */
class BoundedProgramTest {

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Drawn(double[] c, double[][] a, double[] b, double[] upper) {}

    private static double[] values(RandomGenerator random, int count, double least, double most) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = random.nextDouble(least, most);
        }
        return values;
    }

    /** Programmes as allocation makes them; some with no point, some degenerate. */
    private static Drawn drawn(RandomGenerator random) {
        int rows = random.nextInt(1, 5);
        int columns = random.nextInt(rows + 1, 25);
        double[][] a = new double[rows][];
        for (int i = 0; i < rows; i++) {
            a[i] = values(random, columns, -1, 1);
        }
        double[] upper = values(random, columns, 0.2, 2);
        double[] b = new double[rows];
        double[] inside = values(random, columns, 0, 1);
        boolean reachable = random.nextInt(4) > 0;
        for (int i = 0; i < rows; i++) {
            if (random.nextInt(4) == 0) {
                for (int j = 0; j < columns; j++) {
                    a[i][j] = Math.rint(2 * a[i][j]);
                }
            }
            if (reachable) {
                for (int j = 0; j < columns; j++) {
                    b[i] += a[i][j] * inside[j] * upper[j];
                }
            } else {
                b[i] = random.nextDouble(-columns / 3.0, columns / 3.0);
            }
        }
        return new Drawn(values(random, columns, -1, 1), a, b, upper);
    }

    private static double byLibrary(Drawn d) {
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int i = 0; i < d.b.length; i++) {
            constraints.add(new LinearConstraint(d.a[i], Relationship.EQ, d.b[i]));
        }
        for (int j = 0; j < d.upper.length; j++) {
            double[] one = new double[d.upper.length];
            one[j] = 1;
            constraints.add(new LinearConstraint(one, Relationship.LEQ, d.upper[j]));
        }
        return new SimplexSolver(1e-9, 10, 1e-12)
                .optimize(
                        new MaxIter(100_000),
                        new LinearObjectiveFunction(d.c, 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MAXIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
    }

    @Test
    void findsWhatTheLibraryFindsAndProvesIt() {
        int[] seen = new int[2];
        Seeded.check(
                10_000,
                random -> {
                    Drawn d = drawn(random);
                    switch (BoundedProgram.greatest(d.c, d.a, d.b, d.upper)) {
                        case BoundedProgram.Found found -> {
                            seen[0]++;
                            assertThat(found.gap()).isLessThan(1e-9);
                            assertThat(found.miss()).isLessThan(1e-10);
                            for (int j = 0; j < d.upper.length; j++) {
                                assertThat(found.x()[j]).isBetween(-1e-9, d.upper[j] + 1e-9);
                            }
                            assertThat(found.value())
                                    .isCloseTo(
                                            byLibrary(d),
                                            within(1e-7 * (1 + Math.abs(found.value()))));
                        }
                        case BoundedProgram.Impossible _ -> {
                            seen[1]++;
                            assertThatThrownBy(() -> byLibrary(d))
                                    .isInstanceOf(MathIllegalStateException.class);
                        }
                        case BoundedProgram.Undecided _ ->
                                throw new AssertionError("steps ran out");
                    }
                });
        assertThat(seen[0]).isGreaterThan(1000);
        assertThat(seen[1]).isGreaterThan(50);
    }

    /** max x + 2 y, x + y = 3, x ≤ 2.5, y ≤ 2: x 1, y 2. */
    @Test
    void aPlainCase() {
        var found =
                (BoundedProgram.Found)
                        BoundedProgram.greatest(
                                new double[] {1, 2},
                                new double[][] {{1, 1}},
                                new double[] {3},
                                new double[] {2.5, 2});
        assertThat(found.x()).containsExactly(new double[] {1, 2}, within(1e-12));
        assertThat(found.price()).containsExactly(new double[] {1}, within(1e-12));
    }

    @Test
    void aBoundWithoutEndIsRefused() {
        assertThatThrownBy(
                        () ->
                                BoundedProgram.greatest(
                                        new double[] {1},
                                        new double[][] {{1}},
                                        new double[] {1},
                                        new double[] {Double.POSITIVE_INFINITY}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
