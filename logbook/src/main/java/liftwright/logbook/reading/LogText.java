package liftwright.logbook.reading;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.logbook.engine.Engine;
import liftwright.rig.Problem.Code;

/**
 * A log as text that the engine can read: in UTF-8, within its reach, line by line that of the
 * source.
 *
 * @param file to be read
 * @param encoding of the source
 * @param facts of its lines
 * @param first its first lines
 */
record LogText(Path file, Encoding encoding, Scan.Facts facts, List<String> first) {

    /** Largest log, bytes. */
    static final long MOST_BYTES = 8L << 30;

    /** So many lines are looked at to see how a log is written. */
    private static final int FIRST = 400;

    private static final int SNIFF = 1 << 16;

    LogText {
        first = List.copyOf(first);
    }

    /** Empty after a fault. */
    static Optional<LogText> open(Source source, int number, Engine engine, LogFaults faults)
            throws IOException {
        Path file = source.file();
        if (!Files.isRegularFile(file)) {
            if (Files.isDirectory(file)) {
                faults.add(Code.NOT_TEXT, 1, 1, "", "a folder", "a log as CSV", "");
                return Optional.empty();
            }
            throw new NoSuchFileException(file.toString());
        }
        byte[] start = start(file);
        if (Files.size(file) > MOST_BYTES || !isText(start, faults)) {
            if (faults.isEmpty()) {
                faults.add(
                        Code.TOO_LARGE,
                        1,
                        1,
                        "",
                        "a log of more than 8 GiB",
                        "at most 8 GiB",
                        "Cut it into files and read them in together.");
            }
            return Optional.empty();
        }
        Encoding encoding = Encoding.guess(start, start.length);
        Path bytes = file;
        if (encoding != Encoding.UTF_8) {
            bytes = engine.scratch().resolve("utf8-" + number + ".csv");
            Mended.inUtf8(file, encoding, bytes);
        }
        Scan.Facts facts = Scan.of(bytes, faults);
        if (!faults.isEmpty()) {
            return Optional.empty();
        }
        if (facts.lines == facts.skippedCount) {
            faults.add(
                    Code.MISSING_KEY,
                    1,
                    1,
                    "",
                    facts.lines == 0 ? "an empty file" : "a file that says nothing",
                    "a line with the names of the columns, and rows below it",
                    "Was the log saved to the end?");
            return Optional.empty();
        }
        if (encoding == Encoding.UTF_8 && facts.notUtf8) {
            encoding = Encoding.LATIN_1;
        }
        Path ready = ready(bytes, encoding, facts, number, engine);
        return Optional.of(new LogText(ready, encoding, facts, first(ready)));
    }

    private static Path ready(
            Path bytes, Encoding encoding, Scan.Facts facts, int number, Engine engine)
            throws IOException {
        Path copy = engine.scratch().resolve("log-" + number + ".csv");
        if (facts.toBeMended || encoding == Encoding.LATIN_1) {
            Encoding now = encoding == Encoding.LATIN_1 ? encoding : Encoding.UTF_8;
            Mended.copy(
                    bytes, now, line -> facts.broken.containsKey(line) || facts.skips(line), copy);
            return copy;
        }
        if (!engine.reaches(bytes)) {
            Files.copy(bytes, copy);
            return copy;
        }
        return bytes;
    }

    private static byte[] start(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            return in.readNBytes(SNIFF);
        }
    }

    private static boolean isText(byte[] start, LogFaults faults) {
        String found =
                begins(start, "PAR1")
                        ? "a Parquet file"
                        : begins(start, "PK\u0003\u0004")
                                ? "a ZIP archive, such as a workbook of a spreadsheet"
                                : begins(start, "SQLite") ? "a database" : "";
        if (!found.isEmpty()) {
            faults.add(
                    Code.NOT_TEXT,
                    1,
                    1,
                    "",
                    found,
                    "a log as CSV",
                    "Save the table as CSV, then read that in.");
        }
        return found.isEmpty();
    }

    private static boolean begins(byte[] start, String with) {
        byte[] sign = with.getBytes(StandardCharsets.ISO_8859_1);
        return start.length >= sign.length
                && Arrays.equals(Arrays.copyOf(start, sign.length), sign);
    }

    private static List<String> first(Path file) throws IOException {
        var decoder =
                StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPLACE);
        var lines = new ArrayList<String>();
        try (var in =
                new BufferedReader(new InputStreamReader(Files.newInputStream(file), decoder))) {
            String line = in.readLine();
            while (line != null && lines.size() < FIRST) {
                lines.add(lines.isEmpty() && line.startsWith("\uFEFF") ? line.substring(1) : line);
                line = in.readLine();
            }
        }
        return lines;
    }

    /** Whether a line, from 1, is empty, a comment, or broken. */
    boolean isLeft(long line) {
        return facts.skips(line) || facts.broken.containsKey(line);
    }
}
