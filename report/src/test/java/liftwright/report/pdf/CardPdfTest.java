package liftwright.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section.Card;
import liftwright.quantity.UnitSystem;
import liftwright.report.CardHead;
import liftwright.report.PaperSize;
import liftwright.report.RandomCard;
import liftwright.report.SampleCard;
import liftwright.report.pdf.Printed.Letter;
import liftwright.report.pdf.Printed.Page;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CardPdfTest {

    private static final double MM = 72 / 25.4;
    private static final double SIDE = 15 * MM;
    private static final double TOP = 21 * MM;
    private static final double FOOT = 15 * MM;

    /** Twice the finest step of the page setter. */
    private static final double FINE = 0.2;

    private static void judge(
            List<Card> cards, CardHead head, UnitSystem units, PaperSize paper, byte[] pdf) {
        Printed printed = Printed.of(pdf);
        nothingCutOrOverlaid(printed, paper);
        Reading.of(printed, Expected.of(cards, head, units), TOP, FOOT);
        for (int k = 0; k < printed.pages().size(); k++) {
            String margins = margins(printed.pages().get(k));
            assertThat(margins)
                    .contains("page" + (k + 1) + "of" + printed.pages().size())
                    .contains("Acalculation,notacertificate.")
                    .contains("rigfile" + head.shortDigest())
                    .contains(head.revision().replace(" ", ""));
        }
    }

    /** Every letter lies within the margins of its page, and on no other. */
    static void nothingCutOrOverlaid(Printed printed, PaperSize paper) {
        assertThat(printed.pages()).isNotEmpty();
        for (Page page : printed.pages()) {
            assertThat(page.width()).isBetween(paper.widthMm() * MM - 1, paper.widthMm() * MM + 1);
            assertThat(page.height())
                    .isBetween(paper.heightMm() * MM - 1, paper.heightMm() * MM + 1);
            assertThat(outside(page)).isEmpty();
            assertThat(meeting(page)).isEmpty();
        }
    }

    private static List<String> outside(Page page) {
        return page.letters().stream()
                .filter(
                        letter ->
                                letter.left() < SIDE - FINE
                                        || letter.left() + letter.width()
                                                > page.width() - SIDE + FINE
                                        || letter.foot() - letter.size() < 8 * MM
                                        || letter.foot() > page.height() - 8 * MM)
                .map(letter -> letter + " in " + line(page, letter))
                .toList();
    }

    private static String line(Page page, Letter letter) {
        StringBuilder line = new StringBuilder();
        for (Letter other : page.letters()) {
            if (Math.abs(other.foot() - letter.foot()) < 1) {
                line.append(other.text());
            }
        }
        return line.toString();
    }

    /** Pairs of letters that share more than a hair. */
    private static List<String> meeting(Page page) {
        List<String> found = new ArrayList<>();
        List<Letter> letters =
                page.letters().stream()
                        .sorted((a, b) -> Double.compare(a.foot(), b.foot()))
                        .toList();
        List<Rectangle2D> bodies = letters.stream().map(Letter::body).toList();
        for (int i = 0; i < bodies.size(); i++) {
            Rectangle2D one = bodies.get(i);
            for (int j = i + 1; j < bodies.size(); j++) {
                if (letters.get(j).foot() - letters.get(i).foot() > 30) {
                    break;
                }
                if (!one.intersects(bodies.get(j))) {
                    continue;
                }
                Rectangle2D both = one.createIntersection(bodies.get(j));
                if (both.getWidth() > FINE && both.getHeight() > FINE) {
                    found.add(letters.get(i) + " meets " + letters.get(j));
                }
            }
        }
        return found;
    }

    private static String margins(Page page) {
        StringBuilder text = new StringBuilder();
        for (Letter letter : page.letters()) {
            if (letter.foot() <= TOP || letter.foot() >= page.height() - FOOT) {
                text.append(letter.text());
            }
        }
        return text.toString();
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void allOfACardStandsOnItsPagesInOrder(PaperSize paper) {
        List<Card> cards = List.of(SampleCard.firstSpin(), SampleCard.firstSpin());
        for (UnitSystem units : UnitSystem.values()) {
            byte[] pdf = CardPdf.write(cards, SampleCard.head(), units, paper);
            judge(cards, SampleCard.head(), units, paper, pdf);
        }
    }

    @Test
    void nothingOfAnyCardIsLostCutOrOverlaid() {
        Seeded.check(
                25,
                random -> {
                    var made = new RandomCard(random);
                    List<Card> cards = new ArrayList<>();
                    int count = random.nextInt(1, 3);
                    for (int k = 0; k < count; k++) {
                        cards.add(made.next());
                    }
                    CardHead head = made.head();
                    PaperSize paper = random.nextBoolean() ? PaperSize.A4 : PaperSize.LETTER;
                    byte[] pdf = CardPdf.write(cards, head, UnitSystem.SI, paper);
                    judge(cards, head, UnitSystem.SI, paper, pdf);
                });
    }

    @Test
    void equalCardsGiveEqualBytesUnderASeal() {
        List<Card> cards = List.of(SampleCard.firstSpin());
        byte[] pdf = CardPdf.write(cards, SampleCard.head(), UnitSystem.SI, PaperSize.A4);
        assertThat(CardPdf.write(cards, SampleCard.head(), UnitSystem.SI, PaperSize.A4))
                .isEqualTo(pdf);
        assertThat(CardPdf.isUnchanged(pdf)).isTrue();
        for (int at : new int[] {9, pdf.length / 2, pdf.length - 2}) {
            byte[] other = pdf.clone();
            other[at] ^= 1;
            assertThat(CardPdf.isUnchanged(other)).isFalse();
        }
        assertThat(CardPdf.isUnchanged(new byte[0])).isFalse();
    }
}
