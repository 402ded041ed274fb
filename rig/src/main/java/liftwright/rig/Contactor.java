package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/**
 * One device that opens circuits.
 *
 * @param name as declared
 * @param poles how many circuits one device opens
 * @param resistance of one closed pole, Ω
 * @param rating continuous current of one pole, A
 * @param breaks current it can break, A
 * @param voltage DC voltage it can break, V
 * @param heatCapacity of the copper of one pole, J/K
 */
public record Contactor(
        String name,
        int poles,
        Quantity resistance,
        Optional<Quantity> rating,
        Optional<Quantity> breaks,
        Optional<Quantity> voltage,
        Quantity heatCapacity) {

    /** Heat capacity of a pole over its rating: half a gram of copper for each ampere, J/(K A). */
    public static final double J_PER_K_A = 0.2;

    /** Heat capacity of a pole whose rating is not declared: that of one of 100 A, J/K. */
    public static final double USUAL_J_PER_K = 20;

    /** A contactor with the usual copper for its rating. */
    public Contactor(
            String name,
            int poles,
            Quantity resistance,
            Optional<Quantity> rating,
            Optional<Quantity> breaks,
            Optional<Quantity> voltage) {
        this(
                name,
                poles,
                resistance,
                rating,
                breaks,
                voltage,
                Cooling.doubted(
                        rating.filter(r -> r.si() > 0)
                                .map(r -> J_PER_K_A * r.si())
                                .orElse(USUAL_J_PER_K),
                        new Dimension(2, 1, -2, 0, -1, 0),
                        0.5));
    }
}
