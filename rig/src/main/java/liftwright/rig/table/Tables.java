package liftwright.rig.table;

import java.util.Map;

/**
 * The tables that a rig was read with, by the paths its file gives them, so that the rig can be
 * made again after a change without its folder.
 *
 * @param benches bench tables
 * @param cellTests tests of cells, as measured: not brought down to one cell
 */
public record Tables(Map<String, BenchTable> benches, Map<String, CellTest> cellTests) {

    /** Of a rig without tables. */
    public static final Tables NONE = new Tables(Map.of(), Map.of());

    public Tables {
        benches = Map.copyOf(benches);
        cellTests = Map.copyOf(cellTests);
    }
}
