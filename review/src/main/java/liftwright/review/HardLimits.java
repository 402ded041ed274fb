package liftwright.review;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Sentence;
import liftwright.plant.Effects;
import liftwright.plant.OperatingLimit;
import liftwright.plant.OperatingLimit.Kind;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Measure;
import liftwright.rig.PartId;

/**
 * Limits that no remedy may break: what flies apart or breaks down at once. They are read where
 * they are worst, at full throttle on full packs.
 */
final class HardLimits {

    static final Set<Kind> KINDS =
            EnumSet.of(
                    Kind.ROTOR_SPEED,
                    Kind.TIP_MACH,
                    Kind.ELECTRICAL_SPEED,
                    Kind.CONTROLLER_VOLTAGE,
                    Kind.CAPACITOR_VOLTAGE,
                    Kind.FUSE_VOLTAGE,
                    Kind.CONTACTOR_VOLTAGE,
                    Kind.CELL_PEAK_CURRENT);

    private HardLimits() {}

    static List<OperatingLimit> atFullCharge(Plant plant) {
        double[] p = plant.parameters().nominal();
        SteadyState state = plant.state();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), state);
        return plant.limits(p, state);
    }

    /**
     * The first limit that the change breaks, or breaks further, in words; empty when it breaks
     * none.
     */
    static Optional<Sentence> newlyBroken(Plant before, Plant after) {
        Map<Kind, Map<PartId, Double>> old = new HashMap<>();
        for (OperatingLimit limit : atFullCharge(before)) {
            old.computeIfAbsent(limit.kind(), _ -> new HashMap<>())
                    .merge(limit.part(), limit.value(), Math::max);
        }
        Optional<Sentence> steady =
                atFullCharge(after).stream()
                        .filter(limit -> KINDS.contains(limit.kind()) && limit.exceeded())
                        .filter(
                                limit -> {
                                    Double was =
                                            old.getOrDefault(limit.kind(), Map.of())
                                                    .get(limit.part());
                                    return was == null
                                            || was < limit.limit()
                                            || limit.value() > was * (1 + 1e-9);
                                })
                        .findFirst()
                        .map(
                                limit ->
                                        Sentence.words(
                                                        limit.part()
                                                                + ": "
                                                                + LimitWords.name(limit.kind())
                                                                + " would be ")
                                                .then(
                                                        LimitWords.amount(
                                                                limit.kind(), limit.value()))
                                                .then(", against ")
                                                .then(
                                                        LimitWords.amount(
                                                                limit.kind(), limit.limit()))
                                                .then(
                                                        " ("
                                                                + LimitWords.origin(
                                                                        after.rig(), limit)
                                                                + ")"));
        return steady.or(() -> cut(before, after));
    }

    /** The peak that an emergency cut drives beyond what a controller is rated for. */
    private static Optional<Sentence> cut(Plant before, Plant after) {
        Map<PartId, Double> old = new HashMap<>();
        for (FastPeaks.Against one : FastPeaks.of(before).against(FastPeaks.Event.CUT)) {
            old.merge(one.fan(), one.overRating(), Math::max);
        }
        return FastPeaks.of(after).against(FastPeaks.Event.CUT).stream()
                .filter(one -> one.overRating() > Math.max(1, old.getOrDefault(one.fan(), 0.0)))
                .findFirst()
                .map(
                        one ->
                                Sentence.words("cutting all fans at full throttle would drive the")
                                        .then(" input of " + one.fan() + " to ")
                                        .then(Measure.VOLTAGE, one.peak().volt())
                                        .then(", against its rating of ")
                                        .then(Measure.VOLTAGE, one.rating()));
    }
}
