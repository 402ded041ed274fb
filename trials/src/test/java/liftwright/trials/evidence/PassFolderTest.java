package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CopyOnWriteArrayList;
import liftwright.rig.Problem.Code;
import liftwright.rig.file.FailingDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder of passes: whole files or none. */
class PassFolderTest {

    private static Pass pass(long seed) {
        return PassReadingTest.pass(new SplittableRandom(seed));
    }

    private static List<String> names(Path folder) throws IOException {
        try (var all = Files.list(folder)) {
            return all.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatIsAddedIsThereInOrder(@TempDir Path beside) throws IOException {
        Path rig = beside.resolve("rig.yaml");
        var folder = PassFolder.beside(rig);
        assertThat(folder.read()).isEqualTo(new PassFolder.Contents(List.of(), List.of()));
        var added = new ArrayList<Pass>();
        for (int i = 0; i < 5; i++) {
            added.add(folder.add(pass(i)));
        }
        assertThat(added.stream().map(Pass::number)).containsExactly(1, 2, 3, 4, 5);
        assertThat(folder.read()).isEqualTo(new PassFolder.Contents(added, List.of()));
        assertThat(names(beside.resolve("rig.passes")))
                .containsExactly("0001.yaml", "0002.yaml", "0003.yaml", "0004.yaml", "0005.yaml");
    }

    @Test
    void whereverTheDiskFailsThePassIsThereWholeOrNotAtAll(@TempDir Path beside)
            throws IOException {
        int failed = 0;
        boolean more = true;
        for (int at = 0; more; at++) {
            Path place = beside.resolve("at " + at);
            var before = new PassFolder(place);
            Pass first = before.add(pass(1));
            byte[] bytes = Files.readAllBytes(place.resolve("0001.yaml"));
            try {
                new PassFolder(place, new FailingDisk(at, true)).add(pass(2));
                more = false;
            } catch (IOException e) {
                failed++;
            }
            var contents = before.read();
            assertThat(contents.problems()).isEmpty();
            assertThat(contents.passes()).startsWith(first);
            assertThat(contents.passes().size()).isBetween(1, 2);
            assertThat(Files.readAllBytes(place.resolve("0001.yaml"))).isEqualTo(bytes);
            assertThat(names(place)).allMatch(name -> name.matches("\\d{4}\\.yaml"));
            // And the folder goes on.
            assertThat(before.add(pass(3)).number()).isEqualTo(contents.passes().size() + 1);
        }
        assertThat(failed).as("write, force, publish, force the folder").isEqualTo(4);
    }

    @Test
    void nothingIsEverWrittenOver(@TempDir Path place) throws Exception {
        var added = new CopyOnWriteArrayList<Pass>();
        var threads = new ArrayList<Thread>();
        var failures = new CopyOnWriteArrayList<Exception>();
        for (int t = 0; t < 4; t++) {
            long seed = 100L * t;
            threads.add(
                    Thread.ofPlatform()
                            .start(
                                    () -> {
                                        try {
                                            for (int i = 0; i < 10; i++) {
                                                added.add(
                                                        new PassFolder(place).add(pass(seed + i)));
                                            }
                                        } catch (IOException | RuntimeException e) {
                                            failures.add(e);
                                        }
                                    }));
        }
        for (Thread thread : threads) {
            thread.join();
        }
        assertThat(failures).isEmpty();
        var contents = new PassFolder(place).read();
        assertThat(contents.problems()).isEmpty();
        assertThat(contents.passes()).hasSize(40).containsExactlyInAnyOrderElementsOf(added);
    }

    @Test
    void whatIsMissingCopiedOrSpoiltIsTold(@TempDir Path place) throws IOException {
        var folder = new PassFolder(place);
        for (int i = 0; i < 4; i++) {
            folder.add(pass(i));
        }
        Files.copy(place.resolve("0002.yaml"), place.resolve("0005.yaml"));
        assertThat(folder.read().problems().stream().map(p -> p.code()))
                .containsExactly(Code.CONTRADICTION);
        Files.delete(place.resolve("0005.yaml"));
        Files.delete(place.resolve("0002.yaml"));
        assertThat(folder.read().problems())
                .anyMatch(p -> p.code() == Code.NO_SUCH_PART && p.at().file().equals("0002.yaml"));
        Files.writeString(place.resolve("0002.yaml"), "half a", StandardCharsets.UTF_8);
        Files.writeString(place.resolve("notes.txt"), "not ours", StandardCharsets.UTF_8);
        var contents = folder.read();
        assertThat(contents.problems()).isNotEmpty();
        assertThat(contents.passes()).hasSize(3);
    }

    @Test
    void aPassThatCouldNotBeReadBackIsNotWritten(@TempDir Path place) {
        Pass good = pass(7);
        Pass odd =
                new Pass(
                        1,
                        good.card(),
                        good.on(),
                        good.outcome(),
                        List.of("A\u202eB"),
                        good.cleanRuns(),
                        good.rig(),
                        1,
                        good.killProof(),
                        "",
                        good.inputs());
        assertThatThrownBy(() -> new PassFolder(place).add(odd)).isInstanceOf(IOException.class);
        assertThat(place).isEmptyDirectory();
    }

    @Test
    void settingsBesideARigAreNamedByWhatTheySay(@TempDir Path beside) throws IOException {
        Path rig = beside.resolve("rig.yaml");
        assertThat(PassFolder.settingsBeside(rig)).isEmpty();
        Path settings = Files.createDirectory(beside.resolve("rig.settings"));
        Files.writeString(settings.resolve("a.hex"), "one");
        Files.writeString(settings.resolve(".hidden"), "two");
        var first = PassFolder.settingsBeside(rig);
        assertThat(first.keySet()).containsExactly("a.hex");
        Files.writeString(settings.resolve("a.hex"), "two");
        assertThat(PassFolder.settingsBeside(rig)).isNotEqualTo(first);
        assertThat(first.get("a.hex")).startsWith("sha256:");
    }
}
