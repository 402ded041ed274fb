package liftwright.learning.fit;

import java.util.Arrays;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;

/**
 * One channel at the times at which it is compared with the plant: means of blocks of samples.
 *
 * @param signal what is measured
 * @param of of what
 * @param timesS middles of the blocks, rising, s
 * @param measuredSi means of the blocks, SI
 * @param noiseSi standard deviation of each mean from the scatter in its block, SI, ≥ 0
 * @param errorSi of the instrument: 95 % of its errors are smaller, SI, ≥ 0
 * @param errorShare of the reading, added in quadrature, ≥ 0
 * @param leftOutShare share of the way from its start that the model leaves out, k = 2, ≥ 0
 * @param leftOutSi the same where it goes nowhere, SI, ≥ 0
 * @param startSi where the channel stands when nothing happens, SI
 * @param stepSi finest step that it shows, SI; 0 where none is seen
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
public record Compared(
        Signal signal,
        String of,
        double[] timesS,
        double[] measuredSi,
        double[] noiseSi,
        double errorSi,
        double errorShare,
        double leftOutShare,
        double leftOutSi,
        double startSi,
        double stepSi) {

    public Compared {
        if (timesS.length == 0
                || measuredSi.length != timesS.length
                || noiseSi.length != timesS.length) {
            throw new IllegalArgumentException(
                    timesS.length
                            + " times, "
                            + measuredSi.length
                            + " values and "
                            + noiseSi.length
                            + " scatters");
        }
        if (Arrays.stream(noiseSi).anyMatch(noise -> !(noise >= 0))
                || !(errorSi >= 0)
                || !(errorShare >= 0)
                || !(leftOutShare >= 0)
                || !(leftOutSi >= 0)
                || !(stepSi >= 0)) {
            throw new IllegalArgumentException("an error below nought");
        }
    }

    /** One that shows steps too fine to matter. */
    public Compared(
            Signal signal,
            String of,
            double[] timesS,
            double[] measuredSi,
            double[] noiseSi,
            double errorSi,
            double errorShare,
            double leftOutShare,
            double leftOutSi,
            double startSi) {
        this(
                signal,
                of,
                timesS,
                measuredSi,
                noiseSi,
                errorSi,
                errorShare,
                leftOutShare,
                leftOutSi,
                startSi,
                0);
    }

    /** How many blocks. */
    public int size() {
        return timesS.length;
    }

    /** As in the head of a log's column. */
    public String name() {
        return of.equals(Track.ALL) ? signal.word() : signal.word() + " " + of;
    }
}
