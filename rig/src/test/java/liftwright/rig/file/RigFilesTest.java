package liftwright.rig.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import liftwright.rig.text.FolderGuard;
import liftwright.rig.text.FolderGuard.Target;
import liftwright.rig.text.YamlText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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

    /** The steps of saving in their order; the disk fails at one of them. */
    enum Step {
        WRITE_NOTHING,
        WRITE_HALF,
        FORCE,
        APPEAR,
        FORCE_FOLDER
    }

    private static final class FailingAt extends Disk {
        private final Step at;

        FailingAt(Step at) {
            this.at = at;
        }

        @Override
        public void write(FileChannel channel, byte[] bytes) throws IOException {
            failAt(Step.WRITE_NOTHING);
            if (at == Step.WRITE_HALF) {
                super.write(channel, Arrays.copyOf(bytes, bytes.length / 2));
            }
            failAt(Step.WRITE_HALF);
            super.write(channel, bytes);
        }

        @Override
        public void force(FileChannel channel) throws IOException {
            failAt(Step.FORCE);
            super.force(channel);
        }

        @Override
        public void replace(Path fresh, Path target) throws IOException {
            failAt(Step.APPEAR);
            super.replace(fresh, target);
        }

        @Override
        public void publish(Path fresh, Path target, byte[] bytes) throws IOException {
            failAt(Step.APPEAR);
            super.publish(fresh, target, bytes);
        }

        @Override
        public void forceFolder(Path folder) throws IOException {
            failAt(Step.FORCE_FOLDER);
            super.forceFolder(folder);
        }

        private void failAt(Step step) throws IOException {
            if (at == step) {
                throw new IOException("no space left at " + step);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void whereverSavingFailsTheFileIsTheOldOneOrTheNewOneWhole(Step step) throws Exception {
        Path file = Files.writeString(folder.resolve("rig.yaml"), "old");
        assertThatThrownBy(() -> RigFiles.write(file, NEW, new FailingAt(step)))
                .hasMessageContaining("no space left");
        if (step == Step.FORCE_FOLDER) {
            assertThat(file).hasBinaryContent(NEW);
        } else {
            assertThat(file).hasContent("old");
        }
        assertThat(names()).containsExactly("rig.yaml");
    }

    @ParameterizedTest
    @EnumSource
    void whereverCreatingFailsNothingIsThereOrTheNewFileWhole(Step step) throws Exception {
        Path file = folder.resolve("rig.yaml");
        assertThatThrownBy(() -> RigFiles.create(file, NEW, new FailingAt(step)))
                .hasMessageContaining("no space left");
        if (step == Step.FORCE_FOLDER) {
            assertThat(file).hasBinaryContent(NEW);
            assertThat(names()).containsExactly("rig.yaml");
        } else {
            assertThat(names()).isEmpty();
        }
    }

    @Test
    void whatIsThereIsNotCreatedAgain() throws Exception {
        Path file = folder.resolve("in/rig.yaml");
        RigFiles.create(file, NEW);
        assertThatThrownBy(() -> RigFiles.create(file, "other".getBytes(UTF_8)))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(file).hasBinaryContent(NEW);
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
