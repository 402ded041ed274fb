package liftwright.review.kill;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import liftwright.numerics.CutSets;
import liftwright.rig.Element;
import liftwright.rig.Rig;

/**
 * The wiring from packs to fans, of which only contactors matter: everything else in it conducts.
 */
final class FeedGraph {

    private final Map<String, List<Branch>> at = new HashMap<>();
    private final Set<String> packs;
    private final List<String> fans;

    /**
     * A chain of the wiring.
     *
     * @param contactors names of those that have a pole in it
     */
    record Branch(String from, String to, Set<String> contactors) {
        Branch {
            contactors = Set.copyOf(contactors);
        }

        String beyond(String node) {
            return node.equals(from) ? to : from;
        }
    }

    FeedGraph(List<Branch> branches, Set<String> packs, List<String> fans) {
        this.packs = Set.copyOf(packs);
        this.fans = List.copyOf(fans);
        for (Branch branch : branches) {
            at.computeIfAbsent(branch.from, _ -> new ArrayList<>()).add(branch);
            at.computeIfAbsent(branch.to, _ -> new ArrayList<>()).add(branch);
        }
    }

    static FeedGraph of(Rig rig) {
        return new FeedGraph(
                rig.wiring().chains().stream()
                        .map(
                                chain ->
                                        new Branch(
                                                chain.from(),
                                                chain.to(),
                                                chain.elements().stream()
                                                        .filter(Element.Pole.class::isInstance)
                                                        .map(Element.Pole.class::cast)
                                                        .map(pole -> pole.contactor().name())
                                                        .collect(Collectors.toSet())))
                        .toList(),
                rig.packs().stream().map(pack -> pack.id().text()).collect(Collectors.toSet()),
                rig.fans().stream().map(fan -> fan.id().text()).toList());
    }

    /** Fans that a pack still feeds while these contactors are open; in the order of the rig. */
    List<String> fed(Set<String> open) {
        Set<String> live = new HashSet<>(packs);
        Deque<String> next = new ArrayDeque<>(packs);
        while (!next.isEmpty()) {
            String node = next.remove();
            for (Branch branch : at.getOrDefault(node, List.of())) {
                if (branch.contactors.stream().noneMatch(open::contains)
                        && live.add(branch.beyond(node))) {
                    next.add(branch.beyond(node));
                }
            }
        }
        return fans.stream().filter(live::contains).toList();
    }

    /**
     * Every minimal set of contactors that, closed, let a pack feed one of some fans; a bit for the
     * place of each in a list. Contactors beside the list count as closed. The empty set alone
     * where one of these fans is fed past all of them.
     *
     * <p>Sets spread from the packs from node to node until no node learns of a lesser one: there
     * are few contactors and many ways through the wires between them.
     */
    List<BitSet> ways(List<String> contactors, Predicate<String> wanted) {
        Map<String, List<BitSet>> least = new LinkedHashMap<>();
        Deque<String> next = new ArrayDeque<>(packs);
        packs.forEach(pack -> least.put(pack, List.of(new BitSet())));
        while (!next.isEmpty()) {
            String node = next.remove();
            for (Branch branch : at.getOrDefault(node, List.of())) {
                String far = branch.beyond(node);
                List<BitSet> before = least.getOrDefault(far, List.of());
                List<BitSet> through =
                        least.getOrDefault(node, List.of()).stream()
                                .map(set -> with(set, branch, contactors))
                                .toList();
                List<BitSet> after = CutSets.either(List.of(before, through));
                if (!after.equals(before)) {
                    least.put(far, after);
                    next.add(far);
                }
            }
        }
        return CutSets.either(
                fans.stream()
                        .filter(wanted)
                        .map(fan -> least.getOrDefault(fan, List.of()))
                        .toList());
    }

    private static BitSet with(BitSet set, Branch branch, List<String> contactors) {
        BitSet longer = (BitSet) set.clone();
        for (String contactor : branch.contactors) {
            int place = contactors.indexOf(contactor);
            if (place >= 0) {
                longer.set(place);
            }
        }
        return longer;
    }
}
