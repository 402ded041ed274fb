package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import liftwright.flight.run.FlightOutcome;

/** Sets of flights with anything in them that a file can hold. */
final class RandomFlights {

    static final FlightsOf OF = of(7);

    private static final List<String> WORDS =
            List.of(
                    "",
                    "tilt: land",
                    "a \"quoted\" word, with a comma",
                    "ä ± 5 °C ✓",
                    "# sha256: x");

    private RandomFlights() {}

    static FlightsOf of(long seed) {
        return new FlightsOf("0.1.0", "sha256:" + "ab".repeat(32), "none", "sha256:01", seed);
    }

    static Flown flown(RandomGenerator random, int number) {
        String words = WORDS.get(random.nextInt(WORDS.size()));
        if (random.nextInt(12) == 0) {
            return new Flown.NotMade(number, words);
        }
        Map<FlightFigure, Double> line = new EnumMap<>(FlightFigure.class);
        for (FlightFigure each : FlightFigure.values()) {
            line.put(each, number(random));
        }
        var ends = FlightOutcome.End.values();
        return new Flown.Made(
                number,
                ends[random.nextInt(ends.length)],
                random.nextBoolean(),
                random.nextBoolean(),
                number(random),
                FlightFigure.figures(line),
                words);
    }

    private static double number(RandomGenerator random) {
        return switch (random.nextInt(6)) {
            case 0 -> 0;
            case 1 -> -0.0;
            case 2 -> random.nextInt(100);
            case 3 -> Math.exp(40 * random.nextGaussian());
            case 4 -> Double.MIN_VALUE;
            default -> random.nextGaussian();
        };
    }

    static FlightSet set(RandomGenerator random, int most) {
        var numbers = new TreeSet<Integer>();
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            numbers.add(random.nextInt(2 * most));
        }
        List<Flown> flights = new ArrayList<>();
        numbers.forEach(number -> flights.add(flown(random, number)));
        return new FlightSet(OF, flights);
    }
}
