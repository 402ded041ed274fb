package liftwright.plant.hold;

import java.util.List;

/**
 * The fans that load something most, and by how much.
 *
 * @param load greatest over all subsets, in the unit of what was added up; 0 where none loads it
 * @param fans which, by number, rising; none where nothing loads it
 */
public record Subset(double load, List<Integer> fans) {

    /** Nothing loads it. */
    public static final Subset NONE = new Subset(0, List.of());

    public Subset {
        fans = List.copyOf(fans);
    }

    /** The one that loads more. */
    Subset worse(Subset other) {
        return other.load > load ? other : this;
    }
}
