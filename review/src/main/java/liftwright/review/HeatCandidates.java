package liftwright.review;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import liftwright.plant.Cause;
import liftwright.plant.heat.HeatPart;
import liftwright.review.remedy.Candidate;
import liftwright.review.remedy.Candidates;
import liftwright.review.remedy.Hot;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/** Where the remedies of heat begin: at what reaches a limit before the flight is over. */
final class HeatCandidates {

    private HeatCandidates() {}

    static List<Candidate> of(
            Rig rig, HeatParts parts, HeatFlight flight, HeatRun run, HeatJudgement judgement) {
        return Candidates.forHeat(rig, hot(rig, parts, flight, run, judgement));
    }

    private static Hot hot(
            Rig rig, HeatParts parts, HeatFlight flight, HeatRun run, HeatJudgement judgement) {
        Set<RigPath> wires = new HashSet<>();
        Set<RigPath> joints = new HashSet<>();
        Set<RigPath> fuses = new HashSet<>();
        boolean fans = false;
        boolean cells = run.first().map(end -> isOfPacks(end.cause())).orElse(false);
        for (HeatParts.Group group : parts.groups()) {
            boolean opens =
                    group.kind() == HeatPart.Kind.FUSE
                            && group.parts().stream().anyMatch(run.asked()::opened);
            if (opens) {
                fuses.add(group.declaredAt());
            }
            if (!isTooHot(group, flight, run, judgement)) {
                continue;
            }
            switch (group.kind()) {
                case WIRE -> wires.add(group.declaredAt());
                case JOINT -> {
                    joints.add(group.declaredAt());
                    wires.addAll(beside(rig, group.declaredAt()));
                }
                case FUSE, POLE -> wires.addAll(beside(rig, group.declaredAt()));
                case SWITCHES, CONTROLLER, WINDING, MAGNETS -> fans = true;
                case CELLS -> cells = true;
            }
        }
        return new Hot(wires, joints, fuses, fans, cells);
    }

    private static boolean isOfPacks(Cause cause) {
        return switch (cause) {
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, CUT_OFF, FULL_THROTTLE, EMPTY -> true;
            case OVERHEATED, FUSE_OPENED -> false;
        };
    }

    /** At its limit in what is asked, at the declared values or in one draw of forty. */
    private static boolean isTooHot(
            HeatParts.Group group, HeatFlight flight, HeatRun run, HeatJudgement judgement) {
        if (group.parts().stream().anyMatch(part -> run.asked().heatReachedS(part).isPresent())) {
            return true;
        }
        int hits = 0;
        double[] reachedS = HeatWorst.reachedS(group, judgement);
        for (double atS : reachedS) {
            hits += flight.airS(atS) < flight.askedS() ? 1 : 0;
        }
        return 40 * hits > reachedS.length;
    }

    /** Runs next to an element: a thin wire heats what it is soldered to. */
    private static Set<RigPath> beside(Rig rig, RigPath place) {
        Set<RigPath> runs = new HashSet<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            List<Element> all = chain.elements();
            for (int k = 0; k < all.size(); k++) {
                if (all.get(k).declaredAt().equals(place)) {
                    for (int other : new int[] {k - 1, k + 1}) {
                        if (other >= 0
                                && other < all.size()
                                && all.get(other) instanceof Element.Run run) {
                            runs.add(run.declaredAt());
                        }
                    }
                }
            }
        }
        return runs;
    }
}
