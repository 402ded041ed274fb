package liftwright.bench;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A piece of plain arithmetic that no change of ours makes faster: 1,000 exponentials and a
 * dependent chain of 1,000 divisions. Kernels are reported as multiples of it, so that two machines
 * can be compared.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class Yardstick {

    double[] values = new double[1000];

    @Setup
    public void fill() {
        var random = new SplittableRandom(7);
        for (int i = 0; i < values.length; i++) {
            values[i] = random.nextDouble(0.5, 2.0);
        }
    }

    @Benchmark
    public double yardstick() {
        double sum = 0;
        for (double value : values) {
            sum = Math.exp(-value) + sum / value;
        }
        return sum;
    }
}
