package liftwright.rig;

import java.util.List;

/**
 * The whole wiring as a graph drawn with one line for out and back.
 *
 * @param chains every branch between two nodes
 * @param contactors all devices
 */
public record Wiring(List<Chain> chains, List<Contactor> contactors) {

    public Wiring {
        chains = List.copyOf(chains);
        contactors = List.copyOf(contactors);
    }

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
