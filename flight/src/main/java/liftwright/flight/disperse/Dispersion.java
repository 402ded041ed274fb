package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.answer.Checks;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.flight.FlightAnswer;
import liftwright.flight.run.Deviate;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.Untold;
import liftwright.numerics.ProportionInterval;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;

/** What many flights say: the answer to "how often will it hold?". */
public final class Dispersion {

    private final DispersionCase about;
    private final List<Flown> drawn;
    private final List<Flown.Made> computed;
    private final List<Flown.Made> ended;
    private final WellShare share;

    private Dispersion(DispersionCase about) {
        this.about = about;
        // Flight 0 is the one at the declared values: no draw, so no share counts it.
        drawn = about.set().flights().stream().filter(each -> each.number() > 0).toList();
        computed =
                drawn.stream()
                        .filter(Flown.Made.class::isInstance)
                        .map(Flown.Made.class::cast)
                        .filter(Flown.Made::computed)
                        .toList();
        ended = computed.stream().filter(Dispersion::toItsEnd).toList();
        share = WellShare.of(drawn);
    }

    private static boolean toItsEnd(Flown.Made made) {
        return made.end() == FlightOutcome.End.LANDED || made.end() == FlightOutcome.End.REACHED;
    }

    /** The answer of what was flown. */
    public static FlightAnswer answer(DispersionCase about) {
        return new Dispersion(about).answer();
    }

    private FlightAnswer answer() {
        List<Section> sections = new ArrayList<>();
        Optional<DriverTables.Ranked> misses = Optional.empty();
        Optional<DriverTables.Ranked> failing = Optional.empty();
        if (!drawn.isEmpty()) {
            sections.add(ends());
            MissTables tables = new MissTables(ended);
            sections.addAll(tables.sections());
            var drivers = new DriverTables(about);
            misses = drivers.ofMisses(ended);
            failing = drivers.ofFailing(computed);
            failing.ifPresent(found -> sections.add(found.section()));
            misses.ifPresent(found -> sections.add(found.section()));
            sections.add(new WorstFlights(about).section(computed));
        }
        Evidence evidence = evidence();
        Verdict verdict = Checks.downgrade(share.verdict(about.askedShare()), evidence);
        return new FlightAnswer(verdict, findings(failing, misses), sections, evidence);
    }

    private Section ends() {
        List<List<Value>> rows = new ArrayList<>();
        rows.add(row("kept every limit", share.well(), share.band()));
        for (FlightOutcome.End end : FlightOutcome.End.values()) {
            int count = (int) computed.stream().filter(made -> made.end() == end).count();
            if (count > 0) {
                rows.add(row(end.words(), count, exact(count)));
            }
        }
        if (share.untold() > 0) {
            rows.add(row("cannot be told", share.untold(), exact(share.untold())));
        }
        return new Section.Table(
                "flights-ends",
                "How they ended",
                List.of("flights-end", "flights-counted", "flights-share"),
                rows);
    }

    private List<Value> row(String what, int count, Band band) {
        return List.of(
                Value.words("flights-end", what),
                Value.of("flights-counted", count),
                Value.of("flights-share", (double) count / drawn.size(), band));
    }

    private Band exact(int count) {
        ProportionInterval interval =
                ProportionInterval.clopperPearson(count, drawn.size(), WellShare.CONFIDENCE);
        return new Band(
                interval.lower(),
                interval.upper(),
                WellShare.CONFIDENCE,
                "exact, by Clopper and Pearson",
                drawn.size(),
                0);
    }

