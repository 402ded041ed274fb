package liftwright.rig.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.table.CellTest;

/** Tests of cells. */
final class CellRows {

    static final Column TIME = Column.needed("time", Measure.TIME, Range.between(-1e6, 1e7));
    static final Column DISCHARGE =
            Column.open("discharge current", Measure.CURRENT, Range.between(-5000, 5000));
    static final Column CHARGE =
            Column.open("charge current", Measure.CURRENT, Range.between(-5000, 5000));
    static final Column VOLTAGE = Column.needed("voltage", Measure.VOLTAGE, Range.upTo(1000));
    static final Column TEMPERATURE =
            Column.open("temperature", Measure.TEMPERATURE, Range.between(213.15, 423.15));
    static final Column NOTE = Column.text("note");

    static final Vocabulary WORDS =
            new Vocabulary(
                    List.of(TIME, DISCHARGE, CHARGE, VOLTAGE, TEMPERATURE, NOTE),
                    Map.of(
                            "current",
                            "Say which way counts as plus: “discharge current [A]” or “charge"
                                    + " current [A]”.",
                            "cell temperature",
                            "Write “temperature [°C]”: that of the cell's surface.",
                            "capacity",
                            "Leave it out: it follows from current and time.",
                            "charge",
                            "Leave it out: it follows from current and time."));

    private CellRows() {}

    /** The table, if nothing is wrong with it. */
    static Optional<CellTest> read(String file, Tabular table, Faults faults) {
        Head head = Head.read(table, WORDS, faults);
        head.require(WORDS, faults);
        var numbers = new Numbers(table.separator(), faults);
        var times = new Times(faults);
        Column current = current(table, head, faults);
        double sign = current.equals(CHARGE) ? -1 : 1;
        var rows = new ArrayList<CellTest.Row>();
        for (Line line : table.rows()) {
            OptionalDouble time = needed(head, TIME, numbers, line);
            OptionalDouble amps = needed(head, current, numbers, line);
            OptionalDouble volts = needed(head, VOLTAGE, numbers, line);
            var warm = head.find(TEMPERATURE);
            OptionalDouble kelvin =
                    warm.isPresent() ? numbers.open(warm.get(), line) : OptionalDouble.empty();
            if (time.isPresent()) {
                times.next(time.getAsDouble(), line, head.find(TIME).orElseThrow());
            }
            if (time.isPresent() && amps.isPresent() && volts.isPresent()) {
                rows.add(
                        new CellTest.Row(
                                line.number(),
                                time.getAsDouble(),
                                sign * amps.getAsDouble(),
                                volts.getAsDouble(),
                                kelvin));
            }
        }
        Times.atLeastTwo(table, faults);
        return faults.isEmpty() ? Optional.of(new CellTest(file, rows)) : Optional.empty();
    }

    private static OptionalDouble needed(Head head, Column column, Numbers numbers, Line line) {
        var found = head.find(column);
        return found.isPresent() ? numbers.needed(found.get(), line) : OptionalDouble.empty();
    }

    private static Column current(Tabular table, Head head, Faults faults) {
        boolean discharge = head.find(DISCHARGE).isPresent();
        Optional<Head.Found> charge = head.find(CHARGE);
        if (discharge && charge.isPresent()) {
            faults.add(
                    Code.CONTRADICTION,
                    table.head().cells().get(charge.get().index()),
                    CHARGE.name(),
                    "two columns of current",
                    "one, with a minus where it flows the other way",
                    "");
        }
        if (!discharge && charge.isEmpty() && !head.hasUndeclaredCurrent()) {
            faults.add(
                    Code.MISSING_KEY,
                    table.head().number(),
                    1,
                    "current",
                    "no column of current",
                    "“discharge current [A]” or “charge current [A]”",
                    "");
        }
        return !discharge && charge.isPresent() ? CHARGE : DISCHARGE;
    }
}
