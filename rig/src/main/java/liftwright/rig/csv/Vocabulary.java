package liftwright.rig.csv;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.shape.kind.Nearest;

/**
 * The columns of one kind of table.
 *
 * @param columns in the order of the reference page
 * @param wrong names that are not taken, with what to do about each
 */
record Vocabulary(List<Column> columns, Map<String, String> wrong) {

    Vocabulary {
        columns = List.copyOf(columns);
        wrong = Map.copyOf(wrong);
    }

    /** The column that a name, in lower case, means. */
    Optional<Column> find(String name) {
        return columns.stream()
                .filter(
                        column ->
                                name.equals(column.name())
                                        || (column.perGroup()
                                                && name.startsWith(column.name() + " ")
                                                && name.indexOf('(') < 0))
                .findFirst();
    }

    /**
     * What to do about a name that is no column.
     *
     * @param bare the same without what looks like a unit
     */
    String advice(String name, String bare) {
        String told = wrong.getOrDefault(name, wrong.get(bare));
        if (told != null) {
            return told;
        }
        var names = columns.stream().map(Column::name).toList();
        return Nearest.to(name, names)
                .flatMap(this::find)
                .map(column -> "Perhaps “" + column.written() + "” is meant.")
                .orElse(
                        "The columns are: "
                                + String.join(", ", columns.stream().map(Column::written).toList())
                                + ".");
    }
}
