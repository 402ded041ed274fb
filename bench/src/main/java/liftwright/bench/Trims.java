package liftwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import liftwright.numerics.BoundedProgram;
import liftwright.numerics.LeastPower;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Trims of 24 unlike fans: most lift without roll, pitch and yaw, beside a library's simplex from
 * cold, and the trim of least power that holds the weight.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class Trims {

    private static final int FANS = 24;

    private final double[][] rows = new double[4][FANS];
    private final double[] shaft = new double[FANS];
    private final double[] heat = new double[FANS];
    private final double[] one = new double[FANS];
    private final double[] weight = {1, 0, 0, 0};
    private final double[][] zeroRows = {rows[1], rows[2], rows[3]};
    private final double[] zero = new double[3];
    private final LeastPower leastPower = new LeastPower(4, FANS);

    @Setup
    public void build() {
        Random random = new Random(7);
        for (int k = 0; k < FANS; k++) {
            double thrust = random.nextDouble(0.05, 0.09);
            rows[0][k] = thrust;
            rows[1][k] = thrust * random.nextDouble(-1, 1);
            rows[2][k] = thrust * random.nextDouble(-1, 1);
            rows[3][k] = thrust * random.nextDouble(-0.2, 0.2);
            shaft[k] = thrust * random.nextDouble(40, 60);
            heat[k] = shaft[k] / 10;
            one[k] = 1;
        }
        double ours = mostLift().value();
        if (Math.abs(ours - library()) > 1e-7) {
            throw new IllegalStateException("the two optima differ");
        }
        if (!(leastPower() instanceof LeastPower.Found)) {
            throw new IllegalStateException("the fans do not hold the weight");
        }
    }

    /** Ours. */
    @Benchmark
    public BoundedProgram.Found mostLift() {
        return (BoundedProgram.Found) BoundedProgram.greatest(rows[0], zeroRows, zero, one);
    }

    /** Hipparchus' two-phase simplex. */
    @Benchmark
    public double library() {
        List<LinearConstraint> constraints = new ArrayList<>();
        for (double[] row : zeroRows) {
            constraints.add(new LinearConstraint(row, Relationship.EQ, 0));
        }
        for (int k = 0; k < FANS; k++) {
            double[] own = new double[FANS];
            own[k] = 1;
            constraints.add(new LinearConstraint(own, Relationship.LEQ, 1));
        }
        return new SimplexSolver()
                .optimize(
                        new MaxIter(10_000),
                        new LinearObjectiveFunction(rows[0], 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MAXIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
    }

    /** Ours, with its proof. */
    @Benchmark
    public LeastPower.Result leastPower() {
        return leastPower.solve(shaft, heat, rows, weight);
    }
}
