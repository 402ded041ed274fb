package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Proofs of the kills, and what a day of testing allows. */
final class DayFields {

    private static final String PRESSES = "PressTimesTest.trueTimesLieWithinWhatIsTold";
    private static final String PROVED = "ProvingTest.theWorstPressIsJudgedAtItsWorstEnd";
    private static final String HEIGHTS = "HeightsTest.allowedHeightIsThatOfAPlainIntegrator";
    private static final String PLANNED =
            "TodaysPlanTest.nothingAllowedBreaksARuleAndNothingIsRefusedWithoutOne";

    private static final String READ =
            "between the rows before and after the crossing, widened by smoothing and noise";
    private static final String LOG = "the kill log; means of what only falls";
    private static final String NEWTON = "Newton's second law; measured thrust bounded from above";
    private static final String RULES = "rules of a day, common practice";

    static final List<Field> ROWS =
            List.of(
                    row(
                            "proof-path",
                            "way to stop",
                            Measure.COUNT,
                            "A declared way to stop the fans, as the log calls it.",
                            "named",
                            "the rig file",
                            PROVED),
                    row(
                            "proof-presses",
                            "presses",
                            Measure.COUNT,
                            "How many of its presses could be timed.",
                            "counted",
                            "the kill log",
                            PROVED),
                    row(
                            "proof-half",
                            "half left by",
                            Measure.TIME,
                            "From the press until half of the thrust was left: the late end of the worst press.",
                            READ,
                            LOG,
                            PRESSES),
                    row(
                            "proof-tenth",
                            "a tenth left by",
                            Measure.TIME,
                            "From the press until a tenth of the thrust was left: the late end of the worst press.",
                            READ,
                            LOG,
                            PRESSES),
                    row(
                            "proof-outcome",
                            "outcome",
                            Measure.COUNT,
                            "How the late end of the worst press stands against the limit of a kill.",
                            "late end against the limit",
                            "JCGM 106",
                            PROVED),
                    row(
                            "proof-note",
                            "to be known",
                            Measure.COUNT,
                            "Why it does not hold or cannot be told, and what makes the times wider.",
                            "in words",
                            "the kill log",
                            PROVED),
                    row(
                            "proof-reaction",
                            "and reaction",
                            Measure.TIME,
                            "From the fault until someone presses, as declared or as usual.",
                            "value and its upper tolerance",
                            "the rig file",
                            HEIGHTS),
                    row(
                            "proof-height",
                            "allowed height",
                            Measure.LENGTH,
                            "From so high a runaway may begin and strike the ground no harder than the limit.",
                            "found by halving over runaways with the worst measured times",
                            NEWTON,
                            HEIGHTS),
                    row(
                            "proof-apex",
                            "comes to",
                            Measure.LENGTH,
                            "Highest point of a runaway from the demanded height with the worst measured times.",
                            "full thrust until half, half until a tenth, a tenth while it rises",
                            NEWTON,
                            HEIGHTS),
                    row(
                            "proof-impact",
                            "strikes at",
                            Measure.SPEED,
                            "Its speed at the ground.",
                            "without thrust in the fall",
                            NEWTON,
                            HEIGHTS),
                    row(
                            "allowed",
                            "allowed today",
                            Measure.COUNT,
                            "Whether the day allows the card.",
                            "every rule of a day at the card's turn",
                            RULES,
                            PLANNED),
                    row(
                            "pause-before",
                            "wait before",
                            Measure.TIME,
                            "Pause before the card, after the last hot run.",
                            "wait of the review of heat, less what has passed",
                            "review of heat",
                            PLANNED),
                    row(
                            "day-begin",
                            "begins",
                            Measure.COUNT,
                            "When the card begins, if all before it goes as planned.",
                            "start, cards and pauses before it",
                            RULES,
                            PLANNED),
                    row(
                            "day-runs",
                            "runs",
                            Measure.COUNT,
                            "How many runs the packs give, of those that a pass needs.",
                            "charge above the reserve over what a run takes",
                            RULES,
                            PLANNED),
                    row(
                            "day-people",
                            "who does what",
                            Measure.COUNT,
                            "Who takes which role; nobody has two.",
                            "a matching of roles and people",
                            RULES,
                            PLANNED));

    private DayFields() {}

    private static Field row(
            String id,
            String label,
            Measure measure,
            String meaning,
            String formula,
            String source,
            String test) {
        return new Field(id, label, measure, meaning, formula, source, test);
    }
}
