package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.LossPoint;
import liftwright.plant.OperatingLimit;
import liftwright.plant.fault.Effect;
import liftwright.rig.PartId;

/** What the survivors carry as soon as they hold the weight, and which limits they pass with it. */
final class Survivors {

    private static final int NAMED = 2;

    private final List<FaultView> views;
    private final Set<Passed> without;

    /** One limit of one part. */
    private record Passed(OperatingLimit.Kind kind, PartId part) {}

    /**
     * @param healthy the rig with nothing lost
     */
    Survivors(List<FaultView> views, LossPoint healthy) {
        this.views = views;
        without = new HashSet<>();
        healthy.flow().exceeded().forEach(limit -> without.add(passed(limit)));
    }

    static LossPoint healthy(FailuresSample sample) {
        return sample.panel()
                .worker()
                .told(sample.plant.parameters().nominal(), Effect.NONE)
                .point()
                .orElseThrow();
    }

    private static Passed passed(OperatingLimit limit) {
        return new Passed(limit.kind(), limit.part());
    }

    /** Limits that are passed with the loss and not without it, worst first. */
    List<OperatingLimit> newly(LossPoint point) {
        return point.flow().exceeded().stream()
                .filter(limit -> !without.contains(passed(limit)))
                .sorted(Comparator.comparingDouble(OperatingLimit::margin))
                .toList();
    }

    /** "joint current at left.3.2, fuse current at p.4.1 and 3 more"; "none" for none. */
    static String words(List<OperatingLimit> limits) {
        if (limits.isEmpty()) {
            return "none";
        }
        List<String> named =
                limits.stream()
                        .limit(NAMED)
                        .map(limit -> LimitWords.name(limit.kind()) + " at " + limit.part())
                        .toList();
        String all = String.join(", ", named);
        return limits.size() > NAMED ? all + " and " + (limits.size() - NAMED) + " more" : all;
    }

    Section table() {
        List<List<Value>> rows = new ArrayList<>();
        for (FaultView view : views) {
            view.found()
                    .point()
                    .filter(point -> point.flow().hover())
                    .ifPresent(
                            point ->
                                    rows.add(
                                            List.of(
                                                    Value.words("fails", view.part()),
                                                    Value.words("fails-how", view.how()),
                                                    Value.of(
                                                            "survivor-fan-current",
                                                            most(point.flow().fanA())),
                                                    Value.of(
                                                            "survivor-pack-current",
                                                            most(point.flow().packA())),
                                                    Value.words(
                                                            "survivor-limits",
                                                            words(newly(point))))));
        }
        return new Section.Table(
                "survivors",
                "What the survivors carry with lift at weight",
                List.of(
                        "fails",
                        "fails-how",
                        "survivor-fan-current",
                        "survivor-pack-current",
                        "survivor-limits"),
                rows);
    }

    private static double most(List<Double> amperes) {
        return amperes.stream().mapToDouble(a -> a).max().orElse(0);
    }
}
