package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import liftwright.quantity.UnitSystem;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaperTest {

    @Test
    void noLineIsWiderThanTheTerminalAndNoLetterIsLost() {
        Seeded.check(
                1500,
                random -> {
                    var look =
                            new Look(
                                    40 + random.nextInt(61),
                                    random.nextBoolean(),
                                    false,
                                    UnitSystem.SI);
                    var paper = new Paper(look);
                    String text = DoorTest.text(random);
                    int indent = random.nextInt(20);
                    if (random.nextBoolean()) {
                        paper.block(indent, random.nextInt(20), Paper.Ink.PLAIN, text);
                    } else {
                        paper.beside(indent, "", indent + 1, text);
                    }
                    String shown = paper.toString();
                    assertThat(shown.lines()).allMatch(line -> Columns.of(line) <= look.columns());
                    assertThat(withoutSpaces(shown)).isEqualTo(withoutSpaces(paper.plain(text)));
                });
    }

    @Test
    void textStaysBesideItsWord() {
        var paper = new Paper(Sample.look(40));
        paper.beside(2, "word", 10, "one two three four five six seven eight nine");
        assertThat(paper.toString())
                .isEqualTo(
                        """
                          word    one two three four five six
                                  seven eight nine
                        """);
    }

    @Test
    void aWordTooWideForItsMarginTakesALine() {
        var paper = new Paper(Sample.look(40));
        paper.beside(2, "a long word", 10, "text");
        assertThat(paper.toString()).isEqualTo("  a long word\n          text\n");
    }

    @Test
    void aNumberKeepsItsUnit() {
        var paper = new Paper(Sample.look(40));
        paper.text(0, "x".repeat(35) + " 412\u00a0N of lift");
        assertThat(paper.toString()).isEqualTo("x".repeat(35) + "\n412 N of lift\n");
    }

    @Test
    void colourOnlyRepeats() {
        var plain = new Paper(Sample.look(40));
        var coloured = new Paper(new Look(40, false, true, UnitSystem.SI));
        for (Paper paper : new Paper[] {plain, coloured}) {
            paper.heading("Findings");
            paper.beside(0, Paper.Ink.STOPS, "STOPS", 8, "some text that is long enough to wrap");
        }
        assertThat(coloured.toString()).contains("\u001b[1;31mSTOPS\u001b[0m");
        assertThat(coloured.toString().replaceAll("\u001b\\[[0-9;]*m", ""))
                .isEqualTo(plain.toString());
    }

    @ParameterizedTest
    @CsvSource({"abc, 3", "山鹡, 4", "🚁, 2", "e\u0301, 1", "±Ω, 2", "'', 0"})
    void columnsAreThoseOfATerminal(String text, int columns) {
        assertThat(Columns.of(text)).isEqualTo(columns);
    }

    @Test
    void aCutTextSaysThatItWasCut() {
        assertThat(Columns.cut("installation", 12)).isEqualTo("installation");
        assertThat(Columns.cut("installation", 8)).isEqualTo("install~");
        assertThat(Columns.cut("山鹡山鹡", 5)).isEqualTo("山鹡~");
    }

    private static String withoutSpaces(String text) {
        return text.codePoints()
                .filter(c -> c != ' ' && c != '\n' && c != Door.NO_BREAK_SPACE)
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
    }
}
