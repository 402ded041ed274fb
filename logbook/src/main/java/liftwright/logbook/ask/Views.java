package liftwright.logbook.ask;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.entry.SampleTable;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.quantity.Quantity;
import liftwright.trials.CardId;

/**
 * All tests as three views that can be asked in SQL: {@code tests} (a row each), {@code tracks} (a
 * row a channel), {@code samples} (a row a value, on the clock of its test). Numbers are SI.
 */
public final class Views {

    private Views() {}

    /**
     * Defines them.
     *
     * @throws IOException where a table is not as it was written, or the engine fails
     */
    public static void define(Engine engine, Logbook logbook) throws IOException {
        List<StoredTest> tests = logbook.tests();
        engine.define("tests", tests(tests));
        engine.define("tracks", tracks(tests));
        engine.define("samples", samples(engine, logbook, tests));
    }

    private static String tests(List<StoredTest> tests) {
        var rows = new ArrayList<String>();
        for (StoredTest test : tests) {
            TestEntry entry = test.entry();
            rows.add(
                    row(
                            text(test.id().text()),
                            "DATE " + text(entry.date().toString()),
                            text(entry.card().map(CardId::text).orElse("")),
                            number(entry.weather().air().map(Quantity::si)),
                            number(entry.weather().wind().map(Quantity::si)),
                            number(Listed.lastsS(entry)),
                            text(entry.note()),
                            text(entry.rig().digest()),
                            String.valueOf(entry.rig().revision())));
        }
        return view(
                rows,
                "test, date, card, air_k, wind_mps, lasts_s, note, rig, revision",
                "'', DATE '2000-01-01', '', 0.0, 0.0, 0.0, '', '', 0");
    }

    private static String tracks(List<StoredTest> tests) {
        var rows = new ArrayList<String>();
        for (StoredTest test : tests) {
            for (SampleTable table : test.entry().tables()) {
                for (SampleTable.Channel channel : table.channels()) {
                    rows.add(
                            row(
                                    text(test.id().text()),
                                    text(channel.name()),
                                    text(channel.signal().word()),
                                    text(channel.of()),
                                    number(channel.errorSi()),
                                    number(channel.errorShare()),
                                    text(table.source()),
                                    String.valueOf(table.rows()),
                                    String.valueOf(table.rowsRejected())));
                }
            }
        }
        return view(
                rows,
                "test, channel, signal, part, error_si, error_share, file, file_rows, rows_aside",
                "'', '', '', '', 0.0, 0.0, '', 0, 0");
    }

    private static String samples(Engine engine, Logbook logbook, List<StoredTest> tests)
            throws IOException {
        var parts = new ArrayList<String>();
        for (StoredTest test : tests) {
            for (SampleTable table : test.entry().tables()) {
                Path file = logbook.whole(test, table.file());
                for (SampleTable.Channel channel : table.channels()) {
                    String column = '"' + channel.name().replace("\"", "\"\"") + '"';
                    parts.add(
                            "SELECT "
                                    + text(test.id().text())
                                    + " AS test, "
                                    + text(channel.name())
                                    + " AS channel, time + "
                                    + number(table.clock().shiftS())
                                    + " AS time_s, CAST("
                                    + column
                                    + " AS DOUBLE) AS value FROM read_parquet("
                                    + engine.path(file)
                                    + ") WHERE "
                                    + column
                                    + " IS NOT NULL");
                }
            }
        }
        return parts.isEmpty()
                ? "SELECT '' AS test, '' AS channel, 0.0 AS time_s, 0.0 AS value WHERE false"
                : String.join(" UNION ALL ", parts);
    }

    private static String view(List<String> rows, String columns, String none) {
        return "SELECT * FROM (VALUES "
                + (rows.isEmpty() ? "(" + none + ")" : String.join(", ", rows))
                + ") AS t("
                + columns
                + ")"
                + (rows.isEmpty() ? " WHERE false" : "");
    }

    private static String row(String... cells) {
        return List.of(cells).stream().collect(Collectors.joining(", ", "(", ")"));
    }

    private static String text(String text) {
        return "'" + text.replace("'", "''") + "'";
    }

    private static String number(double x) {
        return "CAST('" + x + "' AS DOUBLE)";
    }

    private static String number(java.util.Optional<Double> x) {
        return x.map(Views::number).orElse("CAST(NULL AS DOUBLE)");
    }
}
