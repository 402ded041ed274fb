package liftwright.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class AnswerJsonTest {

    private static final JsonMapper REFEREE = JsonMapper.builder().build();

    @ParameterizedTest
    @EnumSource
    void obeysItsSchemaAndUsesNothingThatTheSchemaLeavesOut(Outcome outcome) {
        String json = write(SampleAnswer.of(outcome, "left.3", SampleAnswer.PASSED));
        assertThat(mistakes(json, AnswerSchema.text("lift"))).isEmpty();
        assertThat(mistakes(json, closed(AnswerSchema.text("lift")))).isEmpty();
    }

    @Test
    void theSchemaSeesAMissingMember() {
        String json = write(sample("left.3")).replace("\"outcome\":\"met\",", "");
        assertThat(mistakes(json, AnswerSchema.text("lift"))).isNotEmpty();
    }

    @Test
    void theClosedSchemaSeesAMemberThatItLeavesOut() {
        String json = write(sample("left.3")).replace("\"seed\":7", "\"seed\":7,\"clock\":1");
        assertThat(mistakes(json, AnswerSchema.text("lift"))).isEmpty();
        assertThat(mistakes(json, closed(AnswerSchema.text("lift")))).isNotEmpty();
    }

    /** Written by version 0.1.0 and never edited: what was published stays readable. */
    @Test
    void everyPublishedAnswerIsReadForEver() throws IOException {
        assertThat(mistakes(resource("answer-lift-1.0.json"), AnswerSchema.text("lift"))).isEmpty();
    }

    @Test
    void equalAnswersAreEqualBytes() {
        assertThat(write(sample("left.3"))).isEqualTo(write(sample("left.3")));
    }

    @Test
    void numbersNameTheirUnitAndComeBackAsTheSameDouble() {
        Seeded.check(
                300,
                random -> {
                    double si = Double.longBitsToDouble(random.nextLong());
                    if (!Double.isFinite(si)) {
                        return;
                    }
                    var answer = sample("left.3", Value.of("fan-speed", si));
                    JsonNode value = read(answer).at("/answer/findings/0/value");
                    assertThat(value.get("si").doubleValue()).isEqualTo(si);
                    assertThat(value.get("unit").stringValue()).isEqualTo("rad/s");
                });
    }

    @Test
    void bandsCarryCoverageMethodAndDraws() {
        JsonNode band = read(sample("left.3")).at("/answer/findings/0/value/band");
        assertThat(band.get("coverage").doubleValue()).isEqualTo(0.95);
        assertThat(band.get("method").stringValue()).isEqualTo("sampled");
        assertThat(band.get("draws").intValue()).isEqualTo(1024);
    }

    @Test
    void neverIsACaseAndNotANumber() {
        JsonNode row = read(sample("left.3")).at("/answer/sections/1/rows/0");
        assertThat(row.get(2).get("kind").stringValue()).isEqualTo("never");
        assertThat(row.get(2).has("si")).isFalse();
        assertThat(row.get(3).get("kind").stringValue()).isEqualTo("not computed");
    }

    @Test
    void wordsAreWrittenAsWords() {
        JsonNode cell = read(sample("left.3")).at("/answer/sections/1/rows/0/0");
        assertThat(cell.get("kind").stringValue()).isEqualTo("words");
        assertThat(cell.get("text").stringValue()).isEqualTo("left.3");
    }

    @Test
    void aSentenceStandsBesideItsPartsInOnePiece() {
        var verdict =
                new Verdict(
                        Outcome.HOLDS,
                        Sentence.words("lift ")
                                .then(
                                        Measure.THRUST,
                                        1559.8,
                                        new Band(1462, 1659, 0.95, "sampled", 1024, 1))
                                .then(" at ")
                                .then(Measure.PERCENT, 0.2)
                                .then(" charge"),
                        Optional.empty(),
                        List.of());
        var sample = sample("left.3");
        var answer =
                new SampleAnswer(verdict, sample.findings(), sample.sections(), sample.evidence());
        assertThat(read(answer).at("/answer/verdict/text").stringValue())
                .isEqualTo("lift 1560 N (1462 to 1659 N) at 20 % charge");
    }

    @Test
    void remediesCountThroughTheWholeAnswer() {
        var twice = sample("left.3");
        var answer =
                new SampleAnswer(
                        twice.verdict(),
                        List.of(twice.findings().getFirst(), twice.findings().getFirst()),
                        twice.sections(),
                        twice.evidence());
        JsonNode findings = read(answer).at("/answer/findings");
        assertThat(findings.at("/1/remedies/0/number").intValue()).isEqualTo(4);
        assertThat(answer.remedies()).hasSize(6);
        assertThat(answer.remedies().get(3).name().toString())
                .contains(findings.at("/1/remedies/0/name/0").stringValue());
    }

    @Test
    void aCheckThatCouldNotBeComputedHasFailedAndHasNoNumber() {
        var lost = new Evidence.Check("power closes", Double.NaN, 1e-9);
        String json = write(SampleAnswer.of(Outcome.CANNOT_BE_TOLD, "left.3", lost));
        assertThat(mistakes(json, AnswerSchema.text("lift"))).isEmpty();
        JsonNode check = REFEREE.readTree(json).at("/answer/evidence/checks/0");
        assertThat(check.get("residual").isNull()).isTrue();
        assertThat(check.get("passed").booleanValue()).isFalse();
    }

    @Test
    void aFieldWithoutARowIsNotWritten() {
        var answer = sample("left.3", Value.of("no-such-field", 1));
        assertThatThrownBy(() -> write(answer))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no-such-field");
    }

    @Test
    void hostileNamesComeBackWholeAndActOnNothing() {
        Seeded.check(
                300,
                random -> {
                    var name = new StringBuilder();
                    int length = random.nextInt(200);
                    for (int i = 0; i < length; i++) {
                        name.append(
                                random.nextBoolean()
                                        ? HOSTILE.charAt(random.nextInt(HOSTILE.length()))
                                        : (char) random.nextInt(0x10000));
                    }
                    hostile(name.toString());
                });
        hostile("\u001b[2J\u001b]0;owned\u0007");
        hostile("x".repeat(10_000));
        hostile("");
    }

    private static final String HOSTILE =
            "\u0000\b\n\r\t\u001b[31m\u007f\u0085\u200b\u200e\u202e\u2028\u2066\ufeff\ud83d\"\\</";

    private static void hostile(String name) {
        String json = write(sample(name));
        assertThat(json.codePoints().filter(AnswerJsonTest::acts)).isEmpty();
        assertThat(REFEREE.readTree(json).at("/answer/findings/0/part").stringValue())
                .isEqualTo(name);
    }

    /** Moves a cursor, breaks a line, turns the reading direction or is no character at all. */
    private static boolean acts(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    static SampleAnswer sample(String name) {
        return (SampleAnswer) SampleAnswer.of(Outcome.HOLDS, name, SampleAnswer.PASSED);
    }

    private static SampleAnswer sample(String name, Value judged) {
        var sample = sample(name);
        var finding = sample.findings().getFirst();
        var changed = finding.judging(judged).mendedBy(List.of());
        return new SampleAnswer(
                sample.verdict(), List.of(changed), sample.sections(), sample.evidence());
    }

    private static String write(Answer answer) {
        return AnswerJson.write(answer, "Mudlark", "0.1.0");
    }

    static JsonNode read(Answer answer) {
        return REFEREE.readTree(write(answer));
    }

    static List<String> mistakes(String json, String schema) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema)
                .validate(json, InputFormat.JSON)
                .stream()
                .map(Object::toString)
                .toList();
    }

    /** The schema with every object closed, so that what is written must be declared. */
    static String closed(String schema) {
        JsonNode root = REFEREE.readTree(schema);
        close(root);
        return root.toString();
    }

    private static void close(JsonNode node) {
        if (node instanceof ObjectNode object && object.has("properties")) {
            object.put("additionalProperties", false);
        }
        node.forEach(AnswerJsonTest::close);
    }

    private static String resource(String name) {
        try (var in = AnswerJsonTest.class.getResourceAsStream(name)) {
            assertThat(in).as(name).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
