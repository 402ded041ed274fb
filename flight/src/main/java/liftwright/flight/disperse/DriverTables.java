package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.FirstOrderIndices;
import liftwright.quantity.Band;

/** What drives the misses, and what drives that flights fail. */
final class DriverTables {

    /** Below this chance a driver is called one. */
    static final double LEVEL = 0.05;

    private static final int SHOWN = 10;

    /** Flights that are looked at: more tell nothing new and cost memory. */
    private static final int MOST = 20_000;

    /** Fewer failed, or fewer well, tell nothing of what makes a flight fail. */
    private static final int FEWEST_OF_A_KIND = 5;

    private final DispersionCase about;

    DriverTables(DispersionCase about) {
        this.about = about;
    }

    /**
     * Drivers of an outcome.
     *
     * @param name of the strongest that is not chance; empty where there is none
     * @param section the table
     */
    record Ranked(Optional<String> name, Section section) {}

    /** Of the miss of flights flown to their end. */
    Optional<Ranked> ofMisses(List<Flown.Made> ended) {
        return ranked(
                "flights-drivers", "What drives the misses", ended, made -> made.figures().missM());
    }

    /** Of failing, yes or no. */
    Optional<Ranked> ofFailing(List<Flown.Made> computed) {
        long failed = computed.stream().filter(made -> !made.well()).count();
        if (Math.min(failed, computed.size() - failed) < FEWEST_OF_A_KIND) {
            return Optional.empty();
        }
        return ranked(
                "flights-failing",
                "What drives that a flight fails",
                computed,
                made -> made.well() ? 0 : 1);
    }

    private Optional<Ranked> ranked(
            String id, String title, List<Flown.Made> all, ToDoubleFunction<Flown.Made> outcome) {
        List<Flown.Made> flights = all.subList(0, Math.min(MOST, all.size()));
        if (flights.size() < FirstOrderIndices.FEWEST) {
            return Optional.empty();
        }
        DriverValues drivers =
                about.drivers().apply(flights.stream().mapToInt(Flown.Made::number).toArray());
        if (drivers.size() == 0) {
            return Optional.empty();
        }
        List<FirstOrderIndices.Index> found =
                FirstOrderIndices.of(
                        drivers.size(),
                        drivers::of,
                        flights.stream().mapToDouble(outcome).toArray(),
                        FirstOrderIndices.USUAL_SHUFFLES,
                        about.set().of().seed());
        if (found.isEmpty()) {
            return Optional.empty();
        }
        List<FirstOrderIndices.Index> order = new ArrayList<>(found);
        order.sort(
                Comparator.comparingDouble(FirstOrderIndices.Index::chance)
                        .thenComparing(
                                Comparator.comparingDouble(FirstOrderIndices.Index::share)
                                        .reversed()));
        List<FirstOrderIndices.Index> shown = order.subList(0, Math.min(SHOWN, order.size()));
        Optional<String> first =
                Optional.of(shown.getFirst())
                        .filter(index -> index.chance() <= LEVEL)
                        // One far miss lends a share to whatever lay far out in that flight.
                        .filter(index -> index.share() > 2 * index.standardError())
                        .map(index -> drivers.label(index.driver()));
        return Optional.of(new Ranked(first, table(id, title, shown, drivers, flights.size())));
    }

    private static Section table(
            String id,
            String title,
            List<FirstOrderIndices.Index> shown,
            DriverValues drivers,
            int flights) {
        return new Section.Table(
                id,
                title,
                List.of("flights-driver", "flights-driver-share", "flights-driver-chance"),
                shown.stream()
                        .map(
                                index ->
                                        List.of(
                                                Value.words(
                                                        "flights-driver",
                                                        drivers.label(index.driver())),
                                                share(index, flights),
                                                Value.of("flights-driver-chance", index.chance())))
                        .toList());
    }

    private static Value share(FirstOrderIndices.Index index, int flights) {
        double half = 2 * index.standardError();
        return Value.of(
                "flights-driver-share",
                index.share(),
                new Band(
                        index.share() - half,
                        index.share() + half,
                        WellShare.CONFIDENCE,
                        "two standard errors, a twentieth left out at a time",
                        flights,
                        0));
    }
}
