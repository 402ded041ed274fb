package liftwright.review.kill;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Kills that are missing, and kills that leave something on although all of them works. */
final class ChainFindings {

    private ChainFindings() {}

    static List<Finding> of(Rig rig, KillStructure structure) {
        List<Finding> findings = new ArrayList<>();
        if (structure.chains().isEmpty()) {
            findings.add(
                    Alarm.of(
                            Alarm.grave(rig),
                            "no-kill",
                            "wiring",
                            RigPath.of("wiring"),
                            Sentence.words(
                                    "no way to make the rig dead is declared: thrust ends when the"
                                            + " packs are empty"),
                            "write each kill switch under “kills”, and what it opens"));
            return findings;
        }
        if (structure.chains().size() == 1) {
            Kill only = structure.chains().getFirst().kill();
            findings.add(
                    Alarm.of(
                            Severity.WARNS,
                            "kill-alone",
                            only.id(),
                            only.declaredAt(),
                            Sentence.words(
                                    only.id()
                                            + " is the only kill: whatever stops it leaves thrust"
                                            + " on"),
                            "two kills with nothing in common are common practice"));
        }
        if (!structure.beyond().isEmpty()) {
            findings.add(
                    Alarm.of(
                            Alarm.grave(rig),
                            "no-kill-reaches",
                            structure.beyond().getFirst(),
                            RigPath.of("wiring", "kills"),
                            Sentence.words(
                                    "with every kill pressed " + Alarm.stayFed(structure.beyond())),
                            "no contactor that a kill opens stands between them and every pack"));
        }
        for (KillStructure.Chain chain : structure.chains()) {
            findings.addAll(of(rig, structure, chain));
        }
        return findings;
    }

    private static List<Finding> of(Rig rig, KillStructure structure, KillStructure.Chain chain) {
        Kill kill = chain.kill();
        List<String> left = structure.leftBy(chain);
        if (kill.order() == Kill.Order.OPEN_AT_ONCE && kill.opens().isEmpty()) {
            return List.of(
                    Alarm.of(
                            Alarm.grave(rig),
                            "kill-opens-nothing",
                            kill.id(),
                            kill.declaredAt(),
                            Sentence.words(kill.id() + " opens no contactor and commands nothing"),
                            "name what it opens under “opens”, or what it commands under"
                                    + " “order”"));
        }
        if (left.isEmpty() || left.equals(structure.beyond())) {
            return List.of();
        }
        return List.of(
                Alarm.of(
                        Severity.WARNS,
                        "kill-leaves-fans-fed",
                        kill.id(),
                        kill.declaredAt().child("opens"),
                        Sentence.words("after " + kill.id() + " alone " + Alarm.stayFed(left)),
                        "a kill that leaves some fans on turns the rig over"));
    }
}
