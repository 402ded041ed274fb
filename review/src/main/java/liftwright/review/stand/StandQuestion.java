package liftwright.review.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Checks;
import liftwright.answer.Evidence;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.quantity.Measure;
import liftwright.rig.stand.Stand;

/** How well a planned thrust stand will measure. */
public final class StandQuestion {

    private static final double SHARES_CLOSE = 1e-12;

    private StandQuestion() {}

    /**
     * Answers at the greatest thrust.
     *
     * @param digest of the stand file
     */
    public static StandAnswer ask(Stand stand, String digest) {
        StandBudget budget = StandBudget.of(stand, stand.thrustN());
        Evidence evidence = evidence(stand, digest, budget);
        return new StandAnswer(
                Checks.downgrade(verdict(stand, budget), evidence),
                StandFindings.of(stand, budget),
                sections(stand, budget),
                evidence);
    }

    /**
     * Expanded uncertainty (95.45 %) of a thrust that the stand tells, N.
     *
     * @param thrustN N, &gt; 0
     */
    public static double expandedN(Stand stand, double thrustN) {
        return StandBudget.of(stand, thrustN).expandedN();
    }

    private static Verdict verdict(Stand stand, StandBudget budget) {
        double share = budget.expandedN() / budget.thrustN();
        StandBudget.Halved first = budget.first();
        return new Verdict(
                share <= stand.wantedShare() ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                Sentence.words("a thrust of ")
                        .then(Measure.THRUST, budget.thrustN())
                        .then(" will be known to ± ")
                        .then(Measure.PERCENT, share)
                        .then(" (95 %), wanted ± ")
                        .then(Measure.PERCENT, stand.wantedShare())
                        .then("; first to improve: ")
                        .then(first.one().item().label())
                        .then(", which halved leaves ± ")
                        .then(Measure.PERCENT, first.halvedN() / budget.thrustN()),
                Optional.empty(),
                List.of());
    }

    private static List<Section> sections(Stand stand, StandBudget budget) {
        List<Section> sections = new ArrayList<>();
        sections.add(budgetTable(budget));
        sections.add(overThrust(stand));
        List<List<Value>> missed = new ArrayList<>();
        if (stand.jet().isPresent()) {
            missed.add(missed(StandItem.JET, budget.jetLossShare()));
        }
        if (stand.alignment().isPresent()) {
            missed.add(missed(StandItem.ALIGNMENT, budget.tiltShare()));
        }
        if (!missed.isEmpty()) {
            sections.add(
                    new Section.Table(
                            "missed",
                            "What the reading misses and must be corrected for",
                            List.of("stand-item", "stand-missed"),
                            missed));
        }
        return sections;
    }

    private static List<Value> missed(StandItem item, double share) {
        return List.of(Value.words("stand-item", item.label()), Value.of("stand-missed", share));
    }

    /** As one would improve them. */
    private static Section budgetTable(StandBudget budget) {
        List<List<Value>> rows =
                budget.contributions().stream()
                        .map(
                                each ->
                                        List.of(
                                                Value.words(
                                                        "stand-item", each.one().item().label()),
                                                Value.words(
                                                        "stand-distribution",
                                                        each.one().distribution().words()
                                                                + (each.one().guessed()
                                                                        ? ", common practice"
                                                                        : "")),
                                                Value.of(
                                                        "stand-standard-uncertainty",
                                                        each.one().standardN()),
                                                Value.of(
                                                        "stand-item-share",
                                                        budget.share(each.one())),
                                                Value.of(
                                                        "stand-halved",
                                                        each.halvedN() / budget.thrustN())))
                        .toList();
        return new Section.Table(
                "budget",
                "What makes the doubt, what helps most first",
                List.of(
                        "stand-item",
                        "stand-distribution",
                        "stand-standard-uncertainty",
                        "stand-item-share",
                        "stand-halved"),
                rows);
    }

    /** What is a share of the cell's rating weighs more at part throttle. */
    private static Section overThrust(Stand stand) {
        List<List<Value>> rows = new ArrayList<>();
        for (double part : new double[] {1, 0.5, 0.25, 0.1}) {
            StandBudget budget = StandBudget.of(stand, part * stand.thrustN());
            rows.add(
                    List.of(
                            Value.of("stand-thrust", budget.thrustN()),
                            Value.of("stand-cell-load", budget.loadN()),
                            Value.of("stand-uncertainty", budget.expandedN()),
                            Value.of(
                                    "stand-uncertainty-share",
                                    budget.expandedN() / budget.thrustN()),
                            Value.words("stand-item", budget.first().one().item().label())));
        }
        return new Section.Table(
                "over-thrust",
                "At part throttle, with what to improve first there",
                List.of(
                        "stand-thrust",
                        "stand-cell-load",
                        "stand-uncertainty",
                        "stand-uncertainty-share",
                        "stand-item"),
                rows);
    }

    private static Evidence evidence(Stand stand, String digest, StandBudget budget) {
        double shares = 0;
        for (StandBudget.Halved each : budget.contributions()) {
            shares += budget.share(each.one());
        }
        boolean smallInTheJet =
                stand.jet()
                        .map(
                                jet ->
                                        switch (jet) {
                                            case Stand.Jet.Placed placed ->
                                                    Guesses.met(placed) <= Guesses.MOST_OF_THE_JET;
                                            case Stand.Jet.Measured _ -> true;
                                        })
                        .orElse(true);
        return new Evidence(
                digest,
                "none",
                0,
                0,
                Sentence.words("one fan on the stand as planned, ")
                        .then(Measure.THRUST, budget.loadN())
                        .then(" on the cell; the mean of ")
                        .then(stand.repeats().runs() + " runs, corrected for what it misses"),
                List.of(
                        new Evidence.Law(
                                "propagation of uncertainty, distributions laid together",
                                "JCGM 100:2008, 5.1.2, 4.3.7; JCGM 101:2008",
                                "inputs that do not hang together",
                                true),
                        new Evidence.Law(
                                "force of the jet on what is weighed",
                                "round turbulent jet, from memory; half to all of the momentum met:"
                                        + " common practice",
                                "parts near the axis that meet at most 20 % of the jet",
                                smallInTheJet),
                        new Evidence.Law(
                                "walls and air that comes back",
                                "common practice: bounds by distance, to be replaced by a"
                                        + " measurement",
                                "at least 1 diameter behind and half a diameter in front",
                                true)),
                stand.defaults().stream()
                        .map(
                                one ->
                                        new Evidence.Assumption(
                                                one.at().toString(), one.value(), one.origin()))
                        .toList(),
                List.of(
                        new Evidence.Check(
                                "shares of all items add up to 1",
                                Math.abs(shares - 1),
                                SHARES_CLOSE)));
    }
}
