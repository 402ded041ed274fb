package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Checks;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.review.remedy.Candidate;
import liftwright.rig.Rig;

/**
 * What every question makes of its judgement in the same way: a verdict, remedies where it does not
 * hold, findings in order.
 *
 * @param <J> what the question judges by
 */
record Inquiry<J extends Judgement>(
        Rig rig, Plant plant, Judging<J, ?> judging, J judgement, Work work) {

    /**
     * What the finding of a verdict that does not hold says.
     *
     * @param code start of its code
     * @param missed by how much the demand is missed
     * @param undecided what is not decided
     * @param see where the reader finds what takes it
     */
    record Shortfall(String code, Sentence missed, String undecided, String see) {}

    Verdict verdict(Sentence sentence, Evidence evidence) {
        return Checks.downgrade(
                new Verdict(judgement.outcome(), sentence, wouldTell(), judgement.downgrades()),
                evidence);
    }

    private Optional<Verdict.WouldTell> wouldTell() {
        if (judgement.byNumbers() != Outcome.CANNOT_BE_TOLD) {
            return Unproven.of(plant)
                    .filter(unproven -> judgement.downgrades().contains(unproven.reason()))
                    .map(Unproven::tells);
        }
        return DoubtRanking.rank(
                        plant,
                        scale -> judging.sample(plant, scale),
                        judging.settings(),
                        judging.dear(),
                        work)
                .stream()
                .findFirst()
                .map(
                        ranked ->
                                new Verdict.WouldTell(
                                        ranked.input().at().toString(),
                                        Sentence.words(
                                                        "measure "
                                                                + ranked.input().label()
                                                                + ": half its doubt would narrow the band to ")
                                                .then(Measure.PERCENT, ranked.bandShare())
                                                .then(" of its width"),
                                        ranked.bandShare()));
    }

    List<Remedy> remedies(Stage stage, Verdict verdict, List<Candidate> candidates) {
        return stage != Stage.WHOLE
                        || verdict.outcome() == Outcome.HOLDS
                        || !judging.settings().remedies()
                ? List.of()
                : new Remedies<>(rig, plant, judgement, judging, work).find(candidates);
    }

    /** Worst first; of those, the shortfall with its remedies. */
    List<Finding> findings(
            Verdict verdict, Shortfall shortfall, List<Remedy> remedies, List<Finding> others) {
        List<Finding> findings = new ArrayList<>(others);
        findings.addAll(CorrectionWords.findings(rig, plant.corrections()));
        switch (verdict.outcome()) {
            case HOLDS, NOT_JUDGED -> {}
            case DOES_NOT_HOLD, CANNOT_BE_TOLD ->
                    findings.add(0, finding(verdict, shortfall, remedies));
        }
        findings.sort(Comparator.comparing(Finding::severity));
        return findings;
    }

    private Finding finding(Verdict verdict, Shortfall shortfall, List<Remedy> remedies) {
        boolean missed = verdict.outcome() == Outcome.DOES_NOT_HOLD;
        return Finding.of(
                        Severity.STOPS,
                        shortfall.code + (missed ? "-short" : "-undecided"),
                        missed ? shortfall.missed : Sentence.words(shortfall.undecided),
                        missed ? shortfall.see : String.join("; ", verdict.downgrades()))
                .at(judging.demandAt())
                .against(
                        Value.of(
                                judging.field(),
                                judgement.nominal(),
                                Bands.shown(judgement.band())),
                        new Finding.Limit(
                                Value.of(judging.field() + "-demand", judging.demand(rig)),
                                judging.demandOrigin(rig)
                                        .or(
                                                () ->
                                                        judging.demandAt()
                                                                .map(
                                                                        at ->
                                                                                LiftEvidence.origin(
                                                                                        rig, at)))
                                        .orElse("the length of the task")))
                .mendedBy(remedies);
    }
}
