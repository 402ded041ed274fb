package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing outside the opened folder is read, and of the program nothing but the page. */
class PlacesTest {

    private static final String SECRET = "liftwright: 1\nrig: OUTSIDE\n";

    @TempDir private Path around;
    private Path folder;

    @BeforeEach
    void layOut() throws IOException {
        folder = Files.createDirectory(around.resolve("opened"));
        Files.writeString(folder.resolve("rig.yaml"), OpenBay.RIG);
        Files.createDirectories(folder.resolve("sub/deeper"));
        Files.writeString(folder.resolve("sub/two.yml"), OpenBay.RIG);
        Files.writeString(around.resolve("outside.yaml"), SECRET);
        Files.createDirectory(around.resolve("opened-not"));
        Files.writeString(around.resolve("opened-not/outside.yaml"), SECRET);
        Files.createDirectories(folder.resolve(".liftwright"));
        Files.writeString(folder.resolve(".liftwright/hidden.yaml"), SECRET);
        Files.createSymbolicLink(folder.resolve("link.yaml"), around.resolve("outside.yaml"));
        Files.createSymbolicLink(folder.resolve("linked"), around.resolve("opened-not"));
        Files.createSymbolicLink(folder.resolve("up"), Path.of(".."));
        Files.createSymbolicLink(folder.resolve("own.yaml"), Path.of("sub/two.yml"));
        Files.createSymbolicLink(folder.resolve("loop.yaml"), Path.of("loop.yaml"));
        Files.createSymbolicLink(folder.resolve("dangling.yaml"), around.resolve("nothing.yaml"));
        Files.createDirectory(folder.resolve("folder.yaml"));
        Files.writeString(folder.resolve("notes.txt"), SECRET);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rig.yaml", "sub/two.yml", "own.yaml"})
    void whatIsInsideIsFound(String rig) throws IOException {
        assertThat(Files.readString(new OpenedFolder(folder).rig(rig))).isEqualTo(OpenBay.RIG);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../outside.yaml",
                "sub/../../outside.yaml",
                "sub/../rig.yaml",
                "./rig.yaml",
                "/etc/passwd",
                "/rig.yaml",
                "../opened-not/outside.yaml",
                "..\\outside.yaml",
                "C:/outside.yaml",
                "%2e%2e/outside.yaml",
                "..%2foutside.yaml",
                "link.yaml",
                "linked/outside.yaml",
                "up/outside.yaml",
                "up/opened/rig.yaml/../../outside.yaml",
                "loop.yaml",
                "dangling.yaml",
                "folder.yaml",
                "rig.yaml/",
                "rig.yaml/x.yaml",
                "sub//two.yml",
                ".liftwright/hidden.yaml",
                ".liftwright/door",
                "sub/.hidden/x.yaml",
                "notes.txt",
                "rig.yaml\u0000",
                "rig.yaml\u0000.yaml",
                "\u202erig.yaml",
                "",
                " ",
                ".",
                "..",
                "nothing.yaml",
            })
    void whatIsOutsideOrHiddenOrNoRigFileIsNot(String rig) throws IOException {
        var opened = new OpenedFolder(folder);
        assertThatThrownBy(() -> opened.rig(rig))
                .isInstanceOfSatisfying(
                        FaultException.class,
                        e -> {
                            assertThat(e.kind()).isEqualTo(FaultException.Kind.MISSING);
                            assertThat(e.json()).doesNotContain(around.toString(), "\u202e");
                        });
    }

    /** A link is judged when it is followed and not when it was seen first. */
    @Test
    void aLinkThatIsTurnedOutwardsLaterLeadsNowhere() throws IOException {
        var opened = new OpenedFolder(folder);
        Path link = folder.resolve("turned.yaml");
        Files.createSymbolicLink(link, Path.of("rig.yaml"));
        assertThat(opened.rig("turned.yaml")).hasContent(OpenBay.RIG);
        Files.delete(link);
        Files.createSymbolicLink(link, around.resolve("outside.yaml"));
        assertThatThrownBy(() -> opened.rig("turned.yaml")).isInstanceOf(FaultException.class);
    }

    @Test
    void theListHoldsWhatIsInsideAndIsARig() throws IOException {
        Files.writeString(folder.resolve("stand.yaml"), "stand: 1\nname: no rig\n");
        Files.writeString(folder.resolve("deep.yaml"), "other: 1\nx:\n  liftwright: 1\n");
        assertThat(RigList.of(new OpenedFolder(folder)))
                .containsExactly(
                        new RigList.Found("own.yaml", "Heron"),
                        new RigList.Found("rig.yaml", "Heron"),
                        new RigList.Found("sub/two.yml", "Heron"));
    }

