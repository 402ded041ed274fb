package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.List;
import liftwright.answer.AnswerSchema;
import liftwright.answer.Fields;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The two questions about what goes wrong, as a machine reads them. */
class FailuresAndRestraintTest {

    private static final Shell SHELL = new Shell(Path.of("").toAbsolutePath());

    private static Shell.Ran json(String... words) {
        return SHELL.run(words);
    }

    private static JsonNode answer(Shell.Ran ran) {
        assertThat(ran.lines()).hasSize(1);
        return JsonMapper.builder().build().readTree(ran.out()).get("answer");
    }

    private static String example(String name) {
        return Shell.EXAMPLES.resolve(name).toString();
    }

    @ParameterizedTest
    @CsvSource({"restraint, sandpiper", "restraint, measured", "failures, measured"})
    void obeysItsSchemaAndItsExitCode(String question, String example) {
        var ran = json("review", question, example(example), "--json");
        var schema =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(AnswerSchema.text(question));
        assertThat(schema.validate(ran.out(), InputFormat.JSON)).isEmpty();
        assertThat(ran.out())
                .contains("\"cautions\":[\"This is a calculation, not a certificate.\"");
        JsonNode answer = answer(ran);
        boolean clear =
                answer.at("/verdict/outcome").stringValue().equals("met")
                        && answer.get("findings")
                                .valueStream()
                                .noneMatch(f -> f.get("severity").stringValue().equals("stops"));
        assertThat(ran.code()).isEqualTo(clear ? 0 : 1);
        for (JsonNode section : answer.get("sections")) {
            for (JsonNode column : section.path("columns")) {
                assertThat(Fields.find(column.path("field").asString(column.asString(""))))
                        .as(section.get("id") + " " + column)
                        .isPresent();
            }
        }
    }

    /** A rig without a kill says so, and what was asked for is there. */
    @Test
    void pairsAreAsManyAsAskedForAndKillsAreTold() {
        JsonNode answer =
                answer(json("review", "failures", example("measured"), "--pairs", "3", "--json"));
        List<JsonNode> pairs =
                answer.get("sections")
                        .valueStream()
                        .filter(section -> section.get("id").stringValue().equals("pairs"))
                        .toList();
        assertThat(pairs).hasSize(1);
        assertThat(pairs.getFirst().get("rows").size()).isLessThanOrEqualTo(3);
        assertThat(answer.get("findings").valueStream().map(f -> f.get("code").stringValue()))
                .contains("no-kill");
    }
}
