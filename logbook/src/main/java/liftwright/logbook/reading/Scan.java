package liftwright.logbook.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import liftwright.rig.Problem.Code;

/**
 * Looks at every byte of a log once, in bounded memory, before anything is made of it: limits, what
 * is no text, lines that cannot be cut into cells. So a file of one endless line, or of a million
 * columns, costs a glance.
 */
final class Scan {

    /** Longest line, bytes. */
    static final int LONGEST_LINE = 1 << 16;

    /** Most cells of a line. */
    static final int MOST_COLUMNS = 512;

    /** Most lines that may be broken before the file as a whole is. */
    private static final int MOST_BROKEN = 1000;

    private static final String SAVE = "Save the log as CSV in UTF-8.";

    /** What the lines of a log are. */
    static final class Facts {
        long lines;

        /** Numbers of empty lines and of comments, rising. */
        long[] skipped = new long[16];

        int skippedCount;

        /** Lines that cannot be read, with the reason. */
        final SortedMap<Long, String> broken = new TreeMap<>();

        /** Whether bytes are not those of UTF-8. */
        boolean notUtf8;

        /** Whether the engine would read it otherwise than we do. */
        boolean toBeMended;

        /** Whether a line is empty or a comment. */
        boolean skips(long number) {
            return Arrays.binarySearch(skipped, 0, skippedCount, number) >= 0;
        }

        private void skip(long line) {
            if (skippedCount == skipped.length) {
                skipped = Arrays.copyOf(skipped, 2 * skippedCount);
            }
            skipped[skippedCount++] = line;
        }
    }

    private final LogFaults faults;
    private final Facts facts = new Facts();

    private long line = 1;
    private int inLine;
    private boolean blank = true;
    private boolean comment;
    private boolean afterCr;
    private int quotes;
    private int separators;
    private int more;
    private int control = -1;

    private Scan(LogFaults faults) {
        this.faults = faults;
    }

    /** Looks at a file whose ASCII letters are single bytes; what forbids to go on is a fault. */
    static Facts of(Path file, LogFaults faults) throws IOException {
        var scan = new Scan(faults);
        try (InputStream in = Files.newInputStream(file)) {
            var block = new byte[1 << 20];
            for (int n = in.read(block); n > 0 && faults.isEmpty(); n = in.read(block)) {
                scan.block(block, n);
            }
        }
        if (faults.isEmpty() && scan.inLine > 0) {
            scan.endLine();
        }
        scan.facts.lines = scan.line - 1;
        return scan.facts;
    }

    private void block(byte[] bytes, int n) {
        for (int i = 0; i < n; i++) {
            byte b = bytes[i];
            if (b >= '0' && b <= 'z' && more == 0 && !afterCr) {
                // what nearly all of a log is: digits and letters
                inLine++;
                blank = false;
                separators += b == ';' ? 1 : 0;
            } else if (!other(b)) {
                return;
            }
            if (inLine > LONGEST_LINE) {
                tooLong();
                return;
            }
        }
    }

    private void tooLong() {
        boolean wide = separators > MOST_COLUMNS;
        faults.add(
                Code.TOO_LARGE,
                line,
                1,
                "",
                wide
                        ? "more than " + MOST_COLUMNS + " cells"
                        : "a line of more than " + LONGEST_LINE + " bytes",
                wide
                        ? "at most " + MOST_COLUMNS + " columns"
                        : "lines of at most " + LONGEST_LINE + " bytes",
                wide
                        ? "Leave out columns, or cut the log into files that share the time."
                        : "Is this a log? A row ends with the end of its line.");
    }

    /** Whether to go on. */
    private boolean other(byte b) {
        if (afterCr) {
            afterCr = false;
            if (b == '\n') {
                return true;
            }
            facts.toBeMended = true; // a lone CR ends a line here, and none for the engine
        }
        if (b == '\n' || b == '\r') {
            afterCr = b == '\r';
            return endLine();
        }
        if (b < 0) {
            high(b & 0xFF);
        } else {
            if (more > 0) {
                facts.notUtf8 = true;
                more = 0;
            }
            low(b);
        }
        inLine++;
        return true;
    }

    private void low(byte b) {
        switch (b) {
            case ' ' -> {}
            case '\t' -> separators++;
            case '"' -> {
                quotes++;
                blank = false;
            }
            case '#' -> {
                comment |= blank;
                blank = false;
            }
            case ',', ';', '|' -> {
                separators++;
                blank = false;
            }
            default -> {
                if ((b < ' ' || b == 0x7F) && control < 0) {
                    control = b;
                }
                blank = false;
            }
        }
    }

    /** Counts the bytes of a sign of UTF-8; overlong ones are left to the decoder. */
    private void high(int b) {
        blank &= inLine < 3 && (b == 0xEF || b == 0xBB || b == 0xBF); // the mark of UTF-8
        if (more > 0) {
            facts.notUtf8 |= b >= 0xC0;
            more = b >= 0xC0 ? 0 : more - 1;
        } else if (b >= 0xC2 && b <= 0xF4) {
            more = b >= 0xF0 ? 3 : b >= 0xE0 ? 2 : 1;
        } else {
            facts.notUtf8 = true;
        }
    }

    private boolean endLine() {
        if (more > 0) {
            facts.notUtf8 = true;
            more = 0;
        }
        if (separators > MOST_COLUMNS) {
            tooLong();
            return false;
        }
        if (control >= 0) {
            broken(
                    String.format(Locale.ROOT, "the control character U+%04X", control),
                    "text",
                    "Is this a log? " + SAVE);
        } else if (blank || comment) {
            facts.skip(line);
            facts.toBeMended |= comment || inLine > 0;
        } else if (quotes % 2 == 1) {
            broken(
                    "a quote that is not closed",
                    "a closing quote in the same line",
                    "Numbers need no quotes.");
        }
        line++;
        inLine = 0;
        blank = true;
        comment = false;
        quotes = 0;
        separators = 0;
        control = -1;
        return faults.isEmpty();
    }

    private void broken(String what, String expected, String advice) {
        facts.toBeMended = true;
        facts.broken.put(line, what);
        // In the first lines it is the file, and not a slip in a row.
        if (line == 1 || facts.broken.size() > MOST_BROKEN || (line > 3 && bad())) {
            faults.add(
                    control >= 0 ? Code.NOT_TEXT : Code.SYNTAX,
                    facts.broken.firstKey(),
                    1,
                    "",
                    String.valueOf(facts.broken.get(facts.broken.firstKey())),
                    expected,
                    advice);
        }
    }

    private boolean bad() {
        return facts.broken.size() > Math.max(3, line / 2);
    }
}
