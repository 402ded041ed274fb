package liftwright.rig.csv;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Problems;
import org.jspecify.annotations.Nullable;

/** Reads cells as numbers in the unit of their column. One table has one decimal mark. */
final class Numbers {

    private static final Pattern PLAIN =
            Pattern.compile("[+\\-\u2212]?(?:\\d+|\\d+\\.\\d+|\\.\\d+)(?:[eE][+\\-\u2212]?\\d+)?");
    private static final Pattern WITH_COMMA =
            Pattern.compile("[+\\-\u2212]?\\d*,\\d+(?:[eE][+\\-\u2212]?\\d+)?");
    private static final Set<String> NO_NUMBER =
            Set.of(
                    "nan",
                    "inf",
                    "infinity",
                    "n/a",
                    "na",
                    "null",
                    "none",
                    "-",
                    "–",
                    "—",
                    "?",
                    "#n/a");

    private final char separator;
    private final Faults faults;
    private @Nullable Cell marked;
    private char mark;

    Numbers(char separator, Faults faults) {
        this.separator = separator;
        this.faults = faults;
    }

    /** The SI value of a cell that cannot be empty; empty after a problem. */
    OptionalDouble needed(Head.Found column, Line row) {
        Cell cell = row.cells().get(column.index());
        if (column.readable() && cell.text().isEmpty()) {
            faults.add(
                    Code.MISSING_KEY,
                    cell,
                    column.name(),
                    "an empty cell",
                    amount(column).expectation(),
                    "Leave out a row in which this was not measured.");
            return OptionalDouble.empty();
        }
        return open(column, row);
    }

    /** The SI value of a cell; empty when nothing was measured, or after a problem. */
    OptionalDouble open(Head.Found column, Line row) {
        Cell cell = row.cells().get(column.index());
        if (!column.readable() || cell.text().isEmpty()) {
            return OptionalDouble.empty();
        }
        String number = number(cell, column);
        if (number.isEmpty()) {
            return OptionalDouble.empty();
        }
        Amount amount = amount(column);
        String text = column.unit().isEmpty() ? number : number + " " + column.unit();
        return switch (QuantityParser.parse(text, amount.measure().dimension())) {
            case Reading.Parsed<Quantity>(var quantity) -> within(quantity, cell, column);
            case Reading.Refused<Quantity>(var refusal) -> {
                faults.add(
                        Code.OUT_OF_RANGE,
                        cell,
                        column.name(),
                        Problems.quote(cell.text()) + ": " + refusal.message(),
                        amount.expectation(),
                        "");
                yield OptionalDouble.empty();
            }
        };
    }

    private OptionalDouble within(Quantity quantity, Cell cell, Head.Found column) {
        Amount amount = amount(column);
        if (amount.range().holds(quantity.si())) {
            return OptionalDouble.of(quantity.si());
        }
        faults.add(
                Code.OUT_OF_RANGE,
                cell,
                column.name(),
                Problems.quote((cell.text() + " " + column.unit()).strip()),
                amount.expectation(),
                "");
        return OptionalDouble.empty();
    }

    private static Amount amount(Head.Found column) {
        return column.column().amount().orElseThrow();
    }

    /** The number with a decimal point; empty after a problem. */
    private String number(Cell cell, Head.Found column) {
        String text = cell.text();
        boolean comma = WITH_COMMA.matcher(text).matches();
        if (comma && separator != ',') {
            return isMarked(',', cell, column) ? text.replace(',', '.') : "";
        }
        if (PLAIN.matcher(text).matches()) {
            return text.indexOf('.') < 0 || isMarked('.', cell, column) ? text : "";
        }
        faults.add(
                Code.NOT_A_QUANTITY,
                cell,
                column.name(),
                Problems.quote(text),
                "a number",
                advice(text, comma, column));
        return "";
    }

    /** One mark a table: {@code 1.234} may be a thousand where another cell has a comma. */
    private boolean isMarked(char c, Cell cell, Head.Found column) {
        if (marked == null) {
            marked = cell;
            mark = c;
        }
        if (mark == c) {
            return true;
        }
        faults.add(
                Code.CONTRADICTION,
                cell,
                column.name(),
                Problems.quote(cell.text()),
                "a decimal "
                        + (mark == ',' ? "comma" : "point")
                        + " as in "
                        + Problems.quote(marked.text())
                        + " in line "
                        + marked.line(),
                "One table has one decimal mark, and nothing between thousands.");
        return false;
    }

    private static String advice(String text, boolean comma, Head.Found column) {
        if (comma) {
            return "A decimal comma needs semicolons or tabs between the cells.";
        }
        if (NO_NUMBER.contains(text.toLowerCase(Locale.ROOT))) {
            return column.column().needed()
                    ? "Leave out a row in which this was not measured."
                    : "Leave the cell empty where nothing was measured.";
        }
        if (text.indexOf(':') > 0) {
            return "Write times as one number in the unit of the column.";
        }
        boolean digit = text.chars().anyMatch(Character::isDigit);
        if (digit
                && text.codePoints().anyMatch(c -> Character.isLetter(c) || c == '%' || c == '°')) {
            return "The unit stands in the head of the column, not in the cell.";
        }
        return digit
                ? "One plain number, such as 0.5 or 1e-3, and nothing between its digits."
                : "";
    }
}
