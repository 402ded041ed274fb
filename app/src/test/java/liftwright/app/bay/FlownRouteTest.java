package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import liftwright.answer.AnswerJson;
import liftwright.flight.ask.FlightQuestion;
import liftwright.flight.profile.Profile;
import liftwright.flight.profile.ProfileReading;
import liftwright.numerics.Work;
import liftwright.quantity.UnitSystem;
import liftwright.report.ReaderTexts;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One flight by its number, to be read and to be played. */
class FlownRouteTest {

    private static final Path CURLEW = Path.of("..", "examples", "curlew", "rig.yaml");
    private static final String SHORT =
            """
            liftwright profile: 1
            name: up and down
            start: {on: held, height: 1 m}
            steps:
              - hold: 2 s
            """;

    @TempDir private Path folder;

    @BeforeEach
    void aRigAndAShortProfile() throws Exception {
        Files.copy(CURLEW, folder.resolve("rig.yaml"));
        Files.createDirectories(folder.resolve("profiles"));
        Files.writeString(folder.resolve("profiles/short.yaml"), SHORT);
    }

    private static List<JsonNode> fly(Tab tab, String number, String seed) throws Exception {
        String base = tab.ask("document", "{\"rig\":\"rig.yaml\"}").text("revision");
        List<JsonNode> told = new ArrayList<>();
        try (var stream =
                tab.lines(
                        "flown",
                        """
                        {"rig":"rig.yaml","base":"%s","profile":"short.yaml","units":"si",
                         "number":%s,"seed":"%s"}"""
                                .formatted(base, number, seed))) {
            stream.lines()
                    .filter(line -> !line.isEmpty())
                    .map(JsonMapper.shared()::readTree)
                    .forEach(told::add);
        }
        return told;
    }

    /** The answer is that of the command line, and the path is dense and made of turns. */
    @Test
    void aFlightOfANumberIsThatOfTheCommandLine() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            List<JsonNode> told = fly(tab, "7", "11");
            assertThat(told.getFirst().get("document").toString())
                    .isEqualTo(JsonMapper.shared().readTree(asked(7, 11)).toString());
            JsonNode path = told.get(1).get("path");
            int moments = path.get("times").size();
            double lasts = path.get("times").get(moments - 1).asDouble();
            assertThat(lasts).isCloseTo(2, within(0.2));
            assertThat(moments / lasts).as("moments a second").isGreaterThanOrEqualTo(20);
            assertThat(path.get("places").size()).isEqualTo(3 * moments);
            assertThat(path.get("turns").size()).isEqualTo(4 * moments);
            assertThat(path.get("fans").asInt()).isPositive();
            assertThat(path.get("thrusts").size()).isEqualTo(path.get("fans").asInt() * moments);
            for (int k = 0; k < moments; k++) {
                double length = 0;
                for (int i = 0; i < 4; i++) {
                    length += Math.pow(path.get("turns").get(4 * k + i).asDouble(), 2);
                }
                assertThat(length).isCloseTo(1, within(1e-5));
            }
            assertThat(told.getLast().get("end").asString()).isEqualTo("done");
            assertThat(fly(tab, "7", "11")).as("again the same").isEqualTo(told);
            assertThat(fly(tab, "8", "11").get(1)).isNotEqualTo(told.get(1));
            assertThat(bay.faults()).isEmpty();
        }
    }

    private static String asked(int number, long seed) throws Exception {
        byte[] bytes = Files.readAllBytes(CURLEW);
        Rig rig = RigReading.read("rig.yaml", bytes).rig().orElseThrow();
        Profile profile =
                ProfileReading.read("short.yaml", SHORT.getBytes(StandardCharsets.UTF_8), rig)
                        .profile()
                        .orElseThrow();
        Settings settings = Settings.standard().withoutRemedies().withSeed(seed);
        return AnswerJson.write(
                FlightQuestion.ofNumber(rig, RigReading.digest(bytes), profile, settings, number)
                        .answer(Stage.WHOLE, Work.quiet())
                        .orElseThrow(),
                rig.name(),
                "9.9.9",
                new ReaderTexts(UnitSystem.SI));
    }

    @Test
    void whatIsNoFlightIsRefused() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String base = tab.ask("document", "{\"rig\":\"rig.yaml\"}").text("revision");
            for (String bad :
                    List.of(
                            "\"number\":-1,\"seed\":\"1\"",
                            "\"number\":1000000,\"seed\":\"1\"",
                            "\"number\":1,\"seed\":\"x\"",
                            "\"number\":1")) {
                assertThat(
                                tab.ask(
                                                "flown",
                                                "{\"rig\":\"rig.yaml\",\"base\":\""
                                                        + base
                                                        + "\",\"units\":\"si\","
                                                        + bad
                                                        + "}")
                                        .status())
                        .as(bad)
                        .isEqualTo(400);
            }
            assertThat(bay.faults()).isEmpty();
        }
    }
}
