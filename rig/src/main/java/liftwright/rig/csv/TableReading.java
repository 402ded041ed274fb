package liftwright.rig.csv;

import java.util.List;
import liftwright.rig.Problem;

/**
 * What came of reading a table: the table, or everything that is wrong with it.
 *
 * @param <T> the table's records
 */
public sealed interface TableReading<T> {

    /**
     * Nothing is wrong.
     *
     * @param table all of its rows
     */
    record Whole<T>(T table) implements TableReading<T> {}

    /**
     * Something is wrong; a table is not used in part.
     *
     * @param problems at least one, in the order of the file; their paths name the column
     */
    record Broken<T>(List<Problem> problems) implements TableReading<T> {
        public Broken {
            problems = List.copyOf(problems);
        }
    }
}
