package liftwright.rig.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.Change;
import liftwright.rig.DefaultUsed;
import liftwright.rig.FanType;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.shape.Binder;
import liftwright.rig.table.CellTests;
import liftwright.rig.table.CurrentKind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rig file whose fans and cells are measured, in a folder with its tables. */
class TablesBesideTest {

    private static final String BENCH = "tables/f140-bench.csv";
    private static final String CLAIM =
            "    at speed: {speed: 26000 rpm, thrust: 92 N, shaft power: 4.6 kW}\n";

    @TempDir private Path folder;
    private String yaml = "";

    @BeforeEach
    void copy() throws IOException {
        Files.createDirectory(folder.resolve("tables"));
        for (String table : List.of(BENCH, "tables/p80-100a.csv", "tables/p80-rest.csv")) {
            Files.writeString(folder.resolve(table), resource(table));
        }
        yaml = resource("v1-measured.yaml");
    }

    private static String resource(String name) throws IOException {
        try (var in = TablesBesideTest.class.getResourceAsStream("/format/" + name)) {
            assertThat(in).as(name).isNotNull();
            return new String(in.readAllBytes(), UTF_8);
        }
    }

    private RigReading read(String text) {
        return RigReading.read("rigs/mine.yaml", text.getBytes(UTF_8), new Folder(folder));
    }

    private Rig rig(String text) {
        RigReading read = read(text);
        assertThat(errors(read)).isEmpty();
        return read.rig().orElseThrow();
    }

    private static List<Problem> errors(RigReading read) {
        return read.problems().stream().filter(p -> p.code().isError()).toList();
    }

    private static FanType.Performance.Measured measured(Rig rig) {
        assertThat(rig.fanTypes().getFirst().performance())
                .isInstanceOf(FanType.Performance.Measured.class);
        return (FanType.Performance.Measured) rig.fanTypes().getFirst().performance();
    }

    /** A few fans of the lot beside the label: rows that name their fan and their speed. */
    @Test
    void aTableOfALotStandsBesideTheLabel() throws IOException {
        Files.writeString(
                folder.resolve("lot.csv"),
                """
                voltage [V],bus current [A],speed [rpm],thrust [N],fan
                52,70,24000,70,A17
                52,70,24000,71,A18
                52,70,24000,69,A23
                """);
        Rig rig = rig(ofLot("lot.csv"));
        FanType.Lot lot = rig.fanTypes().getFirst().lot().orElseThrow();
        assertThat(lot.findsScatter()).isTrue();
        assertThat(lot.evidence())
                .isInstanceOfSatisfying(
                        FanType.Lot.Rows.class, rows -> assertThat(rows.table().rows()).hasSize(3));
    }

    @Test
    void aTableOfALotNamesItsFansAndSpeeds() throws IOException {
        String head = "voltage [V],bus current [A],speed [rpm],thrust [N],airspeed [m/s],fan\n";
        for (String row :
                List.of(
                        "52,70,24000,70,,",
                        "52,70,,70,,A17",
                        "52,70,24000,70,3,A17",
                        "52,70,24000,0,,A17")) {
            Files.writeString(
                    folder.resolve("lot.csv"), head + "52,70,24000,71,,A18\n" + row + "\n");
            assertThat(errors(read(ofLot("lot.csv"))))
                    .as(row)
                    .singleElement()
                    .satisfies(
                            problem -> {
                                assertThat(problem.at().path())
                                        .isEqualTo("fan types/F140/lot/bench");
                                assertThat(problem.found()).contains("line 3");
                            });
        }
    }

    private String ofLot(String table) {
        String text =
                yaml.replace(
                                "    bench: " + BENCH + "\n",
                                CLAIM + "    lot: {bench: " + table + "}\n")
                        .replace("    scatter: ± 2 % each\n", "")
                        .replace(
                                "motor: {",
                                "motor: {speed constant: 520 rpm/V, winding resistance: 12 mΩ,"
                                        + " no-load current: 2.5 A, ");
        assertThat(text).contains("lot: {bench");
        return text;
    }

