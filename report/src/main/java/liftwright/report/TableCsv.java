package liftwright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.answer.Field;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Untrusted;
import liftwright.answer.Value;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;

/**
 * A table as a file for spreadsheets, by RFC 4180: units stand in the heads ({@code cut to [mm]}),
 * numbers have a point and no grouping, the first mark says that the text is UTF-8. Words that a
 * spreadsheet would take for a formula get an apostrophe before them.
 */
public final class TableCsv {

    private static final String BREAK = "\r\n";
    private static final String MARK = "\ufeff";

    /** Digits beyond what any declared value has. */
    private static final MathContext DIGITS = new MathContext(9, RoundingMode.HALF_EVEN);

    private TableCsv() {}

    /**
     * The soldering list of an answer: its two tables side by side, one row for each part, the box
     * to tick at the end.
     *
     * @throws IllegalArgumentException if the answer has none
     */
    public static String solderingList(List<Section> sections, UnitSystem units) {
        Section.Table made = table(sections, "soldering");
        Section.Table carried = table(sections, "soldering-loads");
        List<String> columns = new ArrayList<>(made.columns());
        columns.remove("done");
        carried.columns().stream()
                .filter(column -> !columns.contains(column))
                .forEach(columns::add);
        columns.add("done");
        List<List<Value>> rows = new ArrayList<>();
        for (int row = 0; row < made.rows().size(); row++) {
            List<Value> left = made.rows().get(row);
            List<Value> right = carried.rows().get(row);
            rows.add(
                    columns.stream()
                            .map(
                                    column ->
                                            made.columns().contains(column)
                                                    ? left.get(made.columns().indexOf(column))
                                                    : right.get(carried.columns().indexOf(column)))
                            .toList());
        }
        return write(new Section.Table("soldering-list", made.title(), columns, rows), units);
    }

    private static Section.Table table(List<Section> sections, String id) {
        return sections.stream()
                .filter(section -> section.id().equals(id))
                .filter(Section.Table.class::isInstance)
                .map(Section.Table.class::cast)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the answer has no table " + id));
    }

    /** One table, heads first. */
    public static String write(Section.Table table, UnitSystem units) {
        var format = new QuantityFormat(units, false);
        var text = new StringBuilder(MARK);
        double[] sizes = sizes(table);
        List<String> heads = new ArrayList<>();
        for (int k = 0; k < sizes.length; k++) {
            Field field = Fields.of(table.columns().get(k));
            String unit = sizes[k] < 0 ? "" : format.unitText(field.measure(), sizes[k]);
            heads.add(words(field.label() + (unit.isEmpty() ? "" : " [" + unit + "]")));
        }
        text.append(String.join(",", heads)).append(BREAK);
        for (List<Value> row : table.rows()) {
            List<String> cells = new ArrayList<>();
            for (int k = 0; k < row.size(); k++) {
                cells.add(cell(format, row.get(k), sizes[k]));
            }
            text.append(String.join(",", cells)).append(BREAK);
        }
        return text.toString();
    }

    /** The largest number of each column, which decides its unit; below 0 where it has none. */
    private static double[] sizes(Section.Table table) {
        double[] sizes = new double[table.columns().size()];
        java.util.Arrays.fill(sizes, -1);
        for (List<Value> row : table.rows()) {
            for (int k = 0; k < row.size(); k++) {
                if (row.get(k).figure() instanceof Value.Figure.Amount amount) {
                    sizes[k] = Math.max(sizes[k], Math.abs(amount.si()));
                }
            }
        }
        return sizes;
    }

    private static String cell(QuantityFormat format, Value value, double size) {
        return switch (value.figure()) {
            case Value.Figure.Amount amount ->
                    number(format.inUnit(Fields.of(value.field()).measure(), amount.si(), size));
            case Value.Figure.Words words -> words(words.text());
            case Value.Figure.Never _ -> "never";
            case Value.Figure.NotComputed not -> words("not computed: " + not.reason());
        };
    }

    private static String number(double value) {
        return value == 0
                ? "0"
                : new BigDecimal(value, DIGITS).stripTrailingZeros().toPlainString();
    }

    private static String words(String text) {
        String harmless =
                text.codePoints()
                        .map(c -> Untrusted.isHarmless(c) ? c : ' ')
                        .mapToObj(Character::toString)
                        .collect(Collectors.joining());
        String first = harmless.stripLeading();
        boolean formula = !first.isEmpty() && "=+-@＝＋－＠".indexOf(first.charAt(0)) >= 0;
        String guarded = formula ? "'" + harmless : harmless;
        boolean quoted =
                guarded.contains(",")
                        || guarded.contains(";")
                        || guarded.contains("\"")
                        || !guarded.strip().equals(guarded);
        return quoted ? "\"" + guarded.replace("\"", "\"\"") + "\"" : guarded;
    }
}
