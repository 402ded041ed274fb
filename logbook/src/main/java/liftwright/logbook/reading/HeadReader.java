package liftwright.logbook.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.logbook.reading.Note.Kind;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Problems;

/** Finds how a log is written, and what each of its columns is. */
final class HeadReader {

    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\[([^\\[\\]]*)\\]");

    private final String file;
    private final LogText text;
    private final LogMap map;
    private final HeadNames names;
    private final LogFaults faults;
    private final List<Note> notes;
    private final Map<String, LogMap.MappedColumn> mapped = new HashMap<>();

    HeadReader(
            String file,
            LogText text,
            LogMap map,
            PartNames parts,
            LogFaults faults,
            List<Note> notes) {
        this.file = file;
        this.text = text;
        this.map = map;
        this.faults = faults;
        this.notes = notes;
        this.names = new HeadNames(parts, faults);
        map.columns().forEach(column -> mapped.put(column.head(), column));
    }

    /** Empty after a fault. */
    Optional<LogHead> read() {
        int line = headLine();
        if (line == 0) {
            noTime();
            return Optional.empty();
        }
        String head = text.first().get(line - 1);
        char separator = map.separator().orElse(separator(head));
        List<LogLine.Cell> cells = LogLine.cut(head, separator);
        if (cells.size() > Scan.MOST_COLUMNS) {
            faults.add(
                    Code.TOO_LARGE,
                    line,
                    1,
                    "",
                    cells.size() + " columns",
                    "at most " + Scan.MOST_COLUMNS,
                    "");
            return Optional.empty();
        }
        var columns = columns(cells, line);
        int time = time(columns);
        int rows = firstRow(line);
        if (!faults.isEmpty()) {
            return Optional.empty();
        }
        if (rows == 0) {
            faults.add(
                    Code.MISSING_KEY,
                    line,
                    1,
                    "",
                    "names of columns and no row",
                    "at least one row below them",
                    "Was the log saved to the end?");
            return Optional.empty();
        }
        if (columns.stream().noneMatch(LogColumn.Read.class::isInstance)) {
            faults.add(
                    Code.MISSING_KEY,
                    line,
                    1,
                    "",
                    "no column of a channel",
                    "heads such as “thrust [N]” or “current p.1 [A]”",
                    "A map of the log translates the heads of an instrument.");
            return Optional.empty();
        }
        char decimal = new DecimalSign(text, line, separator, columns, faults).find(map.decimal());
        Optional<LogClock> clock =
                new ClockReader(text, line, separator, faults)
                        .read(map.time(), columns.get(time), time);
        return clock.isEmpty() || !faults.isEmpty()
                ? Optional.empty()
                : Optional.of(new LogHead(line, separator, decimal, clock.get(), time, columns));
    }

    /** The first line that has a column of time; 0 where none has. */
    private int headLine() {
        if (map.headLine().isPresent()) {
            return Math.min(map.headLine().get(), text.first().size());
        }
        for (int line = 1; line <= text.first().size(); line++) {
            String head = text.first().get(line - 1);
            if (text.isLeft(line)) {
                continue;
            }
            char separator = map.separator().orElse(separator(head));
            if (LogLine.cut(head, separator).stream().anyMatch(cell -> isTime(cell.text()))) {
                return line;
            }
        }
        return 0;
    }

    private boolean isTime(String cell) {
        return map.time().isPresent()
                ? map.time().get().head().equals(cell)
                : bare(cell).toLowerCase(Locale.ROOT).equals("time");
    }

    private static String bare(String cell) {
        Matcher matcher = WITH_UNIT.matcher(cell);
        return (matcher.matches() ? matcher.group(1) : cell).strip();
    }

