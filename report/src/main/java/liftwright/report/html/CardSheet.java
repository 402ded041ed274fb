package liftwright.report.html;

import java.util.List;
import java.util.function.UnaryOperator;
import liftwright.answer.Section.Card;
import liftwright.quantity.UnitSystem;
import liftwright.report.CardHead;
import liftwright.report.Figures;
import liftwright.report.Look;
import liftwright.report.PaperSize;

/**
 * Test cards as one sheet of HTML, made to be printed and written on: large letters, nothing that
 * rests on colour, each card on pages of its own that name rig, revision, digest and card. Without
 * script, without anything from outside; equal cards give equal bytes.
 */
public final class CardSheet {

    /** On the sides, mm. */
    static final double SIDE_MM = 15;

    /** The card that is one page, whatever stands on it: the sheet of a day. */
    private static final String ONE_PAGE = "today";

    private static final double TOP_MM = 21;
    private static final double FOOT_MM = 15;
    private static final int LONGEST_NAME = 44;

    private final List<Card> cards;
    private final CardHead head;
    private final PaperSize paper;
    private final CardHtml body;
    private final Markup page;
    private final UnaryOperator<String> letters;

    private CardSheet(
            List<Card> cards,
            CardHead head,
            UnitSystem units,
            PaperSize paper,
            UnaryOperator<String> letters) {
        if (cards.isEmpty()) {
            throw new IllegalArgumentException("a sheet without a card");
        }
        this.cards = List.copyOf(cards);
        this.head = head;
        this.paper = paper;
        this.letters = letters;
        page = new Markup(letters);
        double roomPt = (paper.widthMm() - 2 * SIDE_MM) / 25.4 * 72;
        var figures = new Figures(new Look(Look.WIDEST, false, false, units));
        body = new CardHtml(page, figures, units, letters, roomPt);
    }

    /**
     * For a browser: well-formed, complete in itself, sealed as a review is ({@link
     * HtmlReport#isUnchanged}).
     *
     * @param cards in the order to print; at least one
     * @param head what every page says of the rig
     * @param units of every number
     * @param paper to print on
     * @return the sheet, to be written as UTF-8
     */
    public static String html(List<Card> cards, CardHead head, UnitSystem units, PaperSize paper) {
        var sheet = new CardSheet(cards, head, units, paper, UnaryOperator.identity());
        sheet.page.own("<!doctype html>\n").own(Seal.blank()).own("\n");
        sheet.write(sheet.style() + Styles.read("card-screen.css") + Styles.read("pictures.css"));
        return Seal.sealed(sheet.page.toString());
    }

    /**
     * For a machine that sets pages: the same markup as XML, without what only a screen needs.
     *
     * @param letters what becomes of a text so that the machine's font has all of it
     */
    public static String pages(
            List<Card> cards,
            CardHead head,
            UnitSystem units,
            PaperSize paper,
            UnaryOperator<String> letters) {
        var sheet = new CardSheet(cards, head, units, paper, letters);
        sheet.write(sheet.style());
        return sheet.page.toString();
    }

    private void write(String style) {
        page.element(
                "html",
                () -> {
                    page.element("head", () -> head(style));
                    page.element("body", this::body);
                },
                "lang",
                "en");
    }

    private void head(String style) {
        page.empty("meta", "charset", "utf-8");
        page.empty(
                "meta", "http-equiv", "Content-Security-Policy", "content", Styles.policy(style));
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.empty("meta", "name", "color-scheme", "content", "light");
        page.empty("meta", "name", "description", "content", "Test cards of " + head.name());
        page.element("title", head.name() + ": test cards by Liftwright " + head.version());
        page.element("style", () -> page.own(style));
    }

    private void body() {
        if (cards.stream().anyMatch(CardHtml::isDrawn)) {
            Hatches.define(page);
        }
        page.element(
                "main",
                () -> {
                    for (int k = 0; k < cards.size(); k++) {
                        body.write(cards.get(k), head, k + 1);
                    }
                });
    }

    private String style() {
        var style = new StringBuilder(Styles.read("card.css"));
        // Lines are as wide as pages without a name have room, whatever page they come to stand on.
        style.append("@page { " + box() + "}\n");
        for (int k = 0; k < cards.size(); k++) {
            style.append(pagesOf(cards.get(k), k + 1));
            if (cards.get(k).id().equals(ONE_PAGE)) {
                style.append(close("\n.card" + (k + 1)));
            }
        }
        for (int percent = 1; percent <= 100; percent++) {
            style.append(".w" + percent + " { width: " + percent + "%; }\n");
        }
        return style.append(CardHtml.needs()).toString();
    }

    /** Letters and lines of a sheet that is one page, after all other rules. */
    private static String close(String card) {
        return card
                + " { font-size: 9.5pt; line-height: 1.22; }"
                + card
                + " h1 { font-size: 15pt; margin: 0 0 2pt; }"
                + card
                + " h2 { font-size: 11pt; margin: 0 0 2pt; padding: 2pt 0 1pt; }"
                + card
                + " section { margin: 6pt 0 0; }"
                + card
                + " p { margin: 0 0 2pt; }"
                + card
                + " .purpose { font-size: 10.5pt; line-height: 1.2; }"
                + card
                + " .ids { font-size: 8.5pt; }"
                + card
                + " .cautions { margin: 4pt 0 0; padding: 3pt 7pt; }"
                + card
                + " th, "
                + card.strip()
                + " td { padding: 1pt 4pt; }"
                + card
                + " .write th { padding: 4pt 6pt 1pt 0; }"
                + card
                + " .write td { height: 15pt; }\n";
    }

    /** The pages of one card: what stands in their margins. */
    private String pagesOf(Card card, int number) {
        String left = cut(head.name()) + ", " + head.revision();
        return "@page card"
                + number
                + " { "
                + box()
                + margin("top-left", "left", text(left) + lineEnd() + text(digest()))
                + margin(
                        "top-right",
                        "right",
                        text("card " + cut(card.id()))
                                + lineEnd()
                                + "\"page \" counter(page) \" of \" counter(pages)")
                + margin(
                        "bottom-left",
                        "left",
                        text("A calculation, not a certificate. Nothing on it is permission."))
                + "}\n.card"
                + number
                + " { page: card"
                + number
                + "; }\n";
    }

    private String box() {
        return "size: "
                + paper.css()
                + "; margin: "
                + TOP_MM
                + "mm "
                + SIDE_MM
                + "mm "
                + FOOT_MM
                + "mm; ";
    }

    private static String margin(String box, String side, String content) {
        return "@"
                + box
                + " { content: "
                + content
                + "; text-align: "
                + side
                + "; vertical-align: "
                + (box.startsWith("top") ? "bottom; padding-bottom: 7pt" : "top; padding-top: 5pt")
                + "; white-space: pre; font: 9pt/1.35 \"DejaVu Sans Condensed\", \"Helvetica"
                + " Neue\", Arial, sans-serif; }\n";
    }

    private static String lineEnd() {
        return " \"\\a\" ";
    }

    private String digest() {
        return "rig file " + head.shortDigest();
    }

    private String text(String words) {
        return Styles.quoted(letters.apply(words));
    }

    private static String cut(String words) {
        String plain = Markup.plain(words);
        int letters = plain.codePointCount(0, plain.length());
        return letters <= LONGEST_NAME
                ? plain
                : plain.substring(0, plain.offsetByCodePoints(0, LONGEST_NAME - 1)) + "…";
    }
}
