package liftwright.trials.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import liftwright.answer.Section;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.rig.Declaration;
import liftwright.rig.RigPath;
import liftwright.trials.Channel;
import liftwright.trials.Reading;

/** What is printed on a card for measuring, put together block by block. */
final class Sheet {

    private final Asked asked;
    private final List<Sentence> steps = new ArrayList<>();
    private final List<Sentence> good = new ArrayList<>();
    private final Set<Sentence> write = new LinkedHashSet<>();
    private final Set<Sentence> notes = new LinkedHashSet<>();
    private final List<Section.Table> tables = new ArrayList<>();
    private final List<Instruments.Used> tools = new ArrayList<>();

    Sheet(Asked asked) {
        this.asked = asked;
    }

    /** The next thing to do. */
    void step(String text) {
        steps.add(Sentence.words(text));
    }

    void step(Sentence sentence) {
        steps.add(sentence);
    }

    /** What a reading has to be. */
    void good(Sentence sentence) {
        good.add(sentence);
    }

    void good(String text) {
        good.add(Sentence.words(text));
    }

    /** What is not told, left out or taken. */
    void note(String text) {
        notes.add(Sentence.words(text));
    }

    void note(Sentence sentence) {
        notes.add(sentence);
    }

    /** A further table, behind that of the readings. */
    void table(String id, String title, List<String> columns, List<List<Value>> rows) {
        if (!rows.isEmpty()) {
            tables.add(new Section.Table(id(id), title, columns, rows));
        }
    }

    /** Something that lays out rather than reads: a tape. */
    void tool(Channel.Instrument instrument, Measure measure) {
        tools.add(new Instruments.Used(instrument, measure));
    }

    /**
     * A value that goes into the rig file.
     *
     * @param at its place there
     * @param halfWidthSi the ± to write beside it: that of the instrument
     */
    void write(RigPath at, Measure measure, double halfWidthSi) {
        write.add(
                Sentence.words(key(at) + ": ________ ± ")
                        .then(measure, rounded(halfWidthSi))
                        .then("   at " + at + now(at)));
    }

    /**
     * The same in words of one's own.
     *
     * @param line as it will stand there
     */
    void write(RigPath at, String line) {
        write.add(Sentence.words(line + "   at " + at + now(at)));
    }

    /** A doubt is not known to more than two digits. */
    static double rounded(double si) {
        return si == 0 || !Double.isFinite(si)
                ? si
                : new BigDecimal(si).round(new MathContext(2)).doubleValue();
    }

    private static String key(RigPath at) {
        return at.segments().getLast();
    }

    private String now(RigPath at) {
        return asked.rig()
                .declaration()
                .at(at)
                .map(
                        tree ->
                                switch (tree) {
                                    case Declaration.Tree.Text(String value) ->
                                            "; now “" + value + "”";
                                    case Declaration.Tree.Entries _, Declaration.Tree.Items _ ->
                                            "; something stands there now";
                                })
                .orElse("; nothing stands there now");
    }

    /** The finished card, all readings in one list. */
    Measured done(Predicted predicted) {
        return done(predicted, readings(predicted.readings()));
    }

    /**
     * The same with the readings in another form.
     *
     * @param readings a table of its own id
     */
    Measured done(Predicted predicted, Section.Table readings) {
        leftOut(predicted);
        List<Block> blocks = new ArrayList<>();
        lines(blocks, "How to measure", Style.NUMBER, steps);
        rows(blocks, instruments(predicted.readings()));
        rows(blocks, readings);
        tables.forEach(table -> rows(blocks, table));
        lines(blocks, "What counts as good", Style.TICK, good);
        lines(blocks, "To write into the rig file", Style.WRITE, write.stream().toList());
        lines(blocks, "Taken, left out, not told", Style.PLAIN, notes.stream().toList());
        return new Measured(blocks, predicted.readings());
    }

    private void leftOut(Predicted predicted) {
        if (predicted.impossible() > 0) {
            note(
                    predicted.impossible()
                            + " of "
                            + predicted.draws()
                            + " draws of the declared doubt gave a rig that cannot be or does not"
                            + " get there; a band rests on those that did");
        }
        if (!predicted.readings().isEmpty()) {
            note(
                    "A band holds 95 % of what should be read: doubt of the rig file, of set-up"
                            + " and instrument, and what the law leaves out, drawn together. A reading"
                            + " outside it is news: read again, then find out why before going on.");
        }
    }

    /** Says what the laws behind the readings leave out, each once. */
    void leftOut(List<Wanted> wanted) {
        for (Wanted one : wanted) {
            Doubts.LeftOut left = one.leftOut();
            if (!left.why().isEmpty()) {
                note(
                        Sentence.words("Left out by the law, up to −")
                                .then(Measure.PERCENT, left.lessShare())
                                .then(" or +")
                                .then(Measure.PERCENT, left.moreShare())
                                .then(": " + left.why()));
            }
        }
    }

    private Section.Table instruments(List<Reading> readings) {
        Set<List<Value>> rows = new LinkedHashSet<>();
        Stream.concat(
                        readings.stream()
                                .map(Reading::channel)
                                .map(c -> new Instruments.Used(c.instrument(), c.measure())),
                        tools.stream())
                .forEach(used -> rows.add(instrument(used)));
        return new Section.Table(
                id("instruments"),
                "Instruments",
                List.of(
                        "measuring-instrument",
                        "measuring-error",
                        "measuring-error-share",
                        "measuring-origin"),
                List.copyOf(rows));
    }

    private static List<Value> instrument(Instruments.Used used) {
        Channel.Instrument one = used.instrument();
        return List.of(
                Value.words("measuring-instrument", one.words()),
                one.errorSi() > 0
                        ? Value.of(ReadingField.error(used.measure()), rounded(one.errorSi()))
                        : Value.words("measuring-error", "none"),
                Value.of("measuring-error-share", one.errorShare()),
                Value.words("measuring-origin", one.origin()));
    }

    private Section.Table readings(List<Reading> readings) {
        return new Section.Table(
                id("readings"),
                "What should be read",
                List.of("measuring-what", "measuring-reading"),
                readings.stream()
                        .map(
                                reading ->
                                        List.of(
                                                Value.words(
                                                        "measuring-what", reading.channel().part()),
                                                Value.of(
                                                        reading.channel().field(),
                                                        reading.expectedSi(),
                                                        reading.band())))
                        .toList());
    }

    /** Of a table of this card. */
    String id(String end) {
        return asked.card().id().kind().id() + "-" + end;
    }

    private static void lines(List<Block> blocks, String title, Style style, List<Sentence> lines) {
        if (!lines.isEmpty()) {
            blocks.add(new Block.Lines(title, style, lines));
        }
    }

    private static void rows(List<Block> blocks, Section.Table table) {
        if (!table.rows().isEmpty()) {
            blocks.add(new Block.Rows(table));
        }
    }
}