    private void noTime() {
        int line = 1;
        while (line < text.first().size() && text.isLeft(line)) {
            line++;
        }
        String head = text.first().get(line - 1);
        List<LogLine.Cell> cells = LogLine.cut(head, map.separator().orElse(separator(head)));
        String wanted = map.time().map(LogMap.TimeColumn::head).orElse("time [s]");
        var near =
                cells.stream()
                        .filter(cell -> HeadNames.isNear(bare(cell.text()), bare(wanted)))
                        .findFirst();
        faults.add(
                Code.MISSING_KEY,
                line,
                near.map(LogLine.Cell::column).orElse(1),
                "time",
                near.map(cell -> Problems.quote(cell.text()))
                        .orElse(
                                "no column of time among the "
                                        + cells.size()
                                        + (cells.size() == 1 ? " column" : " columns")),
                "a column “" + wanted + "”",
                near.isPresent()
                        ? "Perhaps “" + wanted + "” is meant."
                        : "A map of the log can say which column is the time.");
    }

    /** The first of tab, semicolon, bar and comma that the head has. */
    private static char separator(String head) {
        String bare = head.replaceAll("\"[^\"]*\"", "");
        for (char candidate : new char[] {'\t', ';', '|'}) {
            if (bare.indexOf(candidate) >= 0) {
                return candidate;
            }
        }
        return ',';
    }

    private List<LogColumn> columns(List<LogLine.Cell> cells, int line) {
        var columns = new ArrayList<LogColumn>();
        var taken = new HashMap<String, Integer>();
        var left = new ArrayList<String>();
        for (LogLine.Cell cell : cells) {
            if (isTime(cell.text())) {
                again(taken, "time", cell, line);
                columns.add(new LogColumn.Time(cell.text(), cell.column()));
                continue;
            }
            Optional<LogColumn.Read> read = channel(cell, line);
            read.ifPresent(r -> again(taken, r.channel().name(), cell, line));
            columns.add(
                    read.<LogColumn>map(r -> r)
                            .orElse(new LogColumn.Left(cell.text(), cell.column())));
            if (read.isEmpty() && !map.ignored().contains(cell.text())) {
                left.add(cell.text().isEmpty() ? "one without a name" : cell.text());
            }
        }
        if (!left.isEmpty() && faults.isEmpty()) {
            notes.add(
                    new Note(
                            file,
                            Kind.COLUMN_LEFT,
                            line,
                            left.size()
                                    + (left.size() == 1 ? " column is" : " columns are")
                                    + " not read: "
                                    + few(left)
                                    + "."));
        }
        missing(cells, line);
        return columns;
    }

    private static String few(List<String> heads) {
        var quoted = heads.stream().limit(8).map(Problems::quote).toList();
        return String.join(", ", quoted) + (heads.size() > 8 ? " and others" : "");
    }

    private void again(Map<String, Integer> taken, String name, LogLine.Cell cell, int line) {
        Integer before = taken.putIfAbsent(name, cell.column());
        if (before != null) {
            faults.add(
                    Code.DUPLICATE_KEY,
                    line,
                    cell.column(),
                    name,
                    "the column " + Problems.quote(name) + " again",
                    "each column once",
                    "It stands in column " + before + " of the line already.");
        }
    }

    private Optional<LogColumn.Read> channel(LogLine.Cell cell, int line) {
        LogMap.MappedColumn column = mapped.get(cell.text());
        if (column != null) {
            return names.mapped(column, cell, line);
        }
        return map.ignored().contains(cell.text()) ? Optional.empty() : names.own(cell, line);
    }

    /** What the map tells of and the log lacks is a slip in one of them. */
    private void missing(List<LogLine.Cell> cells, int line) {
        var heads = cells.stream().map(LogLine.Cell::text).toList();
        for (LogMap.MappedColumn column : map.columns()) {
            if (!heads.contains(column.head())) {
                notes.add(
                        new Note(
                                file,
                                Kind.COLUMN_LEFT,
                                line,
                                "The map tells of a column "
                                        + Problems.quote(column.head())
                                        + " that this log does not have."));
            }
        }
    }

    private static int time(List<LogColumn> columns) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i) instanceof LogColumn.Time) {
                return i;
            }
        }
        return 0;
    }

    /** Number of the first line of data; 0 where there is none. */
    private int firstRow(int head) {
        long data = text.facts().lines - head;
        for (int line = head + 1; line <= text.first().size(); line++) {
            if (!text.isLeft(line)) {
                return line;
            }
            data--;
        }
        return data > 0 ? head + 1 : 0;
    }
}
