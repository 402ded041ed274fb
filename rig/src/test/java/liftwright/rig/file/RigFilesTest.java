package liftwright.rig.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import liftwright.rig.text.FolderGuard;
import liftwright.rig.text.FolderGuard.Target;
import liftwright.rig.text.YamlText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RigFilesTest {

    @TempDir Path folder;

    private static final byte[] NEW = "new\r\n".getBytes(UTF_8);

    private List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aNewFileIsMade() throws Exception {
        RigFiles.write(folder.resolve("rig.yaml"), NEW);
        assertThat(RigFiles.read(folder.resolve("rig.yaml"))).isEqualTo(NEW);
        assertThat(names()).containsExactly("rig.yaml");
    }

    @Test
    void anExistingFileKeepsItsMode() throws Exception {
        Path file = Files.writeString(folder.resolve("rig.yaml"), "old");
        var mode = PosixFilePermissions.fromString("rw-rw-r-x");
        Files.setPosixFilePermissions(file, mode);
        RigFiles.write(file, NEW);
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(mode);
        assertThat(file).hasBinaryContent(NEW);
        assertThat(names()).containsExactly("rig.yaml");
    }

    @Test
    void linksStayLinks() throws Exception {
        Path there = Files.createDirectory(folder.resolve("there"));
        Path file = Files.writeString(there.resolve("real.yaml"), "old");
        Path link =
                Files.createSymbolicLink(folder.resolve("rig.yaml"), Path.of("there/real.yaml"));
        Path outer = Files.createSymbolicLink(folder.resolve("outer"), link);
        RigFiles.write(outer, NEW);
        assertThat(file).hasBinaryContent(NEW);
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(Files.isSymbolicLink(outer)).isTrue();
        assertThat(Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)).isTrue();
    }

    @Test
    void aLinkToNothingYetGetsItsFile() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("rig.yaml"), Path.of("real.yaml"));
        RigFiles.write(link, NEW);
        assertThat(folder.resolve("real.yaml")).hasBinaryContent(NEW);
        assertThat(Files.isSymbolicLink(link)).isTrue();
    }

    @Test
    void linksInARingAreRefused() throws Exception {
        Path one = Files.createSymbolicLink(folder.resolve("one"), Path.of("two"));
        Files.createSymbolicLink(folder.resolve("two"), Path.of("one"));
        assertThatThrownBy(() -> RigFiles.write(one, NEW)).isInstanceOf(IOException.class);
    }

    @Test
    void aFailureLeavesNothingBehind() throws Exception {
        Path inTheWay = Files.createDirectory(folder.resolve("rig.yaml"));
        assertThatThrownBy(() -> RigFiles.write(inTheWay, NEW)).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> RigFiles.write(folder.resolve("no/such/rig.yaml"), NEW))
                .isInstanceOf(IOException.class);
        assertThatThrownBy(() -> RigFiles.read(inTheWay)).isInstanceOf(IOException.class);
        assertThat(names()).containsExactly("rig.yaml");
    }

    @Test
    void whatTheBuilderTypedMeanwhileIsNotLost() throws Exception {
        Path file = Files.writeString(folder.resolve("rig.yaml"), "theirs");
        assertThat(RigFiles.writeOver(file, "ours".getBytes(UTF_8), NEW)).isFalse();
        assertThat(file).hasContent("theirs");
        assertThat(RigFiles.writeOver(file, "theirs".getBytes(UTF_8), NEW)).isTrue();
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void aHugeFileIsNotReadWhole() throws Exception {
        Path file = Files.write(folder.resolve("rig.yaml"), new byte[10 << 20]);
        assertThat(RigFiles.read(file)).hasSize(YamlText.MOST_BYTES + 1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "/etc/passwd",
                "../x.csv",
                "a/../../x",
                "a/..",
                "C:\\x",
                "c:x",
                "a\\b",
                "a//b",
                "x\u0000",
                "x\ny",
                "\u202Excsv"
            })
    void referencesThatLeadOutAreRefusedByTheirLetters(String reference) {
        assertThat(FolderGuard.objection(reference)).isPresent();
        assertThat(new FolderGuard(folder).resolve(reference)).isInstanceOf(Target.Outside.class);
    }

    @Test
    void linksThatLeadOutAreRefused(@TempDir Path elsewhere) throws Exception {
        Files.writeString(elsewhere.resolve("secret"), "x");
        Path rig = Files.createDirectory(folder.resolve("rig"));
        Files.createDirectory(rig.resolve("sub"));
        Files.writeString(rig.resolve("sub/bench.csv"), "x");
        Files.createSymbolicLink(rig.resolve("out"), elsewhere);
        Files.createSymbolicLink(rig.resolve("out.csv"), elsewhere.resolve("secret"));
        Files.createSymbolicLink(rig.resolve("in.csv"), Path.of("sub/bench.csv"));
        var guard = new FolderGuard(rig);
        for (String out : List.of("out/secret", "out/new", "out.csv", "sub")) {
            assertThat(guard.resolve(out)).as(out).isInstanceOf(Target.Outside.class);
        }
        for (String in : List.of("sub/bench.csv", "in.csv", "new.csv", "new/er.csv", "./in.csv")) {
            assertThat(guard.resolve(in)).as(in).isInstanceOf(Target.Inside.class);
        }
    }
}
