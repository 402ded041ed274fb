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
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.review.remedy.Candidates;
import liftwright.rig.Rig;

/**
 * "How long does it fly, and what ends it?": time in the air on the packs as declared, throttle
 * rising as they sag, until the first limit of any cell, controller or of the throttle itself.
 */
public final class EnduranceQuestion {

    private EnduranceQuestion() {}

    /**
     * Answers it.
     *
     * @param rigDigest digest of what the rig was read from, passed through into the evidence
     * @param task hover, hops or a trace
     * @param settings draws, seed, threads; its first 256 draws already give a band
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped: a stopped answer carries no verdict
     */
    public static Optional<EnduranceAnswer> ask(
            Rig rig, String rigDigest, Task task, Settings settings, Work work) {
        Plant plant = Plant.assemble(rig);
        EnduranceJudge judge = new EnduranceJudge(task, settings);
        Optional<EnduranceJudgement> judged = judge.judge(plant, work);
        if (judged.isEmpty()) {
            return Optional.empty();
        }
        EnduranceJudgement judgement = judged.get();
        EnduranceRun run = EnduranceRun.of(plant, task);
        Evidence evidence =
                EnduranceEvidence.of(rig, rigDigest, plant, task, settings, judgement, run);
        Optional<Verdict.WouldTell> wouldTell =
                judgement.byNumbers() == Outcome.CANNOT_BE_TOLD
                        ? DoubtRanking.rank(
                                        plant,
                                        scale -> new EnduranceSample(plant, task, scale, settings),
                                        settings,
                                        work)
                                .stream()
                                .findFirst()
                                .map(LiftQuestion::wouldTell)
                        : Optional.empty();
        Verdict verdict =
                Checks.downgrade(
                        new Verdict(
                                judgement.outcome(),
                                sentence(rig, task, judgement, run),
                                wouldTell,
                                judgement.downgrades()),
                        evidence);
        List<Remedy> remedies =
                verdict.outcome() == Outcome.HOLDS || !settings.remedies()
                        ? List.of()
                        : new Remedies<>(rig, plant, judgement, judge, work)
                                .find(Candidates.forEndurance(rig));
        if (work.stopped()) {
            return Optional.empty();
        }
        List<Finding> findings = new ArrayList<>(EnduranceFindings.of(rig, task, judgement, run));
        if (verdict.outcome() != Outcome.HOLDS) {
            findings.add(0, shortOfTime(rig, task, verdict, judgement, remedies));
        }
        findings.sort(Comparator.comparing(Finding::severity));
        List<Section> sections = new ArrayList<>();
        sections.add(EnduranceTables.ends(rig, run, judgement));
        if (task instanceof Task.Hover) {
            sections.add(EnduranceTables.marks(run, judgement));
        }
        sections.add(EnduranceTables.sag(run));
        sections.add(EnduranceTables.packs(rig, run));
        return Optional.of(new EnduranceAnswer(verdict, findings, sections, evidence));
    }

    private static Sentence sentence(
            Rig rig, Task task, EnduranceJudgement judgement, EnduranceRun run) {
        Sentence start =
                Sentence.words(task.words() + ": ")
                        .then(Measure.TIME, judgement.nominal(), judgement.band())
                        .then(" in the air, asked for ")
                        .then(Measure.TIME, task.demandS(rig));
        return run.end()
                .map(
                        end ->
                                start.then("; " + CauseWords.first(end.cause()) + " ends it")
                                        .then(CauseWords.where(rig, end)))
                .orElseGet(() -> start.then("; no limit ends it before the task does"));
    }

    private static Finding shortOfTime(
            Rig rig,
            Task task,
            Verdict verdict,
            EnduranceJudgement judgement,
            List<Remedy> remedies) {
        boolean missed = verdict.outcome() == Outcome.DOES_NOT_HOLD;
        return new Finding(
                Severity.STOPS,
                missed ? "hover-short" : "hover-undecided",
                Optional.empty(),
                Optional.of("demands/hover"),
                missed
                        ? Sentence.words("time in the air is short of what is asked by ")
                                .then(Measure.TIME, task.demandS(rig) - judgement.nominal())
                        : Sentence.words(
                                "what was declared does not decide whether the time suffices"),
                Optional.of(Value.of("time-in-the-air", judgement.nominal(), judgement.band())),
                Optional.of(
                        new Finding.Limit(
                                Value.of("time-in-the-air-demand", task.demandS(rig)),
                                LiftEvidence.origin(rig, "demands/hover"))),
                missed
                        ? "see the ends for what comes first"
                        : String.join("; ", verdict.downgrades()),
                remedies);
    }
}
