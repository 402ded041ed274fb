package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
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
public final class EnduranceQuestion implements Staged {

    private final Rig rig;
    private final String rigDigest;
    private final Task task;
    private final Settings settings;
    private final Plant plant;
    private final EnduranceJudge judge;
    private final EnduranceSample sample;

    private EnduranceQuestion(Rig rig, String rigDigest, Task task, Settings settings) {
        this(rig, rigDigest, task, settings, Plant.assemble(rig));
    }

    private EnduranceQuestion(
            Rig rig, String rigDigest, Task task, Settings settings, Plant plant) {
        this.rig = rig;
        this.rigDigest = rigDigest;
        this.task = task;
        this.settings = settings;
        this.plant = plant;
        judge = new EnduranceJudge(task, settings);
        sample = judge.sample(plant, Sample.asDeclared(plant));
    }

    /**
     * To be answered in stages.
     *
     * @param rigDigest digest of what the rig was read from, passed through into the evidence
     * @param task hover, hops or a trace
     */
    public static Staged staged(Rig rig, String rigDigest, Task task, Settings settings) {
        return new EnduranceQuestion(rig, rigDigest, task, settings);
    }

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
        return new EnduranceQuestion(rig, rigDigest, task, settings).answer(Stage.WHOLE, work);
    }

    @Override
    public Optional<Judged> judged(Work work) {
        return judge.told(sample, work);
    }

    @Override
    public Optional<Sensitivities> sensitivities(Work work) {
        return Sensitivities.of(plant, judge, sample, work);
    }

    @Override
    public Optional<? extends Answer> drawn(int draw) {
        return Drawn.answer(
                plant,
                settings.seed(),
                draw,
                one -> new EnduranceQuestion(rig, rigDigest, task, settings, one));
    }

    @Override
    public Optional<EnduranceAnswer> answer(Stage stage, Work work) {
        Optional<EnduranceJudgement> judged = judge.judge(sample, stage, work);
        if (judged.isEmpty()) {
            return Optional.empty();
        }
        EnduranceJudgement judgement = judged.get();
        EnduranceRun run = EnduranceRun.of(plant, task);
        Evidence evidence =
                EnduranceEvidence.of(rig, rigDigest, plant, task, settings, judgement, run);
        var inquiry = new Inquiry<>(rig, plant, judge, judgement, work);
        Verdict verdict = inquiry.verdict(sentence(rig, task, judgement, run), evidence);
        List<Remedy> remedies = inquiry.remedies(stage, verdict, Candidates.forEndurance(rig));
        if (work.stopped()) {
            return Optional.empty();
        }
        List<Finding> findings =
                inquiry.findings(
                        verdict,
                        shortfall(task.demandS(rig) - judgement.nominal()),
                        remedies,
                        EnduranceFindings.of(plant, task, judgement, run));
        List<Section> sections = new ArrayList<>();
        sections.add(EnduranceTables.ends(rig, run, judgement));
        if (task instanceof Task.Hover) {
            sections.add(EnduranceTables.marks(run, judgement));
        }
        sections.add(EnduranceTables.sag(run));
        sections.add(EnduranceTables.packs(rig, run));
        sections.addAll(EndurancePlots.of(rig, run));
        return Optional.of(new EnduranceAnswer(verdict, findings, sections, evidence));
    }

    private static Sentence sentence(
            Rig rig, Task task, EnduranceJudgement judgement, EnduranceRun run) {
        Sentence start =
                Sentence.start()
                        .then(Measure.TIME, judgement.nominal(), Bands.shown(judgement.band()))
                        .then(" of " + task.words() + ", asked for ")
                        .then(Measure.TIME, task.demandS(rig));
        return run.end()
                .map(
                        end ->
                                start.then("; " + CauseWords.first(end.cause()) + " ends it")
                                        .then(CauseWords.where(rig, end)))
                .orElseGet(() -> start.then("; no limit ends it before the task does"));
    }

    private static Inquiry.Shortfall shortfall(double shortS) {
        return new Inquiry.Shortfall(
                "hover",
                Sentence.words("time in the air is short of what is asked by ")
                        .then(Measure.TIME, shortS),
                "what was declared does not decide whether the time suffices",
                "see the ends for what comes first");
    }
}
