package liftwright.learning.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Recordings of drawn fans, cut off or whole: what was cut is counted here, sample by sample, from
 * the whole one.
 */
class ClippingTest {

    private static void judge(RandomGenerator random) {
        Scene scene = new Scene(new SplittableRandom(random.nextLong()), random.nextInt(1, 9));
        float[] whole = scene.synth.sound(scene.fans, scene.speeds, scene.lengthS, scene.room);
        assertThat(Clipping.of(new Waveform(whole, Scene.RATE_HZ))).isEmpty();

        float[] sizes = new float[whole.length];
        for (int k = 0; k < sizes.length; k++) {
            sizes[k] = Math.abs(whole[k]);
        }
        Arrays.sort(sizes);
        double wanted = random.nextDouble(0.02, 0.1);
        float level = sizes[(int) ((1 - wanted) * sizes.length)];
        // Turned down afterwards: no sample is at full scale.
        float gain = (float) random.nextDouble(0.4, 0.9) / level;
        float[] cut = new float[whole.length];
        int beyond = 0;
        for (int k = 0; k < cut.length; k++) {
            cut[k] = gain * Math.max(-level, Math.min(level, whole[k]));
            beyond += Math.abs(whole[k]) >= level ? 1 : 0;
        }
        Optional<Clipping> found = Clipping.of(new Waveform(cut, Scene.RATE_HZ));
        double share = beyond / (double) cut.length;
        assertThat(found).as("%.3f of the samples cut", share).isPresent();
        // A top of one sample is not counted.
        assertThat(found.get().share()).isLessThanOrEqualTo(share);
        assertThat(found.get().level()).isBetween(0.39, 0.91);
        assertThat(found.get().words()).contains("flat tops");
    }

    @Test
    void cutTopsAreFoundAndWholeOnesAreNotAccused() {
        Seeded.check(8, ClippingTest::judge);
    }
}
