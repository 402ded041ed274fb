package liftwright.rig.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import liftwright.rig.Rig;
import liftwright.rig.shape.kind.Amount;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the pages show of tables can be read, and every column and limit stands there. */
class TablesPageTest {

    private static final Path DOCS = Path.of("..", "docs");
    private static final Pattern BLOCK = Pattern.compile("```csv (\\w+)\n(.*?)```", Pattern.DOTALL);

    /** The small rig of the tests of the format, whose parts the example names. */
    private static final Rig START = StartStateTest.small();

    @ParameterizedTest
    @ValueSource(strings = {"reference/tables.md, 6", "how-to/measure-a-fan.md, 1"})
    void theExamplesRead(String pageAndBlocks) throws IOException {
        String[] parts = pageAndBlocks.split(", ", -1);
        var blocks = BLOCK.matcher(Files.readString(DOCS.resolve(parts[0]))).results().toList();
        assertThat(blocks).hasSize(Integer.parseInt(parts[1]));
        for (var block : blocks) {
            byte[] bytes = block.group(2).getBytes(UTF_8);
            TableReading<?> reading =
                    switch (block.group(1)) {
                        case "bench" -> TableReader.bench("t.csv", bytes);
                        case "cell" -> TableReader.cellTest("t.csv", bytes);
                        case "trace" -> TableReader.trace("t.csv", bytes, List.of("back", "pods"));
                        case "turning" ->
                                TableReader.turning("t.csv", bytes, List.of("left.1", "right.2"));
                        case "start" -> TableReader.startState("t.csv", bytes, START);
                        case "kills" ->
                                TableReader.kills("t.csv", bytes, List.of("remote", "link loss"));
                        default -> throw new AssertionError("who reads " + block.group(1));
                    };
            assertThat(reading).as(block.group(2)).isInstanceOf(TableReading.Whole.class);
        }
    }

    static Stream<Arguments> sections() {
        return Stream.of(
                Arguments.of("Bench table", BenchRows.WORDS),
                Arguments.of("Cell test", CellRows.WORDS),
                Arguments.of("Throttle trace", TraceRows.WORDS),
                Arguments.of("Measured turning", TurningRows.WORDS),
                Arguments.of("Start state", StartRows.WORDS),
                Arguments.of("Kill log", KillRows.WORDS));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sections")
    void everyColumnHasItsRow(String title, Object words) throws IOException {
        String page = Files.readString(DOCS.resolve("reference/tables.md"));
        int from = page.indexOf("## " + title);
        int to = page.indexOf("\n## ", from);
        List<String> rows =
                page.substring(from, to < 0 ? page.length() : to)
                        .lines()
                        .filter(line -> line.startsWith("| `"))
                        .toList();
        List<Column> columns = ((Vocabulary) words).columns();
        assertThat(rows).hasSameSizeAs(columns);
        for (int k = 0; k < rows.size(); k++) {
            Column column = columns.get(k);
            String what = column.amount().map(Amount::expectation).orElse("text");
            assertThat(rows.get(k)).startsWith("| `" + column.written() + "` | " + what + " |");
            assertThat(rows.get(k).contains("| yes |")).isEqualTo(column.needed());
        }
    }

    @ParameterizedTest
    @MethodSource("limits")
    void theLimitsStandThere(String limit) throws IOException {
        assertThat(Files.readString(DOCS.resolve("reference/tables.md"))).contains(limit);
    }

    static Stream<String> limits() {
        return Stream.of(
                Tabular.MOST_BYTES / (1 << 20) + " MiB,",
                String.format(Locale.ROOT, "%,d rows", Tabular.MOST_ROWS),
                Tabular.MOST_COLUMNS + " columns",
                Tabular.LONGEST_CELL + " characters",
                "first " + Faults.MOST_ALIKE + " are");
    }
}
