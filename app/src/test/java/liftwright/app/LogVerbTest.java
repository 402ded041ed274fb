package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.answer.AnswerSchema;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.entry.SampleTable;
import liftwright.logbook.entry.SampleTable.Channel;
import liftwright.logbook.entry.SampleTable.Clock;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.entry.TestEntry.Person;
import liftwright.logbook.entry.TestEntry.Snapshot;
import liftwright.logbook.entry.TestEntry.Weather;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.NewFile;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.recording.Signal;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import liftwright.trials.CardId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The logbook from the command line. */
class LogVerbTest {

    @TempDir private Path folder;
    private Shell shell;

    @BeforeEach
    void aRigOfTheirOwn() throws IOException {
        Files.copy(Shell.EXAMPLES.resolve("curlew/rig.yaml"), folder.resolve("rig.yaml"));
        shell = new Shell(folder);
    }

    private static JsonNode answer(Shell.Ran ran) {
        assertThat(ran.lines()).as(ran.err()).hasSize(1);
        return JsonMapper.builder().build().readTree(ran.out()).get("answer");
    }

    private static JsonNode section(JsonNode answer, String id) {
        return answer.get("sections")
                .valueStream()
                .filter(section -> section.get("id").stringValue().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /**
     * A test in two steps of throttle, 100 values a second: a force of {@code scaleN} at full, a
     * current of 40 A.
     */
    private StoredTest aTest(double scaleN) throws IOException {
        Logbook logbook = Logbook.at(folder.resolve("rig.yaml"));
        Files.createDirectories(logbook.folder());
        RigReading rig =
                RigReading.read(
                        "rig.yaml",
                        Files.readAllBytes(folder.resolve("rig.yaml")),
                        new Folder(folder));
        try (Engine engine = Engine.start(logbook.folder())) {
            Path table = engine.scratch().resolve("t.parquet");
            engine.run(
                    "COPY (SELECT i / 100.0::DOUBLE AS time, CASE WHEN i < 1000 THEN 0.5 ELSE 0.8"
                            + " END::DOUBLE AS throttle, ((CASE WHEN i < 1000 THEN 0.5 ELSE 0.8"
                            + " END) * "
                            + scaleN
                            + " + 0.1 * sin(i))::DOUBLE AS thrust, (40 + 0.1 * cos(i))::DOUBLE AS"
                            + " \"current p.1\" FROM range(2000) t(i)) TO '"
                            + table
                            + "' (FORMAT parquet)");
            var entry =
                    new TestEntry(
                            CardId.parse("first-spin.F140"),
                            Shell.TODAY,
                            List.of(new Person("A. Builder", "watcher")),
                            Weather.UNKNOWN,
                            "a note",
                            "",
                            Optional.empty(),
                            List.of(),
                            List.of("scale 3"),
                            new Snapshot("rig.yaml", rig.digest(), 1),
                            List.of(
                                    new SampleTable(
                                            "samples-1.parquet",
                                            "source/1-log.csv",
                                            Optional.of("rejected-1.csv"),
                                            2000,
                                            3,
                                            0,
                                            19.99,
                                            Clock.OWN,
                                            List.of(
                                                    new Channel(Signal.THROTTLE, "all", 0, 0),
                                                    new Channel(Signal.THRUST, "all", 0.3, 0),
                                                    new Channel(Signal.CURRENT, "p.1", 0, 0.01)),
                                            List.of())));
            return logbook.add(
                    entry,
                    rig,
                    List.of(
                            new NewFile.Copied("samples-1.parquet", table),
                            NewFile.Said.of("source/1-log.csv", new byte[] {65}),
                            NewFile.Said.of("rejected-1.csv", new byte[] {66})),
                    () -> false);
        }
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(Path::toString).sorted().toList();
        }
    }

    private static void obeysItsSchema(Shell.Ran ran) {
        var schema =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(AnswerSchema.text("logbook"));
        assertThat(schema.validate(ran.out(), InputFormat.JSON)).isEmpty();
    }

    private static void fitsTheTerminal(Shell.Ran ran) {
        assertThat(ran.lines()).allMatch(line -> line.length() <= 100, "at most 100 columns");
    }

    @Test
    void whatWasAddedIsListedAndShown() throws IOException {
        StoredTest test = aTest(100);
        shell.run("log", "note", "rig.yaml", test.id().text(), "the joint was dry", "--by", "Ann");
        var list = shell.run("log", "list", "rig.yaml", "--json");
        obeysItsSchema(list);
        assertThat(list.code()).isZero();
        JsonNode row = section(answer(list), "tests").get("rows").get(0);
        assertThat(row.get(0).get("text").stringValue()).isEqualTo("2026-03-14-1");
        assertThat(row.get(4).get("si").doubleValue()).isEqualTo(19.99);
        assertThat(row.get(7).get("si").doubleValue()).isEqualTo(3);

        var show = shell.run("log", "show", "rig.yaml", "2026-03-14-1", "--json");
        obeysItsSchema(show);
        assertThat(show.code()).as(show.err()).isZero();
        JsonNode thrust = section(answer(show), "test-channels").get("rows").get(1);
        assertThat(thrust.get(0).get("text").stringValue()).isEqualTo("thrust");
        assertThat(thrust.get(1).get("si").doubleValue()).isEqualTo(2000);
        assertThat(thrust.get(3).get("si").doubleValue())
                .isCloseTo(65, org.assertj.core.api.Assertions.within(0.01));
        var words = shell.run("log", "show", "rig.yaml", "2026-03-14-1");
        fitsTheTerminal(words);
        assertThat(words.out())
                .contains("A. Builder (watcher)", "closed", "the joint was dry", "scale 3");
        fitsTheTerminal(shell.run("log", "list", "rig.yaml"));
    }

    @Test
    void twoTestsAreComparedStepByStep() throws IOException {
        aTest(100);
        String rig = Files.readString(folder.resolve("rig.yaml"));
        Files.writeString(
                folder.resolve("rig.yaml"),
                rig.replace("frame, mass: 2.2 kg", "frame, mass: 2.3 kg"));
        aTest(90);
        var ran = shell.run("log", "compare", "rig.yaml", "2026-03-14-1", "2026-03-14-2", "--json");
        obeysItsSchema(ran);
        assertThat(ran.code()).isEqualTo(1);
        JsonNode steps = section(answer(ran), "compared-steps").get("rows");
        assertThat(steps.size()).isEqualTo(4);
        assertThat(steps.valueStream().map(row -> row.get(5).get("text").stringValue()).toList())
                .containsExactly("differs", "differs", "within doubt", "within doubt");
        assertThat(section(answer(ran), "compared-rig").get("rows").toString())
                .contains("2.2", "2.3");
        fitsTheTerminal(shell.run("log", "compare", "rig.yaml", "2026-03-14-1", "2026-03-14-2"));
    }

    @Test
    void everyFileIsHeldAgainstItsDigest() throws IOException {
        StoredTest test = aTest(100);
        var whole = shell.run("log", "check", "rig.yaml");
        assertThat(whole.code()).as(whole.out()).isZero();
        Path source = test.folder().resolve("source/1-log.csv");
        Files.writeString(source, "B");
        Files.writeString(test.folder().resolve("more.txt"), "B");
        var spoilt = shell.run("log", "check", "rig.yaml");
        assertThat(spoilt.code()).isEqualTo(1);
        assertThat(spoilt.out())
                .contains("source/1-log.csv holds other bytes", "more.txt was not written");
        fitsTheTerminal(spoilt);
        var show = shell.run("log", "show", "rig.yaml", "2026-03-14-1");
        assertThat(show.code()).isEqualTo(1);
    }

    @Test
    void allTestsAreAskedInSql() throws IOException {
        aTest(100);
        aTest(90);
        var ran =
                shell.run(
                        "log",
                        "query",
                        "rig.yaml",
                        "SELECT test, max(value) AS most FROM samples WHERE channel = 'thrust'"
                                + " GROUP BY test ORDER BY test",
                        "--json");
        assertThat(ran.code()).as(ran.err()).isZero();
        JsonNode all = JsonMapper.builder().build().readTree(ran.out());
        assertThat(all.get("columns").toString()).isEqualTo("[\"test\",\"most\"]");
        assertThat(all.get("rows").get(0).get(1).doubleValue())
                .isCloseTo(80.1, org.assertj.core.api.Assertions.within(0.01));
        assertThat(all.get("rows").get(1).get(1).doubleValue())
                .isCloseTo(72.1, org.assertj.core.api.Assertions.within(0.01));
        var words = shell.run("log", "query", "rig.yaml", "SELECT * FROM tracks");
        assertThat(words.out()).startsWith("6 rows");
        fitsTheTerminal(words);
        assertThat(shell.run("log", "query", "rig.yaml", "SELECT count(*) FROM tests").out())
                .contains("2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "COPY tests TO 'x.csv'",
                "SELECT * FROM read_csv('/etc/passwd')",
                "ATTACH 'x.db'",
                "INSTALL httpfs",
                "SET enable_external_access = true",
                "DROP VIEW tests",
                "SELECT 1; SELECT 2",
                "SELECT nothing FROM tests",
            })
    void aStatementThatDoesMoreThanAskIsRefused(String sql) throws IOException {
        aTest(100);
        List<String> before = files();
        var ran = shell.run("log", "query", "rig.yaml", sql);
        assertThat(ran.code()).as(ran.out() + ran.err()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isNotBlank();
        assertThat(files()).isEqualTo(before);
    }

    @Test
    void partsAreInspectedAndPacksGrowOld() throws IOException {
        var part =
                shell.run(
                        "log",
                        "part",
                        "rig.yaml",
                        "left.1",
                        "serial=0412",
                        "accepted=no",
                        "mass=0.43 kg ± 1 g / 0.412 kg ± 2 %",
                        "--by",
                        "A. Builder",
                        "--json");
        assertThat(part.code()).as(part.err()).isEqualTo(1);
        obeysItsSchema(part);
        assertThat(section(answer(part), "part-inspections").toString())
                .contains("more than declared");
        assertThat(folder.resolve("rig.logbook/parts/left.1.yaml")).exists();

        var young =
                shell.run(
                        "log",
                        "pack",
                        "rig.yaml",
                        "p.1",
                        "resistance=20 mΩ",
                        "at=25 °C",
                        "capacity=16 Ah",
                        "--date",
                        "2026-01-01",
                        "--json");
        assertThat(young.code()).as(young.err()).isZero();
        obeysItsSchema(young);
        var old =
                shell.run(
                        "log",
                        "pack",
                        "rig.yaml",
                        "p.1",
                        "resistance=31 mΩ",
                        "at=25 °C",
                        "stored days=20",
                        "charge=55 %");
        assertThat(old.code()).isEqualTo(1);
        assertThat(old.out()).contains("is to be retired", "155 %", "common practice");
        fitsTheTerminal(old);
        var again = shell.run("log", "pack", "rig.yaml", "p.1");
        assertThat(again.out()).isEqualTo(old.out());
        assertThat(shell.run("log", "check", "rig.yaml").code()).isZero();
    }

    @Test
    void anIncidentFreezesItsLogs() throws IOException {
        StoredTest test = aTest(100);
        Files.writeString(
                folder.resolve("what.yaml"),
                """
                liftwright incident: 1
                date: 2026-03-14
                what: "left.1 stopped"
                logs: [{test: 2026-03-14-1}]
                clocks: [{name: "film", shift: 2.5 s, how: "by the clap"}]
                timeline:
                  - {time: 12 s, seen: "current falls"}
                  - {time: 9 s, clock: "film", seen: "smoke"}
                causes:
                  - {cause: "a joint", for: ["soot"], against: ["it was cold"]}
                card: "mass"
                """);
        var ran = shell.run("log", "incident", "rig.yaml", "what.yaml", "--json");
        assertThat(ran.code()).as(ran.err()).isZero();
        obeysItsSchema(ran);
        JsonNode events = section(answer(ran), "incident-timeline").get("rows");
        assertThat(events.get(0).get(0).get("si").doubleValue()).isEqualTo(11.5);
        assertThat(events.get(0).get(1).get("text").stringValue()).isEqualTo("smoke");
        assertThat(shell.run("log", "check", "rig.yaml").code()).isZero();
        Files.writeString(test.folder().resolve("rejected-1.csv"), "other");
        var after = shell.run("log", "incident", "rig.yaml", "2026-03-14-1");
        assertThat(after.code()).isEqualTo(1);
        assertThat(after.out()).contains("is not what incident 2026-03-14-1 froze");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "log list|which rig",
                "log lst rig.yaml|perhaps list was meant",
                "log list rig.yaml more|nothing is done with",
                "log show rig.yaml|name one",
                "log show rig.yaml 2026-03-14-9|none was added yet",
                "log show rig.yaml ../../x|no test ../../x",
                "log compare rig.yaml 2026-03-14-1|name two tests",
                "log query rig.yaml SELECT|there is no rig.logbook yet",
                "log add rig.yaml|name the logs of the test",
                "log add rig.yaml nothing.csv|no file nothing.csv",
                "log add rig.yaml rig.yaml --date tomorrow|--date is a date such as",
                "log add rig.yaml rig.yaml --card no.thing|no card is called",
                "log add rig.yaml rig.yaml --weather air=9|--weather does not read",
                "log add rig.yaml rig.yaml --hours three|--hours does not read",
                "log part rig.yaml|name one by its id",
                "log part rig.yaml ../x accepted=yes|name one by its id, not ../x",
                "log part rig.yaml left.1|nothing is written down of left.1 yet",
                "log part rig.yaml left.1 accepted=yes|no “by”",
                "log part rig.yaml left.1 accepted=perhaps --by Ann|yes or no",
                "log part rig.yaml left.1 good|is KEY=VALUE",
                "log pack rig.yaml p.99 capacity=1Ah|this rig has no pack p.99",
                "log pack rig.yaml p.1 resistance=20mΩ|“resistance” without “at”",
                "log pack rig.yaml p.1 colour=red|the key “colour”",
                "log note rig.yaml 2026-03-14-1 x|no test or incident",
                "log incident rig.yaml none.yaml|no file or folder none.yaml",
                "log incident rig.yaml 2026-03-14-1|no incident 2026-03-14-1",
            })
    void whatCannotBeDoneIsSaidAndWritesNothing(String words, String said) throws IOException {
        List<String> before = files();
        var ran = shell.run(words.split(" "));
        assertThat(ran.code()).as(ran.out() + ran.err()).isEqualTo(2);
        assertThat(ran.err().replaceAll("\\s+", " ")).contains(said);
        assertThat(files()).isEqualTo(before);
    }
}
