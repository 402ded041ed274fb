package liftwright.review.wiring;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/** The wiring as a graph of nodes and chains, to walk. */
final class Graph {

    private final List<Wiring.Chain> chains;
    private final Set<String> packs;
    private final Set<String> fans;
    private final Map<String, List<Arc>> arcs = new LinkedHashMap<>();

    Graph(List<Wiring.Chain> chains, Set<String> packs, Set<String> fans) {
        this.chains = List.copyOf(chains);
        this.packs = Set.copyOf(packs);
        this.fans = Set.copyOf(fans);
        for (int chain = 0; chain < chains.size(); chain++) {
            Wiring.Chain own = chains.get(chain);
            add(new Arc(chain, own.from(), own.to()));
            add(new Arc(chain, own.to(), own.from()));
        }
    }

    static Graph of(Rig rig) {
        return new Graph(
                rig.wiring().chains(),
                rig.packs().stream().map(pack -> pack.id().text()).collect(Collectors.toSet()),
                rig.fans().stream().map(fan -> fan.id().text()).collect(Collectors.toSet()));
    }

    /** A chain walked from one of its nodes to the other. */
    record Arc(int chain, String near, String far) {}

    private void add(Arc arc) {
        arcs.computeIfAbsent(arc.near, _ -> new ArrayList<>()).add(arc);
    }

    List<Arc> from(String node) {
        return arcs.getOrDefault(node, List.of());
    }

    boolean isPack(String node) {
        return packs.contains(node);
    }

    boolean isFan(String node) {
        return fans.contains(node);
    }

    boolean isFused(int chain) {
        return chains.get(chain).elements().stream().anyMatch(Element.Fuse.class::isInstance);
    }

    /**
     * The shortest way, in chains, from a node to one that is looked for, over chains that may be
     * used; empty where there is none.
     */
    Optional<List<Arc>> way(String start, Predicate<Arc> usable, Predicate<String> end) {
        Map<String, Arc> by = new HashMap<>();
        Set<String> seen = new HashSet<>(Set.of(start));
        Deque<String> next = new ArrayDeque<>(List.of(start));
        while (!next.isEmpty()) {
            String near = next.removeFirst();
            for (Arc arc : from(near)) {
                if (!usable.test(arc) || !seen.add(arc.far)) {
                    continue;
                }
                by.put(arc.far, arc);
                if (end.test(arc.far)) {
                    return Optional.of(back(by, start, arc.far));
                }
                next.addLast(arc.far);
            }
        }
        return Optional.empty();
    }

    private static List<Arc> back(Map<String, Arc> by, String start, String end) {
        List<Arc> way = new ArrayList<>();
        for (String at = end; !at.equals(start); ) {
            Arc arc = by.get(at);
            if (arc == null) {
                throw new IllegalStateException("no way back from " + at);
            }
            way.add(arc);
            at = arc.near;
        }
        return way.reversed();
    }

    /**
     * Every chain once, walked away from the packs, in the order in which a walk outward meets
     * them; chains that no pack reaches come last, as they are written.
     */
    List<Arc> outward() {
        List<Arc> order = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        Set<String> seen = new HashSet<>();
        Deque<String> next = new ArrayDeque<>();
        for (Wiring.Chain chain : chains) {
            for (String node : List.of(chain.from(), chain.to())) {
                if (isPack(node) && seen.add(node)) {
                    next.addLast(node);
                }
            }
        }
        while (!next.isEmpty()) {
            String near = next.removeFirst();
            for (Arc arc : from(near)) {
                if (taken.add(arc.chain)) {
                    order.add(arc);
                }
                if (seen.add(arc.far)) {
                    next.addLast(arc.far);
                }
            }
        }
        for (int chain = 0; chain < chains.size(); chain++) {
            if (taken.add(chain)) {
                order.add(new Arc(chain, chains.get(chain).from(), chains.get(chain).to()));
            }
        }
        return order;
    }

    Wiring.Chain chain(int number) {
        return chains.get(number);
    }

    /** The elements of a chain in the order of a walk. */
    List<Element> along(Arc arc) {
        List<Element> elements = chains.get(arc.chain).elements();
        return chains.get(arc.chain).from().equals(arc.near) ? elements : elements.reversed();
    }
}
