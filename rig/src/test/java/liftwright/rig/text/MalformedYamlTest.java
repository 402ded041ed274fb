package liftwright.rig.text;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is wrong as YAML: code and place of every problem, written by hand. */
class MalformedYamlTest {

    static Stream<Arguments> malformed() {
        return Stream.of(
                // syntax
                file("a: b: c\n", "SYNTAX 1:5 a"),
                file("a: 1\n  b: 2\n", "SYNTAX 2:3 a"),
                file("fans\n  b: 2\nc: 3\n", "SYNTAX 1:1 "),
                file("a: 1\nfans\nb: 2\n", "SYNTAX 2:1 "),
                file("a: {b: 1\nc: 2\n", "SYNTAX 1:4 a"),
                file("a: [1, 2\nb: 3\n", "SYNTAX 1:4 a"),
                file("a: [1, 2}\n", "SYNTAX 1:9 a/2"),
                file("a: {b: 1 c: 2}\n", "SYNTAX 1:11 a"),
                file("a: {b: 1}}\n", "SYNTAX 1:10 "),
                file("a: \"never closed\nb: 2\n", "SYNTAX 1:4 a"),
                file("a: 'x' y\n", "SYNTAX 1:8 "),
                file("a: \"\\q\"\n", "SYNTAX 1:6 a"),
                file("a: @x\n", "SYNTAX 1:4 a"),
                file("a: `x`\n", "SYNTAX 1:4 a"),
                file("a: %x\n", "SYNTAX 1:4 a"),
                file("a: - b\n", "SYNTAX 1:4 a"),
                file("a: }\n", "SYNTAX 1:4 a"),
                file("a: [1,,2]\n", "SYNTAX 1:7 a/1"),
                file("a: |3x\n  y\n", "SYNTAX 1:4 a"),
                file("a:\n  b: 1\n c: 2\n", "SYNTAX 3:2 "),
                file("a: 1\n- b\n", "SYNTAX 2:1 "),
                file("- a\nb: 1\n", "SYNTAX 2:1 1"),
                file(": x\n", "SYNTAX 1:1 "),
                file("a:\n\tb: 1\nc: 2\n", "SYNTAX 2:1 a"),
                file("a:\n  b: 1\n \tc: 2\n", "SYNTAX 3:2 a"),
                file("{a: 1} b\n", "SYNTAX 1:8 "),
                // one slip hides no other
                file(
                        "a: b: c\nd: {x: 1\ne: &f 3\ng: 1\ng: 2\nh: @\n",
                        "SYNTAX 1:5 a",
                        "SYNTAX 2:4 d",
                        "NOT_ALLOWED_IN_RIG_FILES 3:4 e",
                        "DUPLICATE_KEY 5:1 ",
                        "SYNTAX 6:4 h"),
                // columns count code points, a byte order mark has none
                file("\uFEFF😀: 'x' y\r\n", "SYNTAX 1:8 "),
                file("\uFEFFa: 1\r\n😀: &x 1\r\n", "NOT_ALLOWED_IN_RIG_FILES 2:4 😀"),
                // more than rig files need
                file(
                        "a: &x 1\nb: *x\n",
                        "NOT_ALLOWED_IN_RIG_FILES 1:4 a",
                        "NOT_ALLOWED_IN_RIG_FILES 2:4 b"),
                file("a: {b: &x {c: 1}}\n", "NOT_ALLOWED_IN_RIG_FILES 1:8 a/b"),
                file("f:\n- id: left\n  m: !!str 1\n", "NOT_ALLOWED_IN_RIG_FILES 3:6 f/left/m"),
                file("f:\n- 1\n- !x 2\n", "NOT_ALLOWED_IN_RIG_FILES 3:3 f/2"),
                file("a: & b\n", "NOT_ALLOWED_IN_RIG_FILES 1:4 a"),
                file("a: * b\n", "NOT_ALLOWED_IN_RIG_FILES 1:4 a"),
                file("a:\n  <<: {b: 1}\n", "NOT_ALLOWED_IN_RIG_FILES 2:3 a"),
                file("? a\n: b\n", "NOT_ALLOWED_IN_RIG_FILES 1:1 "),
                file("? [a, b]\n: c\nd: 1\n", "NOT_ALLOWED_IN_RIG_FILES 1:3 "),
                file(
                        "{[a, b]: c, {d: e}: {f: [g]}, h: 1}\n",
                        "NOT_ALLOWED_IN_RIG_FILES 1:2 ",
                        "NOT_ALLOWED_IN_RIG_FILES 1:13 "),
                file("%YAML 1.2\n---\na: 1\n", "NOT_ALLOWED_IN_RIG_FILES 1:1 "),
                file("%FOO bar\n---\na: 1\n", "NOT_ALLOWED_IN_RIG_FILES 1:1 "),
                file("# c\n%FOO\na: 1\n", "NOT_ALLOWED_IN_RIG_FILES 2:1 "),
                file("a: 1\n---\nb: 2\n", "NOT_ALLOWED_IN_RIG_FILES 2:1 "),
                file("m: {'': 1}\n", "NOT_ALLOWED_IN_RIG_FILES 1:5 m"),
                // keys
                file("a: 1\nb: 2\n'a': 3\n", "DUPLICATE_KEY 3:1 "),
                file(
                        "m: {x: 1, x: {y: 2, y: 3}}\n",
                        "DUPLICATE_KEY 1:11 m",
                        "DUPLICATE_KEY 1:21 m"),
                file("a/b: 1\n", "BAD_ID 1:1 "),
                // characters
                file("a: x\u0000y\n", "NOT_TEXT 1:5 "),
                file("# bell \u0007\na: 1\n", "NOT_TEXT 1:8 "),
                file("a: 1\n\uFEFFb: &x 2\n", "NOT_TEXT 2:1 ", "NOT_ALLOWED_IN_RIG_FILES 2:5 b"),
                file("f:\n- {id: ab\u202Ecd}\n", "NOT_TEXT 2:10 f/1/id"),
                file("a: \"\\u202E\"\n", "NOT_TEXT 1:4 a"),
                file("a: \"\\0\"\n", "NOT_TEXT 1:4 a"),
                file("a: \"\\uD800\"\n", "NOT_TEXT 1:4 a"),
                file("a\u200Bb: 1\n", "NOT_TEXT 1:2 "));
    }

