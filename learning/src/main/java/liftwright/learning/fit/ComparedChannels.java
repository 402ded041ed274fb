package liftwright.learning.fit;

import liftwright.learning.replay.Watched;
import liftwright.plant.recording.Signal;

/** Channels of a replay as a fit compares them. */
public final class ComparedChannels {

    /**
     * Part of a change from block to block that clocks and lags of instruments make doubtful, from
     * memory.
     */
    private static final double IN_STEPS = 0.2;

    private ComparedChannels() {}

    /**
     * @param predicted what the plant says of its blocks: where it changes quickly, a clock or a
     *     lag a little off matters
     * @param startSi what it says of the start
     */
    public static Compared of(Watched watched, double[] predicted, double startSi) {
        int n = watched.blocks().size();
        double[] noise = new double[n];
        for (int k = 0; k < n; k++) {
            double mean =
                    watched.blocks().scatterSi()[k]
                            / Math.sqrt(Math.max(1, Math.min(6, watched.blocks().counts()[k])));
            double change =
                    (Math.abs(predicted[Math.min(k + 1, n - 1)] - predicted[k])
                                    + Math.abs(predicted[k] - predicted[Math.max(k - 1, 0)]))
                            / 2;
            boolean slow = watched.track().signal() == Signal.TEMPERATURE;
            noise[k] = Math.hypot(mean, slow ? 0 : IN_STEPS * change);
        }
        return new Compared(
                watched.track().signal(),
                watched.track().of(),
                watched.blocks().timesS(),
                watched.blocks().meansSi(),
                noise,
                watched.track().errorSi(),
                watched.track().errorShare(),
                watched.missingShare(),
                watched.missingSi(),
                startSi);
    }
}
