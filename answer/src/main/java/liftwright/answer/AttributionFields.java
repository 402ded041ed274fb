package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Which causes explain how a rig was measured to turn. */
final class AttributionFields {

    private static final String ATTRIBUTION =
            "AttributionTest.theRightCauseComesFirstOnRigsOfARicherModel";

    private AttributionFields() {}

    private static Field field(
            String id, String label, Measure measure, String meaning, String formula, String test) {
        return new Field(id, label, measure, meaning, formula, "the model of balance", test);
    }

    private static Field words(String id, String label, String meaning) {
        return new Field(
                id, label, Measure.COUNT, meaning, "named", "the table and the rig", ATTRIBUTION);
    }

    static final List<Field> ROWS =
            List.of(
                    words("measured-cause", "cause", "One kind of cause of the turning measured."),
                    field(
                            "cause-probability",
                            "how likely",
                            Measure.PERCENT,
                            "How likely this cause is among all of the table, one cause at a time.",
                            "prior times density of what was measured, the size of the fault integrated out, over the sum of these",
                            ATTRIBUTION),
                    words("cause-place", "where", "The likeliest fan, mount or joint."),
                    words("cause-size", "how much", "What the fault would be there, ± at 95 %."),
                    words("cause-or", "or", "A cause that is not told apart from the first."),
                    words("separating-swap", "do this", "What tells the two apart."),
                    field(
                            "if-first",
                            "if the first",
                            Measure.ANGULAR_ACCELERATION,
                            "What would then be measured about this axis were the first cause right.",
                            "normal, given what was measured",
                            ATTRIBUTION),
                    field(
                            "if-other",
                            "if the other",
                            Measure.ANGULAR_ACCELERATION,
                            "The same for the other cause.",
                            "normal, given what was measured",
                            ATTRIBUTION),
                    field(
                            "swap-deviations",
                            "apart",
                            Measure.RATIO,
                            "How far apart the two stand after it over all axes, in standard deviations.",
                            "Mahalanobis distance of the two predictions",
                            ATTRIBUTION),
                    field(
                            "table-line",
                            "line",
                            Measure.COUNT,
                            "Line of the table of measured turning.",
                            "counted from 1",
                            ATTRIBUTION),
                    field(
                            "measured-turning",
                            "measured",
                            Measure.ANGULAR_ACCELERATION,
                            "Angular acceleration that was measured.",
                            "as in the table",
                            ATTRIBUTION),
                    field(
                            "declared-turning",
                            "declared",
                            Measure.ANGULAR_ACCELERATION,
                            "What the rig as declared does there, its doubt and what the model leaves out in the band.",
                            "as acceleration, at the throttle and with the swap of the row",
                            ATTRIBUTION),
                    field(
                            "explained-turning",
                            "with the first cause",
                            Measure.ANGULAR_ACCELERATION,
                            "The same with the likeliest cause at its likeliest size.",
                            "as acceleration",
                            ATTRIBUTION));
}
