package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.OperatingLimit;
import liftwright.plant.OperatingLimit.Kind;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Measure;
import liftwright.rig.Fan;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * What full throttle does to the parts, at the charge that lift is judged at and on full packs,
 * whichever is worse: one finding a kind of limit, about the part with the least margin.
 */
final class LiftFindings {

    private LiftFindings() {}

    static List<Finding> of(Rig rig, Plant plant, SteadyState judged) {
        List<Finding> findings = limits(rig, plant, judged, EnumSet.allOf(Kind.class));
        unfed(rig, judged).ifPresent(findings::add);
        currentLimited(rig, judged).ifPresent(findings::add);
        findings.addAll(FanClaims.findings(rig));
        findings.addAll(FastFindings.of(plant));
        findings.addAll(SpoolFindings.of(plant));
        HotMotors.finding(plant).ifPresent(findings::add);
        return findings;
    }

    /**
     * What exceeds limits of some kinds.
     *
     * @param judged full throttle at the charge that lift is judged at
     */
    static List<Finding> limits(Rig rig, Plant plant, SteadyState judged, Set<Kind> kinds) {
        List<OperatingLimit> asJudged = plant.limits(plant.parameters().nominal(), judged);
        List<OperatingLimit> onFullPacks = HardLimits.atFullCharge(plant);
        List<OperatingLimit> all = new ArrayList<>(asJudged);
        all.addAll(onFullPacks);
        Map<Kind, List<OperatingLimit>> exceeded = new EnumMap<>(Kind.class);
        for (OperatingLimit limit : all) {
            if (limit.exceeded() && kinds.contains(limit.kind())) {
                exceeded.computeIfAbsent(limit.kind(), _ -> new ArrayList<>()).add(limit);
            }
        }
        List<Finding> findings = new ArrayList<>();
        exceeded.forEach(
                (kind, limits) -> {
                    OperatingLimit worst = worst(limits);
                    Sentence when = Sentence.start();
                    if (!onFullPacks.contains(worst)) {
                        when =
                                Sentence.words(" at ")
                                        .then(Measure.PERCENT, rig.demands().judgedAtCharge().si())
                                        .then(" charge");
                    } else if (!asJudged.contains(worst)) {
                        when = Sentence.words(" on full packs");
                    }
                    findings.add(finding(rig, worst, when, limits));
                });
        return findings;
    }

    private static OperatingLimit worst(List<OperatingLimit> limits) {
        return limits.stream()
                .min(
                        Comparator.comparingDouble(OperatingLimit::margin)
                                .thenComparing(OperatingLimit::part))
                .orElseThrow();
    }

    private static Finding finding(
            Rig rig, OperatingLimit worst, Sentence when, List<OperatingLimit> limits) {
        Kind kind = worst.kind();
        long parts = limits.stream().map(OperatingLimit::part).distinct().count();
        Sentence sentence =
                Sentence.words(LimitWords.name(kind) + " at " + worst.part() + others(parts) + ": ")
                        .then(LimitWords.amount(kind, worst.value()))
                        .then(when)
                        .then(kind.isLeast() ? ", below " : ", above ")
                        .then(LimitWords.amount(kind, worst.limit()));
        return Finding.of(
                        severity(worst),
                        kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                        sentence,
                        LimitWords.cause(kind))
                .about(worst.part().text())
                .at(worst.declaredAt().toString())
                .against(
                        Value.of(LimitWords.field(kind), worst.value()),
                        new Finding.Limit(
                                Value.of(LimitWords.field(kind), worst.limit()),
                                LimitWords.origin(rig, worst)));
    }

    /**
     * Beyond what a part is declared for, full throttle must stop; inside its rating but past the
     * usual share, it warns.
     */
    private static Severity severity(OperatingLimit limit) {
        boolean beyondRating =
                limit.kind().isLeast()
                        ? limit.value() < limit.rating()
                        : limit.value() > limit.rating();
        return switch (limit.kind()) {
            case ROTOR_SPEED,
                    ELECTRICAL_SPEED,
                    CONTROLLER_VOLTAGE,
                    CAPACITOR_VOLTAGE,
                    CUT_OFF,
                    FUSE_BREAKING,
                    FUSE_VOLTAGE,
                    CONTACTOR_BREAKING,
                    CONTACTOR_VOLTAGE,
                    CELL_PEAK_CURRENT,
                    REVERSE_CURRENT ->
                    beyondRating ? Severity.STOPS : Severity.WARNS;
            case INTAKE_LOSS -> Severity.STOPS;
            case TIP_MACH,
                    CONTROLLER_CURRENT,
                    JOINT_CURRENT,
                    FUSE_CURRENT,
                    CONTACTOR_CURRENT,
                    CELL_UNDER_LOAD,
                    CELL_CONTINUOUS_CURRENT,
                    HAZARDOUS_VOLTAGE ->
                    Severity.WARNS;
        };
    }

    private static String others(long parts) {
        return parts == 1 ? "" : String.format(Locale.ROOT, " and %d more", parts - 1);
    }

    private static Optional<Finding> unfed(Rig rig, SteadyState state) {
        return about(rig, fan -> !state.fanFed(fan))
                .map(
                        hit ->
                                Finding.of(
                                                Severity.STOPS,
                                                "fan-without-supply",
                                                Sentence.words(
                                                        "no pack feeds "
                                                                + hit.first
                                                                + others(hit.parts)
                                                                + ": it lifts nothing"),
                                                "no chain of the wiring leads from a pack to it")
                                        .about(hit.first.text())
                                        .at(hit.at.toString()));
    }

    private static Optional<Finding> currentLimited(Rig rig, SteadyState state) {
        return about(rig, state::fanLimited)
                .map(
                        hit ->
                                Finding.of(
                                                Severity.WARNS,
                                                "current-limited",
                                                Sentence.words(
                                                        "the controller of "
                                                                + hit.first
                                                                + others(hit.parts)
                                                                + " lowers its duty to hold its current"
                                                                + " limit at full throttle"),
                                                "more voltage gives no more thrust there")
                                        .about(hit.first.text())
                                        .at(hit.at.toString()));
    }

    private record Hit(PartId first, RigPath at, long parts) {}

    private static Optional<Hit> about(Rig rig, java.util.function.IntPredicate concerned) {
        List<Fan> hit = new ArrayList<>();
        for (int i = 0; i < rig.fans().size(); i++) {
            if (concerned.test(i)) {
                hit.add(rig.fans().get(i));
            }
        }
        return hit.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Hit(hit.getFirst().id(), hit.getFirst().declaredAt(), hit.size()));
    }
}
