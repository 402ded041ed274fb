package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Operating points of fans, packs and what joins them. */
final class SupplyFields {

    private static final String NETWORK = "DC network solved with the fans' own laws";
    private static final String KIRCHHOFF = "Kirchhoff's laws";
    private static final String TEST = "PlantAgainstRefereeTest.withAllEffects";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "fan-thrust",
                            "thrust",
                            Measure.THRUST,
                            "Thrust of one fan as installed, along its own axis.",
                            "kT, installed, times density ratio times speed squared",
                            "similarity of fans at constant geometry",
                            TEST),
                    new Field(
                            "fan-lift",
                            "lift",
                            Measure.THRUST,
                            "Upward part of one fan's thrust as installed.",
                            "fan thrust times the upward part of its direction",
                            "geometry",
                            "AnswersOfExamplesTest.noFanLiftsMoreThanItsThrust"),
                    new Field(
                            "fan-voltage",
                            "fan voltage",
                            Measure.VOLTAGE,
                            "Voltage at a controller's terminals under load.",
                            NETWORK,
                            KIRCHHOFF,
                            TEST),
                    new Field(
                            "fan-speed",
                            "fan speed",
                            Measure.ROTATION,
                            "Shaft speed at the operating point.",
                            "motor torque equals fan torque",
                            "first-order direct-current motor law",
                            TEST),
                    new Field(
                            "fan-speed-limit",
                            "speed limit",
                            Measure.ROTATION,
                            "The most a shaft may turn.",
                            "declared top speed times the share in limits",
                            "declared; the share is common practice",
                            TEST),
                    new Field(
                            "electrical-speed",
                            "electrical speed",
                            Measure.ROTATION,
                            "What the controller has to commutate.",
                            "shaft speed times pole pairs",
                            "synchronous machines",
                            "FanLawTest.speedsOfTheRotor"),
                    new Field(
                            "tip-mach",
                            "tip Mach number",
                            Measure.RATIO,
                            "Speed of a blade's tip over the speed of sound.",
                            "speed times tip radius / speed of sound",
                            "definition",
                            "FanLawTest.speedsOfTheRotor"),
                    new Field(
                            "winding-current",
                            "winding current",
                            Measure.CURRENT,
                            "Current in a motor's winding.",
                            "(duty times voltage less back voltage) / resistance",
                            "first-order direct-current motor law",
                            "FanUnitTest.fullDutyDrawsTheWindingCurrent"),
                    new Field(
                            "bus-current",
                            "bus current",
                            Measure.CURRENT,
                            "Current that a fan unit draws from its supply.",
                            "duty times winding current plus fixed power over voltage",
                            "energy balance of the controller",
                            "FanUnitTest.powerCloses"),
                    new Field(
                            "part-current",
                            "current",
                            Measure.CURRENT,
                            "Current through one part of the wiring.",
                            NETWORK,
                            KIRCHHOFF,
                            TEST),
                    new Field(
                            "fault-current",
                            "fault current",
                            Measure.CURRENT,
                            "Current through one part into a dead short behind it, packs full.",
                            "full pack voltage over the resistance up to the short",
                            "Ohm's law",
                            TEST),
                    new Field(
                            "cell-current",
                            "cell current",
                            Measure.CURRENT,
                            "Current through one cell of a pack.",
                            "pack current / cells in parallel",
                            KIRCHHOFF,
                            TEST),
                    new Field(
                            "reverse-current",
                            "current into a pack",
                            Measure.CURRENT,
                            "Current that another pack drives into this one.",
                            NETWORK,
                            KIRCHHOFF,
                            "OperatingPointTest.unequalPacksOnOneBusDriveACurrentBetweenThem"),
                    new Field(
                            "pack-current",
                            "pack current",
                            Measure.CURRENT,
                            "Current out of a pack.",
                            NETWORK,
                            KIRCHHOFF,
                            TEST),
                    new Field(
                            "pack-voltage",
                            "pack voltage",
                            Measure.VOLTAGE,
                            "Voltage at a pack's terminals under load.",
                            NETWORK,
                            KIRCHHOFF,
                            TEST),
                    new Field(
                            "capacitor-peak",
                            "peak at the capacitors",
                            Measure.VOLTAGE,
                            "Highest voltage that lead inductance drives the controllers' capacitors to, packs full.",
                            "first maximum of one inductance, resistance and capacitance in series",
                            "circuit theory; 1 µH for each metre of run, out and back together: common practice",
                            "LeadLoopTest.peaksAgreeWithEveryBranchRunInTime"),
                    new Field(
                            "pack-voltage-full",
                            "pack voltage, full",
                            Measure.VOLTAGE,
                            "Voltage of a charged pack at rest.",
                            "cells in series times full-charge voltage",
                            "open-circuit table of the cell",
                            TEST),
                    new Field(
                            "cell-under-load",
                            "cell under load",
                            Measure.VOLTAGE,
                            "Mean voltage of a pack's cells under load.",
                            "pack voltage / cells in series",
                            KIRCHHOFF,
                            "OperatingPointTest.aWeakerPackIsJudgedAtItsOwnCharge"),
                    new Field(
                            "electrical-power",
                            "electrical power",
                            Measure.POWER,
                            "Power out of the cells' open-circuit voltage, losses in the packs included.",
                            "sum over packs of open-circuit voltage times current",
                            "energy balance",
                            TEST),
                    new Field(
                            "power-lost-in-supply",
                            "lost in supply",
                            Measure.POWER,
                            "Heat in packs, wires, joints, fuses and contactors.",
                            "sum of resistance times current squared",
                            "Joule's law",
                            TEST),
                    new Field(
                            "intake-loss",
                            "intake loss K",
                            Measure.RATIO,
                            "Pressure lost at the intake over the jet's dynamic pressure.",
                            "grille loss times (exit area / intake area) squared",
                            "Idelchik, Handbook of Hydraulic Resistance: thin grille",
                            "ScreenTest.aLargerFaceCostsLess"),
                    new Field(
                            "fan-efficiency",
                            "ideal over actual power",
                            Measure.PERCENT,
                            "Least power that momentum allows for the thrust, over the power drawn.",
                            "T^1.5 / sqrt(4 rho A) / power",
                            "momentum theory of the ducted fan",
                            "FanLawTest.plausibilityOfAClaim"),
                    new Field(
                            "lot-worth",
                            "worth of the lot",
                            Measure.RATIO,
                            "Thrust of a lot of fans over their label's at equal speed.",
                            "mean over the measured fans",
                            "ISO 16269-8: intervals of a mean and of one more, both unknown",
                            "LotEstimateTest.threeFansByHand"));

    private SupplyFields() {}
}
