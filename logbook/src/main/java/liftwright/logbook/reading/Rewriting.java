package liftwright.logbook.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.logbook.engine.Engine;

/** A converted log once more, without what is set aside or repeated. Only where there is any. */
final class Rewriting {

    private final Engine engine;
    private final String from;
    private final List<String> columns;

    /**
     * @param columns their names in quotes
     */
    Rewriting(Engine engine, Path parquet, List<String> columns) throws IOException {
        this.engine = engine;
        this.from = "read_parquet(" + engine.path(parquet) + ", file_row_number = true)";
        this.columns = columns;
    }

    /** With a day added from each of these rows on. */
    Path pastMidnight(List<Long> midnights, Path to) throws IOException {
        String days =
                midnights.stream()
                        .limit(30)
                        .map(row -> "(file_row_number >= " + row + ")::INT")
                        .collect(Collectors.joining(" + "));
        return copy(
                "SELECT time + 86400.0 * ("
                        + days
                        + ") AS time, "
                        + String.join(", ", columns)
                        + " FROM "
                        + from
                        + " ORDER BY file_row_number",
                to);
    }

    /**
     * @param late rows that go
     * @param held for each column, how many rows a value stands in: it stays in the first of them
     */
    Path without(List<Clocking.Aside> late, List<Integer> held, Path to) throws IOException {
        String rows = late(late);
        var inner = new ArrayList<String>();
        var middle = new ArrayList<String>();
        var outer = new ArrayList<String>();
        for (int c = 0; c < columns.size(); c++) {
            String column = columns.get(c);
            if (held.get(c) < 2) {
                outer.add(column);
                continue;
            }
            inner.add(
                    "CASE WHEN "
                            + column
                            + " IS DISTINCT FROM lag("
                            + column
                            + ") OVER (ORDER BY n) THEN n END AS b"
                            + c);
            middle.add("max(b" + c + ") OVER (ORDER BY n ROWS UNBOUNDED PRECEDING) AS r" + c);
            outer.add(
                    "CASE WHEN (n - r"
                            + c
                            + ") % "
                            + apart(held.get(c))
                            + " = 0 THEN "
                            + column
                            + " END AS "
                            + column);
        }
        String all = "SELECT *, file_row_number AS n FROM " + from + rows;
        String begun = inner.isEmpty() ? all : "SELECT *, " + list(inner) + " FROM (" + all + ")";
        String run =
                middle.isEmpty() ? begun : "SELECT *, " + list(middle) + " FROM (" + begun + ")";
        Path done = copy("SELECT time, " + list(outer) + " FROM (" + run + ") ORDER BY n", to);
        engine.run("DROP TABLE IF EXISTS late");
        return done;
    }

    /** A value that stays is shown again somewhat later than usual: runs differ by a row or two. */
    private static int apart(int held) {
        return held + Math.max(1, held / 3);
    }

    private String late(List<Clocking.Aside> late) throws IOException {
        if (late.isEmpty()) {
            return "";
        }
        engine.run("CREATE OR REPLACE TEMP TABLE late (n BIGINT)");
        for (int k = 0; k < late.size(); k += 1000) {
            String some =
                    late.subList(k, Math.min(k + 1000, late.size())).stream()
                            .map(aside -> "(" + aside.row() + ")")
                            .collect(Collectors.joining(", "));
            engine.run("INSERT INTO late VALUES " + some);
        }
        return " WHERE file_row_number NOT IN (SELECT n FROM late)";
    }

    private static String list(List<String> texts) {
        return String.join(", ", texts);
    }

    private Path copy(String select, Path to) throws IOException {
        engine.run("COPY (" + select + ") TO " + engine.path(to) + " (FORMAT parquet)");
        return to;
    }
}
