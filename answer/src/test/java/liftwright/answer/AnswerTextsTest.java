package liftwright.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Texts for a reader stand beside what is there anyway. */
class AnswerTextsTest {

    private static final JsonMapper REFEREE = JsonMapper.builder().build();
    private static final Set<String> TEXTS =
            Set.of("shown", "shownBand", "shownName", "shownEffect", "fields");

    /** Says what it was asked, so that nothing can be mixed up. */
    private static final class Echo implements Texts {
        @Override
        public String value(Value value) {
            return "value of " + value.field();
        }

        @Override
        public String beside(double sizeSi, Value value) {
            return value(value) + " beside " + sizeSi;
        }

        @Override
        public String band(Value value) {
            return value.band().isPresent() ? "band of " + value.field() : "";
        }

        @Override
        public String sentence(Sentence sentence) {
            return sentence.parts().size() + " parts";
        }

        @Override
        public String effect(Remedy remedy, Finding.Severity severity) {
            return remedy.effect().getClass().getSimpleName() + " of " + severity;
        }

        @Override
        public Scale scale(Field field, double sizeSi) {
            return new Scale("unit of " + field.id(), sizeSi, -1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void withoutTextsItIsTheSameBytes(Outcome outcome) {
        Answer answer = SampleAnswer.of(outcome, "left.3", SampleAnswer.PASSED);
        String plain = AnswerJson.write(answer, "Mudlark", "0.1.0");
        JsonNode stripped = REFEREE.readTree(shown(answer));
        strip(stripped);
        assertThat(stripped.toString()).isEqualTo(REFEREE.readTree(plain).toString());
        assertThat(plain).doesNotContain("shown");
    }

    @ParameterizedTest
    @EnumSource
    void obeysTheClosedSchema(Outcome outcome) {
        String json = shown(SampleAnswer.of(outcome, "left.3", SampleAnswer.PASSED));
        String schema = AnswerJsonTest.closed(AnswerSchema.text("lift"));
        assertThat(AnswerJsonTest.mistakes(json, schema)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void everyValueSentenceAndRemedyHasItsText(Outcome outcome) {
        JsonNode root =
                REFEREE.readTree(shown(SampleAnswer.of(outcome, "left.3", SampleAnswer.PASSED)));
        List<JsonNode> objects = new ArrayList<>();
        collect(root, objects);
        Set<String> fields = new TreeSet<>();
        for (JsonNode object : objects) {
            if (object.has("field") && object.has("kind")) {
                String field = object.get("field").stringValue();
                fields.add(field);
                assertThat(object.get("shown").stringValue().replaceFirst(" beside .*", ""))
                        .isEqualTo("value of " + field);
                assertThat(object.get("shownBand").stringValue())
                        .isEqualTo(object.has("band") ? "band of " + field : "");
            }
            if (object.has("sentence")) {
                assertThat(object.get("shown").stringValue())
                        .isEqualTo(object.get("sentence").size() + " parts");
            }
            if (object.has("number")) {
                assertThat(object.get("shownName").stringValue())
                        .isEqualTo(object.get("name").size() + " parts");
                assertThat(object.get("shownEffect").stringValue())
                        .isEqualToIgnoringCase(
                                object.at("/effect/kind").stringValue() + " of stops");
            }
        }
        JsonNode told = root.get("fields");
        assertThat(fields).isNotEmpty().allMatch(told::has);
        assertThat(told.get("lift-usable").get("label").stringValue())
                .isEqualTo(Fields.of("lift-usable").label());
        assertThat(told.get("lift-usable").get("unit").stringValue())
                .isEqualTo("unit of lift-usable");
        assertThat(told.get("step-supply-sag").get("per").doubleValue()).isEqualTo(8);
        assertThat(told.get("time").get("per").doubleValue()).as("the horizon").isEqualTo(180);
        assertThat(told.get("temperature").get("per").doubleValue())
                .as("the hottest that is played")
                .isEqualTo(361.5);
    }

    /** Numbers that stand under each other are added up by whoever reads them. */
    @Test
    void stepsOfAWaterfallAreToldBesideWhatTheyAreTakenFrom() {
        Answer answer = SampleAnswer.of(Outcome.HOLDS, "left.3", SampleAnswer.PASSED);
        JsonNode root = REFEREE.readTree(shown(answer));
        int seen = 0;
        for (JsonNode section : root.at("/answer/sections")) {
            if (section.get("kind").stringValue().equals("waterfall")) {
                String size = " beside " + section.at("/start/value/si").doubleValue();
                List<JsonNode> steps = new ArrayList<>(List.of(section.get("start")));
                section.get("steps").forEach(steps::add);
                steps.add(section.get("end"));
                steps.add(section.get("against"));
                for (JsonNode step : steps) {
                    assertThat(step.at("/value/shown").stringValue()).endsWith(size);
                }
                seen += steps.size();
            }
        }
        assertThat(seen).isGreaterThan(3);
        List<JsonNode> objects = new ArrayList<>();
        collect(root, objects);
        assertThat(objects.stream().map(o -> o.path("shown")).filter(JsonNode::isString))
                .filteredOn(text -> text.stringValue().contains(" beside "))
                .as("nothing else is rounded so")
                .hasSize(seen);
    }

    private static String shown(Answer answer) {
        return AnswerJson.write(answer, "Mudlark", "0.1.0", new Echo());
    }

    private static void strip(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.remove(TEXTS);
        }
        node.forEach(AnswerTextsTest::strip);
    }

    private static void collect(JsonNode node, List<JsonNode> objects) {
        if (node.isObject()) {
            objects.add(node);
        }
        node.forEach(child -> collect(child, objects));
    }
}
