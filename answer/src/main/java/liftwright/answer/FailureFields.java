package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What is left when something fails, how bad that is, and what goes next. */
final class FailureFields {

    private static final String ANSWER = "FailuresExamplesTest.theAnswerAgreesWithItself";
    private static final String REFEREE = "FailuresOnRandomRigsTest.eachFateIsTheReferees";
    private static final String FATE = "FaultFateTest.whatHoldsEveryAxisFliesOn";
    private static final String RISK = "SeverityRuleTest.theUsualMatrixIsThatOfTheStandard";
    private static final String STATICS = "statics";
    private static final String PROGRAMME = "linear programme over the shares of full thrust";
    private static final String LEAST = " −9 stands for that or worse.";
    private static final String WORST = " −99 stands for that or worse.";

    private static Field field(
            String id, String label, Measure measure, String meaning, String formula, String test) {
        return new Field(id, label, measure, meaning, formula, STATICS, test);
    }

    private static Field words(String id, String label, String meaning, String source) {
        return new Field(id, label, Measure.COUNT, meaning, "named", source, ANSWER);
    }

    static final List<Field> ROWS =
            List.of(
                    field(
                            "failure-margin",
                            "margin of the worst failure",
                            Measure.RATIO,
                            "Least margin of all single faults: 0 has just what it needs." + LEAST,
                            "least over the faults",
                            REFEREE),
                    field(
                            "failure-margin-demand",
                            "asked",
                            Measure.RATIO,
                            "What the margin of the worst failure shall not be less than.",
                            "0",
                            ANSWER),
                    field(
                            "failure-margin-gain",
                            "gain in margin",
                            Measure.RATIO,
                            "Margin of the worst failure with a change less that without it.",
                            "difference on the same draws",
                            ANSWER),
                    field(
                            "fault-margin",
                            "margin",
                            Measure.RATIO,
                            "Least of: lift over what is asked less 1, every reserve over that of a whole rig, speed that may be over speed of the landing less 1; 0 has just what it needs."
                                    + LEAST
                                    + " 9 stands for that or better.",
                            "the better of flying on (lift and reserves) and of coming down upright (reserves on the way, speed of the landing)",
                            FATE),
                    words(
                            "fault-outcome",
                            "then it",
                            "What the rig does with the fault.",
                            "figures of the same line"),
                    words(
                            "fault-outcome-paired",
                            "other sets: then it",
                            "What the rig does with the fault when packs feed other sets of fans.",
                            "rig computed anew"),
                    field(
                            "fault-margin-paired",
                            "margin",
                            Measure.RATIO,
                            "Margin of the fault when packs feed other sets of fans.",
                            "rig computed anew",
                            ANSWER),
                    words(
                            "fault-verdict",
                            "verdict",
                            "Whether the rig has with the fault what is asked.",
                            "band of the margin against 0"),
                    field(
                            "fault-lift",
                            "lift over weight",
                            Measure.RATIO,
                            "Lift of all that still pushes at full throttle, on full packs, over weight.",
                            "network solved anew with the fault",
                            REFEREE),
                    field(
                            "fault-trim-held",
                            "trimmed, yaw held",
                            Measure.RATIO,
                            "Greatest lift without roll, pitch and yaw, over weight.",
                            PROGRAMME,
                            REFEREE),
                    field(
                            "fault-trim-free",
                            "trimmed, yaw free",
                            Measure.RATIO,
                            "Greatest lift without roll and pitch, over weight.",
                            PROGRAMME,
                            REFEREE),
                    reserve("fault-roll", "roll reserve", "roll"),
                    reserve("fault-pitch", "pitch reserve", "pitch"),
                    reserve("fault-yaw", "yaw reserve", "yaw"),
                    free("fault-roll-free", "roll, yaw free", "roll"),
                    free("fault-pitch-free", "pitch, yaw free", "pitch"),
                    field(
                            "fault-reach",
                            "reach left",
                            Measure.PERCENT,
                            "What is left of the arms' reach once they cancel all three moments of the fans that are left.",
                            "1 less the least share of the reach that cancels the moments, to first order",
                            REFEREE),
                    field(
                            "fault-reach-yaw-free",
                            "yaw free",
                            Measure.PERCENT,
                            "The same for roll and pitch alone.",
                            "1 less the least share of the reach that cancels the moments, to first order",
                            REFEREE),
                    field(
                            "fault-tilt",
                            "roll and pitch",
                            Measure.ANGULAR_ACCELERATION,
                            "Greatest acceleration about roll and pitch where nothing steers.",
                            "moment over inertia",
                            REFEREE),
                    field(
                            "fault-turning",
                            "yaw",
                            Measure.ANGULAR_ACCELERATION,
                            "Acceleration about the upright axis where nothing steers.",
                            "moment over inertia",
                            REFEREE),
                    field(
                            "fault-impact",
                            "lands with",
                            Measure.SPEED,
                            "Speed at the ground from rest at the declared height with what lift is left; 0 where lift carries the weight.",
                            "√(2 g h (1 − lift/weight)), no drag",
                            FATE),
                    words(
                            "fault-severity",
                            "severity",
                            "Category I (death) to IV (less than a lost day).",
                            "MIL-STD-882E table I; the mapping from outcomes is this program's"),
                    new Field(
                            "fault-likelihood",
                            "likelihood",
                            Measure.COUNT,
                            "Level A (frequent) to E (improbable) within the running time that is declared.",
                            "1 − exp(−Σ rate × time), by the levels of the standard",
                            "MIL-STD-882E appendix A; rates are declared",
                            RISK),
                    new Field(
                            "fault-risk",
                            "risk",
                            Measure.COUNT,
                            "Word of the matrix in force for severity and likelihood.",
                            "looked up",
                            "the rig file, or MIL-STD-882E table III, of which copies disagree",
                            RISK),
                    field(
                            "survivor-fan-current",
                            "most at a fan",
                            Measure.CURRENT,
                            "Greatest current into a controller that still runs, lift at weight.",
                            "Kirchhoff's laws with the fault",
                            REFEREE),
                    field(
                            "survivor-pack-current",
                            "most of a pack",
                            Measure.CURRENT,
                            "Greatest current of a pack that still feeds, lift at weight.",
                            "Kirchhoff's laws with the fault",
                            REFEREE),
                    words(
                            "survivor-limits",
                            "passes at once",
                            "Limits that survivors pass as soon as they carry the weight.",
                            "limits of the rig file"),
                    words(
                            "goes-next",
                            "goes next",
                            "The first limit of any kind after the fault.",
                            "the run with the fault"),
                    new Field(
                            "goes-next-after",
                            "after",
                            Measure.TIME,
                            "From the fault to that limit.",
                            "heat and charge stepped with the solved network",
                            "balance of heat; Kirchhoff's laws",
                            ANSWER),
                    words(
                            "fails-too",
                            "and at once",
                            "What fails at the same time.",
                            "the rig file"),
                    field(
                            "pair-count",
                            "pairs",
                            Measure.COUNT,
                            "Pairs of faults with that outcome.",
                            "counted",
                            ANSWER),
                    field(
                            "pair-count-new",
                            "of single faults that are borne",
                            Measure.COUNT,
                            "Pairs that are not borne though each of the two is.",
                            "counted",
                            ANSWER));

    private static Field reserve(String id, String label, String axis) {
        return field(
                id,
                label,
                Measure.ANGULAR_ACCELERATION,
                "Lesser of the two "
                        + axis
                        + " reserves, lift at weight, the other moments zero; below 0 there is no trim."
                        + WORST,
                PROGRAMME + ", over inertia",
                REFEREE);
    }

    private static Field free(String id, String label, String axis) {
        return field(
                id,
                label,
                Measure.ANGULAR_ACCELERATION,
                "Lesser of the two " + axis + " reserves with yaw let go." + WORST,
                PROGRAMME + ", over inertia",
                REFEREE);
    }

    private FailureFields() {}
}
