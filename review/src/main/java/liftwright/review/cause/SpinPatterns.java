package liftwright.review.cause;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.rig.Fan;
import liftwright.rig.Rig;

/** Ways in which fans may spin otherwise than declared. */
final class SpinPatterns {

    /**
     * @param reversed fans that spin the other way
     * @param share of this pattern among all
     */
    record Pattern(String name, Set<Integer> reversed, double share) {}

    private final Rig rig;
    private final Map<String, Set<Integer>> reversed = new LinkedHashMap<>();

    private SpinPatterns(Rig rig) {
        this.rig = rig;
    }

    /**
     * Single fans, then groups of fans, then all: as a whole reversed, or all alike. Half the share
     * is that of single fans.
     */
    static List<Pattern> of(Rig rig) {
        SpinPatterns patterns = new SpinPatterns(rig);
        Map<String, Set<Integer>> groups = new LinkedHashMap<>();
        Set<Integer> every = new LinkedHashSet<>();
        for (int k = 0; k < rig.fans().size(); k++) {
            String id = rig.fans().get(k).id().text();
            int dot = id.lastIndexOf('.');
            groups.computeIfAbsent(dot < 0 ? id : id.substring(0, dot), _ -> new LinkedHashSet<>())
                    .add(k);
            patterns.reversed.put(id + " reversed", Set.of(k));
            every.add(k);
        }
        int singles = patterns.reversed.size();
        groups.forEach(patterns::add);
        patterns.add("all fans", every);
        int others = patterns.reversed.size() - singles;
        double half = others == 0 ? 1 : 0.5;
        List<Pattern> all = new ArrayList<>();
        patterns.reversed.forEach(
                (name, fans) -> {
                    int of = all.size() < singles ? singles : others;
                    all.add(new Pattern(name, Set.copyOf(fans), half / of));
                });
        return all;
    }

    private void add(String name, Set<Integer> fans) {
        put(name + " reversed", fans);
        for (Fan.Spin alike : Fan.Spin.values()) {
            Set<Integer> other = new LinkedHashSet<>();
            for (int k : fans) {
                if (rig.fans().get(k).spin() != alike) {
                    other.add(k);
                }
            }
            String sense =
                    switch (alike) {
                        case LEFT_HAND -> " all left-hand";
                        case RIGHT_HAND -> " all right-hand";
                    };
            put(name + sense, other);
        }
    }

    private void put(String name, Set<Integer> fans) {
        if (!fans.isEmpty() && !reversed.containsValue(fans)) {
            reversed.put(name, fans);
        }
    }
}
