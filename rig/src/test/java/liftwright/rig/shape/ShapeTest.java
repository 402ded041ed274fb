package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Need;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.text.YamlText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The table keeps what it promises: its examples and defaults can be read as what they stand for.
 */
class ShapeTest {

    static Stream<Arguments> keys() {
        return Shape.sections().values().stream()
                .flatMap(s -> s.keys().stream().map(k -> Arguments.of(s.name(), k.name(), k)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("keys")
    void theExampleOfEveryKeyReads(String section, String name, Key<?> key) {
        var problems = new Problems("example");
        var value = key.kind().read(node(name, key.example()), Spot.top(Spot.NOWHERE), problems);
        // examples of big sections are cut short: they may lack keys, but say nothing wrong
        assertThat(problems.inOrder())
                .filteredOn(
                        p ->
                                p.code().isError()
                                        && p.code() != liftwright.rig.Problem.Code.MISSING_KEY)
                .isEmpty();
        assertThat(value).isPresent();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("keys")
    void everyDefaultReads(String section, String name, Key<?> key) {
        if (key.need() instanceof Need.Default(var text, var origin)) {
            var problems = new Problems("default");
            assertThat(key.kind().read(node(name, text), Spot.top(Spot.NOWHERE), problems))
                    .isPresent();
            assertThat(problems.inOrder()).isEmpty();
            assertThat(origin).isNotBlank();
        }
    }

    @Test
    void theTableHoldsTheVocabularyOfFormatOne() {
        assertThat(Shape.sections().size()).isGreaterThan(50);
        assertThat(keys().count()).isGreaterThan(250);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("keys")
    void keysAreLowerCaseWordsWithoutSlash(String section, String name, Key<?> key) {
        assertThat(name).matches("[a-z][a-z-]*( [a-z-]+)*");
        assertThat(key.meaning()).endsWith(".");
    }

    @Test
    void requiredKeysAreReadBySomeQuestion() {
        for (Section section : Shape.sections().values()) {
            assertThat(section.keys())
                    .filteredOn(k -> k.need() instanceof Need.Required)
                    .allMatch(k -> k.usedBy().isPresent());
        }
    }

    @Test
    void aKeyThatNoQuestionReadsIsSaidOnceAtItsPlace() {
        String controller = "    controller: {current limit: 130 A, mass: 0.12 kg}\n";
        String block =
                """
                    controller:
                      current limit: 130 A
                      mass: 0.12 kg
                      command: {low end: 5 %}
                """;
        String text = Good.text().replace(controller, block);
        int line = (int) text.lines().takeWhile(l -> !l.contains("command")).count() + 1;
        assertThat(Texts.read(text).rig()).isPresent();
        assertThat(Texts.read(text).problems())
                .filteredOn(p -> p.at().path().startsWith("fan types/F140/controller/command"))
                .containsExactly(
                        new liftwright.rig.Problem(
                                liftwright.rig.Problem.Code.USED_BY_NO_QUESTION_YET,
                                new liftwright.rig.Problem.Place(
                                        "rig.yaml", line, 7, "fan types/F140/controller/command"),
                                "the key “command”",
                                "nothing else: it is part of the format",
                                "It is read, and used by no question yet."));
    }

    private static liftwright.rig.text.Node node(String name, String value) {
        var yaml = (name + ": " + value).getBytes(StandardCharsets.UTF_8);
        var root = YamlText.read("x", yaml).root().orElseThrow();
        return ((liftwright.rig.text.Node.Entries) root).entries().getFirst().value();
    }
}
