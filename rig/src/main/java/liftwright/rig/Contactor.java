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
 * @param opensIn from the signal to open contacts, s
 * @param coil what feeds its coil: a pack, or a battery (see {@link Supplies}); nothing is assumed
 *     where it is empty
 * @param normallyOpen whether it opens when its coil loses its supply
 */
public record Contactor(
        String name,
        int poles,
        Quantity resistance,
        Optional<Quantity> rating,
        Optional<Quantity> breaks,
        Optional<Quantity> voltage,
        Quantity heatCapacity,
        Quantity opensIn,
        Optional<String> coil,
        boolean normallyOpen) {

    /** Heat capacity of a pole over its rating: half a gram of copper for each ampere, J/(K A). */
    public static final double J_PER_K_A = 0.2;

    /** Heat capacity of a pole whose rating is not declared: that of one of 100 A, J/K. */
    public static final double USUAL_J_PER_K = 20;

    /** Time in which a contactor opens where nothing is declared, s; from memory. */
    public static final double USUAL_OPENS_S = 0.03;

    /** A contactor that opens in the usual time and without its coil. */
    public Contactor(
            String name,
            int poles,
            Quantity resistance,
            Optional<Quantity> rating,
            Optional<Quantity> breaks,
            Optional<Quantity> voltage,
            Quantity heatCapacity) {
        this(
                name,
                poles,
                resistance,
                rating,
                breaks,
                voltage,
                heatCapacity,
                Quantity.exact(USUAL_OPENS_S, new Dimension(0, 0, 1, 0, 0, 0)),
                Optional.empty(),
                true);
    }

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
