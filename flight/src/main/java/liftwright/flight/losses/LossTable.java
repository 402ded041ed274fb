package liftwright.flight.losses;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.flight.losses.LossFlown.Agreement;
import liftwright.flight.run.FlightOutcome;

/** Losses flown, as an answer tells them: those first where flight and statics disagree. */
public final class LossTable {

    private static final int NAMED = 4;

    private final List<LossFlown> flown;

    public LossTable(List<LossFlown> flown) {
        List<LossFlown> sorted = new ArrayList<>(flown);
        sorted.sort(Comparator.comparingInt(LossTable::rank));
        this.flown = List.copyOf(sorted);
    }

    private static int rank(LossFlown one) {
        return switch (one.agreement()) {
            case WORSE -> 0;
            case BETTER -> 1;
            case TOLD -> 2;
            case AGREE -> one.came() == Came.RECOVERED ? 4 : 3;
        };
    }

    /** One row each. */
    public Section section() {
        return new Section.Table(
                "losses-flown",
                "Every single loss, flown",
                List.of(
                        "fails",
                        "fails-how",
                        "loss-called",
                        "loss-came",
                        "loss-agreement",
                        "loss-reason",
                        "loss-height",
                        "loss-tilt",
                        "loss-drift",
                        "alike"),
                flown.stream().map(LossTable::row).toList());
    }

    private static List<Value> row(LossFlown one) {
        FlightOutcome.Figures figures = one.flown().figures();
        return List.of(
                Value.words("fails", one.group().first().part().text()),
                Value.words("fails-how", one.group().first().words()),
                Value.words("loss-called", one.called().words()),
                Value.words("loss-came", one.came().words()),
                Value.words("loss-agreement", one.agreement().words()),
                Value.words("loss-reason", one.reason().words()),
                Value.of("loss-height", figures.heightLostM()),
                Value.of("loss-tilt", figures.tiltRad()),
                Value.of("loss-drift", figures.driftM()),
                Value.words("alike", String.join(", ", one.group().others())));
    }

    /** Where flight and statics disagree. */
    public List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        told(
                        Agreement.WORSE,
                        Severity.WARNS,
                        "loss-flown-worse",
                        "that review calls borne %s lost in flight: ")
                .ifPresent(found::add);
        told(
                        Agreement.BETTER,
                        Severity.NOTES,
                        "loss-flown-better",
                        "that review calls not borne %s flown through: ")
                .ifPresent(found::add);
        return found;
    }

    private Optional<Finding> told(
            Agreement agreement, Severity severity, String code, String words) {
        List<LossFlown> these = flown.stream().filter(one -> one.agreement() == agreement).toList();
        if (these.isEmpty()) {
            return Optional.empty();
        }
        boolean one = these.size() == 1;
        String named =
                String.join(
                        "; ",
                        these.stream().limit(NAMED).map(each -> each.group().label()).toList());
        String more = these.size() > NAMED ? "; and " + (these.size() - NAMED) + " more" : "";
        String sentence =
                String.format(
                        Locale.ROOT,
                        "%d %s " + words,
                        these.size(),
                        one ? "loss" : "losses",
                        one ? "is" : "are");
        return Optional.of(
                Finding.of(
                        severity,
                        code,
                        Sentence.words(sentence + named + more),
                        these.stream()
                                .map(each -> each.reason().words())
                                .distinct()
                                .collect(Collectors.joining("; "))));
    }
}
