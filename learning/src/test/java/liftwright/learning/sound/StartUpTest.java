package liftwright.learning.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import liftwright.plant.recording.Samples;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * Sound of fans of which the throttle is known, beside a log of that throttle on a clock of its
 * own, and beside logs that have nothing to do with it. Offset, lags of the rotor and the power by
 * which speed follows the throttle are drawn here.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StartUpTest {

    @SuppressWarnings("ArrayRecordComponent") // never compared, never shown
    private record Run(
            List<FanSpeed> fans,
            double lengthS,
            double[] fromS,
            double[] levels,
            double fullFromS,
            RandomGenerator random) {

        StartUp.Clocks beside(Samples log) {
            return StartUp.of(fans, lengthS, List.of(log), StartUp.Told.THROTTLE);
        }

        Samples log(double offsetS) {
            return StartUpTest.log(fromS, levels, lengthS, offsetS, random);
        }
    }

    private final List<Run> runs = new ArrayList<>();

    @BeforeAll
    void listen() {
        Seeded.check(
                Seeded.deep() ? 20 : 8,
                random -> {
                    var lags =
                            new Synth.Lags(
                                    random.nextDouble(0.06, 0.3), random.nextDouble(0.15, 0.8));
                    var scene = new Scene(new SplittableRandom(random.nextLong()), 1, lags);
                    // A step of the scene turns at the throttle to 0.7.
                    double power = random.nextDouble(0.5, 0.9);
                    runs.add(
                            new Run(
                                    Listening.to(scene.together(), scene.voices, scene.doubt())
                                            .fans(),
                                    scene.lengthS,
                                    scene.fromS(),
                                    Arrays.stream(scene.levels())
                                            .map(v -> Math.pow(v, 0.7 / power))
                                            .toArray(),
                                    scene.fullFromS(),
                                    random));
                });
    }

    /** A log as a recorder writes it, on a clock that shows more than that of the speeds. */
    private static Samples log(
            double[] fromS,
            double[] levels,
            double lengthS,
            double offsetS,
            RandomGenerator random) {
        double beforeS = random.nextDouble(1, 6);
        int count = (int) ((lengthS + beforeS + random.nextDouble(0, 5)) / 0.1);
        double[] times = new double[count];
        double[] values = new double[count];
        for (int k = 0; k < count; k++) {
            double timeS = 0.1 * k - beforeS;
            for (int part = 0; part < fromS.length && fromS[part] <= timeS; part++) {
                values[k] = levels[part];
            }
            times[k] = timeS + offsetS;
        }
        return new Samples(times, values);
    }

    @Test
    void theOffsetOfTheClocksLiesInItsInterval() {
        int told = 0;
        int held = 0;
        var said = new StringBuilder();
        for (Run run : runs) {
            double offsetS = run.random.nextDouble(-500, 500);
            if (run.beside(run.log(offsetS)) instanceof StartUp.Aligned aligned) {
                double off = aligned.offsetS() - offsetS;
                told++;
                held += Math.abs(off) <= aligned.errorS() ? 1 : 0;
                said.append(off).append(" of ").append(aligned.errorS()).append('\n');
                assertThat(aligned.errorS()).as("tells something").isLessThan(0.35);
            }
        }
        assertThat(told).as("%s", said).isGreaterThanOrEqualTo(runs.size() * 9 / 10);
        assertThat(held).as("%s", said).isGreaterThanOrEqualTo(told - 1 - told / 20);
    }

    /** Sure is 95 %: of a hundred logs of other tests no more than five may be taken for it. */
    @Test
    void theLogOfAnotherTestIsNotTakenForIt() {
        int taken = 0;
        int asked = 0;
        for (Run run : runs) {
            RandomGenerator random = run.random;
            double pulseS = random.nextDouble(1, 13);
            double[] from = new double[4];
            from[0] = random.nextDouble(0.4, 1.2);
            for (int k = 1; k < from.length; k++) {
                from[k] = from[k - 1] + random.nextDouble(0.5, k == 2 ? 13 : 4);
            }
            double[] levels = {
                random.nextDouble(0.1, 0.6),
                random.nextDouble(0.4, 1),
                random.nextDouble(0.2, 0.7),
                0
            };
            for (Samples other :
                    List.of(
                            repeated(run),
                            log(from, levels, from[3] + 1, 0, random),
                            log(
                                    new double[] {1, 1 + pulseS},
                                    new double[] {0.6, 0},
                                    pulseS + 2,
                                    0,
                                    random),
                            restless(run.lengthS * 5))) {
                asked++;
                taken += run.beside(other) instanceof StartUp.Aligned ? 1 : 0;
            }
        }
        assertThat(taken).isLessThanOrEqualTo(asked / 20);
    }

    /** The same again and again: any of them may be the one that was heard. */
    private static Samples repeated(Run run) {
        Samples once = run.log(0);
        return sampled(
                5 * run.lengthS,
                timeS -> {
                    double within = timeS % run.lengthS;
                    return within > once.lastS() ? 0 : once.at(within);
                });
    }

    /** On after three seconds, then a little up and down for long. */
    private static Samples restless(double lengthS) {
        return sampled(lengthS, timeS -> timeS < 3 ? 0 : 0.2 + 0.02 * ((int) (timeS / 0.7) % 2));
    }

    private static Samples sampled(double lengthS, DoubleUnaryOperator value) {
        double[] times = new double[(int) (lengthS / 0.1)];
        Arrays.setAll(times, k -> 0.1 * k);
        return new Samples(times, Arrays.stream(times).map(value).toArray());
    }

    @Test
    void withoutItsStartNothingIsClaimed() {
        for (Run run : runs) {
            double lateS = run.fullFromS;
            List<FanSpeed> late =
                    StartUp.onLog(run.fans, -lateS).stream().map(StartUpTest::fromZero).toList();
            assertThat(
                            StartUp.of(
                                    late,
                                    run.lengthS - lateS,
                                    List.of(run.log(0)),
                                    StartUp.Told.THROTTLE))
                    .isInstanceOf(StartUp.Apart.class);
        }
    }

    private static FanSpeed fromZero(FanSpeed fan) {
        int first = 0;
        while (fan.timesS()[first] < 0) {
            first++;
        }
        return new FanSpeed(
                fan.voice(),
                fan.with(),
                Arrays.copyOfRange(fan.timesS(), first, fan.size()),
                Arrays.copyOfRange(fan.speedRadS(), first, fan.size()),
                Arrays.copyOfRange(fan.errorRadS(), first, fan.size()));
    }
}
