package liftwright.logbook.reading;

import java.nio.file.Path;

/**
 * A file to read in.
 *
 * @param name as problems shall call it
 * @param file where it is
 */
public record Source(String name, Path file) {

    /** A file under its own name. */
    public static Source of(Path file) {
        return new Source(String.valueOf(file.getFileName()), file);
    }
}
