package liftwright.plant.motion;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the body meets besides air and ground.
 *
 * @param springs lines and mats
 * @param ceilingM height of the soles at which the top of wearer or rig strikes a beam or a
 *     ceiling, m; empty in the open. Nothing springs back from it.
 */
public record Surroundings(List<Spring> springs, OptionalDouble ceilingM) {

    /** Nothing but air and ground. */
    public static final Surroundings OPEN = new Surroundings(List.of(), OptionalDouble.empty());

    public Surroundings {
        springs = List.copyOf(springs);
    }
}
