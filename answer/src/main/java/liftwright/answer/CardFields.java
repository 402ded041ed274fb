package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What is printed on test cards. */
final class CardFields {

    private static final String FILE = "the rig file";
    private static final String CARD = "the programme of the rig";
    private static final String PRACTICE = "common practice";
    private static final String DEFINITION = "definition";
    private static final String PRINTED = "CardTextTest.everyReadingAndAbortIsPrintedOnce";
    private static final String KELVIN = "CardTextTest.theErrorOfATemperatureIsADifference";
    private static final String HEARING = "CardDistancesTest.earsBearLessTheLouderItIs";
    private static final String STEPS = "CardTextTest.theStepsPrintedAreThoseOfTheRun";
    private static final String LOADS = "CardLoadsTest.aBenchBearsTwiceWhatAFanAloneGives";
    private static final String DISTANCES = "CardDistancesTest.nobodyIsNearerThanAPieceFlies";
    private static final String CHANGED = "CardTextTest.whatChangedIsPrinted";
    private static final String PEOPLE = "CardTextTest.everybodyDeclaredHasAPlace";

    static final List<Field> ROWS =
            List.of(
                    words(
                            "card-was",
                            "was",
                            "What the file said when the card last passed.",
                            "the pass",
                            CHANGED),
                    words("card-is", "is", "What the file says now.", FILE, CHANGED),
                    new Field(
                            "must-bear",
                            "must bear",
                            Measure.COUNT,
                            "What has to be borne, in the unit of the load.",
                            "load times how often it is asked",
                            "statics; limits/restraint factor",
                            LOADS),
                    words("kept-away", "who, what", "Who or what keeps away.", PRACTICE, DISTANCES),
                    new Field(
                            "distance",
                            "stays beyond",
                            Measure.LENGTH,
                            "Distance from the fans that is kept.",
                            "by row: as the field of its value says",
                            "by row",
                            DISTANCES),
                    words("distance-why", "why", "What reaches so far.", "by row", DISTANCES),
                    words("instrument", "with", "What a channel is read with.", CARD, PRINTED),
                    words(
                            "instrument-reads",
                            "reads",
                            "Which channels an instrument reads.",
                            CARD,
                            PRINTED),
                    new Field(
                            "instrument-error",
                            "error",
                            Measure.COUNT,
                            "95 % of its errors are smaller, in the unit of what it reads.",
                            "by instrument",
                            "as told beside it",
                            PRINTED),
                    new Field(
                            "instrument-kelvin",
                            "error",
                            Measure.TEMPERATURE_DIFFERENCE,
                            "The same of an instrument that reads a temperature.",
                            "by instrument",
                            "as told beside it",
                            KELVIN),
                    words(
                            "hearing-day",
                            "at most a day",
                            "How long ears may be there in a day, without protection.",
                            "NIOSH 98-126",
                            HEARING),
                    new Field(
                            "instrument-share",
                            "of reading",
                            Measure.PERCENT,
                            "Error that grows with the reading, 95 %, added in quadrature.",
                            "by instrument",
                            "as told beside it",
                            PRINTED),
                    words(
                            "instrument-origin",
                            "from",
                            "Where the errors of an instrument come from.",
                            PRACTICE,
                            PRINTED),
                    new Field(
                            "card-step",
                            "step",
                            Measure.COUNT,
                            "Place in the order of steps.",
                            "counted",
                            CARD,
                            STEPS),
                    words("ordered", "ordered", "What the fans are told.", CARD, STEPS),
                    new Field(
                            "ordered-throttle",
                            "throttle",
                            Measure.PERCENT,
                            "Throttle of every fan that runs, of full.",
                            "a ladder of steps",
                            PRACTICE,
                            STEPS),
                    new Field(
                            "ordered-weight",
                            "thrust of weight",
                            Measure.PERCENT,
                            "Thrust up over the weight of what is lifted.",
                            "a ladder below the limit of the rung",
                            PRACTICE,
                            STEPS),
                    new Field(
                            "step-rise",
                            "rise in",
                            Measure.TIME,
                            "Time in which a level is reached from the one before.",
                            "difference of levels over the rate of the rung",
                            PRACTICE,
                            STEPS),
                    new Field(
                            "step-hold",
                            "hold for",
                            Measure.TIME,
                            "Time for which a level is held.",
                            "a ladder of steps",
                            PRACTICE,
                            STEPS),
                    words("read-of", "channel", "What is read of what.", CARD, PRINTED),
                    new Field(
                            "should-read",
                            "should read",
                            Measure.COUNT,
                            "What a channel should show at the end of a step, in its own unit.",
                            "the run of the step at the declared values; band: declared doubt, instrument and"
                                    + " model together, 95 %",
                            "as the field of its value says",
                            PRINTED),
                    words("read", "did read", "To be written on paper.", "the reader", PRINTED),
                    words("abort-of", "channel", "What is watched.", CARD, PRINTED),
                    words(
                            "abort-side",
                            "stop",
                            "On which side of the value a run is stopped.",
                            CARD,
                            PRINTED),
                    new Field(
                            "abort-value",
                            "value",
                            Measure.COUNT,
                            "Value at which a run is stopped, in the unit of the channel.",
                            "between the predicted bands and the limit, with time to react before the limit",
                            "as the field of its value says",
                            PRINTED),
                    new Field(
                            "abort-time",
                            "time left",
                            Measure.TIME,
                            "Time from the value to the limit at the steepest slope of this rig's own runs.",
                            "(limit - value) / slope",
                            DEFINITION,
                            PRINTED),
                    new Field(
                            "abort-predicted",
                            "expected",
                            Measure.COUNT,
                            "End of the predicted bands on the side of the limit, in the unit of the channel.",
                            "extreme over all steps",
                            DEFINITION,
                            PRINTED),
                    new Field(
                            "abort-limit",
                            "limit",
                            Measure.COUNT,
                            "What must never be reached, in the unit of the channel.",
                            "by channel",
                            "as told beside it",
                            PRINTED),
                    words(
                            "abort-origin",
                            "limit from",
                            "Where a limit comes from.",
                            "limits in force",
                            PRINTED),
                    words("person-role", "does", "What somebody does on a card.", FILE, PEOPLE),
                    words("holds-kill", "kill", "Which kill somebody holds.", FILE, PEOPLE),
                    words(
                            "name-today",
                            "today",
                            "Name of who does it today, to be written on paper.",
                            "the reader",
                            PEOPLE));

    private CardFields() {}

    private static Field words(
            String id, String label, String meaning, String source, String test) {
        return new Field(id, label, Measure.COUNT, meaning, "in words", source, test);
    }
}
