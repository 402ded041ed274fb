package liftwright.review.people;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * What is declared of rotors and sound, with its doubt: numbers that decide no lift and are drawn
 * beside the rig's. A table of its own, whose rows are named by their paths, so that a value that
 * stands in both is drawn alike.
 */
final class Numbers {

    /** What of a fan type. */
    enum What {
        FAN_MASS("mass"),
        INERTIA("rotor", "inertia"),
        ROTOR_MASS("rotor", "mass"),
        BLADE_MASS("rotor", "blade mass"),
        BLADE_CENTRE("rotor", "blade centre"),
        NOISE("noise");

        private final String[] keys;

        What(String... keys) {
            this.keys = keys;
        }

        RigPath of(FanType type) {
            RigPath at = RigPath.of("fan types", type.name());
            for (String key : keys) {
                at = at.child(key);
            }
            return at;
        }

        private Optional<Quantity> in(FanType type) {
            return switch (this) {
                case FAN_MASS -> Optional.of(type.mass());
                case INERTIA -> type.rotor().inertia();
                case ROTOR_MASS -> type.rotor().mass();
                case BLADE_MASS -> type.rotor().bladeMass();
                case BLADE_CENTRE -> type.rotor().bladeCentre();
                case NOISE -> Optional.of(type.noise());
            };
        }
    }

    private record Key(String type, What what) {}

    private final Map<Key, Integer> rows = new HashMap<>();
    private final ParameterTable table;

    Numbers(Rig rig) {
        ParameterRows declared = new ParameterRows();
        for (FanType type : rig.fanTypes()) {
            for (What what : What.values()) {
                what.in(type)
                        .ifPresent(
                                value ->
                                        rows.put(
                                                new Key(type.name(), what),
                                                declared.row(
                                                        what.of(type),
                                                        what + " of " + type.name(),
                                                        value,
                                                        what == What.NOISE
                                                                ? Range.ANY
                                                                : Range.POSITIVE)));
            }
        }
        table = declared.table();
    }

    ParameterTable table() {
        return table;
    }

    boolean has(FanType type, What what) {
        return rows.containsKey(new Key(type.name(), what));
    }

    /**
     * A value.
     *
     * @param own a vector of {@link #table}
     * @throws IllegalArgumentException if the file does not say it
     */
    double of(double[] own, FanType type, What what) {
        Integer row = rows.get(new Key(type.name(), what));
        if (row == null) {
            throw new IllegalArgumentException(what + " of " + type.name() + " is not declared");
        }
        return own[row];
    }
}
