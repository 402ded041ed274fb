package liftwright.review.stand;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.rig.stand.Stand;

/** What the builder of a stand should know of it. */
final class StandFindings {

    /** Guesses below this share of the variance do not matter. */
    private static final double GUESSES_MATTER = 0.1;

    private StandFindings() {}

    static List<Finding> of(Stand stand, StandBudget budget) {
        List<Finding> findings = new ArrayList<>();
        if (budget.loadN() > stand.cell().ratingN()) {
            findings.add(overload(stand, budget));
        }
        double share = budget.expandedN() / budget.thrustN();
        findings.add(first(budget, share <= stand.wantedShare() ? Severity.NOTES : Severity.WARNS));
        double guessed = 0;
        for (StandBudget.Halved each : budget.contributions()) {
            guessed += each.one().guessed() ? budget.share(each.one()) : 0;
        }
        if (guessed > GUESSES_MATTER) {
            findings.add(guesses(guessed));
        }
        return findings;
    }

    private static Finding overload(Stand stand, StandBudget budget) {
        return Finding.of(
                        Severity.STOPS,
                        "cell-overloaded",
                        Sentence.words("greatest thrust presses on the cell with ")
                                .then(Measure.THRUST, budget.loadN())
                                .then(", more than its rating of ")
                                .then(Measure.THRUST, stand.cell().ratingN()),
                        "the lever multiplies the thrust by fan arm over cell arm")
                .at("cell/rating")
                .against(
                        Value.of("stand-cell-load", budget.loadN()),
                        new Finding.Limit(
                                Value.of("stand-cell-load", stand.cell().ratingN()), "declared"));
    }

    private static Finding first(StandBudget budget, Severity severity) {
        Contribution first = budget.first().one();
        return Finding.of(
                        severity,
                        "improve-first",
                        Sentence.words(first.item().label() + " is ")
                                .then(Measure.PERCENT, budget.share(first))
                                .then(" of the variance; halved it leaves ± ")
                                .then(Measure.PERCENT, budget.first().halvedN() / budget.thrustN())
                                .then(", gone ± ")
                                .then(Measure.PERCENT, budget.withoutN(first) / budget.thrustN()),
                        "smaller with " + first.item().advice())
                .at(first.item().path())
                .judging(Value.of("stand-item-share", budget.share(first)));
    }

    private static Finding guesses(double share) {
        return Finding.of(
                        Severity.NOTES,
                        "guessed-bounds",
                        Sentence.start()
                                .then(Measure.PERCENT, share)
                                .then(
                                        " of the variance are bounds of common practice for jet and walls:"
                                                + " measure yours"),
                        "enter what you measured as “loss” and “measured”")
                .at("clearance")
                .judging(Value.of("stand-item-share", share));
    }
}
