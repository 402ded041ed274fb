package liftwright.logbook.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.engine.Sql;
import liftwright.logbook.engine.Value;

/**
 * A log into Parquet in one pass of the engine: cells to numbers, units to SI. Rows with a cell
 * that is no number stay out, with their line and reason. The column of time is still as in the
 * file.
 */
final class Conversion {

    /** What says that nothing was measured, besides an empty cell and NaN. */
    private static final List<String> NOTHING =
            List.of("", " ", "  ", "-", "--", "n/a", "N/A", "NA", "na", "null", "NULL", "#N/A");

    /** How many rows that are no rows are kept in memory; a log with more is none. */
    static final int MOST_REJECTED = 200_000;

    /**
     * What came of it.
     *
     * @param parquet with {@code time} and a column for each channel
     * @param kept how many rows it has
     * @param rejected the others, by line
     * @param tooMany whether there are more than could be kept
     */
    record Converted(
            Path parquet, long kept, SortedMap<Long, Rejected.Row> rejected, boolean tooMany) {}

    private final Engine engine;
    private final LogText text;
    private final LogHead head;
    private final int number;
    private final double zeroS;

    /**
     * @param number of the source, for the names of temporary files
     * @param zeroS what is taken off times that count from 1970, s
     */
    Conversion(Engine engine, LogText text, LogHead head, int number, double zeroS) {
        this.engine = engine;
        this.text = text;
        this.head = head;
        this.number = number;
        this.zeroS = zeroS;
    }

    Converted run() throws IOException {
        Path parquet = engine.scratch().resolve("read-" + number + ".parquet");
        String rejects = "rejects_" + number;
        String scans = "scans_" + number;
        long kept =
                engine.run(
                                "COPY (SELECT "
                                        + select()
                                        + " FROM "
                                        + source(rejects, scans)
                                        + ") TO "
                                        + engine.path(parquet)
                                        + " (FORMAT parquet)")
                        .whole();
        var rejected = new TreeMap<Long, Rejected.Row>();
        text.facts()
                .broken
                .tailMap(head.line() + 1L)
                .forEach((line, why) -> rejected.put(line, new Rejected.Row(line, why, "")));
        var rows =
                engine.run(
                        "SELECT line, column_idx, error_type, csv_line FROM "
                                + rejects
                                + " ORDER BY line, column_idx LIMIT "
                                + MOST_REJECTED);
        for (List<Value> row : rows.rows()) {
            if (row.getFirst() instanceof Value.Whole(var line)) {
                rejected.putIfAbsent(line, reject(line, row));
            }
        }
        boolean tooMany = rows.rows().size() == MOST_REJECTED;
        engine.run("DROP TABLE IF EXISTS " + rejects);
        engine.run("DROP TABLE IF EXISTS " + scans);
        return new Converted(parquet, kept, rejected, tooMany);
    }

    private String source(String rejects, String scans) throws IOException {
        var types = new ArrayList<String>();
        for (int i = 0; i < head.columns().size(); i++) {
            boolean number =
                    switch (head.columns().get(i)) {
                        case LogColumn.Read _ -> true;
                        case LogColumn.Time _ -> head.clock() instanceof LogClock.Count;
                        case LogColumn.Left _ -> false;
                    };
            types.add("'c" + i + "': '" + (number ? "DOUBLE" : "VARCHAR") + "'");
        }
        return "read_csv("
                + engine.path(text.file())
                + ", auto_detect = false, header = false, skip = "
                + head.line()
                + ", delim = "
                + Sql.text(Character.toString(head.separator()))
                + ", quote = '\"', escape = '\"', decimal_separator = '"
                + head.decimal()
                + "', nullstr = "
                + Sql.list(NOTHING)
                + ", columns = {"
                + String.join(", ", types)
                + "}, max_line_size = "
                + 2 * Scan.LONGEST_LINE
                + ", store_rejects = true, rejects_limit = 0, rejects_table = '"
                + rejects
                + "', rejects_scan = '"
                + scans
                + "')";
    }

    private String select() {
        var all = new ArrayList<String>();
        all.add(time() + " AS time");
        for (int i = 0; i < head.columns().size(); i++) {
            if (head.columns().get(i) instanceof LogColumn.Read read) {
                all.add(value("c" + i, read) + " AS " + Sql.name(read.channel().name()));
            }
        }
        return String.join(", ", all);
    }

    /** SI; what is no finite number is nothing. */
    private static String value(String cell, LogColumn.Read read) {
        String x = cell;
        if (read.offset() != 0) {
            x = "(" + x + " + " + literal(read.offset()) + ")";
        }
        if (read.slope() != 1) {
            x = x + " * " + literal(read.slope());
        }
        if (read.zero() != 0) {
            x = x + " + " + literal(read.zero());
        }
        return "CASE WHEN isfinite(" + cell + ") THEN " + x + " END";
    }

    /** As the file has it, in s; of a day, s since midnight; dated, since 1970. */
    private String time() {
        String cell = "c" + head.time();
        return switch (head.clock()) {
            case LogClock.Count(var unitS, var _) -> {
                String counted =
                        zeroS == 0 ? cell : "(" + cell + " - " + literal(zeroS / unitS) + ")";
                yield "CASE WHEN isfinite("
                        + cell
                        + ") THEN "
                        + (unitS == 1 ? counted : counted + " * " + literal(unitS))
                        + " END";
            }
            case LogClock.OfDay _ -> "epoch(TRY_CAST(replace(" + cell + ", ',', '.') AS TIME))";
            case LogClock.Dated _ ->
                    "(epoch_us(TRY_CAST(replace("
                            + cell
                            + ", ',', '.') AS TIMESTAMPTZ)) - "
                            + Math.round(zeroS * 1e6)
                            + ") / 1e6";
        };
    }

    static String literal(double x) {
        return "CAST('" + x + "' AS DOUBLE)";
    }

    private Rejected.Row reject(long line, List<Value> row) {
        String type = row.get(2).plain();
        String raw = row.get(3).plain().strip();
        int column = row.get(1) instanceof Value.Whole(var index) ? (int) index : 0;
        return new Rejected.Row(line, reason(type, raw, column), cut(raw));
    }

    private String reason(String type, String raw, int column) {
        List<LogLine.Cell> cells = LogLine.cut(raw, head.separator());
        return switch (type) {
            case "CAST" -> {
                String cell =
                        column >= 1 && column <= cells.size() ? cells.get(column - 1).text() : "";
                String name =
                        column >= 1 && column <= head.columns().size()
                                ? head.columns().get(column - 1).head()
                                : "";
                yield "no number under “" + name + "”: “" + cut(cell, 40) + "”";
            }
            case "TOO MANY COLUMNS", "MISSING COLUMNS" ->
                    cells.size()
                            + (cells.size() == 1 ? " cell" : " cells")
                            + " instead of "
                            + head.columns().size();
            case "UNQUOTED VALUE" -> "text after a closing quote";
            default -> "a row that cannot be cut into cells";
        };
    }

    static String cut(String raw) {
        return cut(raw, 400);
    }

    private static String cut(String raw, int most) {
        return raw.length() > most ? raw.substring(0, most) + "…" : raw;
    }
}
