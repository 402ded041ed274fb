package liftwright.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Cautions;
import liftwright.answer.Section.Card;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import liftwright.report.CardHead;
import liftwright.report.Door;
import liftwright.report.Figures;
import liftwright.report.Look;
import liftwright.report.PaperSize;
import liftwright.report.RandomCard;
import liftwright.report.SampleCard;
import liftwright.testkit.Seeded;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class CardSheetTest {

    private static final Figures FIGURES =
            new Figures(new Look(Look.WIDEST, false, false, UnitSystem.SI));
    private static final Door DOOR = new Door(false);

    private static String sheet(List<Card> cards, CardHead head) {
        return CardSheet.html(cards, head, UnitSystem.SI, PaperSize.LETTER);
    }

    /** What a reader must find, in order; the places of cells among their heads may differ. */
    private static List<String> said(Card card) {
        List<String> said = new ArrayList<>(List.of(card.id(), card.state(), card.title()));
        said.add(FIGURES.sentence(card.purpose()));
        said.addAll(Cautions.ALL);
        for (Block block : card.blocks()) {
            said.add(block.title());
            switch (block) {
                case Block.Lines lines ->
                        lines.lines().forEach(line -> said.add(FIGURES.sentence(line)));
                case Block.Rows rows ->
                        rows.table()
                                .rows()
                                .forEach(
                                        row ->
                                                row.stream()
                                                        .filter(v -> !v.field().equals("done"))
                                                        .forEach(v -> said.add(FIGURES.value(v))));
                case Block.View view ->
                        view.elevation()
                                .loads()
                                .forEach(
                                        load ->
                                                said.add(
                                                        load.label()
                                                                + ": "
                                                                + FIGURES.value(load.value())));
            }
        }
        return said;
    }

    private static String bare(String text) {
        return text.replaceAll("[\\s\u00a0]+", "");
    }

    @Test
    void anyCardIsWholeWellFormedAndHarmless() {
        Seeded.check(
                100,
                random -> {
                    var made = new RandomCard(random);
                    List<Card> cards = List.of(made.next(), made.next());
                    String sheet = sheet(cards, made.head());
                    Page page = Page.of(sheet);
                    String text = bare(page.text());
                    int at = 0;
                    for (Card card : cards) {
                        for (String wanted : said(card)) {
                            int found = text.indexOf(bare(DOOR.plain(wanted)), at);
                            assertThat(found).as(wanted).isNotNegative();
                            at = found;
                        }
                    }
                    assertThat(page.all("script")).isEmpty();
                    assertThat(page.all("style")).hasSize(1);
                    assertThat(page.all("*"))
                            .noneMatch(e -> e.hasAttribute("style") || e.hasAttribute("onload"));
                    assertThat(page.all("*")).noneMatch(e -> e.hasAttribute("src"));
                });
    }

    /** Text from a file ends neither a string of the style sheet nor the sheet itself. */
    @Test
    void namesInTheMarginsOfPagesStayStrings() {
        Seeded.check(
                200,
                random -> {
                    var made = new RandomCard(random);
                    CardHead head = made.head();
                    String style =
                            Page.text(
                                    Page.of(sheet(List.of(made.next()), head))
                                            .all("style")
                                            .getFirst());
                    for (String content : style.split("content: ", -1)) {
                        if (!content.startsWith("\"")) {
                            continue;
                        }
                        String value = content.substring(0, content.indexOf("; text-align"));
                        assertThat(value)
                                .matches(
                                        "(\"([A-Za-z0-9 ]|\\\\[0-9a-f]{1,6} )*\"( \"\\\\a\" )?"
                                                + "|\"\\\\a\"| |counter\\(pages?\\))+");
                    }
                });
    }

    @Test
    void equalCardsGiveEqualBytesUnderTheSealOfAReview() {
        String sheet = sheet(List.of(SampleCard.firstSpin()), SampleCard.head());
        assertThat(sheet(List.of(SampleCard.firstSpin()), SampleCard.head())).isEqualTo(sheet);
        byte[] bytes = sheet.getBytes(StandardCharsets.UTF_8);
        assertThat(HtmlReport.isUnchanged(bytes)).isTrue();
        bytes[bytes.length - 20] ^= 1;
        assertThat(HtmlReport.isUnchanged(bytes)).isFalse();
    }

    @Test
    void boxesRulesAndLargeValuesStandWhereTheyAreAskedFor() {
        Card card = SampleCard.firstSpin();
        Page page = Page.of(sheet(List.of(card), SampleCard.head()));
        List<Element> all = page.all("*");
        assertThat(all.stream().filter(e -> e.getAttribute("class").equals("box")))
                .hasSize(3 + 3 + 6);
        assertThat(all.stream().filter(e -> e.getAttribute("class").startsWith("rule"))).hasSize(8);
        assertThat(
                        all.stream()
                                .filter(e -> e.getAttribute("class").equals("number abort"))
                                .map(Page::text))
                .contains(FIGURES.value(Value.of("pack-current", 12)).replace('\u00a0', ' '));
    }

    /** The widths that tables are planned with are those of the font that PDFs are set in. */
    @Test
    void lettersAreAsWideAsTheFontHasThem() throws java.io.IOException {
        try (var in =
                        CardSheet.class.getResourceAsStream(
                                "/liftwright/report/pdf/DejaVuSansCondensed-Bold.ttf");
                var font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()))) {
            for (char c = ' '; c < 0x7f; c++) {
                int glyph = font.getUnicodeCmapLookup().getGlyphId(c);
                double width = (double) font.getAdvanceWidth(glyph) / font.getUnitsPerEm();
                assertThat(Breadth.of(Character.toString(c)))
                        .as("%c", c)
                        .isBetween(width - 5e-4, width + 5e-4);
            }
        }
    }
}
