package liftwright.logbook.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import liftwright.logbook.engine.EngineException.Kind;
import liftwright.plant.recording.Samples;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EngineTest {

    private static final Limits SHORT = Limits.OF_A_QUESTION.within(Duration.ofMillis(700));

    @TempDir private Path folder = Path.of("");

    @Test
    void answersWithTypedValues() throws IOException {
        try (var engine = Engine.start(folder)) {
            Rows rows =
                    engine.ask(
                            "SELECT 1 AS a, 2.5 AS b, 'x' AS c, NULL AS d, true AS e,"
                                    + " CAST(7 AS HUGEINT) AS f",
                            Limits.OF_A_QUESTION);

            assertThat(rows.columns()).containsExactly("a", "b", "c", "d", "e", "f");
            assertThat(rows.rows())
                    .containsExactly(
                            List.of(
                                    new Value.Whole(1),
                                    new Value.Real(2.5),
                                    new Value.Text("x"),
                                    new Value.None(),
                                    new Value.Truth(true),
                                    new Value.Whole(7)));
            assertThat(rows.cut()).isFalse();
        }
    }

    @Test
    void asksViewsThatTheProgramMade() throws IOException {
        try (var engine = Engine.start(folder)) {
            engine.define("tests", "SELECT * FROM (VALUES ('one', 3), ('two', 4)) AS t(id, fans)");

            assertThat(
                            engine.ask(
                                            "WITH big AS (SELECT id FROM tests WHERE fans > 3)"
                                                    + " SELECT id FROM big",
                                            Limits.OF_A_QUESTION)
                                    .rows())
                    .containsExactly(List.of(new Value.Text("two")));
            assertThat(engine.ask("DESCRIBE tests", Limits.OF_A_QUESTION).rows()).hasSize(2);
        }
    }

    @Test
    void cutsWhatIsTooMuchAndSaysSo() throws IOException {
        try (var engine = Engine.start(folder)) {
            Rows few = engine.ask("SELECT * FROM range(100)", new Limits(7, 1 << 20, SHORT.time()));
            assertThat(few.rows()).hasSize(7);
            assertThat(few.cut()).isTrue();

            Rows light =
                    engine.ask(
                            "SELECT repeat('x', 1000) FROM range(100)",
                            new Limits(1000, 10_000, SHORT.time()));
            assertThat(light.rows().size()).isBetween(5, 12);
            assertThat(light.cut()).isTrue();
            assertThat(engine.ask("SELECT 1", SHORT).rows()).hasSize(1);
        }
    }

    @Test
    void stopsAStatementWhoseTimeIsOverAndGoesOn() throws IOException {
        try (var engine = Engine.start(folder)) {
            assertThatThrownBy(() -> engine.ask(endless(), SHORT))
                    .isInstanceOfSatisfying(
                            EngineException.class,
                            e -> assertThat(e.kind()).as(e.sentence()).isEqualTo(Kind.TOO_LONG));
            assertThat(engine.ask("SELECT 1", SHORT).rows()).hasSize(1);
        }
    }

    @Test
    void stopsWhenItIsTold() throws Exception {
        try (var engine = Engine.start(folder)) {
            var seen = new AtomicReference<@Nullable Kind>();
            Thread asker =
                    Thread.ofPlatform()
                            .start(
                                    () -> {
                                        try {
                                            engine.ask(endless(), Limits.OF_A_QUESTION);
                                        } catch (EngineException e) {
                                            seen.set(e.kind());
                                        }
                                    });
            while (asker.isAlive()) {
                engine.stop();
                asker.join(100);
            }
            assertThat(seen.get()).isEqualTo(Kind.STOPPED);
            assertThat(engine.ask("SELECT 1", SHORT).rows()).hasSize(1);
        }
    }

    @Test
    void doesNotWaitForADeadEngine() throws IOException {
        try (var engine = Engine.start(folder)) {
            ProcessHandle.of(engine.pid()).orElseThrow().destroyForcibly();

            assertThatThrownBy(() -> engine.ask("SELECT 1", SHORT))
                    .isInstanceOfSatisfying(
                            EngineException.class, e -> assertThat(e.kind()).isEqualTo(Kind.DIED));
        }
    }

    @Test
    void leavesNothingBehind() throws IOException {
        var engine = Engine.start(folder);
        long pid = engine.pid();
        engine.close();

        assertThat(ProcessHandle.of(pid).map(ProcessHandle::isAlive).orElse(false)).isFalse();
        try (var files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    /** Smoke test: an engine outlives neither a parent that is killed nor one in mid-statement. */
    @Test
    void endsWithAParentThatIsKilled() throws Exception {
        var builder =
                new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ParentThatIsKilled.class.getName(),
                        folder.toString(),
                        endless());
        builder.redirectError(ProcessBuilder.Redirect.INHERIT);
        Process parent = builder.start();
        try (var said = parent.inputReader()) {
            long engine = Long.parseLong(said.readLine());
            ProcessHandle handle = ProcessHandle.of(engine).orElseThrow();
            assertThat(handle.isAlive()).isTrue();

            parent.destroyForcibly();

            handle.onExit().get(10, TimeUnit.SECONDS);
            assertThat(handle.isAlive()).isFalse();
        } finally {
            parent.destroyForcibly();
        }
        try (var files = Files.list(folder)) {
            assertThat(files).as("what the engine laid down").isEmpty();
        }
    }

    @Test
    void thinsAMillionSamplesToLeastAndGreatest() throws IOException {
        Path file = folder.resolve("samples-1.parquet");
        try (var engine = Engine.start(folder)) {
            engine.run(
                    "COPY (SELECT i * 0.001 AS time, CASE WHEN i = 654321 THEN 99.0 ELSE"
                            + " sin(i * 0.0001) END AS \"current p.1\" FROM range(1000000) AS r(i))"
                            + " TO "
                            + engine.path(file)
                            + " (FORMAT parquet)");

            Samples all = only(engine.samples(file, List.of("current p.1", "none"), 0, 1e9, 2000));
            assertThat(all.size()).isBetween(1500, 2000);
            double greatest = 0;
            for (int k = 0; k < all.size(); k++) {
                if (all.si(k) > greatest) {
                    greatest = all.si(k);
                    assertThat(all.timeS(k)).isNotNaN();
                }
            }
            assertThat(greatest).isEqualTo(99.0);
            assertThat(all.at(654.321)).isEqualTo(99.0);

            Samples near = only(engine.samples(file, List.of("current p.1"), 10, 10.5, 2000));
            assertThat(near.size()).isEqualTo(501);
            assertThat(near.at(10.25)).isEqualTo(Math.sin(1.025));

            Samples every = only(engine.samples(file, List.of("current p.1"), 5000));
            assertThat(every.size()).isEqualTo(5000);
        }
    }

    @Test
    void tellsOfAParquetFileThatIsCutOff() throws IOException {
        Path file = folder.resolve("samples-1.parquet");
        try (var engine = Engine.start(folder)) {
            engine.run(
                    "COPY (SELECT i * 1.0 AS time, i * 2.0 AS thrust FROM range(10000) AS r(i)) TO "
                            + engine.path(file));
            byte[] whole = Files.readAllBytes(file);
            for (int bytes : new int[] {0, 3, 9, whole.length / 2, whole.length - 1}) {
                Files.write(file, java.util.Arrays.copyOf(whole, bytes));

                assertThatThrownBy(() -> engine.samples(file, List.of("thrust"), 0, 9, 100))
                        .isInstanceOfSatisfying(
                                EngineException.class,
                                e -> {
                                    assertThat(e.sentence()).doesNotContain("\n");
                                    assertThat(e.kind()).as(e.sentence()).isEqualTo(Kind.FILE);
                                });
            }
        }
    }

    private static String endless() {
        return "SELECT count(*) FROM range(100000000) AS a, range(100000000) AS b"
                + " WHERE a.range + b.range = -1";
    }

    private static Samples only(Map<String, Samples> columns) {
        assertThat(columns).hasSize(1);
        return columns.values().iterator().next();
    }
}
