package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import liftwright.answer.Evidence;
import liftwright.answer.Sentence;
import liftwright.plant.LossPoint;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.review.failures.Asked;
import liftwright.rig.DefaultUsed.Reader;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.shape.words.LimitKeys;

/** What an answer of failures rests on. */
final class FailuresEvidence {

    /** What a linear programme may miss its own proof by. */
    private static final double GAP = 1e-9;

    /** Current of packs that no fan takes, over all of it. */
    private static final double CURRENTS = 1e-9;

    private FailuresEvidence() {}

    static Evidence of(
            Rig rig,
            String rigDigest,
            Plant plant,
            Settings settings,
            FailuresJudgement judgement,
            List<FaultView> views) {
        double[] p = plant.parameters().nominal();
        Asked asked = judgement.sample().panel().asked();
        return CorrectionWords.on(
                plant,
                new Evidence(
                        rigDigest,
                        "none",
                        settings.seed(),
                        judgement.draws(),
                        Sentence.words(
                                        "one failure at a time on full packs, upright in still air, lift held"
                                                + " at weight, ")
                                .then(Measure.LENGTH, asked.heightM())
                                .then(
                                        " up, settled cells, motors cold (20 °C), wires 30 K above the air,"
                                                + " air of ")
                                .then(Measure.DENSITY, plant.siteDensityKgpm3(p)),
                        laws(asked),
                        assumptions(rig, judgement.sample().panel().steering()),
                        checks(judgement, views),
                        MeasuredEvidence.of(rig)));
    }

    private static List<Evidence.Check> checks(FailuresJudgement judgement, List<FaultView> views) {
        double gap = 0;
        double currents = 0;
        for (FaultView view : views) {
            if (view.found().point().isPresent()) {
                LossPoint point = view.found().point().get();
                currents = Math.max(currents, currents(point));
                if (point.computer().isPresent()) {
                    LossPoint.Computer can = point.computer().get();
                    gap = Math.max(gap, Math.max(can.held().gap(), can.free().gap()));
                }
            }
        }
        return List.of(
                new Evidence.Check("every trim and reserve is proved an optimum", gap, GAP),
                new Evidence.Check("currents of packs and fans close", currents, CURRENTS),
                new Evidence.Check("draws without an operating point", judgement.failedDraws(), 0));
    }

    private static double currents(LossPoint point) {
        double net = 0;
        double all = 0;
        for (double packA : point.flow().packA()) {
            net += packA;
            all += Math.abs(packA);
        }
        for (double fanA : point.flow().fanA()) {
            net -= fanA;
        }
        return all == 0 ? Math.abs(net) : Math.abs(net) / all;
    }

    private static List<Evidence.Law> laws(Asked asked) {
        return List.of(
                new Evidence.Law(
                        "trims and reserves as linear programmes over the fans",
                        "statics; each optimum with its dual proof",
                        "a computer that knows of the failure at once; moments of the first instant,"
                                + " no motion",
                        true),
                new Evidence.Law(
                        "survivors on what is left of the supply",
                        "Kirchhoff's laws, solved anew for each failure",
                        "still air, no ringing at the moment of the break",
                        true),
                new Evidence.Law(
                        "landing from rest with the lift that is left: v² = 2 g h (1 − lift/weight)",
                        "energy; drag left out",
                        "heights of a few metres; it says nothing of how a body lands",
                        asked.heightM() <= 10),
                new Evidence.Law(
                        "categories of severity",
                        "MIL-STD-882E table I; the mapping from outcome and speed is this program's"
                                + " own",
                        "people in or beside the rig; money is left out",
                        true),
                new Evidence.Law(
                        "fans as in the question of lift, arms as in that of balance",
                        "see there",
                        "the range named there",
                        true));
    }

    private static List<Evidence.Assumption> assumptions(Rig rig, Steering steering) {
        List<Evidence.Assumption> all =
                new ArrayList<>(
                        LiftEvidence.assumptions(
                                rig, Set.of(Reader.ANY, Reader.HEAT, Reader.FAILURES)));
        List<LimitName> limits = new ArrayList<>(steering.limits());
        limits.addAll(
                List.of(LimitName.LIFT_AFTER_LOSS, LimitName.IMPACT_SPEED, LimitName.DWELL_SHARE));
        for (LimitName limit : limits) {
            if (!rig.limits().declared().containsKey(limit)) {
                all.add(
                        new Evidence.Assumption(
                                "limits/" + limit.key(),
                                LimitKeys.show(limit),
                                limit.origin() + ": " + LimitKeys.meaning(limit)));
            }
        }
        if (!rig.riskMatrix().declared()) {
            all.add(
                    new Evidence.Assumption(
                            "risk matrix", "the usual one", rig.riskMatrix().source()));
        }
        all.add(
                new Evidence.Assumption(
                        "a rig that comes down",
                        String.format(
                                Locale.ROOT,
                                "carries %.0f %% of the most that it can trim, at most that of its"
                                        + " weight",
                                100 * FaultPanel.COMING_SHARE),
                        "from memory"));
        return all;
    }
}
