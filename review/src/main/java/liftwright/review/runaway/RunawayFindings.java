package liftwright.review.runaway;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.motion.RunawayPath;
import liftwright.quantity.Measure;
import liftwright.review.runaway.RunawayReview.Run;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** What is to be said of runaways. */
final class RunawayFindings {

    private RunawayFindings() {}

    static List<Finding> of(RunawayRuns runs) {
        Rig rig = runs.plant().rig();
        List<Finding> findings = new ArrayList<>();
        if (runs.slowest().isEmpty()) {
            findings.add(unstopped());
        }
        for (Run run : runs.runs()) {
            if (run.ends()) {
                climbs(rig, run).ifPresent(findings::add);
            }
            if (!run.kill().measured() && run.kill().acts() != KillPath.Acts.NOTHING) {
                findings.add(unmeasured(run.kill()));
            }
        }
        Set<String> estimated = new HashSet<>(runs.runaway().inertia().estimated());
        for (String type : estimated.stream().sorted().toList()) {
            findings.add(estimated(type));
        }
        if (runs.runs().stream().anyMatch(run -> run.path().beyondLaw())) {
            findings.add(beyond());
        }
        return findings;
    }

    private static Finding unstopped() {
        return Finding.of(
                        Severity.STOPS,
                        "nothing-stops-a-runaway",
                        Sentence.words(
                                "nothing that is declared stops every fan that has gone to full: the rig"
                                        + " climbs until its packs are empty"),
                        "a kill that reaches every feed, and someone who holds it, ends a climb")
                .at(RigPath.of("wiring", "kills").toString());
    }

    private static Optional<Finding> climbs(Rig rig, Run run) {
        RunawayPath path = run.path();
        if (path.impact().isEmpty()) {
            return Optional.empty();
        }
        double limitMps = rig.limits().si(LimitName.IMPACT_SPEED);
        double impactMps = Math.abs(path.impact().get().upMps());
        Sentence sentence =
                Sentence.words("with every fan at full, " + run.kill().label() + " acts after ")
                        .then(Measure.TIME, run.kill().totalS());
        sentence =
                path.atStop()
                        .map(
                                at ->
                                        Sentence.words(" at ")
                                                .then(Measure.LENGTH, at.heightM())
                                                .then(" and ")
                                                .then(Measure.SPEED, at.upMps())
                                                .then(" upward"))
                        .map(sentence::then)
                        .orElse(sentence);
        sentence =
                sentence.then("; it comes to ")
                        .then(Measure.LENGTH, path.apex().heightM(), run.apexM())
                        .then(" and strikes the ground at ")
                        .then(Measure.SPEED, impactMps, run.impactMps());
        return Optional.of(
                Finding.of(
                                impactMps > limitMps ? Severity.WARNS : Severity.NOTES,
                                "runaway",
                                sentence,
                                "a kill in the air turns a climb into a fall: lines to the floor stop both")
                        .against(
                                Value.of("runaway-impact", impactMps, run.impactMps()),
                                new Finding.Limit(
                                        Value.of("runaway-impact", limitMps),
                                        LimitName.IMPACT_SPEED.key()
                                                + ": "
                                                + rig.limits().origin(LimitName.IMPACT_SPEED))));
    }

    private static Finding unmeasured(KillPath kill) {
        return Finding.of(
                Severity.NOTES,
                "reaction-not-measured",
                Sentence.words(kill.label() + ": the reaction of ")
                        .then(Measure.TIME, kill.reactionS())
                        .then(
                                " is not measured: measure it unannounced, twenty times, and declare"
                                        + " the slow end"),
                "common practice (Green, Transportation Human Factors 2, 2000): people who are surprised"
                        + " take twice as long as people who wait for it");
    }

    private static Finding estimated(String type) {
        return Finding.of(
                        Severity.NOTES,
                        "inertia-estimated",
                        Sentence.words(
                                "how long the rotors of "
                                        + type
                                        + " turn on after a stop rests on an inertia estimated from mass and"
                                        + " diameter; declare “inertia”"),
                        "thrust that lasts after a kill adds height")
                .about(type)
                .at(RigPath.of("fan types", type, "rotor", "inertia").toString());
    }

    private static Finding beyond() {
        return Finding.of(
                Severity.NOTES,
                "beyond-inflow-law",
                Sentence.words(
                        "in the fall, rotors that still turn are outside the law of axial inflow;"
                                + " their thrust is taken as at its end"),
                "the law holds for a descent below a fifth of the jet's speed");
    }
}
