package liftwright.trials.words;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import liftwright.answer.Section;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.programme.Programme;

/** Looks into the blocks of a card. */
record Printed(List<Block> blocks) {

    static Printed of(Rig rig, CardId id) {
        return new Printed(CardText.of(facts(rig, id)));
    }

    static CardFacts facts(Rig rig, CardId id) {
        return CardFacts.of(rig, "sha-256", Programme.of(rig).card(id).orElseThrow());
    }

    Stream<Section.Table> tables() {
        return blocks.stream()
                .flatMap(
                        block ->
                                block instanceof Block.Rows(var table)
                                        ? Stream.of(table)
                                        : Stream.empty());
    }

    Optional<Section.Table> table(String ending) {
        return tables().filter(table -> table.id().endsWith("-" + ending)).findFirst();
    }

    Stream<Value> column(String ending, String column) {
        Section.Table table = table(ending).orElseThrow();
        int at = table.columns().indexOf(column);
        return table.rows().stream().map(row -> row.get(at));
    }

    /** Number of a field in a table. */
    double number(String ending, Predicate<Value> which) {
        return table(ending).orElseThrow().rows().stream()
                .flatMap(List::stream)
                .filter(which)
                .flatMapToDouble(Printed::amount)
                .findFirst()
                .orElseThrow();
    }

    static DoubleStream amount(Value value) {
        return value.figure() instanceof Value.Figure.Amount(double si, var _)
                ? DoubleStream.of(si)
                : DoubleStream.empty();
    }

    static String words(Value value) {
        return value.figure() instanceof Value.Figure.Words(var text) ? text : "";
    }

    List<String> lines(String title) {
        return blocks.stream()
                .filter(block -> block.title().equals(title))
                .flatMap(
                        block ->
                                block instanceof Block.Lines(var _, var _, var lines)
                                        ? lines.stream().map(Printed::text)
                                        : Stream.empty())
                .toList();
    }

    boolean has(String title) {
        return blocks.stream().anyMatch(block -> block.title().equals(title));
    }

    private static String text(Sentence sentence) {
        var out = new StringBuilder();
        for (Sentence.Part part : sentence.parts()) {
            switch (part) {
                case Sentence.Part.Words(var words) -> out.append(words);
                case Sentence.Part.Amount(var _, double si, var _) -> out.append(si);
            }
        }
        return out.toString();
    }
}
