package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
                        .thenComparingDouble(made -> used(made.figures()))
                        .reversed()
                        .thenComparingInt(Flown.Made::number));
        return order.subList(0, Math.min(SHOWN, order.size()));
    }

    private static int badness(FlightOutcome.End end) {
        return switch (end) {
            case LOST -> 3;
            case SPENT -> 2;
            case ABORTED -> 1;
            case LANDED, REACHED -> 0;
        };
    }

    /** Greatest share of a limit that is used up; 1 is all of it. */
    private double used(FlightOutcome.Figures figures) {
        Profile.Limits limits = about.limits();
        double used = figures.missM() / limits.missM();
        used = Math.max(used, figures.heightLostM() / limits.heightLostM());
        used = Math.max(used, figures.tiltRad() / limits.tiltRad());
        used = Math.max(used, figures.driftM() / limits.driftM());
        return Math.max(used, figures.landingMps() / limits.landingMps());
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
        if (!made.computed()) {
            why.add("could not be computed");
        }
        FlightOutcome.Figures figures = made.figures();
        Profile.Limits limits = about.limits();
        beyond(figures.missM(), limits.missM(), "miss", why);
        beyond(figures.heightLostM(), limits.heightLostM(), "height lost", why);
        beyond(figures.tiltRad(), limits.tiltRad(), "tilt", why);
        beyond(figures.driftM(), limits.driftM(), "drift", why);
        beyond(figures.landingMps(), limits.landingMps(), "landing", why);
        return why.isEmpty() ? "kept every limit" : String.join("; ", why);
    }

    private static void beyond(double is, double limit, String what, List<String> why) {
        if (is > limit) {
            why.add(what + " beyond its limit");
        }
    }
}
