package liftwright.plant.recording;

import java.util.Arrays;

/**
 * Samples thinned for a picture: for each of some equal stretches of time the least and the
 * greatest of what was there, so that no peak is lost. A stretch without a sample is left out.
 */
public final class Thinned {

    private final double[] timesS;
    private final double[] lowSi;
    private final double[] highSi;

    private Thinned(double[] timesS, double[] lowSi, double[] highSi) {
        this.timesS = timesS;
        this.lowSi = lowSi;
        this.highSi = highSi;
    }

    /**
     * Samples between two times, in stretches. Two more, the last before and the first after, come
     * along where there are such, so that a line leaves the picture at its edges.
     *
     * @param fromS first time, s
     * @param toS last time, s, later
     * @param stretches how many the time between is cut into, ≥ 1
     */
    public static Thinned of(Samples samples, double fromS, double toS, int stretches) {
        if (!(toS > fromS) || stretches < 1) {
            throw new IllegalArgumentException(stretches + " stretches of " + fromS + "…" + toS);
        }
        int first = Math.max(0, samples.upTo(Math.nextDown(fromS)));
        int last = Math.min(samples.size() - 1, samples.upTo(toS) + 1);
        int most = Math.max(0, Math.min(last - first + 1, stretches + 2));
        var thinned = new Thinned(new double[most], new double[most], new double[most]);
        return thinned.filled(samples, first, last, fromS, toS, stretches);
    }

    private Thinned filled(
            Samples samples, int first, int last, double fromS, double toS, int stretches) {
        int n = 0;
        int firstOfStretch = first;
        int stretch = Integer.MIN_VALUE;
        for (int k = first; k <= last; k++) {
            int here = stretchOf(samples.timeS(k), fromS, toS, stretches);
            if (here != stretch) {
                stretch = here;
                firstOfStretch = k;
                lowSi[n] = samples.si(k);
                highSi[n++] = samples.si(k);
            } else {
                lowSi[n - 1] = Math.min(lowSi[n - 1], samples.si(k));
                highSi[n - 1] = Math.max(highSi[n - 1], samples.si(k));
            }
            timesS[n - 1] = (samples.timeS(firstOfStretch) + samples.timeS(k)) / 2;
        }
        return new Thinned(
                Arrays.copyOf(timesS, n), Arrays.copyOf(lowSi, n), Arrays.copyOf(highSi, n));
    }

    /** −1 before the first, {@code stretches} after the last. */
    private static int stretchOf(double timeS, double fromS, double toS, int stretches) {
        if (timeS < fromS) {
            return -1;
        }
        if (timeS > toS) {
            return stretches;
        }
        return Math.min(stretches - 1, (int) ((timeS - fromS) / (toS - fromS) * stretches));
    }

    public int size() {
        return timesS.length;
    }

    /** Middle of the first and the last sample of a stretch, s. */
    public double timeS(int k) {
        return timesS[k];
    }

    public double lowSi(int k) {
        return lowSi[k];
    }

    public double highSi(int k) {
        return highSi[k];
    }
}
