package liftwright.review.kill;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.rig.Kill;
import liftwright.rig.Rig;

/**
 * Single things that leave thrust on. Where several kills need one, they are one kill; where a
 * single kill needs it, that kill is alone in what it stops.
 */
final class CommonFindings {

    private CommonFindings() {}

    static List<Finding> of(Rig rig, KillStructure structure) {
        List<BitSet> single =
                structure.cuts(1).stream().filter(cut -> cut.cardinality() == 1).toList();
        List<Finding> findings = new ArrayList<>();
        for (int number = 0; number < structure.needs().size(); number++) {
            Need need = structure.needs().get(number);
            List<String> kills = structure.served(number).stream().map(Kill::id).toList();
            boolean stops = single.contains(bit(number));
            if (kills.size() > 1) {
                findings.add(
                        stops
                                ? common(rig, structure, number, kills)
                                : Alarm.of(
                                        Severity.NOTES,
                                        "kills-share",
                                        need.name(),
                                        need.declaredAt(),
                                        Sentence.words(
                                                Alarm.list(kills)
                                                        + " share "
                                                        + need.words()
                                                        + "; another way remains when it fails"),
                                        need.failing()));
            } else if (stops && need.sort() == Need.Sort.CONTACTOR) {
                findings.add(welded(rig, structure, number, kills));
            }
        }
        return findings;
    }

    private static BitSet bit(int number) {
        BitSet set = new BitSet();
        set.set(number);
        return set;
    }

    private static Finding common(
            Rig rig, KillStructure structure, int number, List<String> kills) {
        Need need = structure.needs().get(number);
        return Alarm.of(
                Alarm.grave(rig),
                "kills-in-common",
                need.name(),
                need.declaredAt(),
                Sentence.words(
                        Alarm.list(kills)
                                + " count as one kill: each needs "
                                + need.words()
                                + "; when it fails, "
                                + Alarm.stayFed(structure.leftWithout(bit(number)))),
                need.failing() + "; two kills with nothing in common are common practice");
    }

    private static Finding welded(
            Rig rig, KillStructure structure, int number, List<String> kills) {
        Need need = structure.needs().get(number);
        return Alarm.of(
                Alarm.grave(rig),
                "contactor-alone",
                need.name(),
                need.declaredAt(),
                Sentence.words(
                        "when "
                                + need.words()
                                + " does not open at the press of "
                                + Alarm.list(kills)
                                + ", "
                                + Alarm.stayFed(structure.leftWithout(bit(number)))),
                need.failing() + "; a second contactor in series, on a kill of its own, opens too");
    }
}
