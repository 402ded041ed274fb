package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Problem;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Section;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What was probably meant, and names from people who mean no good. */
class HintsTest {

    @Test
    void oneSlipOfTheFingerStillNamesTheKey() {
        List<Section> sections = List.copyOf(Shape.sections().values());
        Seeded.check(
                2000,
                random -> {
                    Section section = sections.get(random.nextInt(sections.size()));
                    var names = section.keys().stream().map(Key::name).toList();
                    String key = names.get(random.nextInt(names.size()));
                    if (key.length() < 5) {
                        return; // one letter of "at" may mean anything
                    }
                    int at = random.nextInt(key.length() - 1);
                    String slip =
                            switch (random.nextInt(4)) {
                                case 0 -> key.substring(0, at) + key.substring(at + 1);
                                case 1 -> key.substring(0, at) + "q" + key.substring(at);
                                case 2 -> key.substring(0, at) + "q" + key.substring(at + 1);
                                default ->
                                        key.substring(0, at)
                                                + key.charAt(at + 1)
                                                + key.charAt(at)
                                                + key.substring(at + 2);
                            };
                    // another key may be just as near, as "left hip" is to "left hips"
                    assertThat(Nearest.to(slip, names))
                            .get()
                            .matches(hint -> hint.equals(key) || distance(slip, hint) <= 1, key);
                });
    }

    /** Levenshtein's distance by its definition, with neighbours exchanged counted as one. */
    private static int distance(String a, String b) {
        if (a.isEmpty() || b.isEmpty()) {
            return Math.max(a.length(), b.length());
        }
        if (a.charAt(0) == b.charAt(0)) {
            return distance(a.substring(1), b.substring(1));
        }
        if (Math.abs(a.length() - b.length()) > 1) {
            return 9;
        }
        int least = 9;
        if (a.substring(1).equals(b.substring(1))
                || a.substring(1).equals(b)
                || a.equals(b.substring(1))) {
            least = 1;
        }
        if (a.length() > 1
                && b.length() > 1
                && a.charAt(0) == b.charAt(1)
                && a.charAt(1) == b.charAt(0)
                && a.substring(2).equals(b.substring(2))) {
            least = 1;
        }
        return least;
    }

    @ParameterizedTest
    @CsvSource({
        "no load current, no-load current",
        "no_load_current, no-load current",
        "Pole Pairs, pole pairs",
        "kv, ''",
        "winding, ''",
        "completely different, ''"
    })
    void hintsOverlookCaseAndHyphensAndKeepQuietOtherwise(String given, String hint) {
        assertThat(
                        Nearest.to(
                                        given,
                                        List.of("no-load current", "pole pairs", "speed constant"))
                                .orElse(""))
                .isEqualTo(hint);
    }

    @Test
    void aKeyThatBelongsElsewhereIsSentThere() {
        String text = Good.text().replace("motor: {", "motor: {top speed: 30000 rpm, ");
        assertThat(Texts.errors(Texts.read(text)))
                .singleElement()
                .extracting(Problem::advice)
                .isEqualTo("It is a key of rotor.");
    }

    static Stream<String> hostile() {
        return Stream.of(
                "<script>alert(1)</script>",
                "../../etc/passwd",
                "a\\u001b[31mred",
                "\\u202egnp.exe",
                "\\u0000",
                "=cmd()",
                "-rf",
                "a\\nb",
                "a\\tb",
                " a",
                "a ",
                "a  b",
                "a.b",
                "con:",
                "%s%n",
                "\\ud83d\\ude00",
                "x".repeat(49));
    }

    @ParameterizedTest
    @org.junit.jupiter.params.provider.MethodSource("hostile")
    void hostileNamesAreRefusedAndRepeatedHarmlessly(String name) {
        String text = Good.text().replace("id: shell", "id: \"" + name.replace("..", ".") + "\"");
        var reading =
                liftwright.rig.text.YamlText.read(
                        "rig.yaml", text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        if (reading.root().isEmpty() || !reading.problems().isEmpty()) {
            return; // refused as text already
        }
        Read read = RigReader.read("rig.yaml", reading.root().get());
        assertThat(read.rig()).isEmpty();
        assertThat(Texts.errors(read))
                .extracting(Problem::code)
                .containsExactly(Problem.Code.BAD_ID);
        for (Problem problem : read.problems()) {
            assertThat(problem.found() + problem.expected() + problem.advice())
                    .doesNotContainPattern("[\\p{Cc}\\p{Cf}]");
            assertThat(problem.found().length()).isLessThan(100);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"left pod shell", "Größe", "rück-wand 2", "前", "p7", "a_b", "C80+"})
    void ordinaryNamesOfAnyLanguageAreGood(String name) {
        assertThat(Texts.errors(Texts.read(Good.text().replace("id: shell", "id: " + name))))
                .isEmpty();
    }

    @Test
    void theRigsOwnNameMayBeAnything() {
        assertThat(
                        Texts.rig(Good.text().replace("rig: Small", "rig: \"<b>“Small”</b> 😀\""))
                                .name())
                .isEqualTo("<b>“Small”</b> 😀");
    }
}
