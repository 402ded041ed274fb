package liftwright.learning.replay;

import java.util.Arrays;
import liftwright.plant.recording.Samples;

/**
 * A channel sample by sample beside what is expected then; long ones in means of neighbours.
 *
 * @param timesS on the clock of the recording, s
 * @param measuredSi what was measured
 * @param expectedSi what the plant gives at the declared values
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
record Series(double[] timesS, double[] measuredSi, double[] expectedSi) {

    /** More samples than these are averaged. */
    private static final int MOST = 4000;

    /**
     * @param channel number among the watched ones of {@code driven}, which has followed a run
     */
    static Series of(Driven driven, int channel) {
        Samples samples = driven.watched().get(channel).track().samples();
        int first = Math.max(0, samples.upTo(driven.fromS()));
        int last = samples.upTo(driven.toS());
        int size = Math.max(0, last - first + 1);
        int group = Math.max(1, (size + MOST - 1) / MOST);
        double[] times = new double[size];
        double[] measured = new double[size];
        double[] expected = new double[size];
        int made = 0;
        for (int k = first; k <= last; k += group) {
            int to = Math.min(last + 1, k + group);
            double sumS = 0;
            double sum = 0;
            for (int of = k; of < to; of++) {
                sumS += samples.timeS(of);
                sum += samples.si(of);
            }
            times[made] = sumS / (to - k);
            if (times[made] < driven.fromS() || times[made] > driven.toS()) {
                continue;
            }
            measured[made] = sum / (to - k);
            expected[made] = driven.at(channel, times[made]);
            made++;
        }
        return new Series(
                Arrays.copyOf(times, made),
                Arrays.copyOf(measured, made),
                Arrays.copyOf(expected, made));
    }

    int size() {
        return timesS.length;
    }

    /** Usual time from one sample to the next, s; 0 of one alone. */
    double everyS() {
        if (size() < 2) {
            return 0;
        }
        double[] steps = new double[size() - 1];
        for (int k = 0; k < steps.length; k++) {
            steps[k] = timesS[k + 1] - timesS[k];
        }
        return Noise.median(steps);
    }
}