    @Test
    void aBenchTableCountsInPlaceOfAClaim() {
        Rig rig = rig(yaml);
        var table = measured(rig).table();
        assertThat(table.file()).isEqualTo(BENCH);
        assertThat(table.current()).isEqualTo(CurrentKind.BUS);
        assertThat(table.rows()).hasSize(4);
        var last = table.rows().getLast();
        // By hand: 8720 gf · 9.80665e-3 N/gf, 25200 rpm · π/30, 20.3 °C, 1004 hPa.
        assertThat(last.line()).isEqualTo(6);
        assertThat(last.thrustN()).isCloseTo(85.514, within(1e-3));
        assertThat(last.speedRadps().orElseThrow()).isCloseTo(2638.94, within(0.01));
        assertThat(last.airK().orElseThrow()).isCloseTo(293.45, within(1e-9));
        assertThat(last.pressurePa().orElseThrow()).isCloseTo(100_400, within(1e-6));
        assertThat(last.duty().orElseThrow()).isEqualTo(1.0);
        assertThat(last.fan()).contains("B2");
        assertThat(measured(rig).claimed()).isEmpty();
        assertThat(rig.fanTypes().getFirst().motor().speedConstant()).isEmpty();
        assertThat(rig.fanTypes().getFirst().data()).isEqualTo(FanType.Data.MEASURED);
        assertThat(rig.defaults())
                .filteredOn(d -> d.at().equals(RigPath.of("fan types", "F140", "data")))
                .extracting(DefaultUsed::value)
                .containsExactly("measured");
    }

    @Test
    void aClaimBesideATableIsKept() {
        String both = yaml.replace("    bench:", CLAIM + "    bench:");
        assertThat(measured(rig(both)).claimed())
                .get()
                .isInstanceOf(FanType.Performance.AtSpeed.class);
    }

    @Test
    void withoutSpeedsTheMotorMustBeDeclared() throws IOException {
        Files.writeString(
                folder.resolve(BENCH),
                """
                voltage [V],winding current [A],thrust [N]
                44,20,30
                """);
        assertThat(errors(read(yaml)))
                .extracting(Problem::code, p -> p.at().path())
                .containsExactly(
                        tuple(Code.MISSING_KEY, "speed constant"),
                        tuple(Code.MISSING_KEY, "winding resistance"),
                        tuple(Code.MISSING_KEY, "no-load current"));
        String declared =
                yaml.replace(
                        "motor: {",
                        "motor: {speed constant: 520 rpm/V, winding resistance: 12 mΩ, no-load"
                                + " current: 2.5 A, ");
        assertThat(rig(declared).fanTypes().getFirst().motor().noLoadCurrent()).isPresent();
        assertThat(errors(read(yaml.replace("    motor: {pole pairs: 5}\n", ""))))
                .extracting(p -> p.at().path())
                .containsExactly("fan types/F140/motor");
    }

    private static org.assertj.core.groups.Tuple tuple(Code code, String key) {
        return org.assertj.core.groups.Tuple.tuple(code, "fan types/F140/motor/" + key);
    }

    @Test
    void aTestOfAPackIsBroughtDownToOneCell() {
        var cell = rig(yaml).cellTypes().getFirst();
        assertThat(cell.capacity()).isEmpty();
        assertThat(cell.resistance()).isEmpty();
        assertThat(cell.openCircuit()).isEmpty();
        CellTests tests = cell.measured().orElseThrow();
        var first = tests.runs().getFirst();
        assertThat(first.chargeAtStart()).isCloseTo(0.98, within(1e-12));
        var row = first.test().rows().get(1);
        assertThat(row.currentA()).isCloseTo(100, within(1e-12)); // 200 A in two
        assertThat(row.voltageV()).isCloseTo(48.01 / 12, within(1e-12));
        var second = tests.runs().get(1);
        assertThat(second.heldOut()).isTrue();
        assertThat(second.test().rows().get(2).currentA()).isEqualTo(8); // −8 A of charging
        assertThat(second.test().rows().get(2).timeS()).isCloseTo(1800, within(1e-9));
        assertThat(tests.fitted()).containsExactly(first);
    }

