package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Flights of one kind, each number at most once. Two sets become one by what is in either, so the
 * order in which parts are put together, and how often, makes no difference.
 *
 * @param of which flights
 * @param flights rising by number
 */
public record FlightSet(FlightsOf of, List<Flown> flights) {

    public FlightSet {
        flights = List.copyOf(flights);
        for (int i = 1; i < flights.size(); i++) {
            if (flights.get(i).number() <= flights.get(i - 1).number()) {
                throw new IllegalArgumentException("flights rise by number");
            }
        }
    }

    /** Nothing flown yet. */
    public static FlightSet none(FlightsOf of) {
        return new FlightSet(of, List.of());
    }

    /** Numbers without a gap. */
    public record Run(int from, int to) {
        @Override
        public String toString() {
            return from == to ? Integer.toString(from) : from + "-" + to;
        }
    }

    /** Which numbers are here, in as few runs as there can be. */
    public List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (Flown each : flights) {
            int last = runs.size() - 1;
            if (last >= 0 && runs.get(last).to + 1 == each.number()) {
                runs.set(last, new Run(runs.get(last).from, each.number()));
            } else {
                runs.add(new Run(each.number(), each.number()));
            }
        }
        return runs;
    }

    /** The numbers of a range that are not here, rising. */
    public int[] missing(FlightRange range) {
        boolean[] here = new boolean[range.to() - range.from() + 1];
        for (Flown each : flights) {
            if (each.number() >= range.from() && each.number() <= range.to()) {
                here[each.number() - range.from()] = true;
            }
        }
        return IntStream.rangeClosed(range.from(), range.to())
                .filter(number -> !here[number - range.from()])
                .toArray();
    }

    /** The flight of a number. */
    public Optional<Flown> flight(int number) {
        return flights.stream().filter(each -> each.number() == number).findFirst();
    }

    /** What comes of putting sets together. */
    public sealed interface Merged {

        /** All of them as one. */
        record Whole(FlightSet set) implements Merged {}

        /**
         * They do not belong together.
         *
         * @param part which of them, from 0, does not fit those before
         * @param flight whose results differ; empty where they are of another kind altogether
         * @param reason in words
         */
        record Refused(int part, OptionalInt flight, String reason) implements Merged {}
    }

    /**
     * @param parts at least one; they may overlap where they agree
     */
    public static Merged merge(List<FlightSet> parts) {
        FlightsOf of = parts.getFirst().of;
        NavigableMap<Integer, Flown> all = new TreeMap<>();
        for (int i = 0; i < parts.size(); i++) {
            Optional<String> unlike = of.unlike(parts.get(i).of);
            if (unlike.isPresent()) {
                return new Merged.Refused(i, OptionalInt.empty(), unlike.get());
            }
            for (Flown each : parts.get(i).flights) {
                Flown before = all.putIfAbsent(each.number(), each);
                if (before != null && !before.equals(each)) {
                    return new Merged.Refused(
                            i,
                            OptionalInt.of(each.number()),
                            "flight " + each.number() + " came out otherwise before");
                }
            }
        }
        return new Merged.Whole(new FlightSet(of, List.copyOf(all.values())));
    }
}
