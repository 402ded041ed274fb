package liftwright.app;

import java.io.IOException;
import java.util.List;
import liftwright.answer.JsonText;
import liftwright.logbook.ask.Views;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.engine.EngineException;
import liftwright.logbook.engine.Limits;
import liftwright.logbook.engine.Rows;
import liftwright.logbook.engine.Value;
import liftwright.logbook.store.Logbook;
import liftwright.report.TextReport;

/** {@code log query}: all tests asked in SQL. */
record LogQuery(Voice voice, Options options) {

    /** Name of what {@code --json} writes. */
    static final String SCHEMA = "liftwright/log-query/1.0";

    Exit ask(Logbook logbook, String sql) throws IOException {
        try (Engine engine = LogVerb.engine(logbook)) {
            Views.define(engine, logbook);
            Rows rows = engine.ask(sql, Limits.OF_A_QUESTION);
            voice.answer(options.json() ? json(rows) + "\n" : text(rows));
            return Exit.CLEAR;
        } catch (EngineException e) {
            throw new UsageException(e.sentence());
        }
    }

    private String text(Rows rows) {
        List<List<String>> cells =
                rows.rows().stream()
                        .map(row -> row.stream().map(LogQuery::plain).toList())
                        .toList();
        boolean[] right = new boolean[rows.columns().size()];
        for (int c = 0; c < right.length; c++) {
            right[c] = isNumbers(rows, c);
        }
        String count = rows.rows().size() == 1 ? "1 row" : rows.rows().size() + " rows";
        return TextReport.rows(
                rows.cut() ? "The first " + count + ": there are more" : count,
                rows.columns(),
                cells,
                right,
                options.look());
    }

    private static boolean isNumbers(Rows rows, int column) {
        return rows.rows().stream()
                .map(row -> row.get(column))
                .allMatch(v -> v instanceof Value.Real || v instanceof Value.Whole);
    }

    private static String plain(Value value) {
        return value instanceof Value.Real(var x) && x == Math.rint(x) && Math.abs(x) < 1e15
                ? Long.toString((long) x)
                : value.plain();
    }

    private static String json(Rows rows) {
        var json = new JsonText();
        json.object(
                () -> {
                    json.member("schema", SCHEMA);
                    json.texts("columns", rows.columns());
                    json.each(
                            "rows",
                            rows.rows(),
                            row -> json.array(() -> row.forEach(value -> cell(json, value))));
                    json.name("cut").truth(rows.cut());
                });
        return json.toString();
    }

    private static void cell(JsonText json, Value value) {
        switch (value) {
            case Value.None() -> json.nothing();
            case Value.Truth(var is) -> json.truth(is);
            case Value.Whole(var n) -> json.whole(n);
            case Value.Real(var x) -> {
                if (Double.isFinite(x)) {
                    json.number(x);
                } else {
                    json.nothing(); // JSON has no other number
                }
            }
            case Value.Text(var text) -> json.text(text);
        }
    }
}
