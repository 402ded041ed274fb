package liftwright.trials.programme;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.Kill;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/** What a run of some fans rests on: all that a current of theirs can flow through. */
final class Feeding {

    private final Rig rig;
    private final Map<String, Pack> packs = new HashMap<>();
    private final Set<String> fans;
    private final Map<String, Set<Wiring.Chain>> at = new HashMap<>();

    Feeding(Rig rig) {
        this.rig = rig;
        rig.packs().forEach(pack -> packs.put(pack.id().text(), pack));
        fans = rig.fans().stream().map(fan -> fan.id().text()).collect(Collectors.toSet());
        for (Wiring.Chain chain : rig.wiring().chains()) {
            at.computeIfAbsent(chain.from(), _ -> new HashSet<>()).add(chain);
            at.computeIfAbsent(chain.to(), _ -> new HashSet<>()).add(chain);
        }
    }

    /**
     * Ids of the fans, their types and mounts, of the packs and chains on any way to them, of
     * cells, contactors and kills. Ways end at fans that stand still.
     */
    Set<String> parts(Collection<Fan> running) {
        Set<String> parts = new TreeSet<>();
        for (Fan fan : running) {
            parts.add(fan.id().text());
            parts.add(fan.type().name());
            parts.add(fan.mount().name());
        }
        for (String node : reached(running)) {
            Pack pack = packs.get(node);
            if (pack != null) {
                parts.add(node);
                parts.add(pack.cell().name());
            }
            at.getOrDefault(node, Set.of()).stream()
                    .filter(chain -> isOnWay(chain, parts))
                    .forEach(chain -> add(chain, parts));
        }
        rig.wiring().kills().stream().map(Kill::id).forEach(parts::add);
        return parts;
    }

    /** Names of the cells in the packs that feed these fans, sorted. */
    Set<String> cells(Collection<Fan> running) {
        Set<String> cells = new TreeSet<>();
        for (String node : reached(running)) {
            Pack pack = packs.get(node);
            if (pack != null) {
                cells.add(pack.cell().name());
            }
        }
        return cells;
    }

    private boolean isOnWay(Wiring.Chain chain, Set<String> running) {
        return List.of(chain.from(), chain.to()).stream()
                .allMatch(end -> !fans.contains(end) || running.contains(end));
    }

    private static void add(Wiring.Chain chain, Set<String> parts) {
        parts.add(chain.id().text());
        for (Element element : chain.elements()) {
            parts.add(element.id().text());
            if (element instanceof Element.Pole pole) {
                parts.add(pole.contactor().name());
            }
        }
    }

    private Set<String> reached(Collection<Fan> running) {
        Set<String> seen = new TreeSet<>();
        Deque<String> next = new ArrayDeque<>();
        running.forEach(fan -> next.add(fan.id().text()));
        seen.addAll(next);
        while (!next.isEmpty()) {
            for (Wiring.Chain chain : at.getOrDefault(next.remove(), Set.of())) {
                for (String end : List.of(chain.from(), chain.to())) {
                    if (!fans.contains(end) && seen.add(end)) {
                        next.add(end);
                    }
                }
            }
        }
        return seen;
    }
}
