package liftwright.logbook.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import liftwright.logbook.entry.RandomEntries;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.entry.TestEntry.Snapshot;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A writer that is killed without warning in the middle of its additions. */
class KilledWriterTest {

    /** Adds tests and rows until it is killed, and says each that was acknowledged. */
    static final class Writer {

        private Writer() {}

        static void main(String[] args) throws IOException {
            Path rigFile = Path.of(args[0]);
            RigReading rig =
                    RigReading.read(
                            "rig.yaml",
                            Files.readAllBytes(rigFile),
                            new Folder(rigFile.resolveSibling("")));
            Logbook logbook = Logbook.at(rigFile);
            for (long seed = Long.parseLong(args[1]); ; seed++) {
                var random = new SplittableRandom(seed);
                TestEntry entry =
                        new RandomEntries(random).test(new Snapshot("rig.yaml", rig.digest(), 1));
                StoredTest test =
                        logbook.add(entry, rig, LogbookTest.files(entry, random), () -> false);
                say("test " + test.id() + " " + test.digest());
                int rows =
                        logbook.records()
                                .add(
                                        new RandomEntries(new SplittableRandom(0)).pack(),
                                        new RandomEntries(random).row())
                                .rows()
                                .size();
                say("rows " + rows);
            }
        }

        private static void say(String line) {
            System.out.println(line);
            System.out.flush();
        }
    }

    @Test
    void whatItSaidIsThereAndNothingElseIsHalf(@TempDir Path home) throws Exception {
        Path rig = home.resolve("rig.yaml");
        Files.copy(Path.of("..", "examples", "curlew", "rig.yaml"), rig);
        var said = new ArrayList<String>();
        for (int round = 0; round < 3; round++) {
            said.addAll(killed(rig, 1000L * round, 3 + 4 * round));
            Logbook logbook = Logbook.at(rig);
            List<String> there =
                    logbook.tests().stream().map(t -> "test " + t.id() + " " + t.digest()).toList();
            assertThat(there)
                    .containsAll(said.stream().filter(line -> line.startsWith("test")).toList());
            int rows =
                    said.stream()
                            .filter(line -> line.startsWith("rows"))
                            .mapToInt(line -> Integer.parseInt(line.substring(5)))
                            .max()
                            .orElse(0);
            assertThat(logbook.records().pack("p.1").map(sheet -> sheet.rows().size()).orElse(0))
                    .isBetween(rows, rows + 1);
            assertThat(logbook.check()).allMatch(Flaw::isHarmless);
        }
        assertThat(said.size()).isGreaterThan(8);
    }

    /** Lines of a writer that was killed right after so many of them. */
    private static List<String> killed(Path rig, long seed, int lines) throws Exception {
        Process writer =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Xmx200m",
                                "-cp",
                                System.getProperty("java.class.path"),
                                Writer.class.getName(),
                                rig.toString(),
                                Long.toString(seed))
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        var said = new ArrayList<String>();
        try (var out =
                new BufferedReader(
                        new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            for (int k = 0; k < lines; k++) {
                String line = out.readLine();
                assertThat(line).as("the writer ended by itself").isNotNull();
                said.add(line);
            }
            Thread.sleep(lines % 7); // no two rounds at the same step
        } finally {
            writer.destroyForcibly().waitFor();
        }
        return said;
    }
}
