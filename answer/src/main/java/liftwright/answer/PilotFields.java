package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** A wearer who steers by leaning and with the arms. */
final class PilotFields {

    private static final String MOTION = "HoverMotionTest.aLibrarySaysTheSameOfAnyFansAndInertia";
    private static final String LEVELS = "PersonTest.levelsAreThePublishedOnes";
    private static final String LEANING = "MeansTest.theFrameTurnsAsTheTwoBodiesDo";
    private static final String LOOP =
            "PersonTest.phaseIsLeftExactlyWhereAllPolesOfTheClosedLoopFade";
    private static final String SAID = "SteeredSectionsTest.saysWhoCanHoldMudlark";
    private static final String OWN_MOTION =
            "eigenvalues of weight and of the air that fans bring to their own speed, at hover";

    static final List<Field> ROWS =
            List.of(
                    words("pilot-motion", "motion", "What the rig does when left alone.", MOTION),
                    new Field(
                            "pilot-doubles",
                            "doubles in",
                            Measure.TIME,
                            "Time in which a motion of the rig left alone grows to twice its size.",
                            "ln 2 over the real part; " + OWN_MOTION,
                            "rigid body; momentum drag [LEISHMAN]",
                            MOTION),
                    new Field(
                            "pilot-period",
                            "swings once in",
                            Measure.TIME,
                            "Time of one swing of a motion of the rig left alone.",
                            "2π over the imaginary part; " + OWN_MOTION,
                            "rigid body; momentum drag [LEISHMAN]",
                            MOTION),
                    new Field(
                            "pilot-level",
                            "level for aeroplanes",
                            Measure.RATIO,
                            "How such a motion would be ranked in an aeroplane: 1 is best, 3 the last that may be flown. A yardstick and no rule for what is worn.",
                            "least time to double 12, 8, 4 s; of a slow swing least damping 0.04, 0, then 55 s",
                            "[MIL8785C]",
                            LEVELS),
                    words("pilot-axis", "about", "The axis a person steers about.", LOOP),
                    words("pilot-means", "steers with", "What the wearer turns.", LEANING),
                    new Field(
                            "pilot-acceleration",
                            "at full reach",
                            Measure.ANGULAR_ACCELERATION,
                            "Angular acceleration of the rig with arms or legs turned as far as is counted on.",
                            "moment for each radian times reach over inertia; reach of the arms as declared, of the legs 20° from memory",
                            "statics of the posed wearer",
                            LEANING),
                    new Field(
                            "pilot-published-rate",
                            "to a published rate in",
                            Measure.TIME,
                            "How long full reach takes to the turn rate that a rotorcraft in hover must reach: 13°/s in pitch, 50°/s in roll, 22°/s in yaw.",
                            "rate over angular acceleration",
                            "[ADS33]",
                            LEANING),
                    words(
                            "pilot-first",
                            "first response",
                            "Whether the rig first turns the wrong way, and for how long.",
                            LEANING),
                    new Field(
                            "pilot-phase-usual",
                            "phase left, usual",
                            Measure.ANGLE,
                            "Most phase that a person with a delay of 0.4 s has left in this loop; below 0 it cannot be held.",
                            "90° − ω_c τ less what nobody can undo, best ω_c from 1 to 2 rad/s",
                            "[MCRUER67]; crossover and delay: common practice",
                            LOOP),
                    new Field(
                            "pilot-phase-practised",
                            "phase left, in practice",
                            Measure.ANGLE,
                            "The same of one in practice, with a delay of 0.25 s.",
                            "90° − ω_c τ less what nobody can undo, best ω_c from 1 to 2 rad/s",
                            "[MCRUER67]; crossover and delay: common practice",
                            LOOP),
                    words(
                            "pilot-holds",
                            "so it",
                            "Whether a person can close the loop: with 45° left at a usual delay, or with 20° in practice.",
                            SAID));

    private PilotFields() {}

    private static Field words(String id, String label, String meaning, String test) {
        return new Field(id, label, Measure.RATIO, meaning, "in words", "by definition", test);
    }
}
