package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;

/** The flights to look at first: lost ones, then those that used most of a limit. */
final class WorstFlights {

    private static final int SHOWN = 10;

    private final DispersionCase about;

    WorstFlights(DispersionCase about) {
        this.about = about;
    }

    Section section(List<Flown.Made> drawn) {
        return new Section.Table(
                "flights-worst",
                "The worst of them",
                List.of(
                        "flights-number",
                        "flights-end",
                        "flights-why",
                        "flights-miss",
                        "flights-height-lost",
                        "flights-tilt",
                        "flights-drift",
                        "flights-replay"),
                worst(drawn).stream().map(this::row).toList());
    }

    /** Worst first; of equals the one of lower number. */
    List<Flown.Made> worst(List<Flown.Made> drawn) {
        List<Flown.Made> order = new ArrayList<>(drawn);
        order.sort(
                Comparator.comparingInt((Flown.Made made) -> badness(made.end()))
                        .thenComparingDouble(made -> most(made.figures()).share())
                        .reversed()
                        .thenComparingInt(Flown.Made::number));
        return order.subList(0, Math.min(SHOWN, order.size()));
    }

    private static int badness(FlightOutcome.End end) {
        return switch (end) {
            case LOST -> 4;
            case CLOSE -> 3;
            case SPENT -> 2;
            case ABORTED -> 1;
            case LANDED, REACHED -> 0;
        };
    }

    /**
     * How far a figure used up its limit.
     *
     * @param what the figure
     * @param share 1 is all of it
     */
    private record Used(String what, double share) {}

    private List<Used> uses(FlightOutcome.Figures figures) {
        Profile.Limits limits = about.limits();
        return List.of(
                new Used("miss", figures.missM() / limits.missM()),
                new Used("height lost", figures.heightLostM() / limits.heightLostM()),
                new Used("tilt", figures.tiltRad() / limits.tiltRad()),
                new Used("drift", figures.driftM() / limits.driftM()),
                new Used("landing", figures.landingMps() / limits.landingMps()));
    }

    private Used most(FlightOutcome.Figures figures) {
        return Collections.max(uses(figures), Comparator.comparingDouble(Used::share));
    }

    private List<Value> row(Flown.Made made) {
        return List.of(
                Value.of("flights-number", made.number()),
                Value.words("flights-end", made.end().words()),
                Value.words("flights-why", why(made)),
                Value.of("flights-miss", made.figures().missM()),
                Value.of("flights-height-lost", made.figures().heightLostM()),
                Value.of("flights-tilt", made.figures().tiltRad()),
                Value.of("flights-drift", made.figures().driftM()),
                Value.words(
                        "flights-replay",
                        about.replay()
                                + " --flight "
                                + made.number()
                                + " --seed "
                                + about.set().of().seed()));
    }

    private String why(Flown.Made made) {
        List<String> why = new ArrayList<>();
        if (!made.endedBy().isEmpty()) {
            why.add("ended by " + made.endedBy());
        }
        made.untold().ifPresent(reason -> why.add("cannot be told: " + reason.words()));
        for (Used used : uses(made.figures())) {
            if (used.share() > 1) {
                why.add(used.what() + " beyond its limit");
            }
        }
        if (why.isEmpty()) {
            Used most = most(made.figures());
            why.add(
                    String.format(
                            Locale.ROOT,
                            "kept every limit; nearest to its own came the %s, %.0f %% of it",
                            most.what(),
                            100 * most.share()));
        }
        return String.join("; ", why);
    }
}
