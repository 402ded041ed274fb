package liftwright.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.OperatingLimit;
import liftwright.plant.fault.Fault;
import liftwright.quantity.Measure;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultOutcome;
import liftwright.review.failures.FaultRule;
import liftwright.rig.Rig;

/** What a builder should know of failures, beside the verdict. */
final class FailuresFindings {

    private static final int NAMED = 4;

    private final Rig rig;
    private final List<FaultView> views;

    FailuresFindings(Rig rig, List<FaultView> views) {
        this.rig = rig;
        this.views = views;
    }

    /** Of single faults. */
    List<Finding> singles() {
        List<Finding> findings = new ArrayList<>();
        findings.addAll(singlePoints());
        dormant().ifPresent(findings::add);
        undeclared().ifPresent(findings::add);
        return findings;
    }

    /** What ends a flight by itself: parts that fail alike and fare alike are one finding. */
    private List<Finding> singlePoints() {
        record Alike(Fault.Kind kind, FaultOutcome outcome, Outcome verdict) {}
        Map<Alike, List<FaultView>> alike = new LinkedHashMap<>();
        for (FaultView view : views) {
            if (view.isSinglePoint()) {
                alike.computeIfAbsent(
                                new Alike(
                                        view.group().first().kind(),
                                        view.found().fate().outcome(),
                                        view.verdict()),
                                _ -> new ArrayList<>())
                        .add(view);
            }
        }
        return alike.values().stream().map(this::singlePoint).toList();
    }

    /** The worst stands first. */
    private Finding singlePoint(List<FaultView> alike) {
        FaultView worst = alike.getFirst();
        Fault first = worst.group().first();
        FaultFate fate = worst.found().fate();
        boolean grave =
                worst.verdict() != Outcome.CANNOT_BE_TOLD
                        && worst.severity().compareTo(liftwright.rig.RiskMatrix.Severity.CRITICAL)
                                <= 0;
        Sentence sentence =
                Sentence.words(
                        names(alike.stream().map(v -> v.group().first().part().text()).toList())
                                + ": "
                                + first.words()
                                + (worst.verdict() == Outcome.CANNOT_BE_TOLD
                                        ? ", and whether that is borne cannot be told; as declared it "
                                        : ", and it ")
                                + fate.outcome().words());
        if (fate.impactMps() > 0) {
            sentence = sentence.then("; it lands with ").then(Measure.SPEED, fate.impactMps());
        }
        return Finding.of(
                        grave ? Severity.STOPS : Severity.WARNS,
                        "single-point-" + fate.outcome().words().replace(' ', '-'),
                        sentence,
                        why(worst))
                .about(first.part().text())
                .at(first.declaredAt().toString())
                .against(
                        Value.of("fault-margin", fate.margin(), Bands.shown(worst.margin())),
                        new Finding.Limit(
                                Value.of("fault-margin", 0),
                                "limits of lift, reserve and landing"));
    }

    private static String names(List<String> parts) {
        String named = String.join(", ", parts.subList(0, Math.min(NAMED, parts.size())));
        return parts.size() > NAMED
                ? named + " and " + (parts.size() - NAMED) + " more, each alone"
                : parts.size() > 1 ? named + ", each alone" : named;
    }

    private static String why(FaultView view) {
        String series =
                view.group().members().size() > 1
                        ? "; so does the failure of each of "
                                + (view.group().members().size() - 1)
                                + " more that do the same"
                        : "";
        return (view.group().rule() == FaultRule.DISAGREES
                        ? "two that disagree do not say which of them is right"
                        : switch (view.found().fate().outcome()) {
                            case NO_EFFECT -> "nothing moves";
                            case FLIES_ON -> "it is held, with less left than is asked";
                            case TURNS ->
                                    "lift, roll and pitch are held; what is left cannot hold yaw too";
                            case SINKS -> "what is left does not carry the weight";
                            case FALLS -> "hardly any lift is left";
                            case STARTS_BY_ITSELF -> "nobody has to touch a throttle for it";
                            case UNSTEERED -> "nothing else tells the fans what to do";
                            case TIPS ->
                                    "what is left pushes on one side, and nothing holds roll and"
                                            + " pitch against it";
                            case CLIMBS ->
                                    "the last throttle stays, and no switch that works without the"
                                            + " link is declared";
                        })
                + series;
    }

