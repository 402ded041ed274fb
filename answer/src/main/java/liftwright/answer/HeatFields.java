package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What gives out first, how hot each part gets, and how long to wait. */
final class HeatFields {

    private static final String ANSWER = "HeatExamplesTest.theAnswerAgreesWithItself";
    private static final String VERDICT = "HeatOnRandomRigsTest.verdictAndFirstLimitAreTheReferees";
    private static final String PAUSES = "HeatWaitsTest.aLongerPauseNeverShortensTheNextFlight";
    private static final String STEPPED = "heat and charge stepped with the solved network";
    private static final String LIMITS = "declared, or the default that is named beside it";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "time-within-limits",
                            "time within every limit",
                            Measure.TIME,
                            "Time in the air until the first limit of heat, current, voltage or charge; no longer than the longest flight whose rest reaches none.",
                            STEPPED + " until the first event",
                            "balance of heat; equivalent circuit of the cell; Kirchhoff's laws",
                            VERDICT),
                    new Field(
                            "time-within-limits-demand",
                            "asked time",
                            Measure.TIME,
                            "What the rig file, a default or the trace asks for.",
                            "demands/hover, times the runs",
                            "declared; the default is from memory",
                            ANSWER),
                    new Field(
                            "time-within-limits-gain",
                            "gain in time",
                            Measure.TIME,
                            "Time within every limit with a change less that without it.",
                            "difference on the same draws",
                            "definition",
                            ANSWER),
                    new Field(
                            "hottest",
                            "hottest",
                            Measure.TEMPERATURE,
                            "The hottest that a part gets; of alike parts the one nearest its limit.",
                            "greatest over the run",
                            STEPPED,
                            ANSWER),
                    new Field(
                            "heat-limit",
                            "limit",
                            Measure.TEMPERATURE,
                            "Temperature that a part shall not reach.",
                            "class of a wire less what the limits take off; else the limit itself",
                            LIMITS,
                            ANSWER),
                    new Field(
                            "heat-margin",
                            "below it by",
                            Measure.TEMPERATURE_DIFFERENCE,
                            "How far the hottest moment stays below the limit; negative beyond it.",
                            "limit less hottest",
                            "definition",
                            ANSWER),
                    new Field(
                            "hottest-at",
                            "hottest at",
                            Measure.TIME,
                            "When a part is hottest, from the start of the task.",
                            "time of the greatest",
                            STEPPED,
                            ANSWER),
                    new Field(
                            "mean-power",
                            "power",
                            Measure.POWER,
                            "Power over the flight that is asked, its mean.",
                            "energy over time",
                            "energy balance, checked on every run",
                            ANSWER),
                    new Field(
                            "with",
                            "with",
                            Measure.COUNT,
                            "With which packs the next flight is made.",
                            "named",
                            "the rig file",
                            ANSWER),
                    new Field(
                            "wait",
                            "wait at least",
                            Measure.TIME,
                            "Least pause at no throttle after which another flight like the last keeps every limit, its rest included; nought where none is needed.",
                            "halving over pauses that are each computed, to 1 % or 1 s",
                            STEPPED,
                            ANSWER),
                    new Field(
                            "pause",
                            "pause",
                            Measure.TIME,
                            "Time at no throttle between two flights.",
                            "a round number",
                            "definition",
                            PAUSES),
                    new Field(
                            "next-flight",
                            "next flight",
                            Measure.TIME,
                            "Time in the air of another flight, begun at once or after the pause beside it, until its first limit, at most as long as asked.",
                            STEPPED,
                            "the run",
                            ANSWER),
                    new Field(
                            "ended-by",
                            "which ends by",
                            Measure.COUNT,
                            "What ends that flight.",
                            "first event",
                            "the run",
                            ANSWER),
                    new Field(
                            "fuse-share",
                            "fuse, share of opening",
                            Measure.PERCENT,
                            "How far a fuse is on its way to opening; it opens at all of it.",
                            "(gain of the current - share) / time constant, stepped",
                            "points of the fuse's curve",
                            ANSWER),
                    new Field(
                            "damage",
                            "resistance over that of a new one",
                            Measure.RATIO,
                            "Factor on the resistance of a damaged joint.",
                            "as declared",
                            "the rig file",
                            "HeatFindingsTest.aDamagedJointIsNamed"),
                    new Field(
                            "cell-at-start",
                            "cells at the start",
                            Measure.TEMPERATURE,
                            "Temperature of a pack's cells when the flight begins.",
                            "as declared, or that of the air",
                            "the rig file",
                            "HeatFindingsTest.coldCellsAreNamed"));

    private HeatFields() {}
}
