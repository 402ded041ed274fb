package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Change;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Every canted fan leans less, by the same angle, none beyond upright. */
final class LessCant {

    private static final double STEP_DEG = 0.5;
    private static final double STEP_RAD = Math.toRadians(STEP_DEG);

    private LessCant() {}

    static List<Candidate> of(Rig rig) {
        Map<RigPath, Quantity> cants = new LinkedHashMap<>();
        rig.fans().stream()
                .flatMap(fan -> fan.leans().stream())
                .filter(lean -> lean.angle().si() != 0)
                .forEach((Fan.Lean lean) -> cants.putIfAbsent(lean.declaredAt(), lean.angle()));
        double most =
                cants.values().stream().mapToDouble(angle -> Math.abs(angle.si())).max().orElse(0);
        int steps = (int) Math.ceil(most / STEP_RAD - 1e-9);
        if (steps == 0) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        steps,
                        count ->
                                Sentence.words("cant every fan ")
                                        .then(Measure.ANGLE, count * STEP_RAD)
                                        .then(" less, none beyond upright"),
                        Sentence.start().then(Measure.ANGLE, STEP_RAD),
                        count -> changes(rig, cants, count)));
    }

    private static List<Change> changes(Rig rig, Map<RigPath, Quantity> cants, int count) {
        List<Change> changes = new ArrayList<>();
        cants.forEach(
                (at, angle) -> {
                    double leftDeg =
                            Math.max(0, Math.toDegrees(Math.abs(angle.si())) - count * STEP_DEG);
                    double left = Written.degreesSi(leftDeg);
                    changes.add(
                            new Change.Set(
                                    at,
                                    Written.like(rig, at, angle, Math.copySign(left, angle.si()))));
                });
        return changes;
    }
}
