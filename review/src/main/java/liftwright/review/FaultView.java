package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.quantity.Band;
import liftwright.review.failures.Asked;
import liftwright.review.failures.Exposure;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultGroup;
import liftwright.review.failures.FaultNumber;
import liftwright.review.failures.FaultRule;
import liftwright.review.failures.SeverityRule;
import liftwright.rig.Rig;
import liftwright.rig.RiskMatrix.Likelihood;
import liftwright.rig.RiskMatrix.Severity;

/**
 * One fault, or those that come to the same, as it is told.
 *
 * @param number of the group in the panel
 * @param found at the declared values
 * @param margin its band; the declared value alone where nothing was drawn
 * @param verdict whether the rig has with it what is asked
 * @param likelihood empty where no rate is declared for a member
 * @param risk word of the matrix; empty as well
 */
record FaultView(
        int number,
        FaultGroup group,
        FaultPanel.Found found,
        Band margin,
        Outcome verdict,
        Severity severity,
        Optional<Likelihood> likelihood,
        Optional<String> risk) {

    private static final double CLOSE = 2;

    /** All faults: what is not borne first, of those the most severe, then the least margin. */
    static List<FaultView> of(FailuresJudgement judgement) {
        FailuresSample sample = judgement.sample();
        FaultPanel panel = sample.panel();
        Rig rig = sample.plant.rig();
        FaultPanel.Worker worker = panel.worker();
        double[] p = sample.plant.parameters().nominal();
        Exposure exposure = new Exposure(rig.rates(), rig.riskMatrix());
        List<FaultView> views = new ArrayList<>();
        for (int k = 0; k < panel.groups().size(); k++) {
            FaultGroup group = panel.groups().get(k);
            FaultPanel.Found found = worker.told(p, group);
            FaultFate fate = found.fate();
            Band band = Bands.about(fate.margin(), sample.margins(k, judgement.draws()));
            Asked asked = panel.asked();
            Severity severity =
                    SeverityRule.of(
                            fate.outcome(), asked.worn(), fate.impactMps(), asked.impactMps());
            views.add(
                    new FaultView(
                            k,
                            group,
                            found,
                            band,
                            verdict(group, found, band),
                            severity,
                            exposure.likelihood(group.partKinds()),
                            exposure.risk(severity, group.partKinds())));
        }
        views.sort(
                Comparator.comparingInt(FaultView::rank)
                        .thenComparing(FaultView::severity)
                        .thenComparingDouble(view -> view.found.fate().margin())
                        .thenComparingInt(FaultView::number));
        return views;
    }

    private int rank() {
        return switch (verdict) {
            case DOES_NOT_HOLD -> 0;
            case CANNOT_BE_TOLD -> 1;
            case NOT_JUDGED -> isShort() ? 0 : 2;
            case HOLDS -> 2;
        };
    }

    private static Outcome verdict(FaultGroup group, FaultPanel.Found found, Band band) {
        if (group.rule() == FaultRule.DISAGREES || !found.converged()) {
            return Outcome.CANNOT_BE_TOLD;
        }
        if (band.draws() == 0) {
            return Outcome.NOT_JUDGED;
        }
        double doubt = CLOSE * band.monteCarloError();
        if (band.low() - doubt >= 0) {
            return Outcome.HOLDS;
        }
        return band.high() + doubt < 0 ? Outcome.DOES_NOT_HOLD : Outcome.CANNOT_BE_TOLD;
    }

    /** The part by whose name it goes. */
    String part() {
        return group.first().part().text();
    }

    /** How it fails. */
    String how() {
        return group.first().words();
    }

    /** Whether it has less than is asked at the declared values. */
    boolean isShort() {
        return found.fate().margin() < 0;
    }

    /** Whether it ends a flight by itself: not borne, or not even told. */
    boolean isSinglePoint() {
        return rank() < 2;
    }

    /** Band of one number about what was found; empty where it has no such number. */
    Optional<Band> band(FaultNumber of, FailuresJudgement judgement) {
        return found.figures()
                .map(
                        figures ->
                                Bands.about(
                                        of.in(figures).orElse(0),
                                        judgement.sample().numbers(of, number, judgement.draws())));
    }
}
