package liftwright.logbook.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.engine.Limits;

/**
 * Looks at the times of a log that was converted. They shall rise; rows at which they do not are
 * set aside, unless they are so many that the file holds more than one recording.
 */
final class Clocking {

    /** A day, s: a clock of the day that goes back by more than half of it went past midnight. */
    private static final double DAY_S = 86_400;

    /**
     * What a clock tells.
     *
     * @param rows how many, all
     * @param without how many have no time
     * @param notRising how many do not come after the one before
     * @param firstS least time, s
     * @param lastS greatest, s
     * @param greatestStepS from one row to the next, s
     */
    record Clock(
            long rows,
            long without,
            long notRising,
            double firstS,
            double lastS,
            double greatestStepS) {

        boolean rises() {
            return without == 0 && notRising == 0 && rows > 0;
        }
    }

    /**
     * A row that is set aside.
     *
     * @param row of the Parquet file, from 0
     * @param why 0 no time, 1 leaps ahead and comes back, 2 the same row again, 3 goes back
     * @param timeS its time, s
     * @param beforeS the greatest before, s
     */
    record Aside(long row, int why, double timeS, double beforeS) {}

    private static final Limits LONG = new Limits(1_000_000, 1 << 28, Duration.ofMinutes(10));

    private final Engine engine;
    private final String from;

    Clocking(Engine engine, Path parquet) throws IOException {
        this.engine = engine;
        this.from = "read_parquet(" + engine.path(parquet) + ", file_row_number = true)";
    }

    Clock clock() throws IOException {
        double[][] n =
                engine.numbers(
                        "SELECT count(*), count(*) - count(time),"
                                + " coalesce(sum(CASE WHEN step <= 0 THEN 1 ELSE 0 END), 0),"
                                + " coalesce(min(time), 0), coalesce(max(time), 0),"
                                + " coalesce(max(step), 0) FROM (SELECT time,"
                                + " time - lag(time) OVER () AS step FROM "
                                + from
                                + ")",
                        LONG);
        return new Clock((long) n[0][0], (long) n[1][0], (long) n[2][0], n[3][0], n[4][0], n[5][0]);
    }

    /** Rows after which a clock of the day begins anew at midnight. */
    List<Long> midnights() throws IOException {
        double[][] n =
                engine.numbers(
                        "SELECT n FROM (SELECT file_row_number AS n, time - lag(time) OVER (ORDER"
                                + " BY file_row_number) AS step FROM "
                                + from
                                + " WHERE time IS NOT NULL) WHERE step < "
                                + -DAY_S / 2
                                + " ORDER BY n",
                        LONG);
        var rows = new ArrayList<Long>();
        for (double row : n[0]) {
            rows.add((long) row);
        }
        return rows;
    }

    /** Every row that cannot stay, in the order of the file. */
    List<Aside> asides(List<String> columns, int most) throws IOException {
        var same = new StringBuilder("true");
        for (String column : columns) {
            same.append(" AND ").append(column).append(" IS NOT DISTINCT FROM lag(");
            same.append(column).append(") OVER w");
        }
        String timed =
                "SELECT file_row_number AS n, time, lag(time) OVER w AS before, lead(time) OVER w"
                        + " AS after, ("
                        + same
                        + ") AS alike FROM "
                        + from
                        + " WHERE time IS NOT NULL WINDOW w AS (ORDER BY file_row_number)";
        String leap = "coalesce(time > after AND (before IS NULL OR after > before), false)";
        String rest =
                "SELECT n, time, time = before AND alike AS again, max(time) OVER (ORDER BY n"
                        + " ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING) AS top FROM timed"
                        + " WHERE NOT "
                        + leap;
        String all =
                "WITH timed AS ("
                        + timed
                        + "), rest AS ("
                        + rest
                        + ") SELECT file_row_number AS n, 0 AS why, 0.0 AS time, 0.0 AS top FROM "
                        + from
                        + " WHERE time IS NULL UNION ALL SELECT n, 1, time, coalesce(before, time)"
                        + " FROM timed WHERE "
                        + leap
                        + " UNION ALL SELECT n, CASE WHEN again THEN 2 ELSE 3 END, time, top FROM"
                        + " rest WHERE time <= top ORDER BY 1 LIMIT "
                        + most;
        double[][] n = engine.numbers(all, LONG);
        var asides = new ArrayList<Aside>();
        for (int k = 0; k < n[0].length; k++) {
            asides.add(new Aside((long) n[0][k], (int) n[1][k], n[2][k], n[3][k]));
        }
        return asides;
    }
}
