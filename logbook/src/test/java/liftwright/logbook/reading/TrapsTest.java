package liftwright.logbook.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.plant.recording.Signal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Telemetry that repeats itself and neighbouring rows out of step: found, and not seen elsewhere.
 */
class TrapsTest {

    private static final int LOGS = 300;

    @TempDir private Path folder = Path.of("");

    /** A current in drawn steps with noise, shown to so many digits. */
    private static double[] current(RandomGenerator random, int rows, double noise, double digit) {
        var values = new double[rows];
        double level = random.nextDouble(0, 100);
        double now = level;
        for (int k = 0; k < rows; k++) {
            if (random.nextInt(80) == 0) {
                level = random.nextDouble(0, 100);
            }
            now += 0.3 * (level - now);
            values[k] = digit * Math.rint((now + noise * random.nextGaussian()) / digit);
        }
        return values;
    }

    /** A temperature that creeps and is shown in steps. */
    private static double[] creeping(RandomGenerator random, int rows) {
        var values = new double[rows];
        double digit = random.nextBoolean() ? 0.1 : 1;
        double noise = random.nextDouble(0, 0.3) * digit;
        double rate = random.nextDouble(0.002, 0.2) * digit;
        for (int k = 0; k < rows; k++) {
            double value = 300 + rate * k + noise * random.nextGaussian();
            values[k] = digit * Math.rint(value / digit);
        }
        return values;
    }

    private static double[] repeated(double[] values, int times, RandomGenerator random) {
        var all = new double[values.length];
        int from = 0;
        int left = 0;
        for (int k = 0; k < all.length; k++) {
            if (left-- == 0) {
                from = k;
                left = times - 1 + (times > 3 ? random.nextInt(-1, 2) : 0);
            }
            all[k] = values[from];
        }
        return all;
    }

    @Test
    void findsRepeatedTelemetryAndNoOther() {
        int found = 0;
        int alarms = 0;
        var random = new SplittableRandom(11);
        for (int k = 0; k < LOGS; k++) {
            int rows = random.nextInt(600, 4000);
            double digit = List.of(1e-4, 0.01, 0.1).get(random.nextInt(3));
            double[] live = current(random, rows, random.nextDouble(0.3, 3), digit);
            int times = random.nextInt(2, 20);
            int told = Repeats.rows(Signal.CURRENT, List.of(repeated(live, times, random)));
            found += Math.abs(told - times) <= Math.max(0, times / 5) ? 1 : 0;

            double[] other = k % 2 == 0 ? live : creeping(random, rows);
            alarms += Repeats.rows(Signal.TEMPERATURE, List.of(other)) > 1 ? 1 : 0;
        }
        assertThat(found).as("found").isGreaterThan(LOGS * 9 / 10);
        assertThat(alarms).as("false alarms").isLessThanOrEqualTo(LOGS / 20);
    }

    private static double[] voltage(
            RandomGenerator random, double[] current, int late, double noise) {
        var values = new double[current.length];
        double ohm = random.nextDouble(0.02, 0.1);
        for (int k = 0; k < current.length; k++) {
            double amp = current[Math.clamp(k - late, 0, current.length - 1)];
            values[k] = 50 - ohm * amp - 1e-3 * k + noise * ohm * random.nextGaussian();
        }
        return values;
    }

    @Test
    void findsRowsOutOfStepAndNoOther() {
        int found = 0;
        int wrong = 0;
        int alarms = 0;
        var random = new SplittableRandom(12);
        for (int k = 0; k < LOGS; k++) {
            int rows = random.nextInt(600, 4000);
            double[] current = current(random, rows, random.nextDouble(0, 2), 0.01);
            double noise = random.nextDouble(0, 2);
            int late = random.nextInt(1, 6) * (random.nextBoolean() ? 1 : -1);
            OptionalInt told =
                    OutOfStep.rows(
                            List.of(current), List.of(voltage(random, current, late, noise)));
            found += told.isPresent() && told.getAsInt() == late ? 1 : 0;
            wrong += told.isPresent() && told.getAsInt() != late ? 1 : 0;

            boolean apart = k % 2 == 0;
            double[] own = apart ? current(random, rows, 1, 0.01) : current;
            double[] inStep = voltage(random, own, 0, random.nextDouble(0, 6));
            alarms += OutOfStep.rows(List.of(current), List.of(inStep)).isPresent() ? 1 : 0;
        }
        assertThat(found).as("found").isGreaterThan(LOGS * 8 / 10);
        assertThat(wrong).as("found with another lag").isLessThanOrEqualTo(LOGS / 20);
        assertThat(alarms).as("false alarms").isLessThanOrEqualTo(LOGS / 20);
    }

    @Test
    void repetitionsAreLeftOutAndRowsOutOfStepAreTold() throws IOException {
        var random = new SplittableRandom(13);
        double[] current = current(random, 2000, 1, 0.01);
        double[] voltage = voltage(random, current, 2, 0.2);
        double[] held = repeated(current(random, 2000, 1, 0.01), 10, random);
        var text = new StringBuilder("time [s],current p.1 [A],voltage p.1 [V],current p.2 [A]\n");
        for (int k = 0; k < current.length; k++) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "%.2f,%.2f,%.4f,%.2f%n",
                            k * 0.01,
                            current[k],
                            voltage[k],
                            held[k]));
        }
        try (var logs = new Logs(folder)) {
            Imported read = logs.whole(logs.read(logs.file(text.toString())));
            Clocked table = read.tables().getFirst();

            assertThat(read.notes())
                    .extracting(Note::kind)
                    .containsOnlyOnce(Note.Kind.REPEATED, Note.Kind.OUT_OF_STEP);
            assertThat(logs.samples(table, "current p.1").size()).isEqualTo(2000);
            assertThat(logs.samples(table, "voltage p.1").size()).isEqualTo(2000);
            var thinned = logs.samples(table, "current p.2");
            assertThat(thinned.size()).isBetween(170, 240);
            for (int k = 0; k < thinned.size(); k++) {
                int row = (int) Math.round(thinned.timeS(k) / 0.01);
                assertThat(thinned.si(k))
                        .isEqualTo(
                                Double.parseDouble(String.format(Locale.ROOT, "%.2f", held[row])));
            }
        }
    }
}
