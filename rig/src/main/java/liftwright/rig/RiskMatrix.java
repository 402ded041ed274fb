package liftwright.rig;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Which risk a severity with a likelihood makes: what the builder decided, or the one of the parts
 * book. Severities I to IV and likelihoods A to F are those of MIL-STD-882E, tables I and II.
 *
 * @param source where it comes from
 * @param declared whether the rig file gave it
 * @param cells words for the risk, whole
 */
public record RiskMatrix(
        String source, boolean declared, Map<Likelihood, Map<Severity, String>> cells) {

    /** MIL-STD-882E, table I. */
    public enum Severity {
        CATASTROPHIC("I"),
        CRITICAL("II"),
        MARGINAL("III"),
        NEGLIGIBLE("IV");

        private final String number;

        Severity(String number) {
            this.number = number;
        }

        /** I to IV. */
        public String number() {
            return number;
        }
    }

    /** MIL-STD-882E, table II, with the numbers of its appendix A: chance within the exposure. */
    public enum Likelihood {
        FREQUENT('A', 1e-1),
        PROBABLE('B', 1e-2),
        OCCASIONAL('C', 1e-3),
        REMOTE('D', 1e-6),
        IMPROBABLE('E', Double.MIN_VALUE),
        ELIMINATED('F', 0);

        private final char letter;
        private final double from;

        Likelihood(char letter, double from) {
            this.letter = letter;
            this.from = from;
        }

        /** A to F. */
        public char letter() {
            return letter;
        }

        /** Least chance of this level; below 1e-6 it is improbable, at 0 eliminated. */
        public double from() {
            return from;
        }

        /**
         * The level of a chance.
         *
         * @param chance 0 to 1
         */
        public static Likelihood of(double chance) {
            for (Likelihood level : values()) {
                if (chance >= level.from) {
                    return level;
                }
            }
            throw new IllegalArgumentException("a chance is from 0 to 1, not " + chance);
        }
    }

    public RiskMatrix {
        var copy = new EnumMap<Likelihood, Map<Severity, String>>(Likelihood.class);
        cells.forEach((level, row) -> copy.put(level, Map.copyOf(row)));
        if (copy.size() != Likelihood.values().length
                || copy.values().stream().anyMatch(row -> row.size() != Severity.values().length)) {
            throw new IllegalArgumentException("a matrix is whole");
        }
        cells = Collections.unmodifiableMap(copy);
    }

    /**
     * One row.
     *
     * @param risks from catastrophic to negligible, four
     */
    public static Map<Severity, String> row(List<String> risks) {
        var row = new EnumMap<Severity, String>(Severity.class);
        for (int i = 0; i < Severity.values().length; i++) {
            row.put(Severity.values()[i], risks.get(i));
        }
        return row;
    }

    /**
     * The one that stands in until the builder declares another.
     *
     * <p>From memory after table III of MIL-STD-882E (2012). Copies of that table disagree: one has
     * “low” for an improbable marginal mishap (E, III), another differs widely. Where it matters,
     * declare the matrix that your own rules ask for.
     */
    public static final RiskMatrix USUAL =
            new RiskMatrix(
                    "MIL-STD-882E (2012), table III, from memory: copies disagree, so declare the"
                            + " one that your rules ask for",
                    false,
                    Map.of(
                            Likelihood.FREQUENT,
                            row(List.of("high", "high", "serious", "medium")),
                            Likelihood.PROBABLE,
                            row(List.of("high", "high", "serious", "medium")),
                            Likelihood.OCCASIONAL,
                            row(List.of("high", "serious", "medium", "low")),
                            Likelihood.REMOTE,
                            row(List.of("serious", "medium", "medium", "low")),
                            Likelihood.IMPROBABLE,
                            row(List.of("medium", "medium", "medium", "low")),
                            Likelihood.ELIMINATED,
                            row(List.of("eliminated", "eliminated", "eliminated", "eliminated"))));

    /** The word for the risk. */
    public String risk(Severity severity, Likelihood likelihood) {
        String word = cells.getOrDefault(likelihood, Map.of()).get(severity);
        if (word == null) {
            throw new IllegalStateException("a matrix is whole");
        }
        return word;
    }
}
