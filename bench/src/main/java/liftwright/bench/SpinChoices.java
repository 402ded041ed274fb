package liftwright.bench;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import liftwright.numerics.SignChoice;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The best spins of unlike fans in 12 cases, proven; beside all of them tried one after the other,
 * one change at a time in Gray's order, which 24 fans are too many for in one measurement.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SpinChoices {

    private static final int CASES = 12;

    @Param({"12", "20"})
    public int fans = 12;

    private final double[] other = new double[CASES];
    private double[][] bySpin = new double[0][];
    private boolean[] given = new boolean[0];

    @Setup
    public void build() {
        Random random = new Random(3);
        bySpin = new double[fans][CASES];
        given = new boolean[fans];
        for (int k = 0; k < fans; k++) {
            double torque = random.nextDouble(0.5, 1);
            for (int l = 0; l < CASES; l++) {
                bySpin[k][l] = torque * (1 + l) / CASES * random.nextDouble(0.98, 1.02);
            }
            given[k] = k % 2 == 0;
        }
        if (Math.abs(bounded().worst() - all()) > 1e-9) {
            throw new IllegalStateException("the two minima differ");
        }
    }

    /** Ours, by branch and bound. */
    @Benchmark
    public SignChoice.Found bounded() {
        return SignChoice.of(other, bySpin, given, 0, Long.MAX_VALUE);
    }

    /** All there are; only their least worst. */
    @Benchmark
    public double all() {
        double[] sum = other.clone();
        for (double[] column : bySpin) {
            for (int l = 0; l < CASES; l++) {
                sum[l] -= column[l];
            }
        }
        double least = worst(sum);
        int plus = 0;
        for (int step = 1; step < 1 << fans; step++) {
            int k = Integer.numberOfTrailingZeros(step);
            plus ^= 1 << k;
            double way = (plus >> k & 1) == 1 ? 2 : -2;
            for (int l = 0; l < CASES; l++) {
                sum[l] += way * bySpin[k][l];
            }
            least = Math.min(least, worst(sum));
        }
        return least;
    }

    private static double worst(double[] sum) {
        double worst = 0;
        for (double each : sum) {
            worst = Math.max(worst, Math.abs(each));
        }
        return worst;
    }
}
