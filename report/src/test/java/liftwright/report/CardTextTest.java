package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.answer.Section.Card;
import liftwright.answer.Section.Card.Block;
import liftwright.quantity.UnitSystem;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class CardTextTest {

    private static String text(Card card, int columns, boolean ascii) {
        return TextReport.sections(List.of(card), new Look(columns, ascii, false, UnitSystem.SI));
    }

    @Test
    void anyCardFitsTheTerminalAndSaysEveryLine() {
        Seeded.check(
                200,
                random -> {
                    Card card = new RandomCard(random).next();
                    boolean ascii = random.nextBoolean();
                    int columns = random.nextInt(40, Look.WIDEST + 1);
                    String text = text(card, columns, ascii);
                    assertThat(text.lines())
                            .allSatisfy(
                                    line ->
                                            assertThat(Columns.of(line))
                                                    .isLessThanOrEqualTo(columns));
                    if (ascii) {
                        assertThat(text.chars()).allMatch(c -> c == '\n' || (c >= ' ' && c < 0x7f));
                    }
                    String bare = text.replaceAll("\\s+", "");
                    var figures = new Figures(new Look(columns, ascii, false, UnitSystem.SI));
                    var door = new Door(ascii);
                    for (Block block : card.blocks()) {
                        if (block instanceof Block.Lines lines) {
                            lines.lines()
                                    .forEach(
                                            line ->
                                                    assertThat(bare)
                                                            .contains(
                                                                    door.plain(
                                                                                    figures
                                                                                            .sentence(
                                                                                                    line))
                                                                            .replaceAll(
                                                                                    "[\\s\u00a0]+",
                                                                                    "")));
                        }
                    }
                });
    }

    @Test
    void linesCarryWhatAHandNeeds() {
        String text = text(SampleCard.firstSpin(), Look.WIDEST, true);
        assertThat(text)
                .contains("First spin of one bare fan (first-spin.F140): closed")
                .contains("  [ ] Ear and eye protection on everybody\n")
                .contains("  1.  The bench is bolted down")
                .contains("  Test lead, at the remote ____");
    }
}
