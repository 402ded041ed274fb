package liftwright.trials.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which ways to stop a rig were shown to work today, on this build.
 *
 * @param declared every way that the rig declares
 * @param proved those that were shown today
 * @param doubts why what was logged proves nothing, in words
 */
public record KillsToday(Set<String> declared, Set<String> proved, List<String> doubts) {

    /** None was shown. */
    public static KillsToday unproved(Set<String> declared) {
        return new KillsToday(declared, Set.of(), List.of());
    }

    public KillsToday {
        declared = Set.copyOf(declared);
        proved = Set.copyOf(proved);
        doubts = List.copyOf(doubts);
    }

    /** What is left to show; none where every declared way is shown and there is one at least. */
    public List<String> open() {
        var open = new ArrayList<String>();
        if (declared.isEmpty()) {
            open.add("the rig declares no way to stop it");
        }
        for (String path : new TreeSet<>(declared)) {
            if (!proved.contains(path)) {
                open.add("“" + path + "” is not proved today");
            }
        }
        open.addAll(doubts);
        return List.copyOf(open);
    }
}
