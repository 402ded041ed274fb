package liftwright.logbook.entry;

import java.util.List;
import java.util.Optional;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;

/**
 * One table of samples in a test's folder: what one file was read in as.
 *
 * @param file its name in the folder: wide, SI, a column {@code time} in s and one column for each
 *     {@link Channel#name}
 * @param source the file as it came, in the folder {@code source}
 * @param rejected the rows that were set aside; empty where none was
 * @param rows that were taken
 * @param rowsRejected that were set aside
 * @param firstS time of the first row on the file's own clock, s
 * @param lastS time of the last
 * @param clock how its clock stands to that of the test
 * @param channels at least one
 * @param notes what was said when it was read in
 */
public record SampleTable(
        String file,
        String source,
        Optional<String> rejected,
        long rows,
        long rowsRejected,
        double firstS,
        double lastS,
        Clock clock,
        List<Channel> channels,
        List<String> notes) {

    public SampleTable {
        channels = List.copyOf(channels);
        notes = List.copyOf(notes);
    }

    /**
     * @param shiftS added to the file's own time to get that of the test, s
     * @param confidence 0 to 1; empty where nothing had to be aligned
     * @param how in words: by what it was aligned
     */
    public record Clock(double shiftS, Optional<Double> confidence, String how) {

        /** The clock of the test itself. */
        public static final Clock OWN = new Clock(0, Optional.empty(), "the clock of the test");
    }

    /**
     * @param signal what is measured
     * @param of of what: the id of a part, or {@link Track#ALL}
     * @param errorSi 95 % of the instrument's errors are smaller, SI, ≥ 0
     * @param errorShare of the reading, added in quadrature, ≥ 0
     */
    public record Channel(Signal signal, String of, double errorSi, double errorShare) {

        public Channel {
            if (!(errorSi >= 0) || !(errorShare >= 0)) {
                throw new IllegalArgumentException("an error below nought");
            }
        }

        /** As in the head of its column. */
        public String name() {
            return of.equals(Track.ALL) ? signal.word() : signal.word() + " " + of;
        }

        /** The same with samples. */
        public Track with(Samples samples) {
            return new Track(signal, of, errorSi, errorShare, samples);
        }
    }
}
