package liftwright.learning.replay;

import java.util.Arrays;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;

/**
 * Single samples that stand far off both their neighbours, which agree: no part moves like that.
 */
final class Spikes {

    /** Standard deviations of the noise. */
    private static final double SIGMAS = 8;

    /** And so much of the range of the middle nine tenths of the samples. */
    private static final double SHARE = 0.05;

    private Spikes() {}

    /** A recording without them. What is commanded is left as it is. */
    static Recording without(Recording recording) {
        return new Recording(
                recording.tracks().stream()
                        .map(
                                track ->
                                        track.signal() == Signal.THROTTLE
                                                ? track
                                                : track.showing(without(track.samples())))
                        .toList());
    }

    /** The same without them. */
    static Samples without(Samples samples) {
        int n = samples.size();
        if (n < 5) {
            return samples;
        }
        double[] values = Bands.values(samples);
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double range = sorted[n - 1 - n / 20] - sorted[n / 20];
        double far = SIGMAS * Noise.of(values) + SHARE * range;
        double[] times = new double[n];
        double[] kept = new double[n];
        int made = 0;
        for (int k = 0; k < n; k++) {
            boolean ends = k == 0 || k == n - 1;
            if (ends || !stands(values[k - 1], values[k], values[k + 1], far)) {
                times[made] = samples.timeS(k);
                kept[made] = values[k];
                made++;
            }
        }
        return made == n
                ? samples
                : new Samples(Arrays.copyOf(times, made), Arrays.copyOf(kept, made));
    }

    private static boolean stands(double before, double here, double after, double far) {
        double off = Math.min(Math.abs(here - before), Math.abs(here - after));
        return off > far
                && (here - before) * (here - after) > 0
                && Math.abs(after - before) < off / 2;
    }
}
