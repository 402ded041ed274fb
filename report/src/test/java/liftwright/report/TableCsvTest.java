package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.quantity.UnitSystem;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Tables as files, read back by a library that knows nothing of this program. */
class TableCsvTest {

    private static final Pattern HEAD = Pattern.compile("(.*) \\[([^\\]]*)\\]");

    private static final List<String> NUMBERS =
            List.of("cut-length", "current-worst", "voltage-drop", "part-hottest", "torque");

    private static List<CsvRecord> read(String text) {
        assertThat(text).startsWith("\ufeff").endsWith("\r\n");
        return CsvReader.builder().ofCsvRecord(text.substring(1)).stream().toList();
    }

    private static Dimension dimension(String field) {
        return switch (field) {
            case "cut-length" -> Dimensions.LENGTH;
            case "current-worst" -> new Dimension(0, 0, 0, 1, 0, 0);
            case "voltage-drop" -> new Dimension(2, 1, -3, -1, 0, 0);
            case "part-hottest" -> new Dimension(0, 0, 0, 0, 1, 0);
            case "torque" -> new Dimension(2, 1, -2, 0, 0, 0);
            default -> throw new IllegalArgumentException(field);
        };
    }

    @Test
    void whatIsReadBackIsTheTable() {
        Seeded.check(
                200,
                random -> {
                    List<String> columns = new ArrayList<>(List.of("part", "making"));
                    columns.addAll(NUMBERS);
                    List<List<Value>> rows = new ArrayList<>();
                    for (int row = random.nextInt(1, 8); row > 0; row--) {
                        List<Value> cells = new ArrayList<>();
                        cells.add(Value.words("part", "p." + row));
                        cells.add(Value.words("making", words(random)));
                        for (String field : NUMBERS) {
                            cells.add(
                                    random.nextInt(5) == 0
                                            ? Value.words(field, "–")
                                            : Value.of(field, random.nextDouble(200, 500)));
                        }
                        rows.add(cells);
                    }
                    UnitSystem units = random.nextBoolean() ? UnitSystem.SI : UnitSystem.US;
                    Section.Table table = new Section.Table("t", "T", columns, rows);
                    List<CsvRecord> back = read(TableCsv.write(table, units));
                    assertThat(back).hasSize(rows.size() + 1);
                    for (int row = 0; row < rows.size(); row++) {
                        for (int k = 0; k < columns.size(); k++) {
                            same(
                                    rows.get(row).get(k),
                                    back.getFirst().getField(k),
                                    back.get(row + 1).getField(k));
                        }
                    }
                });
    }

    private static String words(java.util.random.RandomGenerator random) {
        String[] bits = {"a", " ", ",", "\"", ";", "'", "-", "=", "@", "µ", "ü", "+"};
        var text = new StringBuilder();
        for (int k = random.nextInt(6); k > 0; k--) {
            text.append(bits[random.nextInt(bits.length)]);
        }
        return text.toString();
    }

    private static void same(Value value, String head, String cell) {
        switch (value.figure()) {
            case Value.Figure.Words words ->
                    assertThat(cell).isIn(words.text(), "'" + words.text());
            case Value.Figure.Amount amount -> {
                Matcher unit = HEAD.matcher(head);
                assertThat(unit.matches()).as(head).isTrue();
                assertThat(unit.group(1)).isEqualTo(Fields.of(value.field()).label());
                Reading<Quantity> read =
                        QuantityParser.parse(cell + " " + unit.group(2), dimension(value.field()));
                assertThat(read).isInstanceOf(Reading.Parsed.class);
                assertThat(((Reading.Parsed<Quantity>) read).value().si())
                        .isCloseTo(amount.si(), within(1e-7 * Math.abs(amount.si())));
            }
            case Value.Figure.Never _, Value.Figure.NotComputed _ ->
                    throw new AssertionError("none here");
        }
    }

    @Test
    void nothingBecomesAFormula() {
        for (String hostile :
                List.of(
                        "=1+1",
                        "+1",
                        "-1",
                        "@SUM(A1)",
                        " =1",
                        "\t=1",
                        "\r\n=1",
                        "\u0000=1",
                        "＝1+1",
                        "\u202e=1")) {
            Section.Table table =
                    new Section.Table(
                            "t",
                            "T",
                            List.of("part", "making"),
                            List.of(
                                    List.of(
                                            Value.words("part", hostile),
                                            Value.words("making", "x"))));
            List<CsvRecord> back = read(TableCsv.write(table, UnitSystem.SI));
            assertThat(back).as(hostile).hasSize(2);
            assertThat(back.get(1).getFieldCount()).isEqualTo(2);
            assertThat(back.get(1).getField(0)).startsWith("'");
            assertThat(back.get(1).getField(0).chars()).noneMatch(c -> c < ' ' || c == 0x202e);
        }
    }

    @Test
    void theSolderingListIsBothTablesWithTheBoxAtTheEnd() {
        Section.Table made =
                new Section.Table(
                        "soldering",
                        "M",
                        List.of("part", "cut-length", "done"),
                        List.of(
                                List.of(
                                        Value.words("part", "feed.run"),
                                        Value.of("cut-length", 0.6075),
                                        Value.words("done", "[ ]"))));
        Section.Table carried =
                new Section.Table(
                        "soldering-loads",
                        "C",
                        List.of("part", "current-worst"),
                        List.of(
                                List.of(
                                        Value.words("part", "feed.run"),
                                        Value.of("current-worst", 101.25))));
        List<CsvRecord> back = read(TableCsv.solderingList(List.of(carried, made), UnitSystem.SI));
        assertThat(back.get(0).getFields()).startsWith("part").endsWith("done").hasSize(4);
        assertThat(back.get(1).getFields()).contains("101.25", "[ ]");
        assertThatThrownBy(() -> TableCsv.solderingList(List.of(made), UnitSystem.SI))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
