package liftwright.logbook.ask;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.logbook.ask.LogbookAnswer.About;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.entry.Note;
import liftwright.logbook.entry.SampleTable;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.entry.TestEntry.Weather;
import liftwright.logbook.store.Flaw;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityWriter;
import liftwright.trials.CardId;

/** One test, with all that is known of it. */
public final class Shown {

    private Shown() {}

    /**
     * @param standing of the card, in words, and how its pass is written down; empty without a card
     * @param outcome that was written down of it; may be empty
     * @param notes that were written later
     * @param flaws of the test's files
     */
    public record Beside(String standing, String outcome, List<Note> notes, List<Flaw> flaws) {
        public Beside {
            notes = List.copyOf(notes);
            flaws = List.copyOf(flaws);
        }
    }

    /**
     * @throws IOException where samples cannot be read
     */
    public static LogbookAnswer of(
            About about, Logbook logbook, StoredTest test, Beside beside, Engine engine)
            throws IOException {
        TestEntry entry = test.entry();
        boolean whole = beside.flaws().isEmpty();
        int channels = entry.tables().stream().mapToInt(t -> t.channels().size()).sum();
        var sections = new ArrayList<Section>();
        sections.add(facts(test, beside));
        sections.add(tables(entry));
        if (whole) {
            sections.add(channels(logbook, test, engine));
        }
        return LogbookAnswer.of(
                about,
                whole ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                Sentence.words(
                                "test "
                                        + test.id()
                                        + entry.card().map(card -> ", " + card).orElse("")
                                        + ": "
                                        + LogbookAnswer.counted(channels, "channel", "channels")
                                        + " over ")
                        .then(Measure.TIME, Listed.lastsS(entry))
                        .then(
                                whole
                                        ? "; every file is as it was written"
                                        : "; not every file is as it was written"),
                LogbookAnswer.findings(beside.flaws()),
                sections);
    }

    private static Section.Table facts(StoredTest test, Beside beside) {
        TestEntry entry = test.entry();
        var rows = new ArrayList<List<Value>>();
        fact(rows, "card", entry.card().map(CardId::text).orElse(""));
        fact(rows, "written down of it", beside.outcome());
        fact(rows, "the card today", beside.standing());
        fact(
                rows,
                "people",
                entry.people().stream()
                        .map(p -> p.role().isEmpty() ? p.name() : p.name() + " (" + p.role() + ")")
                        .collect(Collectors.joining(", ")));
        fact(rows, "weather", weather(entry.weather()));
        fact(rows, "note", entry.note());
        fact(rows, "cost", entry.cost());
        fact(rows, "hours", entry.hours().map(QuantityWriter::write).orElse(""));
        fact(rows, "instruments", String.join(", ", entry.instruments()));
        entry.media()
                .forEach(
                        medium ->
                                fact(
                                        rows,
                                        "picture or film",
                                        medium.file()
                                                + (medium.what().isEmpty()
                                                        ? ""
                                                        : ", " + medium.what())
                                                + ", "
                                                + medium.digest()));
        beside.notes()
                .forEach(
                        note ->
                                fact(
                                        rows,
                                        "later, " + note.date(),
                                        note.text()
                                                + (note.by().isEmpty()
                                                        ? ""
                                                        : " (" + note.by() + ")")));
        entry.tables()
                .forEach(
                        table ->
                                fact(
                                        rows,
                                        "reading of " + table.source(),
                                        String.join(" ", table.notes())));
        fact(rows, "rig", "revision " + entry.rig().revision() + ", " + entry.rig().digest());
        fact(rows, "all files", test.digest());
        return new Section.Table(
                "test-facts", "What is known", List.of("log-fact", "log-said"), rows);
    }

    static void fact(List<List<Value>> rows, String what, String said) {
        if (!said.isEmpty()) {
            rows.add(List.of(Value.words("log-fact", what), Value.words("log-said", said)));
        }
    }

    static String weather(Weather weather) {
        var words = new ArrayList<String>();
        weather.air().ifPresent(air -> words.add("air " + written(air)));
        weather.pressure().ifPresent(p -> words.add("pressure " + written(p)));
        weather.humidity().ifPresent(h -> words.add("humidity " + written(h)));
        weather.wind().ifPresent(wind -> words.add("wind " + written(wind)));
        weather.gust().ifPresent(gust -> words.add("gusts " + written(gust)));
        return String.join(", ", words);
    }

    private static String written(Quantity quantity) {
        return QuantityWriter.write(quantity);
    }

    private static Section.Table tables(TestEntry entry) {
        var rows = new ArrayList<List<Value>>();
        for (SampleTable table : entry.tables()) {
            rows.add(
                    List.of(
                            Value.words("log-source", table.source()),
                            Value.of("log-rows", (double) table.rows()),
                            Value.of("rows-aside", (double) table.rowsRejected()),
                            Value.of("clock-shift", table.clock().shiftS()),
                            table.clock()
                                    .confidence()
                                    .map(share -> Value.of("clock-confidence", share))
                                    .orElseGet(() -> Value.words("clock-confidence", "")),
                            Value.words("clock-how", table.clock().how())));
        }
        return new Section.Table(
                "test-files",
                "Files that were read in",
                List.of(
                        "log-source",
                        "log-rows",
                        "rows-aside",
                        "clock-shift",
                        "clock-confidence",
                        "clock-how"),
                rows);
    }

    private static Section.Table channels(Logbook logbook, StoredTest test, Engine engine)
            throws IOException {
        var rows = new ArrayList<List<Value>>();
        for (SampleTable table : test.entry().tables()) {
            for (Extremes found :
                    Extremes.of(engine, logbook.whole(test, table.file()), table.channels())) {
                rows.add(row(found));
            }
        }
        return new Section.Table(
                "test-channels",
                "Channels",
                List.of(
                        "channel",
                        "channel-samples",
                        "channel-least",
                        "channel-mean",
                        "channel-greatest",
                        "channel-error"),
                rows);
    }

    private static List<Value> row(Extremes found) {
        SampleTable.Channel channel = found.channel();
        double error = Math.hypot(channel.errorSi(), channel.errorShare() * Math.abs(found.mean()));
        return List.of(
                Value.words("channel", channel.name()),
                Value.of("channel-samples", (double) found.samples()),
                Readings.of(channel.signal(), found.least()),
                Readings.of(channel.signal(), found.mean()),
                Readings.of(channel.signal(), found.most()),
                error > 0
                        ? Readings.difference(channel.signal(), error, java.util.Optional.empty())
                        : Value.words("channel-error", "not told"));
    }
}
