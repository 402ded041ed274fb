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
public final class LiftQuestion {

    private LiftQuestion() {}

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
        Plant plant = Plant.assemble(rig);
        double demand = rig.demands().thrustToWeight().si();
        Optional<LiftJudgement> judged = LiftJudge.judge(plant, demand, settings, work);
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

        Optional<Verdict.WouldTell> wouldTell =
                judgement.byNumbers() == Outcome.CANNOT_BE_TOLD
                        ? DoubtRanking.rank(
                                        plant,
                                        scale -> new LiftSample(plant, scale, settings),
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
                                sentence(rig, judgement, demand),
                                wouldTell,
                                judgement.downgrades()),
                        evidence);
        List<Remedy> remedies =
                verdict.outcome() == Outcome.HOLDS || !settings.remedies()
                        ? List.of()
                        : new Remedies<>(rig, plant, judgement, new LiftJudge.Lift(settings), work)
                                .find(Candidates.forLift(rig));
        if (work.stopped()) {
            return Optional.empty();
        }

        List<Finding> findings = new ArrayList<>(LiftFindings.of(rig, plant, state));
        if (verdict.outcome() != Outcome.HOLDS) {
            findings.add(0, shortOfLift(rig, verdict, judgement, demand, remedies));
        }
        findings.sort(Comparator.comparing(Finding::severity));
        return Optional.of(
                new LiftAnswer(
                        verdict,
                        findings,
                        List.of(
                                waterfall,
                                LiftTables.packs(rig, state),
                                LiftTables.fans(rig, state)),
                        evidence));
    }

    private static Sentence sentence(Rig rig, LiftJudgement judgement, double demand) {
        return Sentence.words("lift over weight ")
                .then(Measure.RATIO, judgement.nominal(), judgement.ratio())
                .then(", asked for ")
                .then(Measure.RATIO, demand)
                .then("; usable lift ")
                .then(Measure.THRUST, judgement.nominalLiftN(), judgement.lift())
                .then(", weight ")
                .then(Measure.THRUST, judgement.nominalWeightN(), judgement.weight())
                .then("; at ")
                .then(Measure.PERCENT, rig.demands().judgedAtCharge().si())
                .then(" charge, full throttle, cold motors");
    }

    static Verdict.WouldTell wouldTell(DoubtRanking.Ranked ranked) {
        return new Verdict.WouldTell(
                ranked.input().at().toString(),
                Sentence.words(
                                "measure "
                                        + ranked.input().label()
                                        + ": half its doubt would narrow the band to ")
                        .then(Measure.PERCENT, ranked.bandShare())
                        .then(" of its width"),
                ranked.bandShare());
    }

    private static Finding shortOfLift(
            Rig rig,
            Verdict verdict,
            LiftJudgement judgement,
            double demand,
            List<Remedy> remedies) {
        boolean missed = verdict.outcome() == Outcome.DOES_NOT_HOLD;
        return new Finding(
                Severity.STOPS,
                missed ? "lift-short" : "lift-undecided",
                Optional.empty(),
                Optional.of("demands/thrust to weight"),
                missed
                        ? Sentence.words("lift is short of what is asked by ")
                                .then(
                                        Measure.THRUST,
                                        demand * judgement.nominalWeightN()
                                                - judgement.nominalLiftN())
                        : Sentence.words(
                                "what was declared does not decide whether the lift suffices"),
                Optional.of(Value.of("thrust-to-weight", judgement.nominal(), judgement.ratio())),
                Optional.of(
                        new Finding.Limit(
                                Value.of("thrust-to-weight-demand", demand),
                                LiftEvidence.originOfDemand(rig))),
                missed
                        ? "see the waterfall for what takes the rated thrust"
                        : String.join("; ", verdict.downgrades()),
                remedies);
    }
}
