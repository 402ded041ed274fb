package liftwright.logbook.reading;

import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;

/**
 * A column of a log that was read in: a {@link Track} without its samples.
 *
 * @param signal what was measured
 * @param of the id of a part, or {@link Track#ALL}
 * @param errorSi 95 % of the instrument's errors are smaller, SI; 0 where the map does not tell
 * @param errorShare of the reading, added in quadrature; likewise
 * @param head as it stood in the file
 */
public record Channel(Signal signal, String of, double errorSi, double errorShare, String head) {

    /** Name of its column in the Parquet file: {@code current p.1}. */
    public String name() {
        return of.equals(Track.ALL) ? signal.word() : signal.word() + " " + of;
    }

    /** The same with samples. */
    public Track with(Samples samples) {
        return new Track(signal, of, errorSi, errorShare, samples);
    }
}
