package liftwright.rig;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * The whole wiring as a graph drawn with one line for out and back.
 *
 * @param chains every branch between two nodes
 * @param contactors all devices
 * @param preCharge how capacitors are filled before a pack meets them; empty where they are not
 * @param kills every way to make the rig dead
 * @param grounds signal grounds
 * @param discharge how capacitors are emptied after it opened; empty where they are not
 */
public record Wiring(
        List<Chain> chains,
        List<Contactor> contactors,
        Optional<PreCharge> preCharge,
        List<Kill> kills,
        List<SignalGround> grounds,
        Optional<PreCharge> discharge) {

    public Wiring {
        chains = List.copyOf(chains);
        contactors = List.copyOf(contactors);
        kills = List.copyOf(kills);
        grounds = List.copyOf(grounds);
    }

    /** Wiring without kills and signal grounds. */
    public Wiring(List<Chain> chains, List<Contactor> contactors, Optional<PreCharge> preCharge) {
        this(chains, contactors, preCharge, List.of(), List.of(), Optional.empty());
    }

    /**
     * A resistor through which each pack fills the capacitors it feeds.
     *
     * @param resistance Ω
     * @param time how long it acts, s; until they are full where it is empty
     */
    public record PreCharge(Quantity resistance, Optional<Quantity> time) {}

    /**
     * Elements in series between two nodes. A node is a pack id, a fan id, or any other name (a
     * bus, a split).
     *
     * @param id lasting name
     * @param from node
     * @param to node
     * @param elements in order; may be empty (a direct connection)
     */
    public record Chain(PartId id, String from, String to, List<Element> elements) {
        public Chain {
            elements = List.copyOf(elements);
        }
    }
}
