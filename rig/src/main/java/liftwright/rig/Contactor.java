package liftwright.rig;

import java.util.Optional;
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
 */
public record Contactor(
        String name,
        int poles,
        Quantity resistance,
        Optional<Quantity> rating,
        Optional<Quantity> breaks,
        Optional<Quantity> voltage) {}
