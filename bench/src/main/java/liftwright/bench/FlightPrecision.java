package liftwright.bench;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.function.Supplier;
import liftwright.flight.motion.BodyState;

/**
 * Work against precision on a second of {@link FlightSteps}, nobody at the controls: our steps of
 * several lengths and a library's adaptive integrator at several allowed errors, as rows of a
 * table. Error is the greatest of all numbers of the state at the end, against the library at the
 * least error it can allow. Work is processor time of the thread, the least of many runs: it stands
 * beside other work too.
 */
final class FlightPrecision {

    private static final int RUNS = 400;
    private static final double REFERENCE = 1e-13;

    private FlightPrecision() {}

    public static void main(String[] args) {
        FlightSteps flight = new FlightSteps();
        flight.build();
        double[] truth = flight.adaptive(REFERENCE).clone();
        System.out.println("| What | greatest error | processor time |");
        System.out.println("|---|---|---|");
        for (int steps = 50; steps <= 2000; steps *= 2) {
            int count = steps;
            row(
                    String.format(Locale.ROOT, "ours, steps of %.3g ms", 1000.0 / steps),
                    truth,
                    () -> flight.ours(count));
        }
        for (double allowed = 1e-4; allowed > 5e-13; allowed /= 100) {
            double error = allowed;
            row(
                    String.format(Locale.ROOT, "library, allowed error %.0e", allowed),
                    truth,
                    () -> flight.adaptive(error));
        }
    }

    private static void row(String what, double[] truth, Supplier<double[]> flown) {
        double error = 0;
        double[] end = flown.get();
        for (int k = 0; k < BodyState.OWN; k++) {
            error = Math.max(error, Math.abs(end[k] - truth[k]));
        }
        var threads = ManagementFactory.getThreadMXBean();
        long least = Long.MAX_VALUE;
        for (int run = 0; run < RUNS; run++) {
            long from = threads.getCurrentThreadCpuTime();
            var _ = flown.get();
            least = Math.min(least, threads.getCurrentThreadCpuTime() - from);
        }
        System.out.printf(Locale.ROOT, "| %s | %.1e | %.0f µs |%n", what, error, least / 1e3);
    }
}
