package liftwright.learning.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Recordings of drawn fans, as they are and as recorders spoil them: turned down while it is loud
 * (gain made here sample by sample), or cut off above a frequency (a filter of our own). What is
 * told is held against what was done.
 */
class RecorderTest {

    private static Scene scene(RandomGenerator random) {
        return new Scene(new SplittableRandom(random.nextLong()), random.nextInt(1, 9));
    }

    /** What a microphone takes up: fans, the sound of the place, and often the fans' own rush. */
    private static float[] taken(Scene scene, RandomGenerator random) {
        float[] sound = scene.synth.sound(scene.fans, scene.speeds, scene.lengthS, scene.room);
        double rush = random.nextBoolean() ? random.nextDouble(0.2, 0.9) * scene.room.noise() : 0;
        for (int n = 0; n < sound.length; n++) {
            double share = 0;
            for (int f = 0; f < scene.fans.size(); f++) {
                share +=
                        scene.truth(f, n / Scene.RATE_HZ)
                                / scene.fans.get(f).topRadS()
                                / scene.fans.size();
            }
            sound[n] += (float) (rush * Math.pow(share, 2.5) * scene.synth.gauss());
        }
        return sound;
    }

    /** Follows the loudness quickly up and slowly down, and divides by a power of it. */
    private static double turnDown(float[] sound, RandomGenerator random) {
        double attack = 1 / (random.nextDouble(0.01, 0.1) * Scene.RATE_HZ);
        double release = 1 / (random.nextDouble(0.1, 0.5) * Scene.RATE_HZ);
        double power = random.nextDouble(0.25, 0.5);
        double follower = 1e-8;
        double quietest = Double.POSITIVE_INFINITY;
        double loudest = 0;
        for (int n = 0; n < sound.length; n++) {
            double square = sound[n] * sound[n];
            follower += (square - follower) * (square > follower ? attack : release);
            double gain = 0.25 * Math.pow(follower + 1e-7, -power / 2);
            if (n > Scene.RATE_HZ / 5) {
                quietest = Math.min(quietest, gain);
                loudest = Math.max(loudest, gain);
            }
            sound[n] = (float) (Math.rint(32_768 * gain * sound[n]) / 32_768);
        }
        return quietest / loudest;
    }

    /** A sinc of 401 taps under a Hann window: a cliff of some 200 Hz. */
    private static float[] cut(float[] sound, double hz) {
        int half = 200;
        double[] taps = new double[2 * half + 1];
        for (int j = -half; j <= half; j++) {
            double place = 2 * Math.PI * hz / Scene.RATE_HZ * j;
            double sinc = j == 0 ? 1 : Math.sin(place) / place;
            taps[j + half] =
                    2 * hz / Scene.RATE_HZ * sinc * (0.5 + 0.5 * Math.cos(Math.PI * j / half));
        }
        float[] out = new float[sound.length];
        for (int n = half; n < sound.length - half; n++) {
            double sum = 0;
            for (int j = 0; j < taps.length; j++) {
                sum += taps[j] * sound[n + j - half];
            }
            out[n] = (float) (Math.rint(32_768 * sum) / 32_768);
        }
        return out;
    }

    private static final class Count {
        private int turned;
        private int edges;
        private final List<String> accused = new ArrayList<>();

        private void add(RandomGenerator random) {
            Scene scene = scene(random);
            float[] whole = taken(scene, random);
            Levels levels = Levels.of(new Waveform(whole, Scene.RATE_HZ));
            AutomaticGain.of(levels).ifPresent(gain -> accused.add(gain.words()));
            BandEdge.of(levels).ifPresent(edge -> accused.add(edge.words()));

            double hz = random.nextDouble(3400, 0.88 * Scene.RATE_HZ / 2);
            Optional<BandEdge> edge =
                    BandEdge.of(Levels.of(new Waveform(cut(whole, hz), Scene.RATE_HZ)));
            if (edge.isPresent()) {
                edges++;
                assertThat(edge.get().hz()).isBetween(hz - 400, hz + 400);
            }

            double range = turnDown(whole, random);
            Optional<AutomaticGain> gain =
                    AutomaticGain.of(Levels.of(new Waveform(whole, Scene.RATE_HZ)));
            if (gain.isPresent()) {
                turned++;
                assertThat(gain.get().factor()).isBetween(range, 0.95);
            }
        }
    }

    @Test
    void whatTheRecorderDidIsToldAndNothingElse() {
        var count = new Count();
        int cases = Seeded.deep() ? 80 : 8;
        Seeded.check(8, count::add);
        assertThat(count.accused).as("of %d as they are", cases).isEmpty();
        assertThat(count.edges).as("edges of %d", cases).isGreaterThanOrEqualTo(cases * 9 / 10);
        assertThat(count.turned).as("turned down of %d", cases).isGreaterThanOrEqualTo(cases / 2);
    }
}
