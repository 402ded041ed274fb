package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which profile a rig is flown with from the page. */
class ProfileRoutesTest {

    private static final Path CURLEW = Path.of("..", "examples", "curlew", "rig.yaml");

    @TempDir private Path folder;

    @BeforeEach
    void aRig() throws Exception {
        Files.copy(CURLEW, folder.resolve("rig.yaml"));
    }

    private void profile(String name, String text) throws Exception {
        Files.createDirectories(folder.resolve("profiles"));
        Files.writeString(folder.resolve("profiles").resolve(name), text);
    }

    private static List<String> names(Tab tab) throws Exception {
        return tab.ask("profiles", "{\"rig\":\"rig.yaml\"}").body().texts("profiles");
    }

    /** What came of asking for the loops and no flight. */
    private static String asked(Tab tab, String more) throws Exception {
        String base = tab.ask("document", "{\"rig\":\"rig.yaml\"}").text("revision");
        var told = new StringBuilder();
        try (var stream =
                tab.lines(
                        "ask",
                        """
                        {"rig":"rig.yaml","base":"%s","questions":["flight"],
                         "units":"si","to":"nominal"%s}\
                        """
                                .formatted(base, more))) {
            stream.lines().forEach(told::append);
        }
        return told.toString();
    }

    @Test
    void thoseBesideTheRigAreListedAndNothingElse(@TempDir Path elsewhere) throws Exception {
        Files.writeString(elsewhere.resolve("secret.yaml"), "liftwright profile: 1\n");
        profile("b.yaml", "");
        profile("a.yaml", "");
        profile("notes.txt", "");
        Files.createSymbolicLink(
                folder.resolve("profiles/linked.yaml"), elsewhere.resolve("secret.yaml"));
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            assertThat(names(tab)).containsExactly("a.yaml", "b.yaml");
            assertThat(asked(tab, ",\"profile\":\"linked.yaml\"")).contains("no such profile");
            assertThat(asked(tab, ",\"profile\":\"../rig.yaml\"")).contains("no such profile");
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void withoutAnyTheUsualOneIsFlown() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            assertThat(names(tab)).isEmpty();
            assertThat(asked(tab, "")).contains("\"loops\"").doesNotContain("refused");
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void oneThatDoesNotReadSaysWhere() throws Exception {
        profile("torn.yaml", "liftwright profile: 1\nname: torn\nsteps:\n  - hover: 3 s\n");
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            assertThat(asked(tab, "")).contains("profiles/torn.yaml, line ").contains("refused");
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void aFolderThatLeadsElsewhereIsNone(@TempDir Path elsewhere) throws Exception {
        Files.createSymbolicLink(folder.resolve("profiles"), elsewhere);
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            assertThat(tab.ask("profiles", "{\"rig\":\"rig.yaml\"}").status()).isEqualTo(404);
            assertThat(bay.faults()).isEmpty();
        }
    }
}
