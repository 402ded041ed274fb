package liftwright.rig.table;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One discharge of a cell, or of a pack brought down to one cell: voltage under a known current
 * over time.
 *
 * @param file as the rig file names it
 * @param rows at least two, time rising
 */
public record CellTest(String file, List<Row> rows) {

    public CellTest {
        rows = List.copyOf(rows);
        if (rows.size() < 2) {
            throw new IllegalArgumentException("a test of a cell has two rows or more");
        }
    }

    /**
     * One reading. Between rows current and voltage run straight.
     *
     * @param line of the file, from 1
     * @param timeS s, more than in the row before
     * @param currentA that leaves the cell, A; below 0 while it is charged
     * @param voltageV at the cell's tabs, V, above 0
     * @param temperatureK of the cell's surface, K
     */
    public record Row(
            int line,
            double timeS,
            double currentA,
            double voltageV,
            OptionalDouble temperatureK) {}
}
