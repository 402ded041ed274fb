package liftwright.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.answer.Cautions;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Section.Card;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Elevation;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import liftwright.report.CardHead;
import liftwright.report.Door;
import liftwright.report.Figures;
import liftwright.report.Look;

/** All that must stand on the pages of a card, walked from the card itself, blanks taken out. */
final class Expected {

    /** In the order of reading. */
    sealed interface Item {

        /** A heading; a page never ends with it. */
        record Title(String text) implements Item {}

        record Text(String text) implements Item {}

        /** A label with a rule to write on. */
        record Write(String text) implements Item {}

        /**
         * @param named whether the first column holds names
         */
        record Grid(List<String> heads, List<List<Cell>> rows, boolean named) implements Item {

            String head() {
                return String.join("", heads);
            }
        }
    }

    /**
     * @param large whether it is a value to stop at
     */
    record Cell(String text, boolean large) {}

    private final Figures figures;
    private final List<Item> items = new ArrayList<>();
    private final Typeface regular = Typeface.regular();
    private final Typeface bold = Typeface.bold();
    private final Door door = new Door(false);

    private Expected(UnitSystem units) {
        figures = new Figures(new Look(Look.WIDEST, false, false, units));
    }

    static List<Item> of(List<Card> cards, CardHead head, UnitSystem units) {
        var expected = new Expected(units);
        cards.forEach(card -> expected.card(card, head));
        return expected.items;
    }

    private void card(Card card, CardHead head) {
        text("Test card ", card.id(), " is ", card.state());
        items.add(new Item.Title(letters(card.title())));
        text(figures.sentence(card.purpose()));
        String name = head.rig().isBlank() ? head.file() : head.rig();
        text(
                String.join(
                                ", ",
                                name,
                                head.revision(),
                                "computed from " + head.file(),
                                head.digest(),
                                "by Liftwright " + head.version())
                        + ".");
        text(String.join(" ", Cautions.ALL));
        card.blocks().forEach(this::block);
    }

    private void block(Block block) {
        if (!block.title().isEmpty()) {
            items.add(new Item.Title(letters(block.title())));
        }
        switch (block) {
            case Block.Lines lines -> lines(lines);
            case Block.Rows rows -> table(rows.table());
            case Block.View view -> view(view.elevation());
        }
    }

    private void lines(Block.Lines lines) {
        for (int k = 0; k < lines.lines().size(); k++) {
            String said = figures.sentence(lines.lines().get(k));
            switch (lines.style()) {
                case NUMBER -> text((k + 1) + ".", said);
                case WRITE -> items.add(new Item.Write(letters(said)));
                case PLAIN, TICK -> text(said);
            }
        }
    }

    private void view(Elevation elevation) {
        for (int k = 0; k < elevation.loads().size(); k++) {
            Elevation.Load load = elevation.loads().get(k);
            text((k + 1) + ".", load.label() + ": " + figures.value(load.value()));
        }
        String out =
                elevation.shapes().stream()
                        .filter(s -> s.kind() == Elevation.Kind.KEEP_OUT && !s.label().isEmpty())
                        .map(Elevation.Shape::label)
                        .distinct()
                        .collect(Collectors.joining("; "));
        text(
                "Numbered arrows: loads, longer where they are stronger."
                        + " Broken lines: ropes and reach."
                        + (out.isEmpty()
                                ? ""
                                : " Hatched strip below the ground, torn where it goes on: "
                                        + out
                                        + "."));
    }

    private void table(Section.Table table) {
        boolean aborts = table.id().endsWith("aborts");
        boolean one = table.columns().contains("abort-value");
        items.add(
                new Item.Grid(
                        table.columns().stream()
                                .map(field -> letters(Fields.of(field).label()))
                                .toList(),
                        table.rows().stream()
                                .map(row -> row.stream().map(v -> cell(v, aborts, one)).toList())
                                .toList(),
                        table.rows().stream()
                                .allMatch(
                                        r -> r.getFirst().figure() instanceof Value.Figure.Words)));
    }

    private Cell cell(Value value, boolean aborts, boolean one) {
        boolean amount = value.figure() instanceof Value.Figure.Amount;
        return new Cell(
                value.field().equals("done") ? "" : letters(figures.value(value)),
                aborts && amount && (!one || value.field().equals("abort-value")));
    }

    private void text(String... pieces) {
        StringBuilder all = new StringBuilder();
        for (String piece : pieces) {
            all.append(letters(piece));
        }
        items.add(new Item.Text(all.toString()));
    }

    /** As the door of every report lets it through, in letters that the font has. */
    private String letters(String text) {
        return Typeface.letters(door.plain(text), regular, bold).replaceAll("[\\s\u00a0]+", "");
    }
}
