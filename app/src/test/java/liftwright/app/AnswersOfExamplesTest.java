package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import liftwright.answer.AnswerSchema;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the answers of the examples say must agree with itself, number by number. */
class AnswersOfExamplesTest {

    private static final Shell SHELL = new Shell(Path.of("").toAbsolutePath());
    private static final Map<String, Shell.Ran> JSON = new HashMap<>();

    static Stream<String> examples() {
        return Stream.of("mudlark", "curlew", "sandpiper", "measured", "fitted");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void obeysThePublishedSchema(String example) {
        var schema =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(AnswerSchema.text("lift"));
        assertThat(schema.validate(json(example).out(), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theExitCodeIsClearOnlyWhereTheVerdictIsMetAndNothingStops(String example) {
        JsonNode answer = answer(example);
        boolean clear =
                answer.at("/verdict/outcome").stringValue().equals("met")
                        && answer.get("findings")
                                .valueStream()
                                .noneMatch(f -> f.get("severity").stringValue().equals("stops"));
        assertThat(json(example).code()).isEqualTo(clear ? 0 : 1);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theWaterfallAddsUp(String example) {
        JsonNode waterfall = section(example, "lift-waterfall");
        double sum = si(waterfall.at("/start/value"));
        for (JsonNode step : waterfall.get("steps")) {
            sum += si(step.get("value"));
        }
        double end = si(waterfall.at("/end/value"));
        assertThat(sum).isCloseTo(end, within(1e-9 * si(waterfall.at("/start/value"))));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theVerdictIsAboutTheLastBarsOfTheWaterfall(String example) {
        JsonNode waterfall = section(example, "lift-waterfall");
        List<JsonNode> amounts =
                answer(example)
                        .at("/verdict/sentence")
                        .valueStream()
                        .filter(JsonNode::isObject)
                        .toList();
        double lift = si(waterfall.at("/end/value"));
        double weight = si(waterfall.at("/against/value"));
        assertThat(si(amounts.get(0))).isCloseTo(lift / weight, within(1e-9));
        assertThat(si(amounts.get(2))).isCloseTo(lift, within(1e-6));
        assertThat(si(amounts.get(3))).isCloseTo(weight, within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void noFanLiftsMoreThanItsThrust(String example) {
        JsonNode fans = section(example, "fans");
        int thrust = column(fans, "fan-thrust");
        int lift = column(fans, "fan-lift");
        assertThat(fans.get("rows")).isNotEmpty();
        double sum = 0;
        for (JsonNode row : fans.get("rows")) {
            assertThat(si(row.get(lift))).isLessThanOrEqualTo(si(row.get(thrust)) + 1e-9);
            sum += si(row.get(lift));
        }
        assertThat(si(section(example, "lift-waterfall").at("/end/value")))
                .isLessThanOrEqualTo(sum + 1e-6);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aRemedysGainIsWhatItAddsToTheRatio(String example) {
        for (JsonNode finding : answer(example).get("findings")) {
            for (JsonNode remedy : finding.get("remedies")) {
                if (remedy.at("/effect/after").isMissingNode()) {
                    continue;
                }
                assertThat(si(remedy.at("/effect/after")) - si(remedy.at("/effect/difference")))
                        .isCloseTo(si(finding.get("value")), within(1e-9));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theTerminalSaysTheVerdictFirstInAnyLook(String example) {
        String outcome = answer(example).at("/verdict/outcome").stringValue();
        String rig = Shell.EXAMPLES.resolve(example).toString();
        for (String units : List.of("si", "us")) {
            for (Shell shell : List.of(SHELL, SHELL.ascii())) {
                var ran = shell.run("review", "lift", rig, "--units", units, "--threads", "1");
                assertThat(ran.lines().getFirst()).startsWith(outcome + ": ");
                assertThat(ran.lines()).allMatch(line -> line.length() <= 100);
                assertThat(ran.out()).contains("not a certificate");
                assertThat(ran.out().chars().allMatch(c -> c < 0x7f || shell.utf8())).isTrue();
                assertThat(ran.out()).contains(units.equals("us") ? " lbf" : " N");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theSameSeedGivesTheSameBytesOnAnyNumberOfThreads(String example) {
        String rig = Shell.EXAMPLES.resolve(example).toString();
        var one = SHELL.run("review", "lift", rig, "--json", "--threads", "1");
        var three = SHELL.run("review", "lift", rig, "--json", "--threads", "3");
        assertThat(one.out()).isEqualTo(three.out()).isEqualTo(json(example).out());
        var other = SHELL.run("review", "lift", rig, "--json", "--seed", "7");
        assertThat(other.out()).isNotEqualTo(one.out());
    }

    private static int column(JsonNode table, String field) {
        List<String> columns =
                table.get("columns").valueStream().map(JsonNode::stringValue).toList();
        assertThat(columns).contains(field);
        return columns.indexOf(field);
    }

    private static double si(JsonNode value) {
        return value.get("si").doubleValue();
    }

    private static JsonNode section(String example, String id) {
        return answer(example)
                .get("sections")
                .valueStream()
                .filter(section -> section.get("id").stringValue().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static JsonNode answer(String example) {
        return JsonMapper.builder().build().readTree(json(example).out()).get("answer");
    }

    private static Shell.Ran json(String example) {
        return JSON.computeIfAbsent(
                example,
                name ->
                        SHELL.run(
                                "review",
                                "lift",
                                Shell.EXAMPLES.resolve(name).toString(),
                                "--json"));
    }
}
