package liftwright.review;

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
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Measure;
import liftwright.review.remedy.Candidates;
import liftwright.rig.Rig;

/**
 * "Will it lift?": usable lift at full throttle against weight, with what takes the rest and what
 * would mend it.
 */
public final class LiftQuestion implements Staged {

    private final Rig rig;
    private final String rigDigest;
    private final Settings settings;
    private final Plant plant;
    private final LiftJudge judge;
    private final LiftSample sample;

    private LiftQuestion(Rig rig, String rigDigest, Settings settings) {
        this(rig, rigDigest, settings, Plant.assemble(rig));
    }

    private LiftQuestion(Rig rig, String rigDigest, Settings settings, Plant plant) {
        this.rig = rig;
        this.rigDigest = rigDigest;
        this.settings = settings;
        this.plant = plant;
        judge = new LiftJudge(settings);
        sample = judge.sample(plant, Sample.asDeclared(plant));
    }

    /**
     * To be answered in stages.
     *
     * @param rigDigest digest of the file the rig was read from, passed through into the evidence
     */
    public static Staged staged(Rig rig, String rigDigest, Settings settings) {
        return new LiftQuestion(rig, rigDigest, settings);
    }

    /** The nominal lines alone, for a screen that waits for the bands. */
    public static Section.Waterfall nominal(Rig rig) {
        return LiftWaterfall.of(Plant.assemble(rig));
    }

    /**
     * Answers it.
     *
     * @param rigDigest digest of the file the rig was read from, passed through into the evidence
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped: a stopped answer carries no verdict
     */
    public static Optional<LiftAnswer> ask(
            Rig rig, String rigDigest, Settings settings, Work work) {
        return new LiftQuestion(rig, rigDigest, settings).answer(Stage.WHOLE, work);
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
                one -> new LiftQuestion(rig, rigDigest, settings, one));
    }

    @Override
    public Optional<LiftAnswer> answer(Stage stage, Work work) {
        Optional<LiftJudgement> judged = judge.judge(sample, stage, work);
        if (judged.isEmpty()) {
            return Optional.empty();
        }
        LiftJudgement judgement = judged.get();
        SteadyState state = plant.state();
        plant.solve(plant.parameters().nominal(), Effects.ALL, plant.workspace(), state);
        Section.Waterfall waterfall = LiftWaterfall.of(plant);
        Evidence evidence =
                LiftEvidence.of(
                        rig,
                        rigDigest,
                        plant,
                        settings,
                        judgement,
                        LiftChecks.of(state, waterfall, judgement));

        var inquiry = new Inquiry<>(rig, plant, judge, judgement, work);
        Verdict verdict = inquiry.verdict(sentence(rig, judgement, judge.demand(rig)), evidence);
        List<Remedy> remedies = inquiry.remedies(stage, verdict, Candidates.forLift(rig));
        if (work.stopped()) {
            return Optional.empty();
        }
        List<Finding> findings =
                inquiry.findings(
                        verdict,
                        shortfall(judgement, judge.demand(rig)),
                        remedies,
                        LiftFindings.of(rig, plant, state));
        return Optional.of(
                new LiftAnswer(
                        verdict,
                        findings,
                        List.of(
                                LiftWaterfall.banded(
                                        waterfall, judgement.lift(), judgement.weight()),
                                LiftTables.packs(rig, state),
                                LiftTables.fans(rig, state)),
                        evidence));
    }

    private static Sentence sentence(Rig rig, LiftJudgement judgement, double demand) {
        return Sentence.words("lift over weight ")
                .then(Measure.RATIO, judgement.nominal(), Bands.shown(judgement.ratio()))
                .then(", asked for ")
                .then(Measure.RATIO, demand)
                .then("; usable lift ")
                .then(Measure.THRUST, judgement.nominalLiftN(), Bands.shown(judgement.lift()))
                .then(", weight ")
                .then(Measure.THRUST, judgement.nominalWeightN(), Bands.shown(judgement.weight()))
                .then("; at ")
                .then(Measure.PERCENT, rig.demands().judgedAtCharge().si())
                .then(" charge, full throttle, cold motors");
    }

    private static Inquiry.Shortfall shortfall(LiftJudgement judgement, double demand) {
        return new Inquiry.Shortfall(
                "lift",
                Sentence.words("lift is short of what is asked by ")
                        .then(
                                Measure.THRUST,
                                demand * judgement.nominalWeightN() - judgement.nominalLiftN()),
                "what was declared does not decide whether the lift suffices",
                "see the waterfall for what takes the rated thrust");
    }
}
