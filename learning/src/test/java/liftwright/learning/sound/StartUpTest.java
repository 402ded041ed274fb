package liftwright.learning.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.plant.recording.Samples;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Sound of fans of which the throttle is known, beside a log of that throttle on a clock of its
 * own: the offset of the clocks is drawn here.
 */
class StartUpTest {

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

    private static Heard heard(Scene scene) {
        return Listening.to(scene.together(), scene.voices, scene.doubt());
    }

    @Test
    void theOffsetOfTheClocksLiesInItsInterval() {
        int[] count = new int[3];
        var said = new StringBuilder();
        Seeded.check(
                Seeded.deep() ? 200 : 8,
                random -> {
                    var scene = new Scene(new SplittableRandom(random.nextLong()), 1);
                    double offsetS = random.nextDouble(-500, 500);
                    Samples log =
                            log(scene.fromS(), scene.levels(), scene.lengthS, offsetS, random);
                    StartUp.Clocks told =
                            StartUp.of(
                                    heard(scene).fans(),
                                    scene.lengthS,
                                    List.of(log),
                                    StartUp.Told.THROTTLE);
                    count[0]++;
                    if (told instanceof StartUp.Aligned aligned) {
                        double off = aligned.offsetS() - offsetS;
                        count[1]++;
                        count[2] += Math.abs(off) <= aligned.errorS() ? 1 : 0;
                        said.append(off).append(" of ").append(aligned.errorS()).append('\n');
                        assertThat(Math.abs(off)).as("%s", aligned).isLessThan(0.5);
                    } else {
                        said.append(told).append('\n');
                    }
                });
        assertThat(count[1]).as("%s", said).isGreaterThanOrEqualTo(count[0] * 3 / 4);
        assertThat(count[2]).as("%s", said).isGreaterThanOrEqualTo(count[1] - 1 - count[1] / 12);
    }

    @Test
    void whatCannotBeToldIsNotClaimed() {
        Seeded.check(
                2,
                random -> {
                    var scene = new Scene(new SplittableRandom(random.nextLong()), 1);
                    List<FanSpeed> fans = heard(scene).fans();
                    // The same pulse again and again: any of them may be the one that was heard.
                    double lengthS = scene.lengthS;
                    int count = (int) (5 * lengthS / 0.1);
                    double[] times = new double[count];
                    double[] values = new double[count];
                    Samples once = log(scene.fromS(), scene.levels(), lengthS, 0, random);
                    for (int k = 0; k < count; k++) {
                        times[k] = 0.1 * k;
                        double within = times[k] % lengthS;
                        values[k] = within > once.lastS() ? 0 : once.at(within);
                    }
                    assertThat(
                                    StartUp.of(
                                            fans,
                                            lengthS,
                                            List.of(new Samples(times, values)),
                                            StartUp.Told.THROTTLE))
                            .isInstanceOf(StartUp.Apart.class);
                    // A log of a test that has nothing to do with it: up and down for long.
                    double[] other = new double[count];
                    for (int k = 0; k < count; k++) {
                        other[k] = times[k] < 3 ? 0 : 0.2 + 0.02 * ((int) (times[k] / 0.7) % 2);
                    }
                    assertThat(
                                    StartUp.of(
                                            fans,
                                            lengthS,
                                            List.of(new Samples(times, other)),
                                            StartUp.Told.THROTTLE))
                            .isInstanceOf(StartUp.Apart.class);
                    // Its start was missed.
                    double lateS = scene.fullFromS();
                    List<FanSpeed> late =
                            StartUp.onLog(fans, -lateS).stream().map(fan -> from(fan, 0)).toList();
                    assertThat(
                                    StartUp.of(
                                            late,
                                            lengthS - lateS,
                                            List.of(once),
                                            StartUp.Told.THROTTLE))
                            .isInstanceOf(StartUp.Apart.class);
                });
    }

    private static FanSpeed from(FanSpeed fan, double fromS) {
        int first = 0;
        while (fan.timesS()[first] < fromS) {
            first++;
        }
        return new FanSpeed(
                fan.voice(),
                fan.with(),
                java.util.Arrays.copyOfRange(fan.timesS(), first, fan.size()),
                java.util.Arrays.copyOfRange(fan.speedRadS(), first, fan.size()),
                java.util.Arrays.copyOfRange(fan.errorRadS(), first, fan.size()));
    }
}
