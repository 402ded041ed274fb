package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** How long it flies, and what ends it. */
final class EnduranceFields {

    private static final String TEST =
            "DischargeAgainstIntegratorTest.everyEventComesWhenTheReferenceSays";
    private static final String CELLS =
            "UnlikeCellsTest.theWeakestCellIsTheOneWithLeastChargeOrMostResistance";
    private static final String VERDICT = "EnduranceExamplesTest.theAnswerAgreesWithItself";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "time-in-the-air",
                            "time in the air",
                            Measure.TIME,
                            "Time in the air until the first limit of any cell, controller or of the throttle.",
                            "charge and slow voltages stepped with the solved network until the first event",
                            "equivalent circuit of the cell; Kirchhoff's laws",
                            TEST),
                    new Field(
                            "time-in-the-air-demand",
                            "asked time in the air",
                            Measure.TIME,
                            "What the rig file, a default or the trace asks for.",
                            "demands/hover, times the hops",
                            "declared; the default is from memory",
                            VERDICT),
                    new Field(
                            "time-in-the-air-gain",
                            "gain in time",
                            Measure.TIME,
                            "Time in the air with a change less that without it.",
                            "difference on the same draws",
                            "definition",
                            VERDICT),
                    new Field(
                            "time-by-hand",
                            "time by hand",
                            Measure.TIME,
                            "What charge above the reserve over the first current gives, without sag or unlike cells.",
                            "capacity times (charge - reserve) / current at the start, least over the packs",
                            "common practice",
                            VERDICT),
                    new Field(
                            "time",
                            "time",
                            Measure.TIME,
                            "Time since the start.",
                            "the run",
                            "definition",
                            VERDICT),
                    new Field(
                            "time-reached",
                            "reached after",
                            Measure.TIME,
                            "When a limit is first reached, if the flight goes on beyond those before it.",
                            "root of the distance to the limit within a step",
                            "the run",
                            TEST),
                    new Field(
                            "time-to-reserve",
                            "to the reserve",
                            Measure.TIME,
                            "When the emptiest cell of a pack reaches the reserve.",
                            "root within a step",
                            "the run",
                            TEST),
                    new Field(
                            "time-to-cell-voltage",
                            "to least voltage",
                            Measure.TIME,
                            "When the weakest cell of a pack falls to the least voltage under load.",
                            "root within a step",
                            "the run",
                            TEST),
                    new Field(
                            "time-to-empty",
                            "to empty",
                            Measure.TIME,
                            "When the first cell of a pack is empty.",
                            "root within a step",
                            "the run",
                            TEST),
                    new Field(
                            "ends-share",
                            "ends first",
                            Measure.PERCENT,
                            "Share of the draws that this ends first.",
                            "count over the draws",
                            "JCGM 101",
                            VERDICT),
                    new Field(
                            "thrust-to-weight-then",
                            "lift over weight",
                            Measure.RATIO,
                            "Lift over weight at full throttle from the charge and slow voltages of that moment.",
                            "full throttle solved at that state",
                            "the laws of this table, solved together",
                            VERDICT),
                    new Field(
                            "throttle",
                            "throttle",
                            Measure.PERCENT,
                            "Shared throttle, or the greatest duty where each fan has its own.",
                            "root of lift less weight",
                            "solved with the network",
                            TEST),
                    new Field(
                            "least-cell-voltage",
                            "lowest cell",
                            Measure.VOLTAGE,
                            "Voltage of the weakest cell under load.",
                            "rest voltage at its own charge less its own resistance times current less slow voltages",
                            "equivalent circuit of the cell",
                            CELLS),
                    new Field(
                            "charge-left",
                            "charge left",
                            Measure.PERCENT,
                            "Share of charge left in the emptiest cell.",
                            "starting charge less charge passed over the cell's own capacity",
                            "definition",
                            CELLS),
                    new Field(
                            "weakest-cell",
                            "weakest cell",
                            Measure.COUNT,
                            "Which of the cells in series is lowest at the end, from 1.",
                            "least voltage of all cells",
                            "the run",
                            CELLS),
                    new Field(
                            "cause",
                            "end",
                            Measure.COUNT,
                            "What would end the flight.",
                            "see the limit",
                            "the rig file and its limits",
                            VERDICT));

    private EnduranceFields() {}
}
