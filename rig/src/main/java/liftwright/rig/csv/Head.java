package liftwright.rig.csv;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.quantity.Refusal;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Problems;

/**
 * The head of a table: which column means what, and in which unit. Columns may stand in any order.
 *
 * @param line where it stands
 * @param found the columns that were understood
 * @param strange the names that were not, in lower case
 */
record Head(Line line, List<Found> found, List<String> strange) {

    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\[([^\\[\\]]*)\\]");
    private static final Pattern OTHERWISE =
            Pattern.compile("(.*?)(?:\\s*\\(([^()]*)\\)|\\s+in\\s+(\\S+)|[_/,]\\s*(\\S+))");

    Head {
        found = List.copyOf(found);
        strange = List.copyOf(strange);
    }

    /**
     * A column of this table.
     *
     * @param column what it means
     * @param index from 0
     * @param name as in problems
     * @param suffix the group's name after that of the column, or empty
     * @param unit as written, empty for plain numbers and text
     * @param readable whether its unit was understood, so that its cells can be
     */
    record Found(
            Column column, int index, String name, String suffix, String unit, boolean readable) {}

    /** Reads the head; whatever is wrong with it goes to {@code faults}. */
    static Head read(Tabular table, Vocabulary words, Faults faults) {
        var found = new ArrayList<Found>();
        var strange = new ArrayList<String>();
        var taken = new HashSet<String>();
        List<Cell> cells = table.head().cells();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            Matcher matcher = WITH_UNIT.matcher(cell.text());
            boolean split = matcher.matches();
            String raw = split ? matcher.group(1) : cell.text();
            String name = fold(raw);
            Optional<Column> column = words.find(name);
            if (column.isEmpty()) {
                strange.add(name);
                unknown(cell, i, name, words, faults).ifPresent(found::add);
                continue;
            }
            String suffix = suffix(raw, column.get());
            String told = told(column.get(), suffix);
            if (!taken.add(told)) {
                faults.add(
                        Code.DUPLICATE_KEY,
                        cell,
                        told,
                        "the column " + Problems.quote(told) + " again",
                        "each column once",
                        "");
                continue;
            }
            Optional<String> unit =
                    split ? Optional.of(matcher.group(2).strip()) : Optional.empty();
            int unitAt = split ? cell.text().codePointCount(0, matcher.start(2)) : 0;
            var at = new Cell(cell.text(), cell.line(), cell.column() + unitAt);
            boolean readable = isUnit(unit, column.get(), split ? at : cell, told, faults);
            found.add(
                    new Found(column.get(), i, told, suffix, plain(unit, column.get()), readable));
        }
        return new Head(table.head(), found, strange);
    }

    /** Letters small, one blank between words; {@code _} and {@code -} are blanks. */
    private static String fold(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ").strip();
    }

    private static String suffix(String raw, Column column) {
        String name = raw.strip();
        return name.length() <= column.name().length()
                ? ""
                : column.perGroup() ? name.substring(column.name().length()).strip() : "";
    }

    private static String told(Column column, String suffix) {
        return suffix.isEmpty() ? column.name() : column.name() + " " + suffix;
    }

    /**
     * Tells of a name that is no column; gives the column that was meant with a unit outside [].
     */
    private static Optional<Found> unknown(
            Cell cell, int index, String name, Vocabulary words, Faults faults) {
        if (name.isEmpty()) {
            faults.add(
                    Code.MISSING_KEY,
                    cell,
                    "",
                    "a column without a name",
                    "a name such as " + words.columns().getFirst().written(),
                    "Does the line end with a separator too many?");
            return Optional.empty();
        }
        Matcher other = OTHERWISE.matcher(cell.text());
        String bare = other.matches() ? fold(other.group(1)) : name;
        Optional<Column> meant = words.find(bare);
        if (meant.isPresent() && meant.get().amount().isPresent()) {
            String suffix = suffix(other.matches() ? other.group(1) : cell.text(), meant.get());
            String told = told(meant.get(), suffix);
            faults.add(
                    Code.WRONG_UNIT,
                    cell,
                    told,
                    Problems.quote(cell.text()),
                    "the unit in square brackets",
                    "Write it as in “" + meant.get().written() + "”.");
            return Optional.of(new Found(meant.get(), index, told, suffix, "", false));
        }
        faults.add(
                Code.UNKNOWN_KEY,
                cell,
                name,
                "the column " + Problems.quote(cell.text()),
                "a column of this table",
                words.advice(name, bare));
        return Optional.empty();
    }

    private static boolean isUnit(
            Optional<String> unit, Column column, Cell at, String name, Faults faults) {
        if (column.amount().isEmpty()) {
            if (unit.isEmpty()) {
                return true;
            }
            faults.add(
                    Code.WRONG_UNIT,
                    at,
                    name,
                    "the unit " + Problems.quote(unit.get()),
                    "no unit: the cells hold text",
                    "Write “" + column.name() + "”.");
            return false;
        }
        Amount amount = column.amount().get();
        if (unit.isEmpty()) {
            faults.add(
                    Code.WRONG_UNIT,
                    at,
                    name,
                    Problems.quote(at.text()) + " without a unit",
                    "a unit in square brackets",
                    "Write it as in “" + column.written() + "”.");
            return false;
        }
        if (isOne(unit.get(), amount)) {
            return true;
        }
        Optional<Refusal> refusal = refusal(unit.get(), amount);
        refusal.ifPresent(
                r ->
                        faults.add(
                                Code.WRONG_UNIT,
                                at,
                                name,
                                Problems.quote(unit.get()) + ": " + r.message(),
                                "the unit of " + amount.measure().words(),
                                "Write it as in “"
                                        + column.name()
                                        + " ["
                                        + meant(r, amount)
                                        + "]”."));
        return refusal.isEmpty();
    }

    private static String meant(Refusal refusal, Amount amount) {
        return refusal.suggestion()
                .map(text -> text.startsWith("1 ") ? text.substring(2) : text)
                .orElse(amount.measure().unit());
    }

    private static Optional<Refusal> refusal(String unit, Amount amount) {
        if (QuantityParser.parseUnit(unit) instanceof Reading.Refused<?>(var refusal)) {
            return Optional.of(refusal);
        }
        return QuantityParser.parse("1 " + unit, amount.measure().dimension())
                        instanceof Reading.Refused<?>(var refusal)
                ? Optional.of(refusal)
                : Optional.empty();
    }

    private static boolean isOne(String unit, Amount amount) {
        return unit.equals("1") && amount.measure() == Measure.SHARE;
    }

    /** The unit to write behind a number. */
    private static String plain(Optional<String> unit, Column column) {
        return column.amount().filter(a -> isOne(unit.orElse(""), a)).isPresent()
                ? ""
                : unit.orElse("");
    }

    Optional<Found> find(Column column) {
        return found.stream().filter(f -> f.column().equals(column)).findFirst();
    }

    List<Found> all(Column column) {
        return found.stream().filter(f -> f.column().equals(column)).toList();
    }

    /** Whether a column that was not understood seems to be one of current. */
    boolean hasUndeclaredCurrent() {
        return strange.stream()
                .anyMatch(name -> name.contains("current") || name.startsWith("amp"));
    }

    /** Tells of every needed column that is not there. */
    void require(Vocabulary words, Faults faults) {
        for (Column column : words.columns()) {
            if (column.needed() && find(column).isEmpty()) {
                missing(column, faults);
            }
        }
    }

    void missing(Column column, Faults faults) {
        faults.add(
                Code.MISSING_KEY,
                line.number(),
                1,
                column.name(),
                "no column “" + column.name() + "”",
                "“" + column.written() + "”",
                "");
    }
}
