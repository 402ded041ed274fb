package liftwright.logbook.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.engine.Limits;
import liftwright.logbook.engine.Sql;

/**
 * Some stretches of neighbouring rows of a log: enough to see how it was recorded, however long it
 * is.
 *
 * @param timesS by stretch, s
 * @param values by channel and stretch, SI; no number where nothing was measured
 */
record Sampled(List<double[]> timesS, List<List<double[]>> values) {

    private static final int STRETCHES = 8;
    private static final int ROWS = 8192;
    private static final int MOST_VALUES = 4_000_000;

    static Sampled of(Engine engine, Path parquet, long rows, List<String> columns)
            throws IOException {
        int width = columns.size() + 2;
        int each = Math.min(ROWS, MOST_VALUES / STRETCHES / width);
        var where = new ArrayList<String>();
        boolean whole = rows <= (long) STRETCHES * each;
        for (int s = 0; s < STRETCHES && !whole; s++) {
            long first = (rows - each) * s / (STRETCHES - 1);
            where.add("file_row_number BETWEEN " + first + " AND " + (first + each - 1));
        }
        var select = new StringBuilder("SELECT file_row_number, time");
        columns.forEach(column -> select.append(", ").append(Sql.name(column)));
        double[][] n =
                engine.numbers(
                        select
                                + " FROM read_parquet("
                                + engine.path(parquet)
                                + ", file_row_number = true)"
                                + (whole ? "" : " WHERE " + String.join(" OR ", where))
                                + " ORDER BY file_row_number",
                        new Limits(STRETCHES * ROWS + 1, 1 << 28, Duration.ofMinutes(5)));
        return cut(n);
    }

    private static Sampled cut(double[][] n) {
        var times = new ArrayList<double[]>();
        var values = new ArrayList<List<double[]>>();
        for (int c = 2; c < n.length; c++) {
            values.add(new ArrayList<>());
        }
        int from = 0;
        for (int k = 1; k <= n[0].length; k++) {
            if (k == n[0].length || n[0][k] != n[0][k - 1] + 1) {
                times.add(Arrays.copyOfRange(n[1], from, k));
                for (int c = 2; c < n.length; c++) {
                    values.get(c - 2).add(Arrays.copyOfRange(n[c], from, k));
                }
                from = k;
            }
        }
        return new Sampled(times, values);
    }

    /** From one row to the next, the middle of all, s; 0 with a single row. */
    double usualStepS() {
        var steps = new ArrayList<Double>();
        for (double[] stretch : timesS) {
            for (int k = 1; k < stretch.length; k++) {
                double step = stretch[k] - stretch[k - 1];
                if (step > 0) {
                    steps.add(step);
                }
            }
        }
        steps.sort(null);
        return steps.isEmpty() ? 0 : steps.get(steps.size() / 2);
    }
}
