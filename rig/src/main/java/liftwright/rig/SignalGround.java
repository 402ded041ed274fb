package liftwright.rig;

import liftwright.quantity.Quantity;

/**
 * A signal ground: a conductor beside the return wires, which carries power where a return is open
 * or poor.
 *
 * @param id as declared
 * @param from part where it starts
 * @param to part where it ends
 * @param resistance Ω
 */
public record SignalGround(
        String id, RigPath declaredAt, String from, String to, Quantity resistance) {}
