package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoorTest {

    private final Door wide = new Door(false);
    private final Door narrow = new Door(true);

    @ParameterizedTest
    @CsvSource({
        "27, <U+1B>", // escape: starts every command to a terminal
        "155, <U+9B>", // the same in one character, for old terminals
        "8, <U+8>",
        "10, <U+A>",
        "13, <U+D>",
        "8206, <U+200E>",
        "8238, <U+202E>", // turns what follows around
        "8294, <U+2066>",
        "8203, <U+200B>",
        "65279, <U+FEFF>",
        "8232, <U+2028>",
        "57344, <U+E000>",
        "55357, <U+D83D>" // half a character
    })
    void whatActsIsWrittenAsItsCode(int character, String written) {
        String text = "a" + Character.toString(character) + "b";
        assertThat(wide.plain(text)).isEqualTo("a" + written + "b");
        assertThat(narrow.plain(text)).isEqualTo("a" + written + "b");
    }

    @Test
    void lettersOfTheWorldStayWhereTheyCanBeShown() {
        assertThat(wide.plain("Möwe 山鹡 чибис ± 4 Ω")).isEqualTo("Möwe 山鹡 чибис ± 4 Ω");
        assertThat(narrow.plain("Möwe ± 4 Ω")).isEqualTo("M<U+F6>we +/- 4 ohm");
    }

    @Test
    void marksDoNotClimb() {
        assertThat(wide.plain("e\u0301")).isEqualTo("e\u0301");
        assertThat(wide.plain("e" + "\u0301".repeat(4))).isEqualTo("e\u0301\u0301<U+301><U+301>");
    }

    @Test
    void aWordThatNoLineHoldsSaysHowLongItWas() {
        String shown = wide.plain("see " + "x".repeat(10_000) + " there");
        assertThat(shown).hasSizeLessThan(100).contains("10000 characters").endsWith(" there");
        assertThat(wide.plain("x".repeat(72))).isEqualTo("x".repeat(72));
    }

    @Test
    void anythingMayComeAndNothingActs() {
        Seeded.check(
                2000,
                random -> {
                    String text = text(random);
                    for (Door door : new Door[] {wide, narrow}) {
                        String shown = door.plain(text);
                        assertThat(shown.codePoints().filter(DoorTest::acts)).isEmpty();
                        assertThat(door.plain(shown)).as("escaped twice").isEqualTo(shown);
                    }
                    assertThat(narrow.plain(text).codePoints())
                            .allMatch(c -> c < 0x7f || c == Door.NO_BREAK_SPACE);
                });
    }

    static String text(RandomGenerator random) {
        var text = new StringBuilder();
        int length = random.nextInt(120);
        for (int i = 0; i < length; i++) {
            switch (random.nextInt(4)) {
                case 0 -> text.append((char) random.nextInt(0x10000));
                case 1 -> text.append(' ');
                case 2 -> text.appendCodePoint(random.nextInt(0x10ffff));
                default -> text.append((char) ('!' + random.nextInt(90)));
            }
        }
        return text.toString();
    }

    private static boolean acts(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.PRIVATE_USE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }
}
