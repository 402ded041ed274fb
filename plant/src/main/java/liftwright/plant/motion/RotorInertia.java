package liftwright.plant.motion;

import java.util.ArrayList;
import java.util.List;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * Inertias of all rotors: declared ones, else an estimate from mass and diameter of the fan.
 *
 * <p>A table of its own: they decide no lift, and are drawn beside the rig's numbers.
 */
public final class RotorInertia {

    /** Of a fan's mass, what turns: blades, hub and the turning half of the motor; from memory. */
    private static final double TURNING_SHARE = 0.25;

    /** Radius of gyration of that over the tip diameter; from memory. */
    private static final double GYRATION_SHARE = 0.2;

    /** The estimate is right to a factor of about two. */
    private static final double DOUBT = 0.5;

    private final ParameterTable table;
    private final int[] rows;
    private final List<String> estimated;

    private RotorInertia(Rig rig) {
        ParameterRows declared = new ParameterRows();
        List<String> types = new ArrayList<>();
        rows = new int[rig.fans().size()];
        for (int k = 0; k < rows.length; k++) {
            Fan fan = rig.fans().get(k);
            FanType type = fan.type();
            if (type.rotor().inertia().isEmpty() && !types.contains(type.name())) {
                types.add(type.name());
            }
            rows[k] =
                    declared.row(
                            RigPath.of("fan types", type.name(), "rotor", "inertia"),
                            "inertia of the rotor of " + type.name(),
                            fan.id(),
                            type.rotor().inertia().orElseGet(() -> estimate(type)),
                            Range.POSITIVE);
        }
        table = declared.table();
        estimated = List.copyOf(types);
    }

    /** Those of one rig. */
    public static RotorInertia of(Rig rig) {
        return new RotorInertia(rig);
    }

    /**
     * A quarter of the fan's mass turning at a fifth of its diameter, to half and to half as much
     * again; from memory. Measure by how long a rotor coasts.
     */
    public static Quantity estimate(FanType type) {
        double radiusM = GYRATION_SHARE * type.tip().si();
        double kgm2 = TURNING_SHARE * type.mass().si() * radiusM * radiusM;
        return new Quantity(
                kgm2,
                new Dimension(2, 1, 0, 0, 0, 0),
                new Tolerance(
                        DOUBT * kgm2, DOUBT * kgm2, Tolerance.Form.BOUND, Tolerance.Scope.SHARED));
    }

    /** All numbers with their doubt. */
    public ParameterTable table() {
        return table;
    }

    /** Fan types whose inertia is an estimate. */
    public List<String> estimated() {
        return estimated;
    }

    /** Inertia of one rotor at a vector of {@link #table}, kg·m². */
    public double kgm2(double[] p, int fan) {
        return p[rows[fan]];
    }
}
