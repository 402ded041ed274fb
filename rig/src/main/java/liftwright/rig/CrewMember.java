package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * A person near the rig who does not wear it.
 *
 * @param name as declared
 * @param reaction from a surprise to the press of a switch, s; where it is empty, the usual one
 *     counts ({@link LimitName#WATCHER_REACTION})
 * @param distance from the rig, m
 * @param role what the person does; empty when not said
 */
public record CrewMember(
        String name,
        RigPath declaredAt,
        Optional<Quantity> reaction,
        Optional<Quantity> distance,
        String role) {}
