package liftwright.rig;

import static liftwright.rig.Cooling.doubted;

import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/**
 * How a motor warms: its winding on its case, the case in the fan's own stream. The magnets are as
 * warm as the case.
 *
 * @param windingHeatCapacity J/K
 * @param caseHeatCapacity of the rest of the motor, J/K
 * @param windingToCase W/K
 * @param caseToAir from the case to the stream of the fan at full speed, W/K
 * @param windingClassK temperature class of the winding, K
 * @param grade heat grade of the magnets
 * @param magnetFade loss of magnetism, share a kelvin, 1/K, ≥ 0
 */
public record Heating(
        Quantity windingHeatCapacity,
        Quantity caseHeatCapacity,
        Quantity windingToCase,
        Quantity caseToAir,
        Optional<Quantity> windingClassK,
        Magnets grade,
        Quantity magnetFade) {

    static final double WINDING_J_PER_KG_K = 60;
    static final double CASE_J_PER_KG_K = 215;
    static final double WINDING_W_PER_KG_K = 2;
    static final double AIR_W_PER_KG_K = 5.4;

    /** Neodymium, common practice, 1/K. */
    public static final double FADE_PER_K = 0.0011;

    static final double CAPACITY_DOUBT = 0.4;
    static final double CONDUCTANCE_DOUBT = 0.5;

    private static final Dimension J_PER_K = new Dimension(2, 1, -2, 0, -1, 0);
    private static final Dimension W_PER_K = new Dimension(2, 1, -3, 0, -1, 0);

    /**
     * What the motors of common fans have by the mass of the whole fan, kg, above 0; from memory.
     */
    public static Heating usual(double fanMassKg) {
        return new Heating(
                doubted(WINDING_J_PER_KG_K * fanMassKg, J_PER_K, CAPACITY_DOUBT),
                doubted(CASE_J_PER_KG_K * fanMassKg, J_PER_K, CAPACITY_DOUBT),
                doubted(WINDING_W_PER_KG_K * fanMassKg, W_PER_K, CONDUCTANCE_DOUBT),
                doubted(AIR_W_PER_KG_K * fanMassKg, W_PER_K, CONDUCTANCE_DOUBT),
                Optional.empty(),
                Magnets.UNKNOWN,
                Quantity.exact(FADE_PER_K, new Dimension(0, 0, 0, 0, -1, 0)));
    }
}
