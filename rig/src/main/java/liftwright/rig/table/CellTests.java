package liftwright.rig.table;

import java.util.List;

/**
 * Everything measured on one kind of cell.
 *
 * @param runs at least one, in the order of the rig file
 */
public record CellTests(List<Run> runs) {

    public CellTests {
        runs = List.copyOf(runs);
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("a measured cell has a test");
        }
    }

    /**
     * One test.
     *
     * @param test its rows, brought down to one cell
     * @param chargeAtStart share of the capacity in the cell at the first row, above 0 to 1
     * @param heldOut whether the cell's values must not be fitted to it, so that it can judge them
     */
    public record Run(CellTest test, double chargeAtStart, boolean heldOut) {}

    /** The runs that values may be fitted to. */
    public List<Run> fitted() {
        return runs.stream().filter(run -> !run.heldOut()).toList();
    }
}
