package liftwright.plant.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Samples thinned for a picture: nothing that stands out is lost, and nothing is made up. */
class ThinnedTest {

    private static Samples random(RandomGenerator random) {
        int n = 1 + random.nextInt(400);
        double[] times = new double[n];
        double[] values = new double[n];
        double time = random.nextDouble(-50, 50);
        for (int k = 0; k < n; k++) {
            time +=
                    random.nextInt(20) == 0
                            ? random.nextDouble(1, 9)
                            : random.nextDouble(1e-3, 0.1);
            times[k] = time;
            values[k] = random.nextGaussian();
        }
        return new Samples(times, values);
    }

    /** The referee puts every sample into its stretch one by one, in whole steps of its own. */
    @Test
    void eachStretchHasTheLeastAndTheGreatestOfItsSamples() {
        int[] crowded = new int[1];
        Seeded.check(
                500,
                random -> {
                    Samples samples = random(random);
                    double from = samples.firstS() + random.nextDouble(-2, 5);
                    double to = from + random.nextDouble(0.01, 20);
                    int stretches = 1 + random.nextInt(60);
                    var byStretch = new TreeMap<Integer, List<Double>>();
                    for (int k = 0; k < samples.size(); k++) {
                        double t = samples.timeS(k);
                        if (t >= from && t <= to) {
                            int stretch = 0;
                            while (stretch + 1 < stretches
                                    && (t - from) / (to - from) * stretches >= stretch + 1) {
                                stretch++;
                            }
                            byStretch
                                    .computeIfAbsent(stretch, _ -> new ArrayList<>())
                                    .add(samples.si(k));
                        }
                    }
                    Thinned thinned = Thinned.of(samples, from, to, stretches);
                    int before = thinned.size() > 0 && thinned.timeS(0) < from ? 1 : 0;
                    int k = before;
                    for (List<Double> inside : byStretch.values()) {
                        double low = inside.stream().mapToDouble(v -> v).min().orElseThrow();
                        double high = inside.stream().mapToDouble(v -> v).max().orElseThrow();
                        assertThat(thinned.lowSi(k)).isEqualTo(low);
                        assertThat(thinned.highSi(k)).isEqualTo(high);
                        crowded[0] += inside.size() > 1 ? 1 : 0;
                        k++;
                    }
                    assertThat(thinned.size() - k).isBetween(0, 1);
                    for (int i = 1; i < thinned.size(); i++) {
                        assertThat(thinned.timeS(i)).isGreaterThan(thinned.timeS(i - 1));
                    }
                });
        assertThat(crowded[0]).isGreaterThan(1000);
    }

    @Test
    void theLineLeavesThePictureAtItsEdges() {
        var samples = new Samples(new double[] {0, 1, 2, 3, 4}, new double[] {5, 6, 7, 8, 9});
        Thinned thinned = Thinned.of(samples, 1.5, 2.5, 10);
        assertThat(thinned.size()).isEqualTo(3);
        assertThat(thinned.timeS(0)).isEqualTo(1);
        assertThat(thinned.lowSi(1)).isEqualTo(7);
        assertThat(thinned.highSi(2)).isEqualTo(8);
        assertThat(Thinned.of(samples, 7, 8, 10).size()).isEqualTo(1);
        assertThat(Thinned.of(samples, -8, -7, 10).size()).isEqualTo(1);
    }

    @Test
    void whatIsNoStretchIsRefused() {
        var samples = new Samples(new double[] {0}, new double[] {1});
        assertThatThrownBy(() -> Thinned.of(samples, 1, 1, 5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Thinned.of(samples, 0, Double.NaN, 5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Thinned.of(samples, 0, 1, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
