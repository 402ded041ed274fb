package liftwright.logbook.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.plant.recording.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pairs of channels whose shift is known, since the test made it. */
class AlignmentTest {

    private static final int PAIRS = 200;

    @TempDir private Path folder = Path.of("");

    /** A throttle in steps of drawn lengths and heights, from 0 to {@code endS}. */
    private static final class Steps {

        private final double[] fromS;
        private final double[] level;

        private Steps(double[] fromS, double[] level) {
            this.fromS = fromS;
            this.level = level;
        }

        static Steps draw(RandomGenerator random, double endS) {
            int n = random.nextInt(6, 25);
            var from = new double[n];
            var level = new double[n];
            for (int k = 1; k < n; k++) {
                from[k] = from[k - 1] + endS / n * random.nextDouble(0.4, 1.6);
                level[k] = random.nextDouble();
            }
            return new Steps(from, level);
        }

        /** Behind a lag of first order. */
        double at(double timeS, double lagS) {
            double value = 0;
            for (int k = 0; k < fromS.length && fromS[k] <= timeS; k++) {
                double before = k == 0 ? 0 : level[k - 1];
                double share = lagS > 0 ? -Math.expm1(-(timeS - fromS[k]) / lagS) : 1;
                value += (level[k] - before) * share;
            }
            return value;
        }
    }

    private interface Shape {
        double at(double timeS);
    }

    private static Samples record(
            Shape shape, double fromS, double toS, double stepS, double noise, RandomGenerator r) {
        int n = (int) ((toS - fromS) / stepS);
        var times = new double[n];
        var values = new double[n];
        for (int k = 0; k < n; k++) {
            times[k] = fromS + (k + 0.8 * r.nextDouble() - 0.4) * stepS;
            values[k] = shape.at(times[k]) + noise * r.nextGaussian();
        }
        return new Samples(times, values);
    }

    private static Samples moved(Samples samples, double byS) {
        var times = new double[samples.size()];
        var values = new double[samples.size()];
        for (int k = 0; k < times.length; k++) {
            times[k] = samples.timeS(k) + byS;
            values[k] = samples.si(k);
        }
        return new Samples(times, values);
    }

    private static final class Tally {
        int claimed;
        int right;
    }

    @Test
    void findsTheShiftOfWhatBothRecorded() {
        var tally = new Tally();
        var random = new SplittableRandom(41);
        for (int k = 0; k < PAIRS; k++) {
            double endS = random.nextDouble(30, 240);
            var steps = Steps.draw(random, endS);
            double noise = random.nextDouble(0, 0.1);
            Samples first = record(t -> steps.at(t, 0.1), 0, endS, 0.02, noise, random);
            double begin = random.nextDouble(0, 0.3) * endS;
            double end = random.nextDouble(0.7, 1) * endS;
            Samples second =
                    record(
                            t -> 3 * steps.at(t, 0.1) + 1,
                            begin,
                            end,
                            random.nextDouble(0.03, 0.2),
                            3 * noise,
                            random);
            double shift = random.nextDouble(-500, 500);
            judge(Correlated.find(first, moved(second, -shift), 1, 0), shift, tally);
        }
        assertThat(tally.claimed).as("claimed").isGreaterThan(PAIRS * 8 / 10);
        assertThat((double) tally.right / tally.claimed).as("right").isGreaterThan(0.95);
    }

    @Test
    void findsTheShiftOfWhatMovesTogether() {
        var tally = new Tally();
        var random = new SplittableRandom(42);
        for (int k = 0; k < PAIRS; k++) {
            double endS = random.nextDouble(30, 240);
            var steps = Steps.draw(random, endS);
            double noise = random.nextDouble(0, 0.06);
            double lag = random.nextDouble(0.05, 0.25);
            double sag = random.nextDouble(0, 3);
            Samples throttle = record(t -> steps.at(t, 0), 0, endS, 0.05, 0, random);
            Samples voltage =
                    record(
                            t -> 50 - sag * t / endS - 4 * Math.pow(steps.at(t, lag), 2),
                            0,
                            endS,
                            0.1,
                            4 * noise,
                            random);
            double shift = random.nextDouble(-100, 100);
            judge(
                    Correlated.find(throttle, moved(voltage, -shift), -1, Alignment.DELAY_S),
                    shift,
                    tally);
        }
        assertThat(tally.claimed).as("claimed").isGreaterThan(PAIRS * 8 / 10);
        assertThat((double) tally.right / tally.claimed).as("right").isGreaterThan(0.95);
    }