    @Test
    void theListEndsAtADepthAndANumber() throws IOException {
        Path deep = folder;
        for (int i = 0; i < 8; i++) {
            deep = Files.createDirectory(deep.resolve("d"));
            Files.writeString(deep.resolve("rig.yaml"), OpenBay.RIG);
        }
        for (int i = 0; i < 300; i++) {
            Files.writeString(folder.resolve("sub/deeper/many" + i + ".yaml"), OpenBay.RIG);
        }
        List<RigList.Found> found = RigList.of(new OpenedFolder(folder));
        assertThat(found).hasSize(200);
        assertThat(found).extracting(RigList.Found::path).contains("d/d/d/d/rig.yaml");
        assertThat(found).extracting(RigList.Found::path).doesNotContain("d/d/d/d/d/rig.yaml");
    }

    @Test
    void aHostileNameIsTextAndNothingElse() throws IOException {
        Files.writeString(
                folder.resolve("rig.yaml"),
                "liftwright: 1\nrig: <img src=x onerror=alert(1)>\u202e\u001b[31m\n");
        Files.writeString(folder.resolve("a<b>&'\".yaml"), OpenBay.RIG);
        Files.writeString(folder.resolve("turned\u202e.yaml"), OpenBay.RIG);
        try (var bay = OpenBay.at(folder)) {
            Raw.Answer answer = bay.raw().post("folder", "{}", bay.key());
            assertThat(answer.header("content-type")).startsWith("application/json");
            assertThat(answer.body())
                    .contains("<img src=x onerror=alert(1)>")
                    .contains("a<b>&'\\\".yaml")
                    .doesNotContain("\u202e", "\u001b", "turned");
        }
    }

    @Test
    void thePageIsServedWithItsParts() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            Raw.Answer page = get(bay, "/");
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.header("content-type")).isEqualTo("text/html; charset=utf-8");
            String script = page.body().replaceAll("(?s).*src=\"\\./([^\"]+)\".*", "$1");
            Raw.Answer part = get(bay, "/" + script);
            assertThat(part.status()).isEqualTo(200);
            assertThat(part.header("content-type")).startsWith("text/javascript");
            assertThat(part.header("cache-control")).contains("immutable");
            assertThat(page.header("cache-control")).isEqualTo("no-store");
            assertThat(page.body()).doesNotContain("style=", "<style", "onload=");
        }
    }

    @Test
    void noPathLeadsToAnythingElse() throws IOException {
        List<String> paths =
                List.of(
                        "/../../../../etc/passwd",
                        "/%2e%2e/%2e%2e/etc/passwd",
                        "/..%2f..%2fetc/passwd",
                        "/assets/../index.html",
                        "/assets/%2e%2e/index.html",
                        "/assets/..",
                        "/assets",
                        "/assets/",
                        "/./index.html",
                        "/%69ndex.html",
                        "/index.html%00",
                        "/index.html/",
                        "/..%5cindex.html",
                        "/rig.yaml",
                        "/liftwright/page/index.html",
                        "/../app/Main.class",
                        "/../../META-INF/MANIFEST.MF",
                        "/%2e%2e/app/Main.class",
                        "/.liftwright/door",
                        "/API/folder",
                        "/api",
                        "/favicon.ico",
                        "/" + "a".repeat(5000));
        try (var bay = OpenBay.at(folder)) {
            for (String path : paths) {
                Raw.Answer answer = get(bay, path);
                assertThat(answer.status()).as(path).isEqualTo(404);
                assertThat(answer.body()).as(path).contains("\"fault\":\"missing\"");
            }
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void aRigOutsideIsNoRigForARequestEither() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            String key = bay.key();
            for (String rig : List.of("../outside.yaml", "link.yaml", "linked/outside.yaml")) {
                Raw.Answer answer = bay.raw().post("watch", "{\"rig\":\"" + rig + "\"}", key);
                assertThat(answer.status()).as(rig).isEqualTo(404);
                assertThat(answer.body()).doesNotContain("OUTSIDE");
            }
        }
    }

    private static Raw.Answer get(OpenBay bay, String path) {
        return bay.raw().ask("GET", path, "", bay.raw().host());
    }
}
