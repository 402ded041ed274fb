package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Many flights, each with every tolerance drawn. */
final class DispersionFields {

    private static final String SHARE = "DispersionTest.theShareAndItsIntervalAreThoseOfTheCount";
    private static final String MISSES = "DispersionTest.theMissesAreThoseOfTheFlights";
    private static final String DRIVERS = "DispersionTest.namesWhatDrivesTheMisses";
    private static final String WORST = "DispersionTest.theWorstComeFirstAndFlyAgain";
    private static final String COUNTED = "counted flights";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "flights-counted",
                            "flights",
                            Measure.COUNT,
                            "How many flights.",
                            COUNTED,
                            "by definition",
                            SHARE),
                    new Field(
                            "flights-share",
                            "share",
                            Measure.PERCENT,
                            "Share of the drawn flights, with the interval that holds the true share in 95 of 100 such sets of flights.",
                            "Clopper–Pearson; a flight that cannot be told counts as what is worse for each end",
                            "[CLOPPER34]",
                            SHARE),
                    words("flights-end", "how it ended", "How a flight ended.", WORST),
                    new Field(
                            "flights-quantile",
                            "share below",
                            Measure.PERCENT,
                            "Share of the flights flown to their end that lie below the values beside it.",
                            "rank (n + 1) p, linear between order statistics; bands by ranks",
                            "[HYNDMAN96], [CONOVER99]",
                            MISSES),
                    of(
                            "flights-miss",
                            "miss",
                            Measure.LENGTH,
                            "Distance from the last held point, mean over the last second of the hold."),
                    of(
                            "flights-height-lost",
                            "height lost",
                            Measure.LENGTH,
                            "Greatest height below the set point in the air."),
                    of("flights-tilt", "tilt", Measure.ANGLE, "Greatest tilt in the air."),
                    of(
                            "flights-drift",
                            "drift",
                            Measure.LENGTH,
                            "Greatest level distance from the set point in the air."),
                    of(
                            "flights-landing",
                            "landing",
                            Measure.SPEED,
                            "Sink at the last touch-down; 0 where there was none."),
                    of("flights-miss-from", "miss from", Measure.LENGTH, "Least miss of a bar."),
                    of("flights-miss-to", "to", Measure.LENGTH, "Greatest miss of a bar."),
                    words(
                            "flights-driver",
                            "driver",
                            "A number that was drawn in every flight.",
                            DRIVERS),
                    new Field(
                            "flights-driver-share",
                            "of the variance",
                            Measure.PERCENT,
                            "Share of the variance of the outcome that goes with this number alone. Shares of all add up to 100 % at most; the rest is joint work and chance.",
                            "Var(E[outcome | number]) / Var(outcome), from the flights themselves, freed of the bias of its bins; band: two standard errors by leaving out a twentieth at a time",
                            "[PLISCHKE13], [KELLEY35]",
                            DRIVERS),
                    new Field(
                            "flights-driver-chance",
                            "by chance",
                            Measure.PERCENT,
                            "How probable it is that any number at all seems to drive as much where none does.",
                            "outcomes shuffled among the flights, greatest share of all numbers",
                            "[WESTFALL93]",
                            DRIVERS),
                    new Field(
                            "flights-number",
                            "flight",
                            Measure.COUNT,
                            "Number of a flight: with the seed it decides everything that is drawn in it.",
                            "counter-based streams",
                            "[SALMON11]",
                            WORST),
                    words(
                            "flights-replay",
                            "fly it again",
                            "Command that flies this flight again.",
                            WORST),
                    words("flights-why", "why", "What it did not keep to.", WORST));

    private DispersionFields() {}

    private static Field of(String id, String label, Measure measure, String meaning) {
        return new Field(id, label, measure, meaning, "as flown", "by definition", MISSES);
    }

    private static Field words(String id, String label, String meaning, String test) {
        return new Field(id, label, Measure.RATIO, meaning, "in words", "by definition", test);
    }
}
