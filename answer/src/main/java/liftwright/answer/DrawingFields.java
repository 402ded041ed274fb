package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Where things are that a picture of the rig shows, in the axes of the rig file. */
final class DrawingFields {

    private static final String PLACES = "RigDrawingTest.placesAreThoseOfTheFile";
    private static final String LIMBS = "RigDrawingTest.limbsJoinAndHoldTheirCentres";
    private static final String LINE = "RigDrawingTest.theLineOfLiftLeavesNoMomentAcrossIt";
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
                            LINE));

    private DrawingFields() {}
}
