package liftwright.rig.csv;

import java.util.OptionalDouble;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Problems;

/** Holds that time rises from row to row. */
final class Times {

    private final Faults faults;
    private OptionalDouble before = OptionalDouble.empty();
    private int lineBefore;

    Times(Faults faults) {
        this.faults = faults;
    }

    /** Takes the time of the next row. */
    void next(double timeS, Line line, Head.Found column) {
        if (before.isPresent() && timeS <= before.getAsDouble()) {
            Cell cell = line.cells().get(column.index());
            faults.add(
                    Code.OUT_OF_RANGE,
                    cell,
                    column.name(),
                    Problems.quote(cell.text() + " " + column.unit()),
                    "more than "
                            + Measure.TIME.show(before.getAsDouble())
                            + ", the time of line "
                            + lineBefore,
                    "Times rise from row to row.");
        }
        before = OptionalDouble.of(timeS);
        lineBefore = line.number();
    }

    /** One row has no duration. */
    static void atLeastTwo(Tabular table, Faults faults) {
        if (table.rows().size() == 1 && faults.isEmpty()) {
            faults.add(
                    Code.MISSING_KEY,
                    table.rows().getFirst().number(),
                    1,
                    "",
                    "one row",
                    "two rows or more: a time passes between rows",
                    "");
        }
    }
}