    @Test
    void aBrokenTableIsToldBesideWhatIsWrongWithTheRig() throws IOException {
        Files.writeString(
                folder.resolve(BENCH),
                resource(BENCH).replace("55.2,80,", "55.2,180,").replace("98.0", "NaN"));
        RigReading read = read(yaml.replace("mass: 62 kg", "mass: 62 V"));
        assertThat(read.rig()).isEmpty();
        assertThat(errors(read))
                .extracting(p -> p.at().file(), p -> p.at().line(), Problem::code)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("rigs/mine.yaml", 12, Code.WRONG_UNIT),
                        org.assertj.core.groups.Tuple.tuple("rigs/" + BENCH, 5, Code.OUT_OF_RANGE),
                        org.assertj.core.groups.Tuple.tuple(
                                "rigs/" + BENCH, 6, Code.NOT_A_QUANTITY));
    }

    @Test
    void aBrokenTableIsToldBesideBrokenYaml() throws IOException {
        Files.writeString(folder.resolve(BENCH), resource(BENCH).replace("98.0", "NaN"));
        assertThat(errors(read(yaml.replace("mass: 62 kg", "mass: \"62 kg"))))
                .extracting(p -> p.at().file())
                .contains("rigs/mine.yaml", "rigs/" + BENCH);
    }

    @Test
    void oneTableOfTwoTypesIsToldOnce() throws IOException {
        Files.writeString(folder.resolve(BENCH), resource(BENCH).replace("98.0", "NaN"));
        int from = yaml.indexOf("  F140:");
        String type = yaml.substring(from, yaml.indexOf("\nfans:") + 1);
        String two = yaml.replace("\nfans:\n", "\n" + type.replace("F140", "F141") + "fans:\n");
        assertThat(errors(read(two))).hasSize(1);
    }

    @Test
    void aMissingTableIsToldWhereItIsNamed() throws IOException {
        Files.delete(folder.resolve(BENCH));
        assertThat(errors(read(yaml)))
                .singleElement()
                .satisfies(
                        p -> {
                            assertThat(p.code()).isEqualTo(Code.NO_SUCH_PART);
                            assertThat(p.at().path()).isEqualTo("fan types/F140/bench");
                            assertThat(p.at().line()).isEqualTo(26);
                        });
    }

    @Test
    void aLinkOutOfTheFolderIsNotFollowed(@TempDir Path elsewhere) throws IOException {
        Path secret = Files.writeString(elsewhere.resolve("s.csv"), resource(BENCH));
        Files.delete(folder.resolve(BENCH));
        Files.createSymbolicLink(folder.resolve(BENCH), secret);
        assertThat(errors(read(yaml)))
                .extracting(Problem::code)
                .containsExactly(Code.OUTSIDE_FOLDER);
        assertThat(read(yaml).tables()).doesNotContainKey(BENCH);
    }

    @Test
    void withoutItsFolderTheTablesAreSaidToBeUnread() {
        RigReading read = RigReading.read("mine.yaml", yaml.getBytes(UTF_8));
        assertThat(read.rig()).isEmpty();
        assertThat(errors(read))
                .hasSize(3)
                .allMatch(p -> p.code() == Code.NO_SUCH_PART && p.found().contains("not read"));
    }

    @Test
    void tablesTooLargeTogetherAreRefused() throws IOException {
        var runs = new StringBuilder();
        for (int k = 0; k < 6; k++) {
            Files.writeString(
                    folder.resolve("t" + k + ".csv"),
                    resource("tables/p80-rest.csv") + "# ".concat("x".repeat(3_000_000)));
            runs.append("      - {table: t").append(k).append(".csv}\n");
        }
        assertThat(errors(read(yaml.replace("    measured:\n", "    measured:\n" + runs))))
                .extracting(Problem::code)
                .containsOnly(Code.TOO_LARGE)
                .isNotEmpty();
    }

    @Test
    void theDigestCoversTheTables() throws IOException {
        RigReading before = read(yaml);
        assertThat(before.tables().keySet())
                .containsExactly(BENCH, "tables/p80-100a.csv", "tables/p80-rest.csv");
        assertThat(read(yaml).digest()).isEqualTo(before.digest());
        Files.writeString(folder.resolve(BENCH), resource(BENCH) + "# a remark\n");
        assertThat(read(yaml).digest()).isNotEqualTo(before.digest());
    }

    @Test
    void withoutTablesTheDigestIsThatOfTheFile() {
        // SHA-256 of no bytes: FIPS 180-4 test vectors of NIST, from memory.
        assertThat(RigReading.read("empty.yaml", new byte[0]).digest())
                .isEqualTo(
                        "sha256:e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    @Test
    void aChangedRigKeepsItsTables() throws IOException {
        RigReading read = read(yaml);
        var change = new Change.Set(RigPath.of("fan types", "F140", "mass"), "0.80 kg");
        assertThat(read.with(List.of(change))).isInstanceOf(RigReading.Edit.Changed.class);
        var changed = (RigReading.Edit.Changed) read.with(List.of(change));
        Optional<Rig> byText = changed.reading().rig();
        assertThat(byText).isPresent();
        Rig rig = byText.get();
        assertThat(measured(rig).table()).isEqualTo(measured(rig(yaml)).table());
        Files.delete(folder.resolve(BENCH)); // memory needs no folder
        assertThat(Binder.bind(rig.declaration(), rig.tables()).rig()).isEqualTo(byText);
        assertThat(Binder.bind(rig.declaration()).rig()).isEmpty();
        assertThat(Map.copyOf(rig.tables().benches())).containsOnlyKeys(BENCH);
    }
}
