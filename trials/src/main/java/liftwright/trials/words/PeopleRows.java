package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Value;
import liftwright.rig.CrewMember;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.trials.Run;

/** Who is there, where, with what in the hand, and what they call. */
final class PeopleRows {

    private PeopleRows() {}

    static List<Block> blocks(CardFacts facts) {
        Rig rig = facts.rig();
        boolean worn = facts.planned().run().map(Run::worn).orElse(false);
        List<List<Value>> rows = new ArrayList<>();
        if (worn) {
            rows.add(
                    row(
                            "wearer",
                            "in the rig; says stop at any doubt",
                            Optional.empty(),
                            kills(rig, Kill.WEARER)));
        }
        for (CrewMember member : rig.crew()) {
            rows.add(
                    row(
                            member.name(),
                            member.role().isEmpty() ? "not declared" : member.role(),
                            member.distance().map(far -> far.si()),
                            kills(rig, member.name())));
        }
        rows.add(
                row(
                        "who runs the test",
                        "calls every step, does nothing else",
                        Optional.empty(),
                        ""));
        rows.add(
                row(
                        "who reads",
                        "reads the channels aloud, writes them down",
                        Optional.empty(),
                        ""));
        rows.add(
                row(
                        "who stands by",
                        "extinguisher, blanket, cutter, telephone",
                        Optional.empty(),
                        ""));
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                CardText.rows(
                        facts.planned().id(),
                        "people",
                        "People and places; write the name of whoever does it today",
                        List.of(
                                "person",
                                "person-role",
                                "person-distance",
                                "holds-kill",
                                "name-today"),
                        rows));
        blocks.add(
                CardText.lines(
                        "Calls",
                        Style.PLAIN,
                        List.of(
                                "“Live?” – each of the crew answers “clear” by name, whoever holds a kill"
                                        + " last. One who does not answer is a no.",
                                "“Live” – the packs are connected.",
                                "“Step …” – the step's number and level, before it is ordered.",
                                "“Stop” – by anybody: whoever holds a kill presses, nobody asks why.",
                                "“Dead” – plugs are out, rotors stand; nobody walks up before it.")));
        return blocks;
    }

    private static List<Value> row(
            String who, String role, Optional<Double> distanceM, String kills) {
        return List.of(
                Value.words("person", who),
                Value.words("person-role", role),
                distanceM
                        .map(far -> Value.of("person-distance", far))
                        .orElse(Value.words("person-distance", "")),
                Value.words("holds-kill", kills),
                Value.words("name-today", ""));
    }

    /** Ids of the kills that somebody holds. */
    static String kills(Rig rig, String who) {
        return String.join(
                ", ",
                rig.wiring().kills().stream()
                        .filter(kill -> kill.heldBy().filter(who::equals).isPresent())
                        .map(Kill::id)
                        .toList());
    }
}
