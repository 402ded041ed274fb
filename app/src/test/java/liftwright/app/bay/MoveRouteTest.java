package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A part dragged on the page, as it goes over the wire and into the file. */
class MoveRouteTest {

    private static final Path MUDLARK = Path.of("..", "examples", "mudlark", "rig.yaml");

    @TempDir private Path folder;

    @BeforeEach
    void aRig() throws Exception {
        Files.copy(MUDLARK, folder.resolve("rig.yaml"));
    }

    private static String body(Json.Members document, String part, double up, String more) {
        return String.format(
                Locale.ROOT,
                "{\"rig\":\"rig.yaml\",\"base\":\"%s\",\"part\":\"%s\",\"to\":{\"forwardM\":-0.18,"
                        + "\"rightM\":0.24,\"upM\":%s},\"snap\":true%s}",
                document.text("revision"),
                part,
                up,
                more);
    }

    @Test
    void aFanOfARowIsMovedByItselfAndTheChangeCanBeMade() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            Json.Members document = tab.ask("document", "rig", "rig.yaml").body();
            var moved = tab.ask("move", body(document, "back-top.4", 0.25, ",\"twin\":true"));
            assertThat(moved.status()).isEqualTo(200);
            assertThat(moved.text("sentence")).contains("back-top.4").contains("back-top.1");
            assertThat(moved.body().texts("moves")).contains("back-top.1", "back-top.4");
            assertThat(moved.body().members("place").number("upM")).isCloseTo(0.25, within(0.005));
            String changes = written(moved.body().items("changes"));
            var made = tab.change("rig.yaml", document.text("revision"), changes);
            assertThat(made.status()).isEqualTo(200);
            assertThat(made.text("text"))
                    .contains("except: {back-top.4: {at: {right: 240 mm, up: 190 mm}}")
                    .contains("# Mudlark: a wearable rig");
        }
    }

    @Test
    void whatCannotBeIsRefusedWithItsReason() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            Json.Members document = tab.ask("document", "rig", "rig.yaml").body();
            var none = tab.ask("move", body(document, "nothing.1", 0.25, ",\"twin\":true"));
            assertThat(none.status()).isEqualTo(409);
            assertThat(none.text("fault")).isEqualTo("refused");
            assertThat(none.text("sentence")).contains("nothing.1");
            var far = tab.ask("move", body(document, "back-top.4", 1e9, ",\"twin\":true"));
            assertThat(far.status()).isEqualTo(400);
            var unsaid = tab.ask("move", body(document, "back-top.4", 0.25, ""));
            assertThat(unsaid.status()).isEqualTo(400);
        }
    }

    @Test
    void thePartsOfADocumentNameTheirTwins() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            Json.Members document = tab.ask("document", "rig", "rig.yaml").body();
            assertThat(twin(document, "left.3")).isEqualTo("right.3");
            assertThat(twin(document, "back-top.1")).isEqualTo("back-top.4");
        }
    }

    private static String twin(Json.Members document, String id) {
        return document.items("parts").stream()
                .map(p -> p.asMembers("parts"))
                .filter(p -> p.text("id").equals(id))
                .findFirst()
                .orElseThrow()
                .text("twin");
    }

    private static String written(List<Json> changes) {
        return changes.stream()
                .map(c -> c.asMembers("changes"))
                .map(
                        c ->
                                c.text("kind").equals("add")
                                        ? "{\"kind\":\"add\",\"at\":\""
                                                + c.text("at")
                                                + "\",\"key\":\""
                                                + c.text("key")
                                                + "\",\"value\":\""
                                                + c.text("value")
                                                + "\"}"
                                        : "{\"kind\":\"set\",\"at\":\""
                                                + c.text("at")
                                                + "\",\"value\":\""
                                                + c.text("value")
                                                + "\"}")
                .toList()
                .toString();
    }
}
