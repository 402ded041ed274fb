package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Documents as the page asks for them, over the wire. */
class DocumentRoutesTest {

    private static final Path MUDLARK = Path.of("..", "examples", "mudlark", "rig.yaml");
    private static final String RIG = "rig.yaml";

    @TempDir Path folder;
    private String first = "";
    private final List<Throwable> faults = new ArrayList<>();
    private final List<AutoCloseable> open = new ArrayList<>();

    @BeforeEach
    void aRig() throws Exception {
        first = Files.readString(MUDLARK);
        Files.writeString(folder.resolve(RIG), first);
    }

    @AfterEach
    void close() throws Exception {
        for (var each : open.reversed()) {
            each.close();
        }
        assertThat(faults).isEmpty();
    }

    private BayServer server() {
        var opening = new BayServer.Opening(folder, Optional.empty(), 0, "test", faults::add);
        if (BayServer.open(opening) instanceof BayServer.Opened.Here(var server)) {
            open.add(server);
            return server;
        }
        throw new AssertionError("not opened");
    }

    private Tab tab(BayServer server) throws Exception {
        var tab = new Tab(server);
        open.add(tab);
        return tab;
    }

    private static String set(String at, String value) {
        return "[{\"kind\":\"set\",\"at\":\"" + at + "\",\"value\":\"" + value + "\"}]";
    }

    @Test
    void aDocumentIsTheFileWithItsPartsAndItsOutline() throws Exception {
        var document = tab(server()).ask("document", "rig", RIG);
        assertThat(document.status()).isEqualTo(200);
        assertThat(document.text("rig")).isEqualTo(RIG);
        assertThat(document.text("text")).isEqualTo(first);
        assertThat(document.text("revision")).startsWith("sha256:");
        assertThat(document.body().truth("saved")).isTrue();
        assertThat(document.body().truth("readable")).isTrue();
        assertThat(document.body().values()).doesNotContainKeys("undo", "redo", "told", "conflict");
        var parts = document.body().items("parts");
        assertThat(parts).hasSize(24 + 12 + 3 + 5);
        var left3 =
                parts.stream()
                        .map(p -> p.asMembers("part"))
                        .filter(p -> p.text("id").equals("left.3"))
                        .findFirst()
                        .orElseThrow();
        assertThat(left3.text("kind")).isEqualTo("fan");
        assertThat(left3.text("path")).isEqualTo("fans/left");
        assertThat(left3.text("twin")).isEqualTo("right.3");
        assertThat(first.substring(left3.whole("from"), left3.whole("to")))
                .startsWith("{id: left,");
        assertThat(left3.whole("line")).isEqualTo(line(first, left3.whole("from")));
        assertThat(document.body().items("outline")).hasSizeGreaterThan(10);
        assertThat(document.body().items("problems")).isEmpty();
    }

    @Test
    void aKeyThatNoQuestionReadsIsNoted() throws Exception {
        var tab = tab(server());
        String base = tab.ask("document", "rig", RIG).text("revision");
        var changed =
                tab.change(
                        RIG,
                        base,
                        "[{\"kind\":\"add\",\"at\":\"site\",\"key\":\"surface\",\"value\":\"mud\"}]");
        var problem = changed.body().items("problems").getFirst().asMembers("problem");
        assertThat(problem.text("code")).isEqualTo("used by no question yet");
        assertThat(problem.text("severity")).isEqualTo("note");
        assertThat(changed.body().truth("readable")).isTrue();
    }

    private static int line(String text, int offset) {
        return (int) text.substring(0, offset).chars().filter(c -> c == '\n').count() + 1;
    }

    @Test
    void changesAreMadeTakenBackAndSaved() throws Exception {
        var tab = tab(server());
        String base = tab.ask("document", "rig", RIG).text("revision");
        var changed = tab.change(RIG, base, set("wearer/mass", "70 kg"));
        assertThat(changed.status()).isEqualTo(200);
        assertThat(changed.text("text")).isEqualTo(first.replace("62 kg ± 0.4 kg", "70 kg"));
        assertThat(changed.text("undo")).isEqualTo("a test");
        assertThat(changed.body().truth("saved")).isFalse();
        var undone = tab.ask("undo", "rig", RIG, "base", changed.text("revision"));
        assertThat(undone.text("text")).isEqualTo(first);
        assertThat(undone.text("redo")).isEqualTo("a test");
        var redone = tab.ask("redo", "rig", RIG, "base", base);
        var saved = tab.ask("save", "rig", RIG, "base", redone.text("revision"));
        assertThat(saved.body().truth("saved")).isTrue();
        assertThat(Files.readString(folder.resolve(RIG))).isEqualTo(saved.text("text"));
    }

