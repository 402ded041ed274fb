package liftwright.rig.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import liftwright.rig.Problem.Code;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Files made to harm the reader end in a problem that names what they do. */
class HostileFileTest {

    private static final int LARGE = 1_000_000;

    static Stream<Arguments> files() {
        return Stream.of(
                file("brackets", "a: " + "[".repeat(LARGE), Code.TOO_DEEP),
                file("braces", "a: " + "{a: ".repeat(LARGE / 4), Code.TOO_DEEP),
                file("dashes", "- ".repeat(LARGE / 2), Code.TOO_DEEP),
                file("a staircase", staircase(), Code.TOO_DEEP),
                file("closed brackets", "[".repeat(1000) + "]".repeat(1000), Code.TOO_DEEP),
                file("ten megabytes", "a".repeat(10_000_000), Code.TOO_LARGE),
                file("many values", "a: [" + "1,".repeat(LARGE / 2 - 10) + "]", Code.TOO_LARGE),
                file("many keys", keys(), Code.TOO_LARGE),
                file("laughs", laughs(), Code.NOT_ALLOWED_IN_RIG_FILES),
                file("an alias of itself", "a: &a [*a]\n", Code.NOT_ALLOWED_IN_RIG_FILES),
                file(
                        "a tag that makes objects",
                        "a: !!java.net.URL [x]\n",
                        Code.NOT_ALLOWED_IN_RIG_FILES),
                file("a long key", "x".repeat(LARGE) + ": 1\n", Code.SYNTAX),
                file("an open quote", "a: \"" + "x ".repeat(LARGE / 2 - 10), Code.SYNTAX),
                file("slips without end", "a: b: c\n".repeat(LARGE / 8), Code.SYNTAX),
                file("colons", ":".repeat(LARGE), Code.SYNTAX),
                file("question marks", "? ".repeat(LARGE / 2), Code.NOT_ALLOWED_IN_RIG_FILES),
                file("control characters", "a\u0001: \u001b[31m\n", Code.NOT_TEXT),
                file("nothing but zeros", "\u0000".repeat(LARGE), Code.NOT_TEXT),
                file("letters from right to left", "fans: [{id: a\u202Eb}]\n", Code.NOT_TEXT),
                file("escaped controls", "rig: \"\\e[2J\\0\"\n", Code.NOT_TEXT));
    }

    private static Arguments file(String name, String text, Code code) {
        return Arguments.of(name, text.getBytes(UTF_8), code);
    }

    private static String staircase() {
        var text = new StringBuilder();
        for (int i = 0; i < 1000; i++) {
            text.append(" ".repeat(i)).append("a:\n");
        }
        return text.toString();
    }

    private static String keys() {
        var text = new StringBuilder();
        for (int i = 0; i < 90_000; i++) {
            text.append('k').append(i).append(": 1\n");
        }
        return text.toString();
    }

    private static String laughs() {
        var text = new StringBuilder("a: &a0 [x, x]\n");
        for (int i = 1; i < 30; i++) {
            text.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
        }
        return text.toString();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void isAProblem(String name, byte[] bytes, Code code) {
        var reading = RigReading.read("rig.yaml", bytes);
        assertThat(reading.rig()).as(name).isEmpty();
        assertThat(reading.problems()).as(name).extracting(p -> p.code()).contains(code);
        assertThat(reading.problems().size()).isLessThan(2000);
        assertThat(reading.problems())
                .allSatisfy(p -> assertThat(p.found().length()).isLessThan(500));
    }

    @Test
    void noiseIsReadWithoutAnException() {
        Seeded.check(
                300,
                random -> {
                    var bytes = new byte[random.nextInt(1, 400)];
                    String alphabet = "ab:-,{}[]#&*!|>'\"%@`?~ \n\r\t\\0😀\uFEFF\u0000";
                    if (random.nextBoolean()) {
                        random.nextBytes(bytes);
                    } else {
                        var text = new StringBuilder();
                        random.ints(bytes.length, 0, alphabet.length())
                                .forEach(i -> text.append(alphabet.charAt(i)));
                        bytes = text.toString().getBytes(UTF_8);
                    }
                    var reading = RigReading.read("rig.yaml", bytes);
                    assertThat(reading.rig()).isEmpty();
                    assertThat(reading.problems()).isNotEmpty();
                });
    }
}
