package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Which way a rig turns, why, and what holds it. */
final class BalanceFields {

    private static final String REFEREE = "BalancingTest.theResidualIsThatOfTheReferee";
    private static final String LEDGER = "BalancingTest.theSharesOfFansAndCausesSumToTheResidual";
    private static final String BEAMS = "BeamsTest.theGiveIsThatOfTheReferee";
    private static final String MASS = "PosedPersonTest.wholeRigsAreTheirPoints";
    private static final String RESERVE = "AllocationTest.reservesAreThoseOfTheVertexSearch";
    private static final String INDEX = "ZonotopeTest.readsThePublishedIndexOfASixRotorVehicle";
    private static final String VERDICT = "BalanceExamplesTest.theAnswerAgreesWithItself";
    private static final String TRIM = "BalanceExamplesTest.theTrimOfLeastPowerHoldsTheWeight";
    private static final String ARMS = "ArmLoadTest.armsCutFreeHoldWhatTheRefereeFinds";
    private static final String JETS = "JetStrikeTest.whatAJetStrikesIsWhatRaysByChanceStrike";
    private static final String STATICS = "statics";

    private static Field field(
            String id, String label, Measure measure, String meaning, String formula, String test) {
        return new Field(id, label, measure, meaning, formula, STATICS, test);
    }

