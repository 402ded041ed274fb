package liftwright.trials.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.Run;

/** Which roles a card needs, each taken by another person, and who takes which today. */
final class Crewing {

    private Crewing() {}

    /**
     * Roles of a card on which something runs: who holds each kill that the rig gives to one of its
     * crew, or one for a kill; who stands by for fire; who gives throttle, or wears the rig; who
     * minds the lines. Common practice.
     */
    static List<String> needed(Rig rig, Planned card) {
        if (!DayCard.turns(card)) {
            return List.of();
        }
        boolean worn = card.run().filter(Run::worn).isPresent();
        Set<String> roles = new java.util.LinkedHashSet<>();
        for (Kill kill : rig.wiring().kills()) {
            kill.heldBy().filter(who -> !who.equals(Kill.WEARER)).ifPresent(roles::add);
        }
        if (roles.isEmpty()) {
            roles.add(Day.KILL);
        }
        roles.add(Day.FIRE);
        if (worn || card.id().kind() == CardKind.TO_WEARER) {
            roles.add(Day.WEARER);
        }
        if (!worn) {
            roles.add(Day.THROTTLE);
        }
        if (card.run().filter(run -> run.held() == Run.Held.TETHER).isPresent()) {
            roles.add(Day.LINES);
        }
        return List.copyOf(roles);
    }

    /**
     * Gives each role a person of its own; empty where there are too few of them.
     *
     * @param people each with the roles that he or she can take
     */
    static Optional<Map<String, String>> assign(
            List<String> roles, Map<String, Set<String>> people) {
        Map<String, String> byPerson = new HashMap<>();
        for (String role : roles) {
            if (!place(role, people, byPerson, new HashSet<>())) {
                return Optional.empty();
            }
        }
        Map<String, String> byRole = new HashMap<>();
        byPerson.forEach((person, role) -> byRole.put(role, person));
        return Optional.of(byRole);
    }

    /** Roles that nobody who is there can take. */
    static List<String> missing(List<String> roles, Map<String, Set<String>> people) {
        List<String> missing = new ArrayList<>();
        for (String role : roles) {
            if (people.values().stream().noneMatch(own -> own.contains(role))) {
                missing.add(role);
            }
        }
        return missing;
    }

    /** An augmenting path of a bipartite matching. */
    private static boolean place(
            String role,
            Map<String, Set<String>> people,
            Map<String, String> byPerson,
            Set<String> tried) {
        for (Map.Entry<String, Set<String>> one : people.entrySet()) {
            String person = one.getKey();
            if (one.getValue().contains(role) && tried.add(person)) {
                String has = byPerson.get(person);
                if (has == null || place(has, people, byPerson, tried)) {
                    byPerson.put(person, role);
                    return true;
                }
            }
        }
        return false;
    }
}
