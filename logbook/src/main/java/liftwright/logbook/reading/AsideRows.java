package liftwright.logbook.reading;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** The rows of a log that were set aside, and the file in which they are kept. */
final class AsideRows {

    private final LogText text;
    private final LogHead head;
    private final SortedMap<Long, Rejected.Row> byLine;

    /**
     * @param byLine those that are no rows; more are added
     */
    AsideRows(LogText text, LogHead head, SortedMap<Long, Rejected.Row> byLine) {
        this.text = text;
        this.head = head;
        this.byLine = byLine;
    }

    /** Adds rows whose time is at fault, which are told by their number among those kept. */
    void add(List<Clocking.Aside> asides) throws IOException {
        Map<Long, Clocking.Aside> byNumber = new HashMap<>();
        asides.forEach(aside -> byNumber.put(aside.row(), aside));
        var at = new HashMap<Long, Clocking.Aside>();
        long row = 0;
        for (long line = head.line() + 1L; at.size() < asides.size(); line++) {
            if (line > text.facts().lines) {
                throw new IOException("a row of " + text.file() + " has no line");
            }
            if (text.isLeft(line) || byLine.containsKey(line)) {
                continue;
            }
            Clocking.Aside aside = byNumber.get(row++);
            if (aside != null) {
                at.put(line, aside);
            }
        }
        readLines(at);
    }

    private void readLines(Map<Long, Clocking.Aside> at) throws IOException {
        var decoder =
                StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPLACE);
        try (var lines =
                new BufferedReader(
                        new InputStreamReader(Files.newInputStream(text.file()), decoder),
                        1 << 16)) {
            String line = lines.readLine();
            for (long number = 1; line != null; number++) {
                Clocking.Aside aside = at.get(number);
                if (aside != null) {
                    byLine.put(
                            number,
                            new Rejected.Row(number, reason(aside, line), Conversion.cut(line)));
                }
                line = lines.readLine();
            }
        }
    }

    private String reason(Clocking.Aside aside, String line) {
        return switch (aside.why()) {
            case 0 -> {
                List<LogLine.Cell> cells = LogLine.cut(line, head.separator());
                String cell = head.time() < cells.size() ? cells.get(head.time()).text() : "";
                yield cell.isEmpty() ? "no time" : "no time that can be read: “" + cell + "”";
            }
            case 1 -> "the time leaps ahead to " + s(aside.timeS()) + " and comes back";
            case 2 -> "the same row again";
            default -> "time does not rise: " + s(aside.timeS()) + " after " + s(aside.beforeS());
        };
    }

    private static String s(double timeS) {
        return new BigDecimal(timeS).round(new MathContext(9)).stripTrailingZeros().toPlainString()
                + " s";
    }

    SortedMap<Long, Rejected.Row> byLine() {
        return byLine;
    }

    /** Keeps them in a file of their own. */
    Rejected keep(String source, Path file) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            out.write("line,reason,text\n");
            for (Rejected.Row row : byLine.values()) {
                out.write(row.line() + "," + quoted(row.reason()) + "," + quoted(row.text()));
                out.write('\n');
            }
        }
        var first = byLine.values().stream().limit(Rejected.SHOWN).toList();
        return new Rejected(source, file, byLine.size(), first);
    }

    private static String quoted(String cell) {
        return '"' + cell.replace("\"", "\"\"") + '"';
    }
}
