package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Columns of matrices of failures and of side views. */
final class MatrixFields {

    private static final String MATRIX = "MatrixTest.aMatrixIsATableToo";
    private static final String ELEVATION = "MatrixTest.aSideViewIsTablesToo";

    static final List<Field> ROWS =
            List.of(
                    words("fails", "fails", "What fails.", MATRIX),
                    words("fails-how", "how", "How it fails.", MATRIX),
                    words(
                            "standing",
                            "stands",
                            "What it is short of against what is asked, and what cannot be told;"
                                    + " else that it holds.",
                            MATRIX),
                    words("alike", "alike", "What else does the very same when it fails.", MATRIX),
                    words("shape", "is", "What kind of thing is drawn.", ELEVATION),
                    new Field(
                            "load",
                            "load",
                            Measure.COUNT,
                            "What pulls or pushes, in the unit of what is told.",
                            "as told in its own column or section",
                            "statics",
                            ELEVATION),
                    force(
                            "load-across",
                            "load across",
                            "Part of a load to the right of the drawing."),
                    force("load-up", "load up", "Part of a load upward."),
                    place(Section.Elevation.ACROSS, "across", "Place to the right of the middle."),
                    place(Section.Elevation.UP, "height", "Height above the ground."),
                    place("from-across", "from", "Where a shape begins, from left to right."),
                    place("to-across", "to", "Where a shape ends, from left to right."),
                    place("from-up", "lowest", "Lowest point of a shape above the ground."),
                    place("to-up", "highest", "Highest point of a shape above the ground."));

    private MatrixFields() {}

    private static Field words(String id, String label, String meaning, String test) {
        return new Field(id, label, Measure.COUNT, meaning, "named", "the rig file", test);
    }

    private static Field force(String id, String label, String meaning) {
        return new Field(
                id,
                label,
                Measure.THRUST,
                meaning,
                "component in the plane of the drawing",
                "statics",
                ELEVATION);
    }

    private static Field place(String id, String label, String meaning) {
        return new Field(
                id,
                label,
                Measure.LENGTH,
                meaning,
                "as declared, or as computed where it is a reach",
                "the rig file",
                ELEVATION);
    }
}