    @Test
    void everyKindOfChangeArrives() throws Exception {
        var tab = tab(server());
        String base = tab.ask("document", "rig", RIG).text("revision");
        var changed =
                tab.change(
                        RIG,
                        base,
                        """
                        [{"kind":"set","at":"revision","value":"4"},
                         {"kind":"add","at":"site","key":"pressure","value":"1000 hPa"},
                         {"kind":"remove","at":"rates"},
                         {"kind":"replace","at":"demands","value":"{hover: 30 s}"},
                         {"kind":"move","at":"fans/left","index":0}]
                        """);
        assertThat(changed.status()).isEqualTo(200);
        assertThat(changed.text("text"))
                .contains("revision: 4", "pressure: 1000 hPa", "demands: {hover: 30 s}")
                .doesNotContain("rates:");
        assertThat(changed.text("text").indexOf("id: left"))
                .isLessThan(changed.text("text").indexOf("id: back-top"));
        assertThat(changed.body().truth("readable")).isTrue();
    }

    @Test
    void anyTextIsTakenAndItsProblemsAreTold() throws Exception {
        var tab = tab(server());
        String base = tab.ask("document", "rig", RIG).text("revision");
        String broken = "liftwright: 1\nrig: 🌊\nfans: [{\n";
        var typed = tab.ask("text", "rig", RIG, "base", base, "text", broken);
        assertThat(typed.status()).isEqualTo(200);
        assertThat(typed.text("text")).isEqualTo(broken);
        assertThat(typed.body().truth("readable")).isFalse();
        var problems = typed.body().items("problems");
        assertThat(problems).isNotEmpty();
        var problem = problems.getFirst().asMembers("problem");
        assertThat(problem.text("severity")).isEqualTo("error");
        assertThat(problem.whole("from")).isBetween(0, broken.length());
        assertThat(typed.body().items("parts")).isEmpty();
    }

