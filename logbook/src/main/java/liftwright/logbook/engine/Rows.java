package liftwright.logbook.engine;

import java.util.List;

/**
 * The answer to a statement.
 *
 * @param columns their names, untrusted
 * @param rows each with one value a column
 * @param cut whether there was more than the limits let through
 */
public record Rows(List<String> columns, List<List<Value>> rows, boolean cut) {

    public Rows {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** The first value of the first row as a whole number; 0 where it is none. */
    public long whole() {
        return !rows.isEmpty() && rows.getFirst().getFirst() instanceof Value.Whole(var n) ? n : 0;
    }
}
