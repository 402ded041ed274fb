package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What a runaway does and what stops it. */
final class RunawayFields {

    private static final String TIMES = "RunawayReviewTest.timesAddUp";
    private static final String MOTION = "RunawayAgainstIntegratorTest.agreesWithTheLawsTypedAnew";
    private static final String STEPPED =
            "rotors, supply and one body integrated from event to event";
    private static final String LAWS =
            "Newton's second law; motor and rotor laws; momentum theory of axial inflow";

    static final List<Field> ROWS =
            List.of(
                    words(
                            "kill-path",
                            "what stops it",
                            "One declared way to stop the fans.",
                            TIMES),
                    words(
                            "runaway-trigger",
                            "what goes wrong",
                            "What makes the rig climb, and from where.",
                            TIMES),
                    time(
                            "runaway-detection",
                            "noticed after",
                            "From the fault until something notices; a person's reaction counts from the fault.",
                            "as declared"),
                    time(
                            "runaway-reaction",
                            "reaction",
                            "From there until someone presses: the slow end of what is declared, else the usual one.",
                            "value and its upper tolerance"),
                    words(
                            "runaway-reaction-from",
                            "of",
                            "Who reacts, and where that time is from.",
                            TIMES),
                    time(
                            "runaway-switch",
                            "switch",
                            "From the press until the fans are told zero or cut off.",
                            "delay of the signal, and of the contactor where nothing is told before"),
                    time(
                            "runaway-total",
                            "in all",
                            "From the fault until the fans are told zero or cut off.",
                            "sum of the three"),
                    time(
                            "runaway-spool-down",
                            "thrust gone after",
                            "From there until a tenth of the thrust is left.",
                            STEPPED),
                    length(
                            "runaway-height-at-kill",
                            "height then",
                            "Height of the soles when the kill acts."),
                    speed("runaway-climb-speed", "climbs at", "Upward speed when the kill acts."),
                    length("runaway-apex", "apex", "Greatest height of the soles."),
                    speed("runaway-impact", "falls at", "Speed at which the ground is struck."),
                    new Field(
                            "runaway-energy",
                            "energy",
                            Measure.IMPACT_ENERGY,
                            "Energy of rig and wearer at that blow.",
                            "m v²/2",
                            "mechanics",
                            MOTION),
                    speed("runaway-speed", "speed", "Upward speed; below 0 in the fall."),
                    words("runaway-end", "how it ends", "What becomes of it.", TIMES),
                    length(
                            "overhead-height",
                            "strikes at",
                            "Height of the soles when the top meets what is overhead."),
                    speed(
                            "overhead-speed",
                            "strikes with",
                            "Upward speed when the top meets what is overhead."),
                    new Field(
                            "overhead-energy",
                            "energy of the blow",
                            Measure.IMPACT_ENERGY,
                            "Energy of rig and wearer at a blow against what is overhead.",
                            "m v²/2",
                            "mechanics",
                            "TetherRunTest.anOverheadLineDoesNotStopAClimb"),
                    force("overhead-line", "in the line", "Greatest force in the overhead line."),
                    force(
                            "overhead-down-lines",
                            "in the lines down",
                            "Greatest upright force in the lines to the ground, together."));

    private RunawayFields() {}

    private static Field words(String id, String label, String meaning, String test) {
        return new Field(id, label, Measure.COUNT, meaning, "named", "the rig file", test);
    }

    private static Field time(String id, String label, String meaning, String formula) {
        return new Field(
                id, label, Measure.TIME, meaning, formula, "declared; else common practice", TIMES);
    }

    private static Field length(String id, String label, String meaning) {
        return new Field(id, label, Measure.LENGTH, meaning, STEPPED, LAWS, MOTION);
    }

    private static Field speed(String id, String label, String meaning) {
        return new Field(id, label, Measure.SPEED, meaning, STEPPED, LAWS, MOTION);
    }

    private static Field force(String id, String label, String meaning) {
        return new Field(
                id,
                label,
                Measure.THRUST,
                meaning,
                "spring and damper that act on one side alone, integrated",
                "mechanics; closed form of an undamped catch",
                "TetherRunTest.fallsIntoALineAsTheClosedFormSays");
    }
}
