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

    /** By muscles at each state, by bones and ligaments, and where the strengths come from. */
    static List<Section> of(List<ArmLoadSample.Row> rows) {
        List<Section> sections = new ArrayList<>();
        for (ArmLoadSample.State state : ArmLoadSample.State.values()) {
            String when = state.name().toLowerCase(Locale.ROOT).replace('_', '-');
            List<ArmLoadSample.Row> then =
                    rows.stream().filter(row -> row.state() == state).toList();
            table(
                            "arm-loads-" + when,
                            "What the arms hold " + state.words(),
                            List.of("arm-joint", "arm-moment", "arm-strength", "arm-share"),
                            then.stream()
                                    .filter(row -> row.exertion().isPresent())
                                    .map(ArmLoadTables::byMuscles)
                                    .toList())
                    .ifPresent(sections::add);
            table(
                            "elbow-loads-" + when,
                            "What bones and ligaments of the elbows hold " + state.words(),
                            List.of("arm-joint", "arm-moment"),
                            then.stream()
                                    .filter(row -> row.exertion().isEmpty())
                                    .map(ArmLoadTables::held)
                                    .toList())
                    .ifPresent(sections::add);
        }
        table(
                        "arm-strengths",
                        "Where the strength of arms is taken from",
                        List.of("arm-exertion", "arm-strength-origin"),
                        rows.stream()
                                .filter(row -> row.exertion().isPresent())
                                .map(ArmLoadTables::origin)
                                .distinct()
                                .toList())
                .ifPresent(sections::add);
        return sections;
    }

    private static Optional<Section> table(
            String name, String title, List<String> columns, List<List<Value>> rows) {
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section.Table(name, title, columns, rows));
    }

    private static List<Value> held(ArmLoadSample.Row row) {
        return List.of(
                Value.words("arm-joint", joint(row)),
                Value.of(
                        "arm-moment",
                        Rounding.off(row.heldNm(), NONE_NM),
                        Bands.shown(Rounding.off(row.held(), NONE_NM))));
    }

    private static List<Value> byMuscles(ArmLoadSample.Row row) {
        List<Value> line = new ArrayList<>(held(row));
        line.add(Value.of("arm-strength", row.strengthNm()));
        line.add(Value.of("arm-share", row.share(), Bands.shown(row.shares())));
        return line;
    }

    private static List<Value> origin(ArmLoadSample.Row row) {
        return List.of(
                Value.words("arm-exertion", exertion(row)),
                Value.words("arm-strength-origin", row.origin()));
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
        return Finding.of(
                        severity,
                        "arm-load",
                        Sentence.words("the " + joint(row) + " holds ")
                                .then(Measure.MOMENT, Math.abs(row.heldNm()))
                                .then(" " + row.state().words() + ", ")
                                .then(Measure.PERCENT, row.share(), Bands.shown(row.shares()))
                                .then(" of the strength in " + exertion(row)),
                        "thrust and weight of what is strapped to the arm act at a lever; strength: "
                                + row.origin())
                .at("wearer/posture")
                .against(
                        Value.of("arm-share", row.share(), Bands.shown(row.shares())),
                        new Finding.Limit(
                                Value.of("arm-share", limit),
                                rig.limits().origin(LimitName.ARM_LOAD_SHARE)));
    }
}