    @Test
    void twoTabsMeet() throws Exception {
        var server = server();
        var one = tab(server);
        var other = tab(server);
        String base = one.ask("document", "rig", RIG).text("revision");
        var first = one.change(RIG, base, set("wearer/mass", "70 kg"));
        var late = other.ask("text", "rig", RIG, "base", base, "text", "rig: x\n");
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text("fault")).isEqualTo("stale");
        assertThat(late.document().text("revision")).isEqualTo(first.text("revision"));
        var merged = other.change(RIG, base, set("site/temperature", "9 °C"));
        assertThat(merged.status()).isEqualTo(200);
        assertThat(merged.text("told")).isNotBlank();
        assertThat(merged.text("text")).contains("mass: 70 kg", "temperature: 9 °C");
        var gone =
                one.change(RIG, merged.text("revision"), "[{\"kind\":\"remove\",\"at\":\"crew\"}]");
        var refused =
                other.change(RIG, merged.text("revision"), set("crew/watcher/reaction", "2 s"));
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.text("fault")).isEqualTo("refused");
        assertThat(refused.document().text("revision")).isEqualTo(gone.text("revision"));
    }

    @Test
    void anotherProgramsTextIsAConflictThatIsResolved() throws Exception {
        var tab = tab(server());
        String base = tab.ask("document", "rig", RIG).text("revision");
        var mine = tab.ask("text", "rig", RIG, "base", base, "text", first + "# mine\n");
        Files.writeString(folder.resolve(RIG), first + "# theirs\n");
        var save = tab.ask("save", "rig", RIG, "base", mine.text("revision"));
        assertThat(save.status()).isEqualTo(409);
        assertThat(save.text("fault")).isEqualTo("conflict");
        assertThat(save.document().members("conflict").text("diskText"))
                .isEqualTo(first + "# theirs\n");
        assertThat(save.document().text("text")).isEqualTo(first + "# mine\n");
        var taken = tab.ask("resolve", "rig", RIG, "base", mine.text("revision"), "take", "disk");
        assertThat(taken.text("text")).isEqualTo(first + "# theirs\n");
        assertThat(taken.body().values()).doesNotContainKey("conflict");
        var back = tab.ask("undo", "rig", RIG, "base", taken.text("revision"));
        assertThat(back.text("text")).isEqualTo(first + "# mine\n");
        var neither = tab.ask("resolve", "rig", RIG, "base", back.text("revision"), "take", "x");
        assertThat(neither.status()).isEqualTo(400);
    }

    @Test
    void unsavedWorkIsThereAfterTheServerWasStopped() throws Exception {
        var server = server();
        var tab = tab(server);
        String base = tab.ask("document", "rig", RIG).text("revision");
        var changed = tab.change(RIG, base, set("wearer/mass", "70 kg"));
        open.remove(server);
        server.close();
        var again = tab(server()).ask("document", "rig", RIG);
        assertThat(again.text("text")).isEqualTo(changed.text("text"));
        assertThat(again.text("told")).isNotBlank();
        assertThat(again.body().truth("saved")).isFalse();
    }

    @Test
    void aWatcherHearsOfOtherTabsAndOfOtherPrograms() throws Exception {
        var server = server();
        var tab = tab(server);
        String base = tab.ask("document", "rig", RIG).text("revision");
        try (var watch = tab(server).stream("watch", "rig", RIG)) {
            assertThat(watch.readLine()).isEqualTo("{}");
            var changed = tab.change(RIG, base, set("wearer/mass", "70 kg"));
            assertThat(heard(watch).text("revision")).isEqualTo(changed.text("revision"));
            tab.ask("save", "rig", RIG, "base", changed.text("revision"));
            assertThat(heard(watch).truth("saved")).isTrue();
            Files.writeString(folder.resolve(RIG), changed.text("text") + "# theirs\n");
            assertThat(heard(watch).text("revision")).isNotEqualTo(changed.text("revision"));
            var now = tab.ask("document", "rig", RIG);
            assertThat(now.text("text")).endsWith("# theirs\n");
        }
    }

    private static Json.Members heard(BufferedReader watch) throws Exception {
        while (true) {
            var line = JsonReader.read(watch.readLine().getBytes(StandardCharsets.UTF_8));
            if (!line.values().isEmpty()) {
                return line;
            }
        }
    }

    @Test
    void completionKnowsTheTable() throws Exception {
        String text = "site:\n  elev\n";
        var answer = tab(server()).ask("complete", "{\"text\":\"site:\\n  elev\\n\",\"from\":12}");
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body().whole("from")).isEqualTo(text.indexOf("elev"));
        assertThat(answer.body().whole("to")).isEqualTo(text.indexOf("elev") + 4);
        var options = answer.body().items("options").stream().map(o -> o.asMembers("option"));
        assertThat(options)
                .anySatisfy(
                        option -> {
                            assertThat(option.text("label")).isEqualTo("elevation");
                            assertThat(option.text("insert")).isEqualTo("elevation: ");
                            assertThat(option.text("detail")).isNotBlank();
                        });
    }

    @Test
    void aLinkAndItsFileAreOneDocument() throws Exception {
        Files.createSymbolicLink(folder.resolve("link.yaml"), Path.of(RIG));
        var tab = tab(server());
        String base = tab.ask("document", "rig", RIG).text("revision");
        var changed = tab.change(RIG, base, set("wearer/mass", "70 kg"));
        var linked = tab.ask("document", "rig", "link.yaml");
        assertThat(linked.text("revision")).isEqualTo(changed.text("revision"));
        assertThat(linked.text("rig")).isEqualTo("link.yaml");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"rig\":\"rig.yaml\"}",
                "{\"rig\":\"rig.yaml\",\"base\":\"x\",\"changes\":{},\"label\":\"x\"}",
                "{\"rig\":\"rig.yaml\",\"base\":\"x\",\"changes\":[1],\"label\":\"x\"}",
                "{\"rig\":\"rig.yaml\",\"base\":\"x\",\"changes\":[{\"kind\":\"set\"}],\"label\":\"x\"}",
                "{\"rig\":\"rig.yaml\",\"base\":\"x\",\"changes\":[{\"kind\":\"eat\",\"at\":\"a\"}],\"label\":\"x\"}",
                "{\"rig\":\"rig.yaml\",\"base\":\"x\",\"changes\":[{\"kind\":\"move\",\"at\":\"a\",\"index\":-1}],\"label\":\"x\"}",
                "{\"rig\":\"rig.yaml\",\"base\":\"x\",\"changes\":[]}"
            })
    void badRequestsAreToldAndChangeNothing(String body) throws Exception {
        var tab = tab(server());
        assertThat(tab.ask("change", body).status()).isEqualTo(400);
        assertThat(tab.ask("document", "rig", RIG).text("text")).isEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"none.yaml", "../rig.yaml", "/etc/passwd", ".liftwright/x.yaml", ""})
    void filesThatAreNotThereOrElsewhereAreMissing(String rig) throws Exception {
        var answer = tab(server()).ask("document", "rig", rig);
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.text("fault")).isEqualTo("missing");
    }
}
