package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;

/** Which names are taken, and what they name. */
final class Parts {

    private final Ledger ledger;
    private final Set<String> taken = new HashSet<>();
    private final Set<String> broken = new HashSet<>();
    private final Map<String, Fan> fans = new LinkedHashMap<>();
    private final Map<String, Pack> packs = new LinkedHashMap<>();
    private final Map<String, List<String>> groups = new HashMap<>();

    Parts(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Takes a name for a part or a group of parts; reported when it is taken already. */
    boolean take(String name, Spot spot) {
        boolean free = taken.add(name);
        if (!free) {
            ledger.problems()
                    .add(
                            Code.DUPLICATE_ID,
                            spot,
                            Problems.quote(name),
                            "a name that no other part or group has",
                            "Ids name parts for ever: give each its own.");
        }
        return free;
    }

    /** Remembers that a group could not be made, so that what names it gives no second problem. */
    void broken(String group) {
        broken.add(group);
    }

    void addFans(String group, List<Fan> made) {
        made.forEach(fan -> fans.put(fan.id().text(), fan));
        groups.put(group, made.stream().map(fan -> fan.id().text()).toList());
    }

    void addPacks(String group, List<Pack> made) {
        made.forEach(pack -> packs.put(pack.id().text(), pack));
        groups.put(group, made.stream().map(pack -> pack.id().text()).toList());
    }

    List<Fan> fans() {
        return List.copyOf(fans.values());
    }

    List<Pack> packs() {
        return List.copyOf(packs.values());
    }

    boolean isFan(String id) {
        return fans.containsKey(id);
    }

    boolean isPack(String id) {
        return packs.containsKey(id);
    }

    /** Whether a part or a group has that name. */
    boolean isTaken(String name) {
        return taken.contains(name);
    }

    /** Whether the name belongs to a group that could not be made. */
    boolean isBroken(String name) {
        int dot = name.indexOf('.');
        return broken.contains(dot < 0 ? name : name.substring(0, dot));
    }

    /** The fans that a name means: one, or all of a group. Reported and empty when none. */
    List<PartId> fansOf(Stated<String> name) {
        return meant(name, fans.keySet(), "the id of a fan or of a fan group");
    }

    /** The packs that a name means: one, or all of a group. Reported and empty when none. */
    List<PartId> packsOf(Stated<String> name) {
        return meant(name, packs.keySet(), "the id of a pack or of a pack group");
    }

    /** The packs that a name means, where more than a pack could stand. */
    List<PartId> packsOf(Stated<String> name, String expected) {
        return meant(name, packs.keySet(), expected);
    }

    /** Reports a part that does not exist; true when there is one, or when its group is broken. */
    boolean exists(Stated<String> name) {
        String text = name.value();
        boolean known = taken.contains(text) || isFan(text) || isPack(text) || isBroken(text);
        if (!known) {
            var all = new HashSet<>(fans.keySet());
            all.addAll(packs.keySet());
            all.addAll(taken);
            noSuch(name.spot(), text, all, "the id of a part");
        }
        return known;
    }

    private List<PartId> meant(Stated<String> name, Set<String> ids, String expected) {
        String text = name.value();
        if (ids.contains(text)) {
            return List.of(new PartId(text));
        }
        List<String> group = groups.getOrDefault(text, List.of());
        if (!group.isEmpty() && ids.contains(group.getFirst())) {
            return group.stream().map(PartId::new).toList();
        }
        if (!isBroken(text)) {
            noSuch(name.spot(), text, ids, expected);
        }
        return List.of();
    }

    /** The parts of a group; none when it is no group of fans or packs. */
    List<String> membersOf(String group) {
        return groups.getOrDefault(group, List.of());
    }

    /** Reports a node that is no pack and no fan, though it is written like one. */
    void noSuchNode(Spot spot, String text) {
        var all = new HashSet<>(fans.keySet());
        all.addAll(packs.keySet());
        noSuch(spot, text, all, "a pack, a fan, or a name of your own without a dot");
    }

    /** Reports a pack that is not of the group that a feed comes from. */
    void noSuchPackOf(Spot spot, String text, String from) {
        noSuch(spot, text, packs.keySet(), "a pack of " + Problems.quote(from));
    }

    /** Reports a name that names nothing. */
    private void noSuch(Spot spot, String text, Set<String> ids, String expected) {
        var candidates = new ArrayList<>(ids);
        for (String group : groups.keySet()) {
            if (groups.getOrDefault(group, List.of()).stream().anyMatch(ids::contains)) {
                candidates.add(group);
            }
        }
        String advice = advice(text, candidates);
        ledger.problems().add(Code.NO_SUCH_PART, spot, Problems.quote(text), expected, advice);
    }

    private String advice(String text, List<String> candidates) {
        int dot = text.indexOf('.');
        if (dot > 0) {
            List<String> group = groups.get(text.substring(0, dot));
            if (group != null && !group.isEmpty()) {
                return "Those of that group are "
                        + group.getFirst()
                        + " to "
                        + group.getLast()
                        + ".";
            }
        }
        return Nearest.advice(text, candidates);
    }
}
