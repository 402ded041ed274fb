package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Where things are that a picture of the rig shows, in the axes of the rig file. */
final class DrawingFields {

    private static final String PLACES = "RigDrawingTest.placesAreThoseOfTheFile";
    private static final String LIMBS = "RigDrawingTest.limbsJoinAndHoldTheirCentres";
    private static final String LINE = "RigDrawingTest.theLineOfLiftLeavesNoMomentAcrossIt";
    private static final String JETS = "JetLayersTest.jetsAreAsWideAsThreeQuartersOfTheirMomentum";
    private static final String STRUCK = "JetLayersTest.strikesAreThoseOfTheLedger";
    private static final String HELD = "HoldSpaceTest.whatHoldsStandsWhereItWasDeclared";
    private static final String STATICS = "statics";

    private static Field place(String id, String label, String meaning) {
        return new Field(
                id,
                label,
                Measure.SMALL_LENGTH,
                meaning,
                "declared place, turned and carried by mount and limb",
                "the rig file",
                PLACES);
    }

    private static Field end(String id, String label, String meaning) {
        return new Field(
                id,
                label,
                Measure.SMALL_LENGTH,
                meaning,
                "end nearer to the trunk plus the length of the segment along its axis",
                "de Leva 1996",
                LIMBS);
    }

    private static Field push(String id, String label, String meaning) {
        return new Field(
                id, label, Measure.RATIO, meaning, "unit vector of the force", STATICS, PLACES);
    }

    private static Field jet(
            String id, String label, Measure measure, String meaning, String formula) {
        return new Field(
                id, label, measure, meaning, formula, "turbulent free jets, from memory", JETS);
    }

    private static Field held(String id, String label, String meaning) {
        return new Field(
                id,
                label,
                Measure.LENGTH,
                meaning,
                "as declared, from the ground below the anchor or the middle of the stand",
                "the rig file",
                HELD);
    }

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "spin",
                            "spin",
                            Measure.COUNT,
                            "Sense of rotation seen along the thrust: right-hand turns as a right-hand screw that advances along it.",
                            "as declared",
                            "the rig file",
                            PLACES),
                    place(
                            "place-forward",
                            "forward",
                            "Place in front of the rig's origin (between the shoulders, or that of the frame)."),
                    place("place-right", "right", "Place to the right of the origin."),
                    place("place-up", "up", "Place above the origin."),
                    new Field(
                            "tip-diameter",
                            "tip diameter",
                            Measure.SMALL_LENGTH,
                            "Diameter of the rotor.",
                            "as declared",
                            "the rig file",
                            PLACES),
                    push(
                            "push-forward",
                            "push forward",
                            "Forward share of the thrust's direction."),
                    push("push-right", "push right", "Share to the right of the same."),
                    push("push-up", "push up", "Upward share of the same."),
                    new Field(
                            "segment",
                            "segment",
                            Measure.COUNT,
                            "Segment of the wearer, from the end nearer to the trunk to the other.",
                            "named",
                            "de Leva 1996",
                            LIMBS),
                    end("end-forward", "end forward", "Far end of it in front of the origin."),
                    end("end-right", "end right", "Far end of it to the right of the origin."),
                    end("end-up", "end up", "Far end of it above the origin."),
                    new Field(
                            "part-kind",
                            "kind",
                            Measure.COUNT,
                            "Pack or other part.",
                            "as declared",
                            "the rig file",
                            PLACES),
                    new Field(
                            "part-mass",
                            "mass",
                            Measure.MASS,
                            "Mass of the part.",
                            "as declared; a pack is its cells and its extra mass",
                            "the rig file",
                            PLACES),
                    new Field(
                            "lift-at-lift-off",
                            "force",
                            Measure.THRUST,
                            "Sum of all thrusts when lift is weight, along its own direction.",
                            "length of the sum of the thrusts",
                            STATICS,
                            LINE),
                    new Field(
                            "jet-exit-diameter",
                            "exit",
                            Measure.SMALL_LENGTH,
                            "Diameter of a round exit of the fan's exit area.",
                            "2 √(A/π)",
                            "the rig file",
                            JETS),
                    jet(
                            "jet-core-length",
                            "core",
                            Measure.LENGTH,
                            "How far the jet's axis is as fast as its exit.",
                            "6.1 D"),
                    jet(
                            "jet-core-diameter",
                            "width at the core's end",
                            Measure.SMALL_LENGTH,
                            "Width there of what is faster than half of the axis: three quarters of the momentum.",
                            "2 · 0.096 x"),
                    jet(
                            "jet-drawn-length",
                            "drawn for",
                            Measure.LENGTH,
                            "How far the jet is drawn: to half of its speed at the exit, or to the ground under the wearer.",
                            "2 cores, 2.5 m at most"),
                    jet(
                            "jet-drawn-diameter",
                            "width there",
                            Measure.SMALL_LENGTH,
                            "Width of the same at the end of what is drawn.",
                            "2 · 0.096 x; within the core straight from the exit's"),
                    new Field(
                            "jet-struck",
                            "strikes",
                            Measure.COUNT,
                            "One thing of the rig itself that the jet meets.",
                            "named",
                            "the rig file",
                            STRUCK),
                    new Field(
                            "jet-momentum-share",
                            "of the thrust",
                            Measure.PERCENT,
                            "How much of the jet's momentum pushes it.",
                            "momentum met times half a drag coefficient (limb 1.2, box 2.0)",
                            "free jet superposed in momentum; coefficients from memory",
                            STRUCK),
                    new Field(
                            "hold-shape",
                            "kind",
                            Measure.COUNT,
                            "Kind of thing about a held rig. What reaches around is told by one end of its radius.",
                            "as declared",
                            "the rig file",
                            HELD),
                    new Field(
                            "hold-label",
                            "what",
                            Measure.COUNT,
                            "What it is called.",
                            "as declared",
                            "the rig file",
                            HELD),
                    held("hold-forward", "forward", "First end or corner, in front of the middle."),
                    held("hold-right", "right", "The same, to the right of the middle."),
                    held("hold-up", "up", "The same, above the ground."),
                    held("hold-end-forward", "end forward", "Other end or corner, in front."),
                    held("hold-end-right", "end right", "The same, to the right."),
                    held("hold-end-up", "end up", "The same, above the ground."));

    private DrawingFields() {}
}
