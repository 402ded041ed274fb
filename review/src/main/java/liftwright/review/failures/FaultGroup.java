package liftwright.review.failures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.plant.fault.Effect;
import liftwright.plant.fault.Fault;
import liftwright.rig.Rates.PartKind;
import liftwright.rig.Rig;

/**
 * Faults that come to the same: parts in series, and all that nobody notices.
 *
 * @param rule by what its harm is reckoned
 * @param effect what each member takes from supply and fans
 * @param members at least one
 */
public record FaultGroup(FaultRule rule, Effect effect, List<Fault> members) {

    public FaultGroup {
        members = List.copyOf(members);
    }

    /** Groups in the order of their first members. */
    public static List<FaultGroup> of(Rig rig, List<Fault> faults) {
        record Alike(FaultRule rule, Effect effect, String part) {}
        Map<Alike, List<Fault>> groups = new LinkedHashMap<>();
        for (Fault fault : faults) {
            FaultRule rule = FaultRule.of(rig, fault);
            String own =
                    switch (rule) {
                        case MOVES, NOTHING -> "";
                        case CUTS, LOWERS, HELD_THEN_CUT, HELD, UNSTEERED, STARTS, DISAGREES ->
                                fault.part().text();
                    };
            Effect effect = rule == FaultRule.NOTHING ? Effect.NONE : fault.effect();
            groups.computeIfAbsent(new Alike(rule, effect, own), _ -> new ArrayList<>()).add(fault);
        }
        return groups.entrySet().stream()
                .map(one -> new FaultGroup(one.getKey().rule, one.getKey().effect, one.getValue()))
                .toList();
    }

    /** The first member, by whose name it goes. */
    public Fault first() {
        return members.getFirst();
    }

    /** The other members, as tables list them. */
    public List<String> others() {
        return members.stream()
                .skip(1)
                .map(fault -> fault.part().text() + " (" + fault.words() + ")")
                .toList();
    }

    /** "fan.3: the fan stops". */
    public String label() {
        return first().part().text() + ": " + first().words();
    }

    /** Kind of each member's part, for its rate. */
    public List<PartKind> partKinds() {
        return members.stream().map(FaultGroup::partKind).toList();
    }

    private static PartKind partKind(Fault fault) {
        return switch (fault.kind()) {
            case FAN -> PartKind.FAN;
            case CONTROLLER, LOST_SYNC, STUCK_FULL, STUCK_IDLE, FOLD_BACK, START_UP_SURGE ->
                    PartKind.CONTROLLER;
            case PACK, BROWN_OUT -> PartKind.PACK;
            case FUSE -> PartKind.FUSE;
            case RUN -> PartKind.RUN;
            case JOINT, SWAPPED_LEADS -> PartKind.JOINT;
            case POLE, CONTACTOR, WELDED_CONTACTOR -> PartKind.CONTACTOR;
            case SENSOR -> PartKind.SENSOR;
            case COMPUTER -> PartKind.COMPUTER;
            case LINK_LOST, LINK_FROZEN, FROZEN_THROTTLE -> PartKind.LINK;
            case GROUND_OPEN, WRONG_CHANNEL -> PartKind.SIGNAL;
        };
    }
}
