package liftwright.learning.replay;

import java.util.Arrays;
import java.util.TreeSet;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Track;

/**
 * A channel's samples gathered in blocks, of which the means are compared.
 *
 * @param timesS mean time of each block's samples, on the clock of the recording, s; rising
 * @param meansSi mean of its samples
 * @param counts how many there are
 * @param scatterSi their standard deviation about that mean; 0 of a single one
 * @param askedS times within each block at which a prediction is asked, s: those of the samples
 *     where they are few
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
public record Blocks(
        double[] timesS, double[] meansSi, int[] counts, double[] scatterSi, double[][] askedS) {

    /** More samples of a block than these are asked for in groups. */
    static final int MOST_ASKED = 12;

    /** How many blocks there are. */
    public int size() {
        return timesS.length;
    }

    /**
     * Ends of the blocks of a recording: where all samples together have few times, one block for
     * each of them.
     */
    static double[] edges(Iterable<Track> tracks, double fromS, double toS, int most) {
        TreeSet<Double> times = new TreeSet<>();
        for (Track track : tracks) {
            for (int k = 0; k < track.samples().size() && times.size() <= most; k++) {
                double timeS = track.samples().timeS(k);
                if (timeS >= fromS && timeS <= toS) {
                    times.add(timeS);
                }
            }
        }
        double[] edges;
        if (times.size() > most || times.isEmpty()) {
            edges = new double[most + 1];
            for (int k = 0; k <= most; k++) {
                edges[k] = fromS + (toS - fromS) * k / most;
            }
        } else {
            double[] at = times.stream().mapToDouble(Double::doubleValue).toArray();
            edges = new double[at.length + 1];
            edges[0] = fromS;
            for (int k = 1; k < at.length; k++) {
                edges[k] = (at[k - 1] + at[k]) / 2;
            }
        }
        edges[edges.length - 1] = toS;
        return edges;
    }

    /**
     * @param edges ends of the blocks, rising, s
     * @param throttles blocks over which these are not known are left out
     */
    static Blocks of(Samples samples, double[] edges, Throttles throttles) {
        int most = edges.length - 1;
        double[] times = new double[most];
        double[] means = new double[most];
        int[] counts = new int[most];
        double[] scatters = new double[most];
        double[][] asked = new double[most][];
        int made = 0;
        int next = first(samples, edges[0]);
        for (int k = 0; k < most; k++) {
            int from = next;
            boolean last = k == most - 1;
            while (next < samples.size()
                    && (samples.timeS(next) < edges[k + 1]
                            || (last && samples.timeS(next) <= edges[k + 1]))) {
                next++;
            }
            if (next == from || !throttles.known(samples.timeS(from), samples.timeS(next - 1))) {
                continue;
            }
            counts[made] = next - from;
            times[made] = mean(samples, from, next, true);
            means[made] = mean(samples, from, next, false);
            scatters[made] = scatter(samples, from, next, means[made]);
            asked[made] = asked(samples, from, next);
            made++;
        }
        return new Blocks(
                Arrays.copyOf(times, made),
                Arrays.copyOf(means, made),
                Arrays.copyOf(counts, made),
                Arrays.copyOf(scatters, made),
                Arrays.copyOf(asked, made));
    }

    private static int first(Samples samples, double fromS) {
        int before = samples.upTo(fromS);
        return before >= 0 && samples.timeS(before) == fromS ? before : before + 1;
    }

    private static double mean(Samples samples, int from, int to, boolean time) {
        double sum = 0;
        for (int k = from; k < to; k++) {
            sum += time ? samples.timeS(k) : samples.si(k);
        }
        return sum / (to - from);
    }

    private static double scatter(Samples samples, int from, int to, double mean) {
        double sum = 0;
        for (int k = from; k < to; k++) {
            sum += (samples.si(k) - mean) * (samples.si(k) - mean);
        }
        return to - from < 2 ? 0 : Math.sqrt(sum / (to - from - 1));
    }

    private static double[] asked(Samples samples, int from, int to) {
        int count = Math.min(to - from, MOST_ASKED);
        double[] asked = new double[count];
        for (int k = 0; k < count; k++) {
            asked[k] =
                    mean(
                            samples,
                            from + (to - from) * k / count,
                            from + (to - from) * (k + 1) / count,
                            true);
        }
        return asked;
    }
}
