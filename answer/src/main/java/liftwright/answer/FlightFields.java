package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** One profile flown, and the loops that flew it. */
final class FlightFields {

    private static final String LOOPS = "MarginsTest.aTextbookLoopHasItsMargin";
    private static final String FLOWN = "FlightRunTest.theRigsOwnComputerDoesSo";
    private static final String TOLD = "FlightQuestionTest.theAnswerTellsWhatWasFlown";
    private static final String STEPPED =
            "body, rotors, supply, sensors and loops stepped together at their own rates";

    static final List<Field> ROWS =
            List.of(
                    words("loop-axis", "axis", "What a loop steers."),
                    words("loop-level", "loop", "How far out a loop is: rate is innermost."),
                    loop(
                            "loop-crossover",
                            "crossover",
                            Measure.FREQUENCY,
                            "Where the gain of the open loop is one."),
                    loop(
                            "loop-phase-margin",
                            "phase margin",
                            Measure.ANGLE,
                            "Lag that the loop of the rigid body would still stand at its crossover."),
                    loop(
                            "loop-gain-margin",
                            "gain margin",
                            Measure.RATIO,
                            "Factor by which its gain may rise, of the rigid body."),
                    loop(
                            "loop-worst-margin",
                            "least margin",
                            Measure.ANGLE,
                            "Phase margin of the rigid body with ± 30 % of inertia and lag, whichever is worst."),
                    new Field(
                            "loop-harness-distance",
                            "with the harness",
                            Measure.RATIO,
                            "Least distance of the open loop from −1 with a wearer who gives at 3 to 8 Hz in the harness, at a damping of 0.1; 0.5 at least is asked, which alone leaves 29° and a factor of two.",
                            "two inertias on a spring in place of one; stability by Nyquist's criterion",
                            "definition",
                            "HarnessLoopsTest.grantedLoopsStayApartWithAnyHarnessOfPractice"),
                    loop(
                            "loop-overshoot",
                            "overshoot",
                            Measure.PERCENT,
                            "How far the rigid body's answer to a step goes beyond it."),
                    loop(
                            "loop-settles",
                            "settles in",
                            Measure.TIME,
                            "Until the rigid body's answer to a step stays within 5 %."),
                    words("loop-bound", "bound by", "What kept the crossover from being higher."),
                    words("flight-figure", "figure", "What is held against a limit."),
                    words("flight-standing", "standing", "How it stands against its limit."),
                    flown(
                            "flight-length",
                            "distance",
                            Measure.LENGTH,
                            "Place, height or distance in a flight."),
                    flown("flight-angle", "angle", Measure.ANGLE, "Tilt, roll, pitch, heading."),
                    flown("flight-speed", "speed", Measure.SPEED, "Climb, or sink at touch-down."),
                    flown(
                            "flight-thrust",
                            "thrust",
                            Measure.THRUST,
                            "Thrust upwards of all fans, or pull of a line."),
                    flown(
                            "flight-share",
                            "share",
                            Measure.PERCENT,
                            "Throttle, charge, or a share of the time."),
                    flown("flight-voltage", "voltage", Measure.VOLTAGE, "Lowest cell under load."),
                    flown(
                            "flight-current",
                            "current",
                            Measure.CURRENT,
                            "Current of the pack that gives most."),
                    flown("flight-energy", "energy", Measure.ENERGY, "Taken by all controllers."),
                    flown("flight-time", "time", Measure.TIME, "Since the start of the profile."),
                    words("flight-event", "event", "What happened."),
                    near("module-one", "module", Measure.COUNT, "One module of the scene."),
                    near("module-other", "and", Measure.COUNT, "Another module of it."),
                    near(
                            "module-apart",
                            "least distance",
                            Measure.LENGTH,
                            "Between any fan or foot of the one and any of the other; below 0 they touch."),
                    near(
                            "module-wanted",
                            "wanted",
                            Measure.LENGTH,
                            "Least distance that the profile asks for."),
                    near(
                            "module-jet",
                            "jets",
                            Measure.COUNT,
                            "Whether a jet of either reaches the other: nine tenths of its momentum, as far as it is faster than a third of the speed at its exit, or to the ground."),
                    pushed(
                            "module-push",
                            "greatest push",
                            Measure.THRUST,
                            "Of the jets of other modules on its body and on the air that its fans take in from the side; what the jets take of its thrust comes on top."),
                    pushed(
                            "module-push-share",
                            "of its weight",
                            Measure.PERCENT,
                            "That push over the weight of the module."),
                    lost(
                            "loss-called",
                            "called",
                            Measure.COUNT,
                            "What the review of failures calls the loss at the declared values."),
                    lost(
                            "loss-came",
                            "flown",
                            Measure.COUNT,
                            "What came of it in flight: recovered is height lost below the limit, tilt below 45°, drift below 3 m."),
                    lost(
                            "loss-agreement",
                            "statics and flight",
                            Measure.COUNT,
                            "Whether the flight bears out what review calls it."),
                    lost(
                            "loss-reason",
                            "why not",
                            Measure.COUNT,
                            "Why the flight does not bear it out."),
                    lost(
                            "loss-height",
                            "height lost",
                            Measure.LENGTH,
                            "Greatest height below the point that was held."),
                    lost("loss-tilt", "tilt", Measure.ANGLE, "Greatest tilt with the loss."),
                    lost(
                            "loss-drift",
                            "drift",
                            Measure.LENGTH,
                            "Greatest level distance from the point that was held."));

    private FlightFields() {}

    private static Field loop(String id, String label, Measure measure, String meaning) {
        return new Field(
                id,
                label,
                measure,
                meaning,
                "open loop of inertia, lag and delay as declared",
                "definition",
                LOOPS);
    }

    private static Field flown(String id, String label, Measure measure, String meaning) {
        return new Field(id, label, measure, meaning, STEPPED, "Newton and Euler", FLOWN);
    }

    private static Field near(String id, String label, Measure measure, String meaning) {
        return new Field(
                id,
                label,
                measure,
                meaning,
                "all modules flown in step in one air, each with tolerances and sensors of its own; places held against each other 25 times a second",
                "geometry; free jets as in balance",
                "NearnessTest.distanceAndJetsAreThoseOfTheGeometry");
    }

    private static Field pushed(String id, String label, Measure measure, String meaning) {
        return new Field(
                id,
                label,
                measure,
                meaning,
                "drag in the squared speeds of free jets, added up over a box of its areas of drag; mass flow times speed across each intake",
                "free jets as in balance; Reichardt 1942 (from memory) for jets that merge",
                "JetPushTest.aStillBoxIsPushedByHalfTheMomentumThatMeetsIt");
    }

    private static Field lost(String id, String label, Measure measure, String meaning) {
        return new Field(
                id,
                label,
                measure,
                meaning,
                "held on full packs, let go, and the loss 2 s later; " + STEPPED,
                "Newton and Euler",
                "LossFlightsTest.whatReviewCallsBorneIsRecoveredAndWhatItCallsNotIsNot");
    }

    private static Field words(String id, String label, String meaning) {
        return new Field(id, label, Measure.COUNT, meaning, "in words", "by definition", TOLD);
    }
}
