package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** The error budget of a thrust stand. */
final class StandFields {

    private static final String PROPAGATION = "JCGM 100:2008, 5.1.2";
    private static final String LAID = "JCGM 100:2008, 5.1.2; JCGM 101:2008";
    private static final String SAMPLED = "StandBudgetTest.agreesWithSampledStands";
    private static final String BY_HAND = "StandBudgetTest.agreesWithABudgetByHand";
    private static final String WORDS = "StandAnswerTest.theAnswerAgreesWithItself";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "stand-item",
                            "item",
                            Measure.COUNT,
                            "What can make a thrust stand read wrong.",
                            "as declared in the stand file",
                            "the stand file",
                            WORDS),
                    new Field(
                            "stand-distribution",
                            "taken as",
                            Measure.COUNT,
                            "How an error is taken to lie, and whether its size is a bound of common practice.",
                            "bounds are rectangles, a ± is normal with k = 2, repeats are Student's t",
                            "JCGM 100:2008, 4.3",
                            WORDS),
                    new Field(
                            "stand-standard-uncertainty",
                            "standard uncertainty",
                            Measure.THRUST,
                            "Standard uncertainty of the thrust by one item alone.",
                            "sensitivity times standard uncertainty of the item",
                            PROPAGATION,
                            BY_HAND),
                    new Field(
                            "stand-item-share",
                            "share",
                            Measure.PERCENT,
                            "Share of the variance of the thrust that one item makes.",
                            "(standard uncertainty by it / combined standard uncertainty)²",
                            PROPAGATION,
                            BY_HAND),
                    new Field(
                            "stand-halved",
                            "doubt with it halved",
                            Measure.PERCENT,
                            "Expanded uncertainty of the thrust, 95.45 %, with this item half as large, over the thrust.",
                            "half of the 95.45 % interval of all errors, this one halved / thrust",
                            PROPAGATION,
                            BY_HAND),
                    new Field(
                            "stand-thrust",
                            "thrust measured",
                            Measure.THRUST,
                            "Thrust that the budget is made for.",
                            "a part of the greatest thrust of the stand file",
                            "declared",
                            WORDS),
                    new Field(
                            "stand-cell-load",
                            "load on the cell",
                            Measure.THRUST,
                            "Force on the load cell.",
                            "thrust times fan arm / cell arm times cos(alignment) times (1 - loss by the jet)",
                            "equilibrium of the lever",
                            BY_HAND),
                    new Field(
                            "stand-uncertainty",
                            "doubt ±",
                            Measure.THRUST,
                            "Expanded uncertainty of the thrust, 95.45 %.",
                            "half of the 95.45 % interval of the items' errors together, each with its distribution",
                            LAID,
                            SAMPLED),
                    new Field(
                            "stand-uncertainty-share",
                            "doubt ± of thrust",
                            Measure.PERCENT,
                            "Expanded uncertainty of the thrust, 95.45 %, over the thrust.",
                            "expanded uncertainty / thrust",
                            LAID,
                            SAMPLED),
                    new Field(
                            "stand-missed",
                            "missed",
                            Measure.PERCENT,
                            "Share of the thrust that the reading misses on average, to be corrected for.",
                            "jet: momentum met times 3/4, or as measured; alignment: 1 - cos over its mean doubt",
                            "round turbulent jet, from memory; geometry",
                            SAMPLED));

    private StandFields() {}
}
