package liftwright.logbook.reading;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A source that was read in: a temporary Parquet file with the column {@code time} (s, rises
 * strictly, by its own clock) and one column for each channel, SI, empty where nothing was
 * measured.
 *
 * @param source name of the file it came from
 * @param parquet the caller's to move or to delete
 * @param channels in the order of the file
 * @param rows how many it has
 * @param firstS first time by its own clock, s
 * @param lastS last time by its own clock, s
 * @param begin what its clock calls 0 s, where it tells a date
 * @param shift how its clock stands to the test's
 */
public record Clocked(
        String source,
        Path parquet,
        List<Channel> channels,
        long rows,
        double firstS,
        double lastS,
        Optional<Instant> begin,
        Shift shift) {

    public Clocked {
        channels = List.copyOf(channels);
    }

    /** The same on another clock. */
    Clocked on(Shift other) {
        return new Clocked(source, parquet, channels, rows, firstS, lastS, begin, other);
    }
}
