package liftwright.trials;

import java.util.Optional;
import java.util.Set;

/**
 * The inputs of a rig that a card's pass rests on.
 *
 * @param topics what they are about
 * @param parts ids of the fans, packs, chains, types and mounts meant; empty where all are. Inputs
 *     that belong to no one part count in any case
 */
public record Basis(Set<Topic> topics, Optional<Set<String>> parts) {

    public Basis {
        topics = Set.copyOf(topics);
        parts = parts.map(Set::copyOf);
    }
}
