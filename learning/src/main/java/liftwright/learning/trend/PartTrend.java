package liftwright.learning.trend;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How one part changed over the tests.
 *
 * @param part which, and what of it
 * @param found what each test found of it, in order
 * @param trend the line; empty where too few tests tell
 * @param told what may be said
 * @param limitSi where declared tolerance ends, on the scale of {@code found}
 * @param beyond first day on which it was clearly beyond that
 * @param asWell parts that would explain the same readings as well
 */
public record PartTrend(
        WornPart part,
        List<OfTest> found,
        Optional<Trend> trend,
        Told told,
        double limitSi,
        Optional<LocalDate> beyond,
        List<WornPart> asWell) {

    public PartTrend {
        found = List.copyOf(found);
        asWell = List.copyOf(asWell);
    }

    /**
     * What one test found of it.
     *
     * @param test its id
     * @param on its day
     * @param si the number: Ω of a joint; else a share of what was declared, 0 as declared
     * @param deviation its standard deviation
     */
    public record OfTest(String test, LocalDate on, double si, double deviation) {}

    /** What may be said of it. */
    public enum Told {
        WORSE("gets worse"),
        MENDED("got worse and was mended since"),
        BETTER("gets better"),
        WITHIN("within doubt"),
        TOO_FEW("too few tests tell");

        private final String words;

        Told(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Whether it is a claim. */
        public boolean isClaim() {
            return this == WORSE || this == MENDED || this == BETTER;
        }
    }
}
