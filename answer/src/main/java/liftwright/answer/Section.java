package liftwright.answer;

import java.util.List;

/** A picture or a table, as data. */
public sealed interface Section {

    /** Stable name, lower case with hyphens. */
    String id();

    String title();

    /**
     * From a first value to a last in steps that add up exactly.
     *
     * @param start label and value it starts from
     * @param steps changes in physical order, each from a full re-solve
     * @param end what is left
     * @param against what the end is held against
     */
    record Waterfall(String id, String title, Step start, List<Step> steps, Step end, Step against)
            implements Section {
        public Waterfall {
            steps = List.copyOf(steps);
        }

        /**
         * @param label in words
         * @param value amount: for steps the signed change
         * @param note why, or empty
         */
        public record Step(String label, Value value, String note) {}
    }

    /**
     * @param columns column heads, field ids
     * @param rows cells in column order
     */
    record Table(String id, String title, List<String> columns, List<List<Value>> rows)
            implements Section {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }
}
