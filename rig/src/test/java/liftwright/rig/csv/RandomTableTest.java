package liftwright.rig.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.table.BenchTable;
import liftwright.rig.table.CellTest;
import liftwright.testkit.Seeded;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is written at random is read as it was meant, and one wrong cell is one problem there. */
class RandomTableTest {

    /** What no cell of numbers may hold, and the problem that it is. */
    private static final List<String> WRONG =
            List.of("NaN", "-", "x", "12 V", "1.2.3", "1e", "--1", "1'000", "12:30", "1 000", "½");

    @Test
    void aBenchTableReadsAsItWasMeant() {
        Seeded.check(
                300,
                random -> {
                    var written = new RandomTable(RandomTable.BENCH, 3, random);
                    String text = written.text();
                    BenchTable table = whole(TableReader.bench("t.csv", text.getBytes(UTF_8)));
                    assertThat(table.rows()).hasSameSizeAs(written.si);
                    for (int k = 0; k < table.rows().size(); k++) {
                        BenchTable.Row row = table.rows().get(k);
                        List<Double> si = written.si.get(k);
                        assertThat(row.line()).isEqualTo(written.lines.get(k));
                        same(row.voltageV(), si.get(0));
                        same(row.currentA(), si.get(1));
                        same(OptionalDouble.of(row.thrustN()), si.get(2));
                        same(row.speedRadps(), si.get(3));
                        same(row.duty(), si.get(4));
                        same(row.torqueNm(), si.get(5));
                        same(row.airK(), si.get(6));
                        same(row.pressurePa(), si.get(7));
                        same(row.airspeedMps(), si.get(8));
                    }
                });
    }

    @Test
    void aTestOfACellReadsAsItWasMeant() {
        Seeded.check(
                300,
                random -> {
                    var written = new RandomTable(RandomTable.CELL, 3, random);
                    String text = written.text();
                    CellTest test = whole(TableReader.cellTest("t.csv", text.getBytes(UTF_8)));
                    assertThat(test.rows()).hasSameSizeAs(written.si);
                    for (int k = 0; k < test.rows().size(); k++) {
                        CellTest.Row row = test.rows().get(k);
                        List<Double> si = written.si.get(k);
                        assertThat(row.line()).isEqualTo(written.lines.get(k));
                        same(OptionalDouble.of(row.timeS()), si.get(0));
                        same(OptionalDouble.of(row.currentA()), si.get(1));
                        same(OptionalDouble.of(row.voltageV()), si.get(2));
                        same(row.temperatureK(), si.get(3));
                    }
                });
    }

    @Test
    void oneWrongCellIsOneProblemAtThatCell() {
        Seeded.check(
                500,
                random -> {
                    boolean bench = random.nextBoolean();
                    var written =
                            bench
                                    ? new RandomTable(RandomTable.BENCH, 3, random)
                                    : new RandomTable(RandomTable.CELL, 3, random);
                    int row = random.nextInt(written.cells.size());
                    int at = written.order().get(random.nextInt(written.order().size()));
                    String wrong = WRONG.get(random.nextInt(WRONG.size()));
                    written.cells.get(row).set(at, wrong);
                    String text = written.text();
                    byte[] bytes = text.getBytes(UTF_8);
                    List<Problem> problems =
                            MalformedTableTest.problems(
                                    bench
                                            ? TableReader.bench("t.csv", bytes)
                                            : TableReader.cellTest("t.csv", bytes));
                    assertThat(problems).as(text).hasSize(1);
                    Problem problem = problems.getFirst();
                    assertThat(problem.code()).isEqualTo(Code.NOT_A_QUANTITY);
                    assertThat(problem.at().line()).isEqualTo(written.lines.get(row));
                    String header = written.columns.get(at).header().replace('_', ' ');
                    assertThat(header.toLowerCase(java.util.Locale.ROOT))
                            .startsWith(problem.at().path());
                    String line = text.lines().toList().get(problem.at().line() - 1);
                    int mark = text.startsWith("\uFEFF") && problem.at().line() == 1 ? 1 : 0;
                    String rest =
                            line.substring(
                                    mark + line.offsetByCodePoints(0, problem.at().column() - 1));
                    String cell = rest.startsWith("\"") ? rest.substring(1) : rest;
                    assertThat(cell.replace(',', '.')).startsWith(wrong);
                });
    }

    private static <T> T whole(TableReading<T> reading) {
        return switch (reading) {
            case TableReading.Whole<T>(var table) -> table;
            case TableReading.Broken<T>(var problems) ->
                    throw new AssertionError(problems.toString());
        };
    }

    private static void same(OptionalDouble read, @Nullable Double meant) {
        assertThat(read.isPresent()).isEqualTo(meant != null);
        if (meant != null) {
            assertThat(read.getAsDouble())
                    .isCloseTo(meant, within(1e-12 * Math.max(1e-3, Math.abs(meant))));
        }
    }
}