    private List<Finding> findings(
            Optional<DriverTables.Ranked> failing, Optional<DriverTables.Ranked> misses) {
        List<Finding> findings = new ArrayList<>();
        if (!drawn.isEmpty() && share.outcome(about.askedShare()) == Outcome.DOES_NOT_HOLD) {
            findings.add(
                    Finding.of(
                                    Finding.Severity.STOPS,
                                    "too-few-flights-go-well",
                                    Sentence.start()
                                            .then("At most ")
                                            .then(Measure.PERCENT, share.upper())
                                            .then(" of such flights keep every limit; asked is ")
                                            .then(Measure.PERCENT, about.askedShare()),
                                    driver(failing).orElse("see the worst of them"))
                            .against(
                                    Value.of("flights-share", share.share(), share.band()),
                                    new Finding.Limit(
                                            Value.of("flights-share", about.askedShare()),
                                            about.askedOrigin())));
        }
        if (share.untold() > 0) {
            findings.add(
                    Finding.of(
                            Finding.Severity.WARNS,
                            "flights-cannot-be-told",
                            Sentence.start()
                                    .then(Measure.COUNT, share.untold())
                                    .then(" flights cannot be told; each counts as what is worse"),
                            reasons()));
        }
        driver(misses)
                .ifPresent(
                        name ->
                                findings.add(
                                        Finding.of(
                                                Finding.Severity.NOTES,
                                                "what-drives-the-misses",
                                                Sentence.words(
                                                        "What drives the misses most is " + name),
                                                "share of their variance, held against chance")));
        return findings;
    }

    private static Optional<String> driver(Optional<DriverTables.Ranked> ranked) {
        return ranked.flatMap(DriverTables.Ranked::name);
    }

    /** How many for which reason, and the first whose numbers cannot be. */
    private String reasons() {
        List<String> reasons = new ArrayList<>();
        for (Untold why : Untold.values()) {
            long count =
                    drawn.stream().filter(each -> each.untold().equals(Optional.of(why))).count();
            if (count > 0) {
                reasons.add("in " + count + " " + why.words());
            }
        }
        drawn.stream()
                .filter(Flown.NotMade.class::isInstance)
                .map(each -> "flight " + each.number() + ": " + ((Flown.NotMade) each).reason())
                .findFirst()
                .ifPresent(reasons::add);
        return String.join("; ", reasons);
    }

    private Evidence evidence() {
        FlightsOf of = about.set().of();
        return new Evidence(
                of.rig(),
                of.corrections(),
                of.seed(),
                drawn.size(),
                about.state(),
                List.of(
                        new Evidence.Law(
                                "exact interval of a share",
                                "[CLOPPER34]",
                                "flights drawn one apart from the other, their number set"
                                        + " beforehand",
                                true),
                        new Evidence.Law(
                                "share of the variance that one drawn number takes",
                                "[PLISCHKE13]",
                                "numbers drawn one apart from the other; what was fitted together"
                                        + " shares its share",
                                true)),
                assumptions(),
                List.of(
                        new Evidence.Check("every flight counted once", uncounted(), 0),
                        new Evidence.Check("every miss in one bar", unbarred(), 0)));
    }

    private List<Evidence.Assumption> assumptions() {
        List<Evidence.Assumption> assumptions = new ArrayList<>();
        assumptions.add(
                new Evidence.Assumption(
                        "share asked for",
                        String.format(Locale.ROOT, "%.4g %%", 100 * about.askedShare()),
                        about.askedOrigin()));
        Arrays.stream(Deviate.values()).map(Dispersion::assumption).forEach(assumptions::add);
        return assumptions;
    }

    private static Evidence.Assumption assumption(Deviate each) {
        return new Evidence.Assumption(
                each.label(), each.words(), "drawn in every flight; common practice, not declared");
    }

    private double uncounted() {
        return Math.abs(share.count() - drawn.size())
                + Math.abs(
                        computed.stream().filter(made -> made.figures().isWithinLaws()).count()
                                - share.well()
                                - share.failed());
    }

    private double unbarred() {
        return ended.isEmpty()
                ? 0
                : Math.abs(
                        new MissTables(ended).bars().stream().mapToInt(MissTables.Bar::count).sum()
                                - ended.size());
    }
}
