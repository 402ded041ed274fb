package liftwright.logbook.entry;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names a test or an incident: the day and its number on that day, {@code 2026-03-14-1}. It is the
 * name of a folder too, and leads nowhere else.
 *
 * @param date the day
 * @param number from 1 to {@link #MOST}
 */
public record EntryId(LocalDate date, int number) implements Comparable<EntryId> {

    /** Most of one day. */
    public static final int MOST = 9999;

    private static final Pattern TEXT = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})-([1-9]\\d{0,3})");
    private static final Comparator<EntryId> ORDER =
            Comparator.comparing(EntryId::date).thenComparingInt(EntryId::number);

    public EntryId {
        if (number < 1 || number > MOST || date.getYear() < 0 || date.getYear() > 9999) {
            throw new IllegalArgumentException("not the name of an entry: " + date + " " + number);
        }
    }

    /** Reads the printed form; empty where it is none. */
    public static Optional<EntryId> parse(String text) {
        Matcher parts = TEXT.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new EntryId(LocalDate.parse(parts.group(1)), Integer.parseInt(parts.group(2))));
        } catch (DateTimeParseException notADay) {
            return Optional.empty();
        }
    }

    /** As it is printed, typed and called in the folder. */
    public String text() {
        return date + "-" + number;
    }

    @Override
    public int compareTo(EntryId other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return text();
    }
}