    private static Field words(String id, String label, String meaning) {
        return new Field(id, label, Measure.COUNT, meaning, "named", "the rig file", VERDICT);
    }

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "arm-reach-left",
                            "reach of the arms left",
                            Measure.PERCENT,
                            "What is left of the arms' reach once they cancel all three moments; −9900 % stands for that or worse.",
                            "1 less the least share of 20° at every joint that cancels the moments, to first order",
                            "least factor of a zonotope; the reach is from memory",
                            "ZonotopeTest.theFactorIsThatOfALinearProgramme"),
                    new Field(
                            "arm-reach-left-gain",
                            "gain in reach left",
                            Measure.PERCENT,
                            "Reach of the arms left with a change less that without it.",
                            "difference on the same draws",
                            "definition",
                            VERDICT),
                    new Field(
                            "drift-left",
                            "room left below drift",
                            Measure.ANGULAR_ACCELERATION,
                            "What is left of 0.1 rad/s² about the axis that turns fastest; −99 rad/s² stands for that or worse.",
                            "0.1 rad/s² less the greatest angular acceleration",
                            "definition; the limit is from memory",
                            VERDICT),
                    new Field(
                            "drift-left-gain",
                            "gain in room below drift",
                            Measure.ANGULAR_ACCELERATION,
                            "Room below drift with a change less that without it.",
                            "difference on the same draws",
                            "definition",
                            VERDICT),
                    new Field(
                            "reserve-ratio",
                            "reserve over what is asked",
                            Measure.RATIO,
                            "Least control reserve of the three axes and both ways, over what is asked of it; −99 stands for that or worse.",
                            "least of reserve over 2, 2 and 0.3 rad/s² for roll, pitch and yaw",
                            "linear programme; what is asked is from memory",
                            RESERVE),
                    new Field(
                            "reserve-ratio-gain",
                            "gain in reserve",
                            Measure.RATIO,
                            "Reserve over what is asked with a change less that without it.",
                            "difference on the same draws",
                            "definition",
                            VERDICT),
                    words(
                            "axis",
                            "axis",
                            "Roll about forward, pitch about sideways, yaw about upright."),
                    field(
                            "turning-acceleration",
                            "acceleration",
                            Measure.ANGULAR_ACCELERATION,
                            "Angular acceleration from rest with nothing done against it; positive rolls right side down, leans back, turns right. Below 0.000001 rad/s² it is rounding and shown as 0.",
                            "inverse of the inertia tensor times the sum of all moments",
                            "InertiaTensorTest.accelerationTimesInertiaIsTheMoment"),
                    words("turns-towards", "it", "What the wearer sees."),
                    words("turn-angle", "angle", "The angle whose time is told."),
                    new Field(
                            "turn-time",
                            "after",
                            Measure.TIME,
                            "Time from rest to that angle; momentum drag damps yaw.",
                            "root of M/c (t − I/c (1 − exp(−c t/I))) − angle, c = sum of mass flow times distance squared",
                            "momentum theory",
                            "TurningTest.theTimeLeadsBackToTheAngle"),
                    words(
                            "turning-cause",
                            "cause",
                            "Why it turns, in the order in which causes are added."),
                    field(
                            "roll-moment",
                            "roll",
                            Measure.MOMENT,
                            "Share in the moment about the forward axis; positive lowers the right side. Below 10 nm times the weight it is rounding and shown as 0.",
                            "moment with this cause added less that before",
                            LEDGER),
                    field(
                            "pitch-moment",
                            "pitch",
                            Measure.MOMENT,
                            "Share in the moment about the sideways axis; positive leans back.",
                            "moment with this cause added less that before",
                            LEDGER),
                    field(
                            "yaw-moment",
                            "yaw",
                            Measure.MOMENT,
                            "Share in the moment about the upright axis; positive turns to the right.",
                            "moment with this cause added less that before",
                            LEDGER),
                    field(
                            "swirl-moment",
                            "of it swirl",
                            Measure.MOMENT,
                            "What the swirl of one fan's jet adds about the upright axis.",
                            "share of swirl times torque at the shaft, against the spin",
                            REFEREE),
                    words("mount", "mount", "A mount on a beam."),
                    new Field(
                            "mount-twist",
                            "twists by",
                            Measure.ANGLE,
                            "How far the mount's beam twists under thrust and swirl at lift-off, either way.",
                            "torque about the beam times length over torsion rigidity",
                            "Saint-Venant; Timoshenko, from memory",
                            BEAMS),
                    new Field(
                            "mount-slope",
                            "bends by",
                            Measure.ANGLE,
                            "How far the end of the mount's beam slopes from bending at lift-off.",
                            "F l²/(2 E I) + M l/(E I), at right angles to the beam",
                            "Euler and Bernoulli; Timoshenko, from memory",
                            BEAMS),
                    field(
                            "fan-thrust-at-lift-off",
                            "thrust",
                            Measure.THRUST,
                            "Installed thrust along the fan's axis when lift is weight.",
                            "root of lift less weight over the throttle, solved with the network",
                            REFEREE),
                    field(
                            "centre-forward",
                            "forward",
                            Measure.SMALL_LENGTH,
                            "Centre of mass in front of the rig's origin (between the shoulders, or that of the frame).",
                            "sum of mass times place over mass",
                            MASS),
                    field(
                            "centre-right",
                            "right",
                            Measure.SMALL_LENGTH,
                            "Centre of mass to the right of the origin.",
                            "sum of mass times place over mass",
                            MASS),
                    field(
                            "centre-up",
                            "up",
                            Measure.SMALL_LENGTH,
                            "Centre of mass above the origin.",
                            "sum of mass times place over mass",
                            MASS),
                    field(
                            "roll-inertia",
                            "roll inertia",
                            Measure.INERTIA,
                            "Moment of inertia about the forward axis through the centre of mass.",
                            "own inertia of every part and mass times distance squared; the person after de Leva 1996",
                            MASS),
                    field(
                            "pitch-inertia",
                            "pitch inertia",
                            Measure.INERTIA,
                            "The same about the sideways axis.",
                            "as roll inertia",
                            MASS),
                    field(
                            "yaw-inertia",
                            "yaw inertia",
                            Measure.INERTIA,
                            "The same about the upright axis.",
                            "as roll inertia",
                            MASS),
                    field(
                            "wearer-centre",
                            "centre below shoulders",
                            Measure.SMALL_LENGTH,
                            "Centre of mass of the standing wearer with hanging arms, below the middle between the shoulders.",
                            "segments after de Leva 1996, moved to where the scales say",
                            "MeasuredBodyTest.readingsGiveTheBodyBack"),
                    field(
                            "wearer-roll-inertia",
                            "roll inertia",
                            Measure.INERTIA,
                            "Moment of inertia of the standing wearer with hanging arms, about the own centre.",
                            "segments after de Leva 1996, or what was said, or the swing's formula from its readings",
                            "MeasuredBodyTest.readingsGiveTheBodyBack"),
                    field(
                            "wearer-pitch-inertia",
                            "pitch inertia",
                            Measure.INERTIA,
                            "Moment of inertia of the standing wearer with hanging arms, about the own centre.",
                            "segments after de Leva 1996, or what was said, or the swing's formula from its readings",
                            "MeasuredBodyTest.readingsGiveTheBodyBack"),
                    field(
                            "wearer-yaw-inertia",
                            "yaw inertia",
                            Measure.INERTIA,
                            "Moment of inertia of the standing wearer with hanging arms, about the own centre.",
                            "segments after de Leva 1996, or what was said, or the swing's formula from its readings",
                            "MeasuredBodyTest.readingsGiveTheBodyBack"),
                    words("joint", "joint", "A joint of an arm and the angle turned there."),
                    field(
                            "joint-turn",
                            "turn",
                            Measure.ANGLE,
                            "How far to turn it from where it is held.",
                            "least sum of squares of all turns that leaves no moment, thrusts held",
                            "BalanceExamplesTest.theArmAnglesCancelTheMoment"),
                    field(
                            "reserve-positive",
                            "right down, back, right",
                            Measure.ANGULAR_ACCELERATION,
                            "Greatest angular acceleration one way with the other moments zero and lift at weight.",
                            "linear programme over the fans' shares, over inertia",
                            RESERVE),
                    field(
                            "reserve-negative",
                            "left down, forward, left",
                            Measure.ANGULAR_ACCELERATION,
                            "The same the other way; below zero no trim holds weight there.",
                            "linear programme over the fans' shares, over inertia",
                            RESERVE),
                    field(
                            "reserve-asked",
                            "asked",
                            Measure.ANGULAR_ACCELERATION,
                            "Reserve that is asked; from memory.",
                            "2 rad/s² for roll and pitch, 0.3 rad/s² for yaw",
                            VERDICT),
                    words("jet-strikes", "strikes", "What of the rig itself the jet meets."),
                    field(
                            "jet-distance",
                            "after",
                            Measure.LENGTH,
                            "From the fan to the nearest thing met, mean over the jet.",
                            "rays of equal momentum, first thing met",
                            JETS),
                    new Field(
                            "jet-speed",
                            "speed there",
                            Measure.SPEED,
                            "Speed on the jet's axis there; neighbours that have merged reach further.",
                            "exit speed times least of 1 and 6.1 √N D / distance",
                            "turbulent free jets, from memory",
                            "FreeJetTest.raysHoldTheirShareOfMomentum"),
                    new Field(
                            "jet-loss",
                            "thrust lost",
                            Measure.THRUST,
                            "Thrust that pushes the rig's own limbs and parts down again; its band holds what a body catches, ± 40 %.",
                            "momentum met times half a drag coefficient (limb 1.2, box 2.0)",
                            "free jet superposed in momentum; coefficients from memory",
                            JETS),
                    words(
                            "arm-joint",
                            "joint",
                            "A joint of an arm and the axis about which it is held."),
                    field(
                            "arm-moment",
                            "moment held",
                            Measure.MOMENT,
                            "What the wearer must hold there; positive towards flexion, abduction and outward rotation.",
                            "less the moments of weight and thrust of all beyond the joint, statics",
                            ARMS),
                    words("arm-exertion", "by", "The way in which the wearer pushes."),
                    new Field(
                            "arm-strength",
                            "strength",
                            Measure.MOMENT,
                            "What such a joint holds briefly: measured, or a published mean of men or women.",
                            "a published mean, people from half to one and a half of it",
                            "see the table of their sources",
                            ARMS),
                    new Field(
                            "arm-share",
                            "of strength",
                            Measure.PERCENT,
                            "Share of that strength; its band holds the doubt of both.",
                            "moment held over strength",
                            "the limit is ergonomics practice, from memory",
                            ARMS),
                    words("arm-strength-origin", "taken from", "Where the strength comes from."),
                    words(
                            "yaw-trim",
                            "trim",
                            "Whether the moment about the upright axis must be zero."),
                    field(
                            "trim-lift",
                            "lift",
                            Measure.THRUST,
                            "Most lift without roll and pitch moment.",
                            "linear programme over the fans' shares",
                            "AllocationTest.theSixLiftWithAllTheyHave"),
                    field(
                            "trim-lift-to-weight",
                            "lift over weight",
                            Measure.RATIO,
                            "That lift over weight.",
                            "lift of the trim / weight",
                            "AllocationTest.theSixLiftWithAllTheyHave"),
                    field(
                            "trim-yaw",
                            "turns with",
                            Measure.ANGULAR_ACCELERATION,
                            "Angular acceleration about the upright axis that this trim leaves.",
                            "yaw moment of the trim over inertia",
                            "AllocationTest.freeYawLiftsMoreAndTellsTheTurn"),
                    field(
                            "trim-power",
                            "power",
                            Measure.POWER,
                            "Power at the controllers with the thrusts of the trim, supply solved again.",
                            "sum of terminal voltage times current",
                            TRIM),
                    field(
                            "trim-power-saved",
                            "less than hands off",
                            Measure.POWER,
                            "Power of lift-off as it stands, moments and all, less that of the trim.",
                            "difference of two solved points",
                            TRIM),
                    field(
                            "trim-top-share",
                            "busiest fan",
                            Measure.PERCENT,
                            "Greatest share of its thrust at full throttle that the trim asks of a fan.",
                            "greatest of the shares",
                            TRIM),
                    field(
                            "lift-trim-share",
                            "most lift",
                            Measure.PERCENT,
                            "Share of its thrust at full throttle in the trim of most lift with yaw held to zero.",
                            "linear programme over the fans' shares",
                            "AllocationTest.theSixLiftWithAllTheyHave"),
                    field(
                            "power-trim-share",
                            "least power",
                            Measure.PERCENT,
                            "The same in the trim of least power with yaw held to zero.",
                            "least of shaft power (thrust to the 1.5) plus winding heat (thrust squared)",
                            TRIM),
                    field(
                            "free-trim-share",
                            "least power, yaw free",
                            Measure.PERCENT,
                            "The same with yaw free.",
                            "least of shaft power (thrust to the 1.5) plus winding heat (thrust squared)",
                            TRIM),
                    new Field(
                            "authority-index",
                            "authority index",
                            Measure.THRUST,
                            "Distance of hover from the edge of all lifts and moments the fans can give, moments divided by the arm beside it; below zero only a bound.",
                            "least over the facets of reach along the normal less distance along it",
                            "Du, Quan, Yang and Cai, J. Guid. Control Dyn. 38(5), 2015",
                            INDEX),
                    field(
                            "authority-arm",
                            "with moments over",
                            Measure.LENGTH,
                            "Arm by which moments are made forces in the authority index.",
                            "root mean square distance of the fans from the upright axis",
                            INDEX));

    private BalanceFields() {}
}
