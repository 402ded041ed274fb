package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Quantity;

/** One two-terminal thing in a chain of the wiring. */
public sealed interface Element {

    PartId id();

    /** Where its values are written; one place may serve many generated elements. */
    RigPath declaredAt();

    /**
     * A wire out and back.
     *
     * @param gauge American wire gauge; 0 is 1/0, −1 is 2/0, −2 is 3/0, −3 is 4/0
     * @param conductors equal wires side by side each way, ≥ 1
     * @param length one way, m
     */
    record Run(PartId id, RigPath declaredAt, int gauge, int conductors, Quantity length)
            implements Element {}

    /**
     * Connector, lug or splice; both poles together.
     *
     * @param kind as declared
     * @param resistance out and back together, Ω
     * @param rating continuous current, A
     */
    record Joint(
            PartId id,
            RigPath declaredAt,
            String kind,
            Quantity resistance,
            Optional<Quantity> rating)
            implements Element {}

    /**
     * @param rating A
     * @param resistance Ω
     * @param breaks breaking capacity, A
     * @param voltage DC voltage rating, V
     */
    record Fuse(
            PartId id,
            RigPath declaredAt,
            Quantity rating,
            Quantity resistance,
            Optional<Quantity> breaks,
            Optional<Quantity> voltage)
            implements Element {}

    /** One pole of a contactor. */
    record Pole(PartId id, RigPath declaredAt, Contactor contactor) implements Element {}
}
