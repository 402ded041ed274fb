package liftwright.rig.correction;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What tests found of a rig.
 *
 * @param rig digest of the rig file and its tables that the fit started from; empty text in none
 * @param revision of that rig
 * @param groups each found together
 */
public record Corrections(String rig, int revision, List<Correction> groups) {

    /** Most groups. */
    public static final int MOST = 500;

    /** Nothing was found. */
    public static final Corrections NONE = new Corrections("", 0, List.of());

    public Corrections {
        groups = List.copyOf(groups);
        Set<String> names = new HashSet<>();
        Set<String> parameters = new HashSet<>();
        for (Correction group : groups) {
            if (!names.add(group.name())) {
                throw new IllegalArgumentException("two groups are called " + group.name());
            }
            for (Found found : group.found()) {
                if (!parameters.add(found.parameter())) {
                    throw new IllegalArgumentException("two groups find " + found.parameter());
                }
            }
        }
    }

    public boolean isEmpty() {
        return groups.isEmpty();
    }
}
