package liftwright.logbook.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.trials.CardId;

/**
 * What is known of a test besides its samples.
 *
 * @param card that was run; empty for a test of its own
 * @param date the day
 * @param people who was there, and as what; may be empty
 * @param weather as far as it was noted
 * @param note what else was seen; may be empty
 * @param cost in words and figures, such as {@code 12.50 EUR}; may be empty
 * @param hours of work, s
 * @param media pictures and films, which stay where they are
 * @param instruments what measured, in words
 * @param rig the rig as it was
 * @param tables one for each file that was read in
 */
public record TestEntry(
        Optional<CardId> card,
        LocalDate date,
        List<Person> people,
        Weather weather,
        String note,
        String cost,
        Optional<Quantity> hours,
        List<Media> media,
        List<String> instruments,
        Snapshot rig,
        List<SampleTable> tables) {

    public TestEntry {
        people = List.copyOf(people);
        media = List.copyOf(media);
        instruments = List.copyOf(instruments);
        tables = List.copyOf(tables);
    }

    /**
     * @param role in one or two words, such as {@code watcher}; may be empty
     */
    public record Person(String name, String role) {}

    /**
     * Air and wind at the place.
     *
     * @param air temperature, K
     * @param pressure Pa
     * @param humidity relative, 0 to 1
     * @param wind mean, m/s
     * @param gust strongest, m/s
     */
    public record Weather(
            Optional<Quantity> air,
            Optional<Quantity> pressure,
            Optional<Quantity> humidity,
            Optional<Quantity> wind,
            Optional<Quantity> gust) {

        /** Nobody looked. */
        public static final Weather UNKNOWN =
                new Weather(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
    }

    /**
     * A picture or film by reference: it is not copied, and its digest tells whether it is still
     * the same.
     *
     * @param file as it was named
     * @param digest SHA-256 of its bytes on the day
     * @param what it shows; may be empty
     */
    public record Media(String file, String digest, String what) {}

    /**
     * The rig file in the test's folder {@code rig}.
     *
     * @param file its name there
     * @param digest of the file and its tables
     * @param revision of the rig
     */
    public record Snapshot(String file, String digest, int revision) {}
}
