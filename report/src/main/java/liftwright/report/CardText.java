package liftwright.report;

import java.util.List;
import java.util.function.Consumer;
import liftwright.answer.Section;
import liftwright.answer.Section.Card;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Sentence;

/** A test card for a terminal: to be read before it is printed, with room for nothing by hand. */
final class CardText {

    private static final int INDENT = 2;
    private static final int AFTER_BOX = 6;
    private static final int LEAST_RULE = 12;
    private static final int LONGEST_RULE = 30;

    private final Paper paper;
    private final Figures figures;
    private final Consumer<Section> others;

    /**
     * @param others writes tables and side views
     */
    CardText(Paper paper, Figures figures, Consumer<Section> others) {
        this.paper = paper;
        this.figures = figures;
        this.others = others;
    }

    void write(Card card) {
        paper.blank();
        paper.heading(card.title() + " (" + card.id() + "): " + card.state());
        paper.text(0, figures.sentence(card.purpose()));
        card.blocks().forEach(this::block);
    }

    private void block(Block block) {
        switch (block) {
            case Block.Lines lines -> lines(lines);
            case Block.Rows rows -> others.accept(rows.table());
            case Block.View view -> others.accept(view.elevation());
        }
    }

    private void lines(Block.Lines block) {
        if (!block.title().isEmpty()) {
            paper.heading(block.title());
        }
        List<Sentence> lines = block.lines();
        for (int k = 0; k < lines.size(); k++) {
            String text = figures.sentence(lines.get(k));
            switch (block.style()) {
                case PLAIN -> paper.block(INDENT, INDENT, Paper.Ink.PLAIN, text);
                case TICK -> paper.beside(INDENT, "[ ]", AFTER_BOX, text);
                case NUMBER -> paper.beside(INDENT, (k + 1) + ".", AFTER_BOX, text);
                case WRITE -> toWriteOn(text);
            }
        }
    }

    /** A rule behind the words, or below them where they leave too little room. */
    private void toWriteOn(String text) {
        int room = paper.columns() - INDENT - Columns.of(paper.plain(text)) - 1;
        if (room >= LEAST_RULE) {
            paper.text(INDENT, text + " " + "_".repeat(Math.min(room, LONGEST_RULE)));
        } else {
            paper.block(INDENT, INDENT + INDENT, Paper.Ink.PLAIN, text);
            paper.text(INDENT + INDENT, "_".repeat(LONGEST_RULE));
        }
    }
}
