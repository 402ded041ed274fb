package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.Sentence;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultGroup;
import liftwright.review.failures.FaultRule;
import liftwright.rig.Rig;

/**
 * Judges the margin of the worst single fault ({@link Pursuit}). Every draw solves every fault, so
 * that bands begin with 256 draws and a close verdict is pursued to 1,024.
 */
record FailuresJudge(Settings settings) implements Judging<FailuresJudgement, FailuresSample> {

    private static final int MOST_DRAWS = 1024;

    /** With as many draws as so many faults afford. */
    static FailuresJudge of(Settings settings) {
        int first = Math.min(Stage.FIRST_DRAWS, settings.firstDraws());
        int most = Math.max(first, Math.min(MOST_DRAWS, settings.mostDraws()));
        return new FailuresJudge(
                new Settings(
                        settings.seed(), first, most, settings.threads(), settings.remedies()));
    }

    @Override
    public double demand(Rig rig) {
        return 0;
    }

    @Override
    public Optional<String> demandAt() {
        return Optional.of("demands");
    }

    /** Heated: what goes next is mostly too hot. */
    @Override
    public Plant assemble(Rig rig) {
        return Plant.assembleHeated(rig);
    }

    @Override
    public boolean dear() {
        return true;
    }

    @Override
    public FailuresSample sample(Plant plant, double[] widthScale) {
        return new FailuresSample(plant, widthScale, settings, 0);
    }

    /** The same, which tells of every fault too. */
    FailuresSample telling(Plant plant) {
        return new FailuresSample(
                plant, Sample.asDeclared(plant), settings, FailuresSample.TOLD_DRAWS);
    }

    @Override
    public double nominal(Plant plant) {
        return worst(new FaultPanel(plant), plant.parameters().nominal()).margin();
    }

    /**
     * The worst at one vector.
     *
     * @param margin least of all groups
     * @param converged whether every one of them has an operating point
     */
    private record Worst(double margin, boolean converged) {}

    private static Worst worst(FaultPanel panel, double[] p) {
        FaultPanel.Worker worker = panel.worker();
        double least = FaultFate.BEST;
        boolean converged = true;
        for (FaultGroup group : panel.groups()) {
            FaultPanel.Found found = worker.found(p, group);
            converged &= found.converged();
            least = Math.min(least, found.converged() ? found.fate().margin() : FaultFate.WORST);
        }
        return new Worst(least, converged);
    }

    @Override
    public FailuresJudgement judgement(Pursuit<FailuresSample> pursued) {
        FailuresSample sample = pursued.sample();
        Worst worst = worst(sample.panel(), sample.plant.parameters().nominal());
        List<String> downgrades = new ArrayList<>(pursued.downgrades(worst.converged()));
        downgrades.addAll(undecided(sample.panel().groups()));
        return new FailuresJudgement(
                pursued.outcome(),
                pursued.outcome(worst.converged(), downgrades),
                worst.margin(),
                pursued.band(worst.margin()),
                pursued.draws(),
                pursued.failed(),
                downgrades,
                sample);
    }

    /** Of what disagrees no number tells. */
    private static List<String> undecided(List<FaultGroup> groups) {
        String parts =
                groups.stream()
                        .filter(group -> group.rule() == FaultRule.DISAGREES)
                        .map(group -> group.first().part().text())
                        .distinct()
                        .collect(Collectors.joining(", "));
        return parts.isEmpty()
                ? List.of()
                : List.of(
                        "two that disagree do not say which of them is right: "
                                + parts
                                + "; a third would");
    }

    /** What a change costs in lift; refused where lift no longer suffices. */
    @Override
    public Optional<SideEffect> sideEffect(Plant before, Plant after, Work work) {
        var lift =
                new LiftJudge(
                        Settings.standard()
                                .withoutRemedies()
                                .withSeed(settings.seed())
                                .withThreads(settings.threads()));
        Optional<LiftJudgement> now = lift.judge(before, Work.within(work));
        Optional<LiftJudgement> then = lift.judge(after, Work.within(work));
        if (now.isEmpty() || then.isEmpty()) {
            return Optional.empty();
        }
        Sentence told =
                now.get().nominal() == then.get().nominal()
                        ? Sentence.start()
                        : Sentence.words("; lift over weight ")
                                .then(Measure.RATIO, then.get().nominal())
                                .then(" for ")
                                .then(Measure.RATIO, now.get().nominal());
        boolean breaks = now.get().holds() && !then.get().holds();
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
                                : Optional.empty()));
    }

    @Override
    public String field() {
        return "failure-margin";
    }
}
