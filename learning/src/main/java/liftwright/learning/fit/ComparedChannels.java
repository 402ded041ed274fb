package liftwright.learning.fit;

import java.util.Arrays;
import liftwright.learning.replay.Watched;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;

/** Channels of a replay as a fit compares them. */
public final class ComparedChannels {

    /**
     * Part of a change from block to block that clocks and lags of instruments make doubtful, from
     * memory.
     */
    private static final double IN_STEPS = 0.2;

    /** Fewer differences than these tell no step. */
    private static final int LEAST_STEPS = 3;

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
                startSi,
                stepSi(watched.track().samples()));
    }

    /**
     * The step in which an instrument shows: the least difference of two of its values, where
     * nearly all others are multiples of it; 0 where there is none.
     */
    static double stepSi(Samples samples) {
        double[] values = new double[samples.size()];
        double most = 0;
        for (int k = 0; k < values.length; k++) {
            values[k] = samples.si(k);
            most = Math.max(most, Math.abs(values[k]));
        }
        Arrays.sort(values);
        double same = 1e-9 * most;
        double step = Double.POSITIVE_INFINITY;
        for (int k = 1; k < values.length; k++) {
            double apart = values[k] - values[k - 1];
            step = apart > same ? Math.min(step, apart) : step;
        }
        int apart = 0;
        int whole = 0;
        for (int k = 1; k < values.length; k++) {
            double steps = (values[k] - values[k - 1]) / step;
            if (steps > 0.5) {
                apart++;
                whole += Math.abs(steps - Math.rint(steps)) < 0.05 ? 1 : 0;
            }
        }
        return apart >= LEAST_STEPS && whole >= 0.95 * apart ? step : 0;
    }
}
