package liftwright.plant.fault;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Faults that come to the same: parts in series. One that takes nothing is a class of its own,
 * since its harm is another thing each time.
 *
 * @param effect what each of them does
 * @param members at least one
 */
public record CutClass(Effect effect, List<Fault> members) {

    public CutClass {
        members = List.copyOf(members);
    }

    /** Classes in the order of their first members. */
    public static List<CutClass> of(List<Fault> faults) {
        Map<Object, List<Fault>> members = new LinkedHashMap<>();
        for (Fault fault : faults) {
            Object alike = fault.effect().isNone() ? fault : fault.effect();
            members.computeIfAbsent(alike, _ -> new ArrayList<>()).add(fault);
        }
        return members.values().stream()
                .map(alike -> new CutClass(alike.getFirst().effect(), alike))
                .toList();
    }
}
