package liftwright.logbook.reading;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.quantity.Dimensions;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.quantity.UnitExpression;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Problems;

/** Finds how the times of a log are written. */
final class ClockReader {

    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\[([^\\[\\]]*)\\]");
    private static final Pattern OF_DAY =
            Pattern.compile("\\d{1,2}:\\d{2}(?::\\d{2}(?:[.,]\\d+)?)?");
    private static final Pattern DATED = Pattern.compile("\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}.*");
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?\\d+(?:[.,]\\d*)?(?:[eE][+-]?\\d+)?");

    /** Seconds since 1970 of the year 2001, and of 2286; a test is shorter than the first. */
    private static final double EPOCH_S = 1e9;

    private static final double LAST_EPOCH_S = 1e10;

    private final LogText text;
    private final int head;
    private final char separator;
    private final LogFaults faults;

    ClockReader(LogText text, int head, char separator, LogFaults faults) {
        this.text = text;
        this.head = head;
        this.separator = separator;
        this.faults = faults;
    }

    /** Empty after a fault. */
    Optional<LogClock> read(Optional<LogMap.TimeColumn> told, LogColumn column, int index) {
        Optional<TimeForm> form = told.flatMap(LogMap.TimeColumn::form);
        if (form.isPresent()) {
            return Optional.of(LogClock.of(form.get()));
        }
        String first = first(index);
        if (OF_DAY.matcher(first).matches()) {
            return Optional.of(new LogClock.OfDay());
        }
        if (DATED.matcher(first).matches()) {
            return Optional.of(new LogClock.Dated());
        }
        double value =
                NUMBER.matcher(first).matches()
                        ? Math.abs(Double.parseDouble(first.replace(',', '.')))
                        : 0;
        Matcher matcher = WITH_UNIT.matcher(column.head());
        if (matcher.matches()) {
            return unit(matcher.group(2).strip(), column, value);
        }
        if (value >= EPOCH_S && value < LAST_EPOCH_S) {
            return Optional.of(new LogClock.Count(1, true));
        }
        if (value >= 1e3 * EPOCH_S && value < 1e3 * LAST_EPOCH_S) {
            return Optional.of(new LogClock.Count(1e-3, true));
        }
        faults.add(
                Code.WRONG_UNIT,
                head,
                column.column(),
                "time",
                Problems.quote(column.head()) + " above " + Problems.quote(first),
                "the unit in square brackets",
                "Write it as in “time [s]” or “time [ms]”.");
        return Optional.empty();
    }

    private Optional<LogClock> unit(String text, LogColumn column, double value) {
        if (QuantityParser.parseUnit(text) instanceof Reading.Parsed<UnitExpression>(var unit)
                && unit.dimension().equals(Dimensions.TIME)) {
            double unitS = unit.toSi(1);
            boolean epoch = value * unitS >= EPOCH_S && value * unitS < LAST_EPOCH_S;
            return Optional.of(new LogClock.Count(unitS, epoch));
        }
        faults.add(
                Code.WRONG_UNIT,
                head,
                column.column(),
                "time",
                "the unit " + Problems.quote(text),
                "a unit of time, such as s or ms",
                "");
        return Optional.empty();
    }

    private String first(int index) {
        for (int line = head + 1; line <= text.first().size(); line++) {
            if (!text.isLeft(line)) {
                List<LogLine.Cell> cells = LogLine.cut(text.first().get(line - 1), separator);
                if (index < cells.size() && !cells.get(index).text().isEmpty()) {
                    return cells.get(index).text();
                }
            }
        }
        return "";
    }
}
