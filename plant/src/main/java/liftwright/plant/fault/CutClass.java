package liftwright.plant.fault;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Faults that come to the same: parts in series.
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
        Map<Effect, List<Fault>> members = new LinkedHashMap<>();
        for (Fault fault : faults) {
            members.computeIfAbsent(fault.effect(), _ -> new ArrayList<>()).add(fault);
        }
        return members.entrySet().stream()
                .map(one -> new CutClass(one.getKey(), one.getValue()))
                .toList();
    }
}