    private static Arguments file(String text, String... problems) {
        return Arguments.of(text, List.of(problems));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("malformed")
    void everyProblemHasItsCodeAndPlace(String text, List<String> expected) {
        var reading = YamlText.read("rig.yaml", text.getBytes(UTF_8));
        assertThat(reading.problems().stream().map(MalformedYamlTest::brief))
                .as(() -> reading.problems().toString())
                .isEqualTo(expected);
        assertThat(reading.problems())
                .allSatisfy(p -> assertThat(p.found()).isNotBlank())
                .allSatisfy(p -> assertThat(p.expected()).isNotBlank());
    }

    private static String brief(Problem problem) {
        var at = problem.at();
        return problem.code() + " " + at.line() + ":" + at.column() + " " + at.path();
    }

    @Test
    void bytesThatAreNoUtf8AreLocatedAndTheRestIsRead() {
        byte[] bytes = "a: 1\nb: caf\u00e9 x\nc: &y 1\n".getBytes(StandardCharsets.ISO_8859_1);
        var reading = YamlText.read("rig.yaml", bytes);
        assertThat(reading.problems().stream().map(MalformedYamlTest::brief))
                .containsExactly("NOT_TEXT 2:7 ", "NOT_ALLOWED_IN_RIG_FILES 3:4 c");
    }

    @Test
    void anotherEncodingIsOneProblem() {
        assertThat(problems("a: 1\n".getBytes(StandardCharsets.UTF_16)))
                .containsExactly("NOT_TEXT 1:1 ");
        var noise = new byte[1000];
        Arrays.fill(noise, (byte) 0x9D);
        assertThat(problems(noise)).containsExactly("NOT_TEXT 1:1 ");
    }

    @Test
    void whatWasReadBesideAProblemIsKept() {
        var root = read("a: 1\nb: @\nc: {d: 2}\n").root().orElseThrow();
        assertThat(((Node.Entries) root).entries().stream().map(Node.Entry::key))
                .containsExactly("a", "c");
    }

    @Test
    void anEmptyFileHasNoTreeAndNoProblem() {
        for (String text : List.of("", "# only a comment\n", "\uFEFF", "---\n", "\r\n")) {
            assertThat(read(text).problems()).as(text).isEmpty();
        }
        assertThat(read("").root()).isEmpty();
    }

    @Test
    void theFirstOfTwoEqualKeysIsNamed() {
        assertThat(read("b: 1\na: 2\nb: 3\n").problems().getFirst().advice()).contains("line 1");
    }

    private static Reading read(String text) {
        return YamlText.read("rig.yaml", text.getBytes(UTF_8));
    }

    private static List<String> problems(byte[] bytes) {
        var all = new ArrayList<String>();
        YamlText.read("rig.yaml", bytes).problems().forEach(p -> all.add(brief(p)));
        return all;
    }
}
