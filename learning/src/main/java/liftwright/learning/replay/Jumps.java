package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds where a channel leaves what it held before: in the ratio of measured to expected, so that
 * what throttle and sag do is taken out. The threshold comes from the noise of that very ratio.
 */
final class Jumps {

    /** Smaller changes of the ratio than these are told by the fit, not as events. */
    private static final double LEAST = 0.12;

    /** And smaller than so many standard deviations of its noise. */
    private static final double SIGMAS = 6;

    /** So much of the time before and behind is looked at, s. */
    private static final double BEFORE_S = 5;

    private static final double BEHIND_S = 1.5;

    /** A jump stays for so long, or to the end, s. */
    private static final double STAYS_S = 3;

    /** At the end of a recording fewer samples tell a jump that is as large as this. */
    private static final double AT_THE_END = 0.5;

    private static final int LEAST_SAMPLES = 3;

    /**
     * @param at number of its first sample
     * @param before ratio before it
     * @param after ratio behind it
     * @param threshold change that would have been told
     */
    record Jump(int at, double before, double after, double threshold) {}

    private Jumps() {}

    /** What is expected changes by so much: a part of the change may be its own. */
    private static final double OWN = 0.5;

    /**
     * @param timesS rising
     * @param ratio measured over expected
     * @param expected what is expected, above 0
     * @param error of the instrument, over what is expected
     */
    static List<Jump> in(double[] timesS, double[] ratio, double[] expected, double[] error) {
        List<Jump> found = new ArrayList<>();
        double noise = Noise.of(ratio);
        int n = ratio.length;
        int held = 0;
        int k = LEAST_SAMPLES;
        while (k < n) {
            int from = held;
            while (timesS[k] - timesS[from] > BEFORE_S && k - from > LEAST_SAMPLES) {
                from++;
            }
            int to = until(timesS, k, BEHIND_S);
            double before = Noise.median(ratio, from, k);
            double after = Noise.median(ratio, k, to);
            boolean cut = to - k < LEAST_SAMPLES;
            double was = Noise.median(expected, from, k);
            double is = Noise.median(expected, k, to);
            double moved = Math.min(1, Math.abs(is - was) / Math.max(is, was));
            double threshold =
                    Math.max((cut ? AT_THE_END : LEAST) * Math.max(before, 0.3), SIGMAS * noise)
                            + Math.max(error[from], error[k])
                            + OWN * moved;
            if (Math.abs(after - before) > threshold && stays(timesS, ratio, k, before, after)) {
                int at = sharpest(ratio, k, to, before, after);
                double behind = Noise.median(ratio, at, until(timesS, at, BEHIND_S));
                found.add(new Jump(at, before, behind, threshold));
                held = at;
                k = at + LEAST_SAMPLES;
            } else {
                k++;
            }
        }
        return found;
    }

    private static int until(double[] timesS, int from, double forS) {
        int to = from + 1;
        while (to < timesS.length
                && (timesS[to] - timesS[from] <= forS || to - from < LEAST_SAMPLES)) {
            to++;
        }
        return to;
    }

    private static boolean stays(
            double[] timesS, double[] ratio, int k, double before, double after) {
        int to = until(timesS, k, STAYS_S);
        int half = (k + to) / 2;
        double later = Noise.median(ratio, half, to);
        return Math.abs(later - before) > Math.abs(after - before) / 2
                && Math.signum(later - before) == Math.signum(after - before);
    }

    /** The first sample nearer to what comes than to what was, from which on it stays there. */
    private static int sharpest(double[] ratio, int k, int to, double before, double after) {
        double half = (before + after) / 2;
        for (int at = k; at < to; at++) {
            boolean behind = after < before ? ratio[at] < half : ratio[at] > half;
            if (behind) {
                return at;
            }
        }
        return k;
    }
}
