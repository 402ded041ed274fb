package liftwright.bench;

import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import liftwright.numerics.WarmProgram;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Most lift without roll, pitch and yaw of 24 unlike fans, with each of them lost in turn: 24
 * programmes a run. Ours from the basis of the whole rig, beside ojAlgo built anew for each and
 * ojAlgo solved again after its bounds were changed.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LossProgrammes {

    private static final int FANS = 24;
    private static final double[] ZERO = new double[3];

    private final double[][] rows = new double[4][FANS];
    private final WarmProgram programme = new WarmProgram(3, FANS);
    private final WarmProgram.Start whole = programme.newStart();
    private LinearSolver kept = builder().build();

    @Setup
    public void build() {
        Random random = new Random(7);
        for (int k = 0; k < FANS; k++) {
            double thrust = random.nextDouble(0.05, 0.09);
            rows[0][k] = thrust;
            rows[1][k] = thrust * random.nextDouble(-1, 1);
            rows[2][k] = thrust * random.nextDouble(-1, 1);
            rows[3][k] = thrust * random.nextDouble(-0.2, 0.2);
            for (int i = 0; i < 3; i++) {
                programme.coefficient(i, k, rows[i + 1][k]);
            }
            programme.worth(k, rows[0][k]);
            programme.bounds(k, 0, 1);
        }
        if (programme.solve(whole) != WarmProgram.Outcome.FOUND) {
            throw new IllegalStateException("no optimum");
        }
        kept = builder().build();
        kept.solve();
        double ours = ours();
        if (Math.abs(ours - ojAlgoCold()) > 1e-6 || Math.abs(ours - ojAlgoWarm()) > 1e-6) {
            throw new IllegalStateException(
                    "the optima differ: " + ours + " " + ojAlgoCold() + " " + ojAlgoWarm());
        }
    }

    private LinearSolver.Builder builder() {
        double[] least = new double[FANS];
        for (int k = 0; k < FANS; k++) {
            least[k] = -rows[0][k];
        }
        LinearSolver.Builder builder = LinearSolver.newBuilder(least);
        for (int i = 0; i < 3; i++) {
            builder.equality(ZERO[i], rows[i + 1]);
        }
        return builder.lower(0).upper(1);
    }

    /** Ours, each optimum with its proof. */
    @Benchmark
    public double ours() {
        double sum = 0;
        for (int lost = 0; lost < FANS; lost++) {
            programme.bounds(lost, 0, 0);
            if (programme.solveFrom(whole) != WarmProgram.Outcome.FOUND || programme.gap() > 1e-9) {
                throw new IllegalStateException("no proof");
            }
            sum += programme.value();
            programme.bounds(lost, 0, 1);
        }
        return sum;
    }

    /** The library from the start, for each loss. */
    @Benchmark
    public double ojAlgoCold() {
        double sum = 0;
        for (int lost = 0; lost < FANS; lost++) {
            double[] upper = new double[FANS];
            Arrays.fill(upper, 1);
            upper[lost] = 0;
            sum -= builder().upper(upper).build().solve().getValue();
        }
        return sum;
    }

    /** The library's solver kept, its bounds changed. */
    @Benchmark
    public double ojAlgoWarm() {
        double sum = 0;
        for (int lost = 0; lost < FANS; lost++) {
            kept.updateRange(lost, 0, 0);
            sum -= kept.solve().getValue();
            kept.updateRange(lost, 0, 1);
        }
        return sum;
    }
}
