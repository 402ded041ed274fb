package liftwright.rig.csv;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static liftwright.rig.csv.MalformedTableTest.problems;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.table.BenchTable;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no tables, or are made to harm the reader. */
class HostileTableTest {

    private static final String HEAD = "voltage [V],bus current [A],thrust [N]\n";
    private static final String GOOD = HEAD + "44,10,12\n43,31,37\n";

    static Stream<Arguments> files() {
        return Stream.of(
                file("nothing", "", Code.MISSING_KEY, 1, 1),
                file("only remarks", "# a\n\n# b\n", Code.MISSING_KEY, 1, 1),
                file("only a head", "# a\n" + HEAD, Code.MISSING_KEY, 2, 1),
                file("a head and remarks", HEAD + "# a\n", Code.MISSING_KEY, 1, 1),
                file("a picture", "\u0089PNG\r\n\u001A\n\0\0\0\rIHDR", Code.NOT_TEXT, 1, 1),
                file("an archive", "PK\u0003\u0004\0\0", Code.NOT_TEXT, 1, 3),
                file("a zero in a row", HEAD + "44,10,1\0002\n", Code.NOT_TEXT, 2, 8),
                file("one column", "44 10 12\n43 31 37\n", Code.UNKNOWN_KEY, 1, 1),
                file("bars", "voltage [V]|bus current [A]\n44|1\n", Code.UNKNOWN_KEY, 1, 1),
                file("no head", "44,10,12\n43,31,37\n", Code.UNKNOWN_KEY, 1, 1),
                file("an open quote in the head", "voltage [V],\"bus\n1,2\n", Code.SYNTAX, 1, 13),
                file("a file that never ends", "1,".repeat(3_000_000), Code.TOO_LARGE, 1, 1),
                file(
                        "too many rows",
                        HEAD + "44,10,12\n".repeat(20_001),
                        Code.TOO_LARGE,
                        20_002,
                        1),
                file("too many columns", "x,".repeat(40) + "\n1\n", Code.TOO_LARGE, 1, 65),
                file("a long cell", HEAD + "44," + "1".repeat(500) + ",2\n", Code.TOO_LARGE, 2, 4),
                file("a page of the web", "<html>\n<body>1,2</body>\n", Code.UNKNOWN_KEY, 1, 1),
                file("another rig", "liftwright: 1\nrig: x\n", Code.UNKNOWN_KEY, 1, 1),
                Arguments.of("UTF-16", GOOD.getBytes(UTF_16), Code.NOT_TEXT, 1, 1),
                Arguments.of(
                        "Latin-1",
                        GOOD.replace("[V]", "[V],air temperature [°C]").getBytes(ISO_8859_1),
                        Code.NOT_TEXT,
                        1,
                        30));
    }

    private static Arguments file(String name, String text, Code code, int line, int column) {
        return Arguments.of(name, text.getBytes(UTF_8), code, line, column);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void isAProblemAtItsPlace(String name, byte[] bytes, Code code, int line, int column) {
        List<Problem> problems = problems(TableReader.bench("t.csv", bytes));
        assertThat(problems)
                .as(name)
                .first()
                .satisfies(
                        p -> {
                            assertThat(p.code()).isEqualTo(code);
                            assertThat(p.at().line()).isEqualTo(line);
                            assertThat(p.at().column()).isEqualTo(column);
                        });
        assertThat(problems.size()).isLessThan(60);
        assertThat(problems).allSatisfy(p -> assertThat(p.found().length()).isLessThan(300));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void anyLineEndAndAByteOrderMarkAreRead(String end) {
        BenchTable plain = bench(GOOD);
        assertThat(bench("\uFEFF" + GOOD.replace("\n", end))).isEqualTo(plain);
        assertThat(bench(GOOD.replace("\n", end).strip())).isEqualTo(plain);
        assertThat(plain.rows()).extracting(BenchTable.Row::line).containsExactly(2, 3);
    }

    @Test
    void allProblemsAreToldAtOnceInTheOrderOfTheFile() {
        String text =
                """
                thrust [kg],bus current [A],voltage [V],speed [rpm],power [W]
                12,10,-44,x,1
                37,31,43
                37,,43,12000,5
                """;
        assertThat(problems(TableReader.bench("t.csv", text.getBytes(UTF_8))))
                .extracting(p -> p.at().line() + ":" + p.at().column() + " " + p.code())
                .containsExactly(
                        "1:9 WRONG_UNIT",
                        "1:53 UNKNOWN_KEY",
                        "2:7 OUT_OF_RANGE",
                        "2:11 NOT_A_QUANTITY",
                        "3:9 SYNTAX",
                        "4:4 MISSING_KEY");
    }

    @Test
    void aWrongColumnIsToldTwentyTimesAndThenCounted() {
        String text = HEAD + "44,x,12\n".repeat(500);
        List<Problem> problems = problems(TableReader.bench("t.csv", text.getBytes(UTF_8)));
        assertThat(problems).hasSize(21);
        assertThat(problems.getLast().found()).startsWith("480 more");
        assertThat(problems.getLast().at().line()).isEqualTo(22);
    }

    @Test
    void columnsAreCountedInCharactersAsPeopleSeeThem() {
        String text = "fan,voltage [V],bus current [A],thrust [N]\n\"😀 \"\"A\"\"\",44,x,12\n";
        assertThat(problems(TableReader.bench("t.csv", text.getBytes(UTF_8))))
                .singleElement()
                .satisfies(p -> assertThat(p.at().column()).isEqualTo(14));
    }

    @Test
    void noiseIsReadWithoutAnException() {
        Seeded.check(
                2000,
                random -> {
                    var text = new StringBuilder(random.nextBoolean() ? HEAD : "");
                    String alphabet =
                            "time [s]volt;,\t\"#0123456789.-+eEN\n\r °%µ😀\u00A0\u200B\uFEFF";
                    int length = random.nextInt(0, 120);
                    for (int k = 0; k < length; k++) {
                        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
                    }
                    byte[] bytes = text.toString().getBytes(UTF_8);
                    if (random.nextInt(10) == 0) {
                        random.nextBytes(bytes);
                    }
                    for (TableReading<?> reading :
                            List.of(
                                    TableReader.bench("t.csv", bytes),
                                    TableReader.cellTest("t.csv", bytes),
                                    TableReader.trace("t.csv", bytes, List.of("a")))) {
                        if (reading instanceof TableReading.Broken<?>(var problems)) {
                            assertThat(problems).isNotEmpty();
                        }
                    }
                });
    }

    private static BenchTable bench(String text) {
        return switch (TableReader.bench("t.csv", text.getBytes(UTF_8))) {
            case TableReading.Whole<BenchTable>(var table) -> table;
            case TableReading.Broken<BenchTable>(var problems) ->
                    throw new AssertionError(problems.toString());
        };
    }
}