    /** What nobody notices until it is needed. */
    private Optional<Finding> dormant() {
        List<String> parts =
                views.stream()
                        .filter(view -> view.group().rule() == FaultRule.NOTHING)
                        .flatMap(view -> view.group().members().stream())
                        .map(fault -> fault.part().text() + " (" + fault.words() + ")")
                        .distinct()
                        .toList();
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.of(
                        Severity.NOTES,
                        "dormant",
                        Sentence.words(
                                "nothing shows when these fail: "
                                        + String.join(
                                                ", ",
                                                parts.subList(0, Math.min(NAMED, parts.size())))
                                        + (parts.size() > NAMED
                                                ? " and " + (parts.size() - NAMED) + " more"
                                                : "")),
                        "what nobody notices has failed already when the next thing does: check it"
                                + " before every run"));
    }

    private Optional<Finding> undeclared() {
        boolean some = views.stream().anyMatch(view -> view.likelihood().isEmpty());
        return some
                ? Optional.of(
                        Finding.of(
                                Severity.NOTES,
                                "rates-not-declared",
                                Sentence.words(
                                        "how likely failures are is told only where a rate is"
                                                + " declared for every part that does the same"),
                                "rates come from your own records or a maker's tests; nothing stands"
                                        + " in for them"))
                : Optional.empty();
    }

    /** The limit that survivors pass furthest as soon as they hold the weight. */
    Optional<Finding> overloaded(Survivors survivors) {
        FaultView at = null;
        OperatingLimit worst = null;
        int count = 0;
        for (FaultView view : views) {
            List<OperatingLimit> passed =
                    view.found()
                            .point()
                            .filter(point -> point.flow().hover())
                            .map(survivors::newly)
                            .orElse(List.of());
            count += passed.isEmpty() ? 0 : 1;
            if (!passed.isEmpty()
                    && (worst == null || passed.getFirst().margin() < worst.margin())) {
                worst = passed.getFirst();
                at = view;
            }
        }
        if (worst == null || at == null) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.of(
                                Severity.WARNS,
                                "survivors-overloaded",
                                Sentence.words(
                                                String.format(
                                                        Locale.ROOT,
                                                        "in %d failures the survivors pass a limit as soon as"
                                                                + " they hold the weight; furthest %s at %s once"
                                                                + " %s, ",
                                                        count,
                                                        LimitWords.name(worst.kind()),
                                                        worst.part(),
                                                        at.group().label()))
                                        .then(LimitWords.amount(worst.kind(), worst.value()))
                                        .then(" against ")
                                        .then(LimitWords.amount(worst.kind(), worst.limit())),
                                LimitWords.cause(worst.kind()))
                        .about(worst.part().text())
                        .at(worst.declaredAt().toString())
                        .against(
                                Value.of(LimitWords.field(worst.kind()), worst.value()),
                                new Finding.Limit(
                                        Value.of(LimitWords.field(worst.kind()), worst.limit()),
                                        LimitWords.origin(rig, worst))));
    }

    /** What goes next soonest. */
    Optional<Finding> next(GoesNext next) {
        return next.soonest().stream()
                .findFirst()
                .map(
                        first ->
                                Finding.of(
                                                Severity.WARNS,
                                                "goes-next",
                                                Sentence.words(
                                                                "once "
                                                                        + first.fails()
                                                                        + ": "
                                                                        + first.how()
                                                                        + ", next comes "
                                                                        + next.words(first)
                                                                        + ", after ")
                                                        .then(Measure.TIME, first.afterS()),
                                                "what is left carries more current, and heat follows the"
                                                        + " square of it")
                                        .about(first.fails())
                                        .judging(Value.of("goes-next-after", first.afterS())));
    }
}
