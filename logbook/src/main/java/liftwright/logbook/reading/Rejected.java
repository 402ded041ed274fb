package liftwright.logbook.reading;

import java.nio.file.Path;
import java.util.List;

/**
 * The rows of a source that were set aside.
 *
 * @param source name of the file they came from
 * @param file a temporary CSV with {@code line}, {@code reason}, {@code text}, the caller's to move
 *     or to delete; all of them
 * @param count how many
 * @param first the first {@value #SHOWN} of them
 */
public record Rejected(String source, Path file, long count, List<Row> first) {

    /** How many are told one by one. */
    public static final int SHOWN = 20;

    /**
     * @param line of the file, from 1
     * @param reason why, a phrase
     * @param text the line, cut short; untrusted
     */
    public record Row(long line, String reason, String text) {}

    public Rejected {
        first = List.copyOf(first);
    }
}
