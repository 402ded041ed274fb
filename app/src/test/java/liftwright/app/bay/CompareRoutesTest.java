package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The rig as it stands beside another revision, and what moves a verdict, down their streams. */
class CompareRoutesTest {

    private static final Path CURLEW = Path.of("..", "examples", "curlew", "rig.yaml");

    @TempDir private Path folder;

    @BeforeEach
    void aRig() throws Exception {
        Files.copy(CURLEW, folder.resolve("rig.yaml"));
    }

    private static List<JsonNode> told(Tab tab, String route, String more) throws Exception {
        String base = tab.ask("document", "{\"rig\":\"rig.yaml\"}").text("revision");
        String body =
                "{\"rig\":\"rig.yaml\",\"base\":\"" + base + "\",\"units\":\"si\"," + more + "}";
        var reader = JsonMapper.builder().build();
        try (var stream = tab.lines(route, body)) {
            return stream.lines()
                    .filter(line -> !line.isBlank())
                    .map(reader::readTree)
                    .filter(line -> !line.has("progress"))
                    .toList();
        }
    }

    @Test
    void whatIsNotSavedIsComparedWithTheFileAsSaved() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String base = tab.ask("document", "{\"rig\":\"rig.yaml\"}").text("revision");
            tab.change(
                    "rig.yaml",
                    base,
                    "[{\"kind\":\"set\",\"at\":\"other parts/frame/mass\",\"value\":\"3.2 kg\"}]");
            List<JsonNode> lines = told(tab, "compare", "\"questions\":[\"lift\"]");
            assertThat(lines.get(0).at("/before/answer/question").stringValue())
                    .isEqualTo("balance");
            assertThat(lines.get(1).at("/after/answer/question").stringValue())
                    .isEqualTo("balance");
            // The waterfall of before and of now: the frame weighs a kilogram more.
            double more =
                    lines.get(3).at("/after/answer/sections/0/against/value/si").doubleValue()
                            - lines.get(2)
                                    .at("/before/answer/sections/0/against/value/si")
                                    .doubleValue();
            assertThat(more).isCloseTo(9.80665, within(0.03));
            JsonNode answer = lines.get(4).get("compared").get("answer");
            assertThat(answer.get("sections").toString())
                    .contains("other parts/frame/mass", "2.2 kg ± 3 %", "3.2 kg");
            assertThat(lines.getLast().get("end").stringValue()).isEqualTo("done");
            // Every field that is shown comes with its formula, source and test.
            lines.get(4)
                    .get("compared")
                    .get("fields")
                    .forEach(
                            field -> {
                                for (String name :
                                        List.of("meaning", "formula", "source", "test")) {
                                    assertThat(field.get(name).stringValue()).isNotBlank();
                                }
                            });
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void whatMovesAVerdictComesWithItsStops() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            List<JsonNode> lines = told(tab, "sensitivities", "\"question\":\"lift\"");
            JsonNode inputs = lines.getFirst().get("sensitivities");
            assertThat(inputs.size()).isEqualTo(5);
            double last = Double.POSITIVE_INFINITY;
            for (JsonNode input : inputs) {
                double moves = Math.abs(input.get("moves").doubleValue());
                assertThat(moves).isLessThanOrEqualTo(last);
                last = moves;
                assertThat(input.get("stops").size()).isIn(0, 21);
                assertThat(input.get("shown").size()).isEqualTo(input.get("stops").size());
            }
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void whatIsNoQuestionOrNoFileOfTheFolderIsRefused() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String base = tab.ask("document", "{\"rig\":\"rig.yaml\"}").text("revision");
            String asked = "{\"rig\":\"rig.yaml\",\"base\":\"" + base + "\",\"units\":\"si\",";
            assertThat(tab.ask("compare", asked + "\"questions\":[\"colour\"]}").status())
                    .isEqualTo(400);
            assertThat(
                            tab.ask(
                                            "compare",
                                            asked
                                                    + "\"questions\":[\"lift\"],\"file\":\"../x.yaml\"}")
                                    .status())
                    .isEqualTo(404);
            assertThat(bay.faults()).isEmpty();
        }
    }
}
