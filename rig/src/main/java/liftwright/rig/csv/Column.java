package liftwright.rig.csv;

import java.util.Optional;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;

/**
 * One column that a kind of table may have.
 *
 * @param name as written in the head, in lower case
 * @param amount what its cells hold; empty where they hold text
 * @param needed whether the table cannot do without it; its cells are then never empty
 * @param perGroup whether a group's name may follow the name
 */
record Column(String name, Optional<Amount> amount, boolean needed, boolean perGroup) {

    static Column needed(String name, Measure measure, Range range) {
        return new Column(name, Optional.of(Amount.of(measure, range)), true, false);
    }

    static Column open(String name, Measure measure, Range range) {
        return new Column(name, Optional.of(Amount.of(measure, range)), false, false);
    }

    static Column text(String name) {
        return new Column(name, Optional.empty(), false, false);
    }

    static Column neededText(String name) {
        return new Column(name, Optional.empty(), true, false);
    }

    Column forGroups() {
        return new Column(name, amount, needed, true);
    }

    /** As it would be written: {@code thrust [N]}. */
    String written() {
        return amount.map(a -> name + " [" + unit(a) + "]").orElse(name);
    }

    private static String unit(Amount amount) {
        return amount.measure().unit();
    }
}
