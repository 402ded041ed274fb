package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.balance.ArmJoint;
import liftwright.quantity.Measure;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/** What the wearer's arms hold, against what arms can. */
final class ArmLoadTables {

    /** Moment that is none, N·m. */
    private static final double NONE_NM = 1e-6;

    private ArmLoadTables() {}

    static List<Section> of(List<ArmLoadSample.Row> rows) {
        List<Section> sections = new ArrayList<>();
        for (ArmLoadSample.State state : ArmLoadSample.State.values()) {
            List<List<Value>> table = new ArrayList<>();
            for (ArmLoadSample.Row row : rows) {
                if (row.state() == state) {
                    table.add(line(row));
                }
            }
            if (!table.isEmpty()) {
                sections.add(
                        new Section.Table(
                                "arm-loads-"
                                        + state.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                                "What the arms hold " + state.words(),
                                List.of(
                                        "arm-joint",
                                        "arm-moment",
                                        "arm-exertion",
                                        "arm-strength",
                                        "arm-share",
                                        "arm-strength-origin"),
                                table));
            }
        }
        return sections;
    }

    private static List<Value> line(ArmLoadSample.Row row) {
        double held = Rounding.off(row.heldNm(), NONE_NM);
        return List.of(
                Value.words("arm-joint", joint(row)),
                Value.of("arm-moment", held, Rounding.off(row.held(), NONE_NM)),
                Value.words("arm-exertion", exertion(row)),
                row.exertion().isPresent()
                        ? Value.of("arm-strength", row.strengthNm())
                        : absent("arm-strength"),
                row.exertion().isPresent()
                        ? Value.of("arm-share", row.share(), row.shares())
                        : absent("arm-share"),
                Value.words("arm-strength-origin", row.origin()));
    }

    private static Value absent(String field) {
        return new Value(field, new Value.Figure.NotComputed("no muscle holds it"));
    }

    private static String exertion(ArmLoadSample.Row row) {
        return row.exertion().map(own -> own.key()).orElse("bones and ligaments");
    }

    private static String joint(ArmLoadSample.Row row) {
        return (row.side() == 0 ? "left " : "right ") + words(row.joint());
    }

    private static String words(ArmJoint joint) {
        return switch (joint) {
            case SHOULDER_FLEXION -> "shoulder, flexion";
            case SHOULDER_ABDUCTION -> "shoulder, abduction";
            case SHOULDER_ROTATION -> "shoulder, rotation";
            case ELBOW_FLEXION -> "elbow, flexion";
            case ELBOW_ACROSS -> "elbow, to the side";
            case ELBOW_ALONG -> "elbow, about the forearm";
        };
    }

    /** The joint that holds the greatest share of its strength, where that passes the limit. */
    static Optional<Finding> finding(Rig rig, List<ArmLoadSample.Row> rows) {
        double limit = rig.limits().si(LimitName.ARM_LOAD_SHARE);
        return rows.stream()
                .filter(row -> row.exertion().isPresent())
                .max(Comparator.comparingDouble(ArmLoadSample.Row::share))
                .filter(row -> row.shares().high() > limit)
                .map(row -> finding(rig, row, limit));
    }

    private static Finding finding(Rig rig, ArmLoadSample.Row row, double limit) {
        boolean beyond = row.state() == ArmLoadSample.State.LIFT_OFF && row.shares().low() > 1;
        Severity severity =
                beyond ? Severity.STOPS : row.share() > limit ? Severity.WARNS : Severity.NOTES;
        return new Finding(
                severity,
                "arm-load",
                Optional.empty(),
                Optional.of("wearer/posture"),
                Sentence.words("the " + joint(row) + " holds ")
                        .then(Measure.MOMENT, Math.abs(row.heldNm()))
                        .then(" " + row.state().words() + ", ")
                        .then(Measure.PERCENT, row.share(), row.shares())
                        .then(" of the strength in " + exertion(row)),
                Optional.of(Value.of("arm-share", row.share(), row.shares())),
                Optional.of(
                        new Finding.Limit(
                                Value.of("arm-share", limit),
                                rig.limits().origin(LimitName.ARM_LOAD_SHARE))),
                "thrust and weight of what is strapped to the arm act at a lever; strength: "
                        + row.origin(),
                List.of());
    }
}