    /** Tests of two days, a single step each, the same step again and again, nothing but noise. */
    @Test
    void claimsNothingWhereNothingIsShared() {
        int claimed = 0;
        var random = new SplittableRandom(43);
        for (int k = 0; k < PAIRS; k++) {
            double endS = random.nextDouble(30, 240);
            Shape one = shape(k % 4, random, endS);
            Shape other = shape(k % 4, random, endS);
            double noise = random.nextDouble(0.01, 0.1);
            Samples first = record(one, 0, endS, 0.05, noise, random);
            Samples second = record(other, 0, endS, 0.05, noise, random);
            var peak = Correlated.find(first, second, 1, 0);
            if (peak.isPresent() && peak.get().confidence() >= Alignment.CONFIDENT) {
                claimed++;
            }
        }
        assertThat(claimed).as("confident of nothing").isLessThanOrEqualTo(PAIRS / 20);
    }

    private static Shape shape(int kind, RandomGenerator random, double endS) {
        double at = random.nextDouble(0.2, 0.8) * endS;
        double period = random.nextDouble(3, 8);
        var steps = Steps.draw(random, endS);
        return switch (kind) {
            case 0 -> t -> steps.at(t, 0.1);
            case 1 -> t -> t < at ? 0 : 1;
            case 2 -> t -> Math.floorMod((long) (t / period), 2L);
            default -> t -> 0;
        };
    }

    private static void judge(Optional<Correlated.Peak> peak, double shift, Tally tally) {
        if (peak.isPresent() && peak.get().confidence() >= Alignment.CONFIDENT) {
            tally.claimed++;
            if (Math.abs(peak.get().shiftS() - shift) <= peak.get().toleranceS()) {
                tally.right++;
            }
        }
    }

    @Test
    void alignsTheFilesOfOneTest() throws IOException {
        var random = new SplittableRandom(5);
        var steps = Steps.draw(random, 90);
        var throttle = new StringBuilder("time [s],throttle [%],current p.1 [A]\n");
        var scale = new StringBuilder("time [s];scale [kg]\n");
        var warm = new StringBuilder("time [s],temperature p.1 [°C]\n");
        for (int k = 0; k < 1800; k++) {
            double t = k * 0.05;
            throttle.append(line(',', t, 100 * steps.at(t, 0), 80 * steps.at(t, 0.1)));
        }
        for (int k = 0; k < 900; k++) {
            double t = k * 0.1;
            double kg = 90 - 60 * steps.at(t, 0.15) + 0.5 * random.nextGaussian();
            scale.append(line(';', t + 1234.5, kg));
            warm.append(line(',', t, 20 + 0.1 * t));
        }
        try (var logs = new Logs(folder)) {
            Imported read =
                    logs.whole(
                            logs.read(
                                    logs.file(throttle.toString()),
                                    logs.file(scale.toString()),
                                    logs.file(warm.toString())));

            assertThat(read.tables().get(0).shift()).isEqualTo(new Shift.Own());
            assertThat(read.tables().get(1).shift())
                    .isInstanceOfSatisfying(
                            Shift.Found.class,
                            found -> {
                                assertThat(found.confidence()).isGreaterThan(0.95);
                                assertThat(Math.abs(found.byS() + 1234.5))
                                        .isLessThanOrEqualTo(found.toleranceS());
                            });
            assertThat(read.tables().get(2).shift()).isInstanceOf(Shift.Unknown.class);
            assertThat(read.notes())
                    .extracting(Note::kind)
                    .contains(Note.Kind.ALIGNED, Note.Kind.NOT_ALIGNED);
        }
    }

    private static String line(char separator, double... values) {
        var text = new StringBuilder();
        for (double value : values) {
            text.append(text.isEmpty() ? "" : separator);
            text.append(String.format(Locale.ROOT, "%.4f", value));
        }
        return text.append('\n').toString();
    }
}
