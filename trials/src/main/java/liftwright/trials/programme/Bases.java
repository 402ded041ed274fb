package liftwright.trials.programme;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Fan;
import liftwright.trials.Basis;
import liftwright.trials.Topic;

/** The inputs that passes rest on. What is asked too much only voids more than it has to. */
final class Bases {

    /** All that decides what fans, wires and packs show while they run. */
    private static final Set<Topic> RUNS =
            EnumSet.of(
                    Topic.FAN,
                    Topic.PACK,
                    Topic.WIRING,
                    Topic.HEAT,
                    Topic.CONTROL,
                    Topic.KILL,
                    Topic.SITE,
                    Topic.LIMIT,
                    // Where to stop hangs on how soon somebody presses.
                    Topic.REACTION,
                    Topic.SERIAL);

    private Bases() {}

    /** Everything. */
    static Basis whole() {
        return new Basis(EnumSet.allOf(Topic.class), Optional.empty());
    }

    static Basis of(Set<Topic> topics) {
        return new Basis(topics, Optional.empty());
    }

    static Basis of(Set<Topic> topics, Set<String> parts) {
        return new Basis(topics, Optional.of(parts));
    }

    /** A run of some fans and nothing that moves. */
    static Basis run(Feeding feeding, Collection<Fan> running, Topic... more) {
        return new Basis(with(more), Optional.of(feeding.parts(running)));
    }

    /** A run of whatever the rig has. */
    static Basis run(Topic... more) {
        return new Basis(with(more), Optional.empty());
    }

    private static Set<Topic> with(Topic... more) {
        Set<Topic> topics = EnumSet.copyOf(RUNS);
        topics.addAll(Set.of(more));
        return topics;
    }
}
