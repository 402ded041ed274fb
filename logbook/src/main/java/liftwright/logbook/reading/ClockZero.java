package liftwright.logbook.reading;

import java.io.IOException;
import java.util.List;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.engine.Sql;
import liftwright.logbook.engine.Value;

/** What a clock that tells the date shows in the first row, in whole seconds. */
final class ClockZero {

    private final Engine engine;
    private final LogText text;
    private final LogHead head;

    ClockZero(Engine engine, LogText text, LogHead head) {
        this.engine = engine;
        this.text = text;
        this.head = head;
    }

    /** Seconds since 1970; 0 where the clock tells no date. */
    double findS() throws IOException {
        boolean dated =
                head.clock() instanceof LogClock.Dated
                        || (head.clock() instanceof LogClock.Count count && count.epoch());
        for (int line = head.line() + 1; dated && line <= text.first().size(); line++) {
            if (text.isLeft(line)) {
                continue;
            }
            List<LogLine.Cell> cells = LogLine.cut(text.first().get(line - 1), head.separator());
            double s = head.time() < cells.size() ? seconds(cells.get(head.time()).text()) : 0;
            if (s != 0) {
                return Math.floor(s);
            }
        }
        return 0;
    }

    private double seconds(String cell) throws IOException {
        String number = Sql.text(cell.replace(',', '.'));
        String sql =
                switch (head.clock()) {
                    case LogClock.Count(var unitS, var _) ->
                            "SELECT TRY_CAST("
                                    + number
                                    + " AS DOUBLE) * "
                                    + Conversion.literal(unitS);
                    case LogClock.Dated _ ->
                            "SELECT epoch_us(TRY_CAST(" + number + " AS TIMESTAMPTZ)) / 1e6";
                    case LogClock.OfDay _ -> "SELECT 0.0";
                };
        Value value = engine.run(sql).rows().getFirst().getFirst();
        return value instanceof Value.Real(var x) && Double.isFinite(x) ? x : 0;
    }
}
