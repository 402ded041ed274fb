package liftwright.review;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.answer.Sentence;
import liftwright.numerics.Work;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.review.wiring.WiringReview;
import liftwright.rig.Rig;

/**
 * Judges the time in the air until the first limit of any kind against what is asked ({@link
 * Pursuit}). A heated flight costs a hundred times what a lift costs, so its bands begin with 256
 * draws and a close verdict is pursued to 1,024 and 4,096.
 */
record HeatJudge(HeatCase asked, Settings settings) implements Judging<HeatJudgement, HeatSample> {

    private static final int MOST_DRAWS = 4096;

    /** Draws of lift are cheap: what a remedy costs is judged as the question of lift judges it. */
    private static final Settings LIFT = Settings.standard().withoutRemedies();

    /** With as many draws as heat affords. */
    static HeatJudge of(HeatCase asked, Settings settings) {
        int first = Math.min(Stage.FIRST_DRAWS, settings.firstDraws());
        int most = Math.max(first, Math.min(MOST_DRAWS, settings.mostDraws()));
        return new HeatJudge(
                asked,
                new Settings(
                        settings.seed(), first, most, settings.threads(), settings.remedies()));
    }

    @Override
    public double demand(Rig rig) {
        return asked.task().demandS(rig);
    }

    @Override
    public Optional<String> demandAt() {
        return asked.task() instanceof Task.Trace ? Optional.empty() : Optional.of("demands/hover");
    }

    @Override
    public Plant assemble(Rig rig) {
        return Plant.assembleHeated(rig);
    }

    @Override
    public boolean dear() {
        return true;
    }

    @Override
    public HeatSample sample(Plant plant, double[] widthScale) {
        return new HeatSample(plant, asked, widthScale, settings, 0);
    }

    /** The same, which tells of every part too. */
    HeatSample telling(Plant plant) {
        return new HeatSample(
                plant, asked, Sample.asDeclared(plant), settings, HeatSample.TOLD_DRAWS);
    }

    @Override
    public double nominal(Plant plant) {
        return nominal(plant, declared(plant, true));
    }

    private double nominal(Plant plant, Discharge run) {
        return asked.flight(plant, plant.parameters().nominal()).withinLimitsS(run);
    }

    /** A run at the declared values, loaded. */
    static Discharge declared(Plant plant, boolean stopsAtFirst) {
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), plant.cells());
        run.stopAtFirst(stopsAtFirst);
        return run;
    }

    @Override
    public HeatJudgement judgement(Pursuit<HeatSample> pursued) {
        Plant plant = pursued.sample().plant;
        Discharge run = declared(plant, true);
        double nominal = nominal(plant, run);
        List<String> downgrades = pursued.downgrades(!run.failed());
        return new HeatJudgement(
                pursued.outcome(),
                pursued.outcome(!run.failed(), downgrades),
                nominal,
                pursued.band(nominal),
                pursued.draws(),
                pursued.failed(),
                downgrades,
                pursued.sample());
    }

    /**
     * More mass and more resistance cost lift: told, and refused where lift no longer suffices. A
     * larger fuse may no longer protect its wires: refused then.
     */
    @Override
    public Optional<SideEffect> sideEffect(Plant before, Plant after, Work work) {
        var lift = new LiftJudge(LIFT.withSeed(settings.seed()).withThreads(settings.threads()));
        Optional<LiftJudgement> now = lift.judge(before, Work.within(work));
        Optional<LiftJudgement> then = lift.judge(after, Work.within(work));
        if (now.isEmpty() || then.isEmpty()) {
            return Optional.empty();
        }
        Sentence told =
                Sentence.words("; lift over weight ")
                        .then(Measure.RATIO, then.get().nominal())
                        .then(" for ")
                        .then(Measure.RATIO, now.get().nominal());
        boolean breaks =
                (now.get().holds() && !then.get().holds())
                        || (now.get().outcome() != Outcome.DOES_NOT_HOLD
                                && then.get().outcome() == Outcome.DOES_NOT_HOLD);
        return Optional.of(
                new SideEffect(
                        told,
                        breaks
                                ? Optional.of(
                                        Sentence.words("lift over weight would be ")
                                                .then(
                                                        Measure.RATIO,
                                                        then.get().nominal(),
                                                        then.get().band())
                                                .then(", against ")
                                                .then(Measure.RATIO, lift.demand(after.rig())))
                                : WiringReview.newlyExposed(before, after)));
    }

    @Override
    public String field() {
        return "time-within-limits";
    }
}
