package liftwright.review.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.CrewMember;
import liftwright.rig.Kill;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/** Where the crew stand, against what reaches them. */
final class CrewPlaces {

    private CrewPlaces() {}

    /**
     * What reaches each member whose distance is declared; empty where none is.
     *
     * @param reachM the farthest that a piece flies, m
     */
    static Optional<Section> section(Rig rig, double hazardM, double reachM, JetWinds jets) {
        List<List<Value>> rows = new ArrayList<>();
        for (CrewMember member : rig.crew()) {
            if (member.distance().isPresent()) {
                double distance = member.distance().get().si();
                rows.add(
                        List.of(
                                Value.words("person", member.name()),
                                Value.of("person-distance", distance),
                                Value.words("piece-arrives", arrives(distance, hazardM, reachM)),
                                jets.windAt(distance)
                                        .orElse(
                                                new Value(
                                                        "wall-jet-speed",
                                                        new Value.Figure.NotComputed(
                                                                "too near for the law, or no jet")))));
            }
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Section.Table(
                                "people-crew",
                                "What reaches the crew where they stand",
                                List.of(
                                        "person",
                                        "person-distance",
                                        "piece-arrives",
                                        "wall-jet-speed"),
                                rows));
    }

    private static String arrives(double distanceM, double hazardM, double reachM) {
        return distanceM < hazardM
                ? "pieces with the hazardous energy"
                : distanceM < reachM ? "pieces with less than it" : "no piece that is told";
    }

    /**
     * One finding a member who stands within reach, or whose distance is not declared.
     *
     * @param hazardM nearer than this a compact piece still has the hazardous energy, m
     * @param keepOutM from here on others may stand, m
     */
    static List<Finding> findings(Rig rig, double hazardM, double keepOutM) {
        List<Finding> findings = new ArrayList<>();
        for (CrewMember member : rig.crew()) {
            Optional<Double> distance = member.distance().map(Quantity::si);
            if (distance.isEmpty()) {
                findings.add(undeclared(member));
            } else if (distance.get() < keepOutM) {
                findings.add(near(rig, member, distance.get(), hazardM, keepOutM));
            }
        }
        return findings;
    }

    /**
     * Crew hold kills, and all of them within the keep-out distance: whoever is hit cannot press.
     * Empty where one of them stands outside, or where one may, since nobody said.
     */
    static Optional<Finding> kills(Rig rig, double keepOutM) {
        Set<String> holders = new TreeSet<>();
        for (Kill kill : rig.wiring().kills()) {
            kill.heldBy().filter(who -> !who.equals(Kill.WEARER)).ifPresent(holders::add);
        }
        List<CrewMember> holding =
                rig.crew().stream().filter(member -> holders.contains(member.name())).toList();
        double farthest = 0;
        for (CrewMember member : holding) {
            if (member.distance().isEmpty()) {
                return Optional.empty();
            }
            farthest = Math.max(farthest, member.distance().get().si());
        }
        if (holding.isEmpty() || farthest >= keepOutM) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.of(
                                Severity.WARNS,
                                "kill-within-reach",
                                Sentence.words("no crew member with a kill stands outside ")
                                        .then(Measure.LENGTH, keepOutM)
                                        .then("; the farthest stands ")
                                        .then(Measure.LENGTH, farthest)
                                        .then(" away"),
                                "whoever is hit by what flies cannot press; or behind a barrier that holds it")
                        .at(holding.getFirst().declaredAt().toString())
                        .against(
                                Value.of("person-distance", farthest),
                                new Finding.Limit(
                                        Value.of("person-distance", keepOutM),
                                        "common practice: a remote kill outside the keep-out")));
    }

    private static Finding undeclared(CrewMember member) {
        return Finding.of(
                        Severity.NOTES,
                        "crew-distance-not-told",
                        Sentence.words(
                                "where "
                                        + member.name()
                                        + " stands is not declared, so what reaches there is not told:"
                                        + " declare “distance”"),
                        "fragments, sound and wind all fall with distance")
                .about(member.name())
                .at(member.declaredAt().toString());
    }

    private static Finding near(
            Rig rig, CrewMember member, double distance, double hazardM, double keepOutM) {
        boolean hit = distance < hazardM;
        return Finding.of(
                        hit ? Severity.WARNS : Severity.NOTES,
                        "crew-too-near",
                        Sentence.words(member.name() + " stands ")
                                .then(Measure.LENGTH, distance)
                                .then(" away; others keep ")
                                .then(Measure.LENGTH, keepOutM)
                                .then(
                                        hit
                                                ? ", and a piece can arrive there with more than "
                                                : ", and no piece arrives there with more than ")
                                .then(
                                        Measure.IMPACT_ENERGY,
                                        rig.limits().si(LimitName.FRAGMENT_ENERGY)),
                        "the crew have to be near: behind a barrier that holds a piece, never in the plane of"
                                + " a fan, with a kill in the hand of one who is outside")
                .about(member.name())
                .at(member.declaredAt().toString())
                .against(
                        Value.of("person-distance", distance),
                        new Finding.Limit(
                                Value.of("person-distance", keepOutM),
                                "the larger of "
                                        + LimitName.KEEP_OUT.key()
                                        + " ("
                                        + rig.limits().origin(LimitName.KEEP_OUT)
                                        + ") and the computed distance"));
    }
}
