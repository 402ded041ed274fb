package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.answer.AnswerSchema;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The verb {@code compare} as a user types it. */
class CompareVerbTest {

    @TempDir private Path folder;
    private Shell shell;

    @BeforeEach
    void twoRevisions() throws IOException {
        String rig = Files.readString(Shell.EXAMPLES.resolve("curlew/rig.yaml"));
        Files.writeString(folder.resolve("rig.yaml"), rig);
        Files.writeString(
                folder.resolve("other.yaml"),
                rig.replace("mass: 2.2 kg ± 3 %", "mass: 3.2 kg ± 3 %")
                        .replace("length: 300 mm ± 30 mm", "length: 0.3 m ± 30 mm"));
        shell = new Shell(folder);
    }

    private static JsonNode answer(Shell.Ran ran) {
        assertThat(ran.lines()).as(ran.err()).hasSize(1);
        return JsonMapper.builder().build().readTree(ran.out()).get("answer");
    }

    private static List<List<String>> rows(JsonNode answer, String id) {
        return answer.get("sections")
                .valueStream()
                .filter(section -> section.get("id").stringValue().equals(id))
                .flatMap(section -> section.get("rows").valueStream())
                .map(
                        row ->
                                row.valueStream()
                                        .map(cell -> cell.path("text").stringValue(""))
                                        .toList())
                .toList();
    }

    @Test
    void theFileTheVerdictsAndTheNumbersAreToldWithTheirPlaces() {
        var ran = shell.run("compare", "rig.yaml", "other.yaml", "--question", "lift", "--json");
        assertThat(ran.code()).as(ran.err()).isZero();
        var schema =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(AnswerSchema.text("compare"));
        assertThat(schema.validate(ran.out(), InputFormat.JSON)).isEmpty();
        JsonNode answer = answer(ran);
        assertThat(rows(answer, "file-changes"))
                .containsExactlyInAnyOrder(
                        List.of(
                                "other parts/frame/mass",
                                "changed",
                                "2.2 kg ± 3 %",
                                "3.2 kg ± 3 %"),
                        List.of(
                                "wiring/feeds/feed/branch/1/length",
                                "written otherwise",
                                "300 mm ± 30 mm",
                                "0.3 m ± 30 mm"));
        JsonNode weight =
                answer.get("sections")
                        .valueStream()
                        .filter(
                                s ->
                                        s.get("id")
                                                .stringValue()
                                                .equals("compared-lift-lift-waterfall"))
                        .flatMap(s -> s.get("rows").valueStream())
                        .filter(row -> row.get(0).get("text").stringValue().equals("weight"))
                        .findFirst()
                        .orElseThrow()
                        .get(4);
        // A kilogram more on whatever else it weighs, and 3 % of it in doubt.
        assertThat(weight.get("si").doubleValue()).isCloseTo(9.80665, within(1e-9));
        double low = weight.get("band").get("low").doubleValue();
        double high = weight.get("band").get("high").doubleValue();
        assertThat(high - low).isBetween(0.045 * 9.80665, 0.075 * 9.80665);
    }

    @Test
    void aVerdictThatIsLesserStopsAndComesFirst() throws IOException {
        Files.writeString(
                folder.resolve("heavy.yaml"),
                Files.readString(folder.resolve("rig.yaml")).replace("2.2 kg ± 3 %", "30 kg"));
        var ran = shell.run("compare", "rig.yaml", "heavy.yaml", "--question", "lift");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.lines().getFirst()).contains("not met").contains("lift: not met, was met");
        assertThat(shell.run("compare", "heavy.yaml", "rig.yaml", "--question", "lift").code())
                .isZero();
    }

    @Test
    void theRigOfATestIsTheFirst() throws IOException {
        String log =
                "time [s],throttle [%]\n"
                        + IntStream.range(0, 40)
                                .mapToObj(k -> k / 10.0 + ",50\n")
                                .collect(java.util.stream.Collectors.joining());
        Files.writeString(folder.resolve("log.csv"), log);
        var added = shell.run("log", "add", "rig.yaml", "log.csv", "--date", "2026-03-14");
        assertThat(added.err() + added.out()).contains("2026-03-14-1");
        Files.copy(
                folder.resolve("other.yaml"),
                folder.resolve("rig.yaml"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        var ran =
                shell.run(
                        "compare",
                        "--test",
                        "2026-03-14-1",
                        "rig.yaml",
                        "--question",
                        "lift",
                        "--json");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(rows(answer(ran), "file-changes"))
                .contains(
                        List.of(
                                "other parts/frame/mass",
                                "changed",
                                "2.2 kg ± 3 %",
                                "3.2 kg ± 3 %"));
    }

    @Test
    void wrongUseIsToldAtOnce() {
        assertThat(shell.run("compare", "rig.yaml").err())
                .contains("name what it is compared with");
        assertThat(shell.run("compare", "rig.yaml", "other.yaml", "--question", "colour").err())
                .contains("--question is lift");
        assertThat(shell.run("compare", "--test", "2026-01-01-1", "rig.yaml").err())
                .contains("no test 2026-01-01-1");
    }
}
