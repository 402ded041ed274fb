package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Columns of the programme of cards and of what became of its passes. */
final class ProgrammeFields {

    private static final String PROGRAMME = "TrialsTest.everyCardOfTheProgrammeIsARow";
    private static final String VOIDED = "TrialsTest.whatChangedIsToldFromAndTo";
    private static final String PASSES = "the programme and the passes beside the rig file";

    static final List<Field> ROWS =
            List.of(
                    words("card", "card", "Name of a card, as it is typed.", PROGRAMME),
                    words("card-title", "what", "What is done on the card.", PROGRAMME),
                    words("rung", "rung", "How far the rig is trusted on it.", PROGRAMME),
                    words(
                            "card-state",
                            "state",
                            "Passed on this build, open, closed, voided by a change, or expired.",
                            PROGRAMME),
                    words("card-why", "why", "What keeps it closed.", PROGRAMME),
                    words("passed-on", "passed on", "Date of the pass that stands.", PROGRAMME),
                    words("passed-until", "until", "Last day on which the pass counts.", PROGRAMME),
                    new Field(
                            "card-minutes",
                            "min",
                            Measure.COUNT,
                            "Minutes that a card takes with setting up.",
                            "of the kind of card, all of its repeats",
                            "common practice",
                            PROGRAMME),
                    words("input-was", "was", "What it was when the card was passed.", VOIDED),
                    words("input-is", "is", "What it is now.", VOIDED));

    private ProgrammeFields() {}

    private static Field words(String id, String label, String meaning, String test) {
        return new Field(id, label, Measure.COUNT, meaning, "named", PASSES, test);
    }
}
