package liftwright.report.html;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import liftwright.answer.Cautions;
import liftwright.answer.Section.Card;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.quantity.UnitSystem;
import liftwright.report.CardHead;
import liftwright.report.Figures;

/** One card: what it is, what no calculation can do, then its blocks in order. */
final class CardHtml {

    /** So many rules to write on, or so many lines, stand on one page with their heading. */
    private static final int SHORT_LIST = 8;

    private static final int FEW = 3;

    /** A heading with the first lines below it, pt. */
    private static final double BEGINS_PT = 80;

    /** Height of a step of {@link #needs}, pt, and how many there are. */
    private static final int NEEDS_STEP = 20;

    private static final int NEEDS_MOST = 30;

    private final Markup page;
    private final Figures figures;
    private final UnitSystem units;
    private final UnaryOperator<String> letters;
    private final double roomPt;

    CardHtml(
            Markup page,
            Figures figures,
            UnitSystem units,
            UnaryOperator<String> letters,
            double roomPt) {
        this.page = page;
        this.figures = figures;
        this.units = units;
        this.letters = letters;
        this.roomPt = roomPt;
    }

    /** Whether it has a picture. */
    static boolean isDrawn(Card card) {
        return card.blocks().stream().anyMatch(block -> block instanceof Block.View);
    }

    /** Empty, to be ticked by hand. */
    static void box(Markup page) {
        page.element("span", "", "class", "box", "role", "img", "aria-label", "box to tick");
    }

    /**
     * @param number of the card on the sheet, from 1
     */
    void write(Card card, CardHead head, int number) {
        String id = "card" + number;
        page.element(
                "article",
                () -> {
                    head(card, head, id);
                    cautions(card);
                    for (int k = 0; k < card.blocks().size(); k++) {
                        block(card.blocks().get(k), id + "-" + (k + 1));
                    }
                },
                "class",
                "card " + id,
                "aria-labelledby",
                id);
    }

    private void head(Card card, CardHead head, String id) {
        page.element(
                "p",
                () -> {
                    page.text("Test card ").element("strong", card.id()).text(" is ");
                    page.element("strong", card.state(), "class", "state");
                },
                "class",
                "kicker");
        page.element("h1", card.title(), "id", id);
        page.element("p", figures.sentence(card.purpose()), "class", "purpose");
        page.element(
                "p",
                head.name()
                        + ", "
                        + head.revision()
                        + ", computed from "
                        + head.file()
                        + ", "
                        + head.digest()
                        + ", by Liftwright "
                        + head.version()
                        + ".",
                "class",
                "ids");
    }

    /** Those that no line of the card says already. */
    private void cautions(Card card) {
        List<String> said =
                card.blocks().stream()
                        .flatMap(
                                block ->
                                        block instanceof Block.Lines lines
                                                ? lines.lines().stream()
                                                : Stream.<Sentence>empty())
                        .map(figures::sentence)
                        .toList();
        List<String> left =
                Cautions.ALL.stream().filter(caution -> !said.contains(caution)).toList();
        if (!left.isEmpty()) {
            page.element("p", String.join(" ", left), "class", "cautions");
        }
    }

    private void block(Block block, String id) {
        switch (block) {
            case Block.Lines lines -> lines(lines, id);
            case Block.Rows rows -> {
                var table = new CardTable(page, figures, letters, roomPt, rows.table());
                section(
                        rows.title(),
                        id,
                        (table.isShort() ? "whole " : "long ") + needs(table.beginsPt()),
                        () -> table.write(id));
            }
            case Block.View view ->
                    page.element(
                            "section",
                            () ->
                                    new ElevationPicture(page, figures, units, view.elevation())
                                            .draw(id),
                            "class",
                            "whole");
        }
    }

    /** Class of what begins on the next page where less room is left on this one. */
    static String needs(double heightPt) {
        long steps = Math.clamp(Math.round(Math.ceil(heightPt / NEEDS_STEP)), 1, NEEDS_MOST);
        return "needs" + steps;
    }

    /** Style of the classes of {@link #needs}. */
    static String needs() {
        var style = new StringBuilder();
        for (int k = 1; k <= NEEDS_MOST; k++) {
            style.append(".needs" + k + " { -fs-page-break-min-height: " + k * NEEDS_STEP)
                    .append("pt; }\n");
        }
        return style.toString();
    }

    private void section(String title, String id, String style, Runnable inside) {
        page.element(
                "section",
                () -> {
                    if (!title.isEmpty()) {
                        page.element("h2", title, "id", id);
                    }
                    inside.run();
                },
                "class",
                style);
    }

    private void lines(Block.Lines block, String id) {
        section(
                block.title(),
                id,
                isShort(block) ? "whole" : "long " + needs(BEGINS_PT),
                () -> {
                    switch (block.style()) {
                        case PLAIN -> block.lines().forEach(line -> page.element("p", said(line)));
                        case TICK -> page.element("ul", () -> ticks(block), "class", "ticks");
                        case NUMBER -> page.element("ol", () -> steps(block));
                        case WRITE ->
                                page.element("table", () -> toWriteOn(block), "class", "write");
                    }
                });
    }

    /** Rules to write on stand together as long as they can. */
    private static boolean isShort(Block.Lines block) {
        return block.lines().size() <= (block.style() == Style.WRITE ? SHORT_LIST : FEW);
    }

    private void ticks(Block.Lines block) {
        for (Sentence line : block.lines()) {
            page.element(
                    "li",
                    () -> {
                        box(page);
                        page.text(said(line));
                    });
        }
    }

    private void steps(Block.Lines block) {
        block.lines().forEach(line -> page.element("li", said(line)));
    }

    /** Each with its rule to write on, never parted from it. */
    private void toWriteOn(Block.Lines block) {
        page.element(
                "tbody",
                () ->
                        block.lines()
                                .forEach(
                                        line ->
                                                page.element(
                                                        "tr",
                                                        () -> {
                                                            page.element(
                                                                    "th",
                                                                    said(line),
                                                                    "scope",
                                                                    "row",
                                                                    "class",
                                                                    "w42");
                                                            page.element(
                                                                    "td", "", "class", "rule w58");
                                                        })));
    }

    private String said(Sentence sentence) {
        return figures.sentence(sentence);
    }
}
