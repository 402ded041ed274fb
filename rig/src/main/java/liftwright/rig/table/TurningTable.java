package liftwright.rig.table;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How a rig turned when it was let go: angular accelerations from rest, row by row.
 *
 * @param file as it was named
 * @param rows at least one
 */
public record TurningTable(String file, List<Row> rows) {

    public TurningTable {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a table of turning has a row");
        }
    }

    /**
     * One measurement.
     *
     * @param line of the file, from 1
     * @param throttle 0 to 1; empty for a hop, at the throttle at which lift is weight
     * @param armsRad how far each joint of an arm may have been from where it was meant, k = 2;
     *     empty for what the rig says of held arms
     * @param swap what had been exchanged on the rig
     * @param rates about the axes that were measured
     */
    public record Row(
            int line,
            OptionalDouble throttle,
            OptionalDouble armsRad,
            Swap swap,
            List<Rate> rates) {
        public Row {
            rates = List.copyOf(rates);
            if (rates.isEmpty()) {
                throw new IllegalArgumentException("a row of turning measures an axis");
            }
        }
    }

    /** Axes in the order of the columns: about forward, about sideways, about upright. */
    public enum Axis {
        ROLL,
        PITCH,
        YAW
    }

    /**
     * @param radps2 right side down, leaning back, turning right positive, rad/s²
     * @param doubtRadps2 k = 2, above 0, rad/s²
     */
    public record Rate(Axis axis, double radps2, double doubtRadps2) {}

    /** What was changed on the rig before a row was measured; fans by their ids. */
    public sealed interface Swap {

        /** The rig as declared. */
        record None() implements Swap {}

        /** A fan turned by half a turn in its seat; the seat stays. */
        record HalfTurn(String fan) implements Swap {}

        /** Two fans exchanged, each with its rotor; the seats stay. */
        record Exchange(String one, String other) implements Swap {}

        /** A fan that turns the other way now, with a mirrored rotor. */
        record Reversal(String fan) implements Swap {}
    }
}
