package liftwright.rig.csv;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Rig;
import liftwright.rig.table.BenchTable;
import liftwright.rig.table.CellTest;
import liftwright.rig.table.KillLog;
import liftwright.rig.table.StartState;
import liftwright.rig.table.ThrottleTrace;
import liftwright.rig.table.TurningTable;

/**
 * Reads the tables that may stand beside a rig file. Never throws, whatever stands in one; every
 * problem is told at once, at its cell. The formats are described in {@code
 * docs/reference/tables.md}.
 */
public final class TableReader {

    /** Largest table, bytes. */
    public static final int MOST_BYTES = Tabular.MOST_BYTES;

    private TableReader() {}

    /**
     * Measured rows of a fan.
     *
     * @param file as problems shall call it
     * @param bytes the file
     */
    public static TableReading<BenchTable> bench(String file, byte[] bytes) {
        return read(file, bytes, (table, faults) -> BenchRows.read(file, table, faults));
    }

    /**
     * A test of a cell or of a pack, in the volts and amperes of what was tested.
     *
     * @param file as problems shall call it
     * @param bytes the file
     */
    public static TableReading<CellTest> cellTest(String file, byte[] bytes) {
        return read(file, bytes, (table, faults) -> CellRows.read(file, table, faults));
    }

    /**
     * Commands over time.
     *
     * @param file as problems shall call it
     * @param bytes the file
     * @param groups the control groups of the rig: a trace commands all of them or none by name
     */
    public static TableReading<ThrottleTrace> trace(
            String file, byte[] bytes, List<String> groups) {
        return read(file, bytes, (table, faults) -> TraceRows.read(file, table, groups, faults));
    }

    /**
     * How a rig turned when it was let go.
     *
     * @param file as problems shall call it
     * @param bytes the file
     * @param fans ids of the rig's fans, which swaps may name
     */
    public static TableReading<TurningTable> turning(String file, byte[] bytes, List<String> fans) {
        return read(file, bytes, (table, faults) -> TurningRows.read(file, table, fans, faults));
    }

    /**
     * What a run begins with.
     *
     * @param file as problems shall call it
     * @param bytes the file
     * @param rig whose parts it names
     */
    public static TableReading<StartState> startState(String file, byte[] bytes, Rig rig) {
        return read(file, bytes, (table, faults) -> StartRows.read(file, table, rig, faults));
    }

    /**
     * What was logged while kills were pressed.
     *
     * @param file as problems shall call it
     * @param bytes the file
     * @param paths names of the ways to stop that may be pressed
     */
    public static TableReading<KillLog> kills(String file, byte[] bytes, List<String> paths) {
        return read(file, bytes, (table, faults) -> KillRows.read(file, table, paths, faults));
    }

    private interface Rows<T> {
        Optional<T> of(Tabular table, Faults faults);
    }

    private static <T> TableReading<T> read(String file, byte[] bytes, Rows<T> rows) {
        var faults = new Faults(file);
        Optional<T> table = Tabular.read(bytes, faults).flatMap(t -> rows.of(t, faults));
        return table.<TableReading<T>>map(TableReading.Whole::new)
                .orElseGet(() -> new TableReading.Broken<>(faults.inOrder()));
    }
}
