package liftwright.learning.explain;

import java.util.List;

/**
 * Which causes explain what was measured.
 *
 * @param finding what can be said
 * @param named the causes that it names: one or two found together, or up to {@link #MOST_NAMED}
 *     that are not told apart; empty where none is named
 * @param ranked all causes with a share worth telling, most likely first; {@link Cause#NOTHING} and
 *     {@link Cause#OTHER} are among them
 * @param missingN lift predicted as declared less lift measured, N; 0 where no channel tells lift
 * @param attribution where those newtons went
 * @param next tests that would tell more, most worth first
 * @param notes what else must be said, in words
 */
public record Explained(
        Finding finding,
        List<Weighed> named,
        List<Weighed> ranked,
        double missingN,
        Attribution attribution,
        List<NextTest> next,
        List<String> notes) {

    /** More causes than this are not named together. */
    public static final int MOST_NAMED = 3;

    public Explained {
        named = List.copyOf(named);
        ranked = List.copyOf(ranked);
        next = List.copyOf(next);
        notes = List.copyOf(notes);
    }

    /** What can be said. */
    public enum Finding {
        /** What was declared is doubt enough. */
        NOTHING_BEYOND_DECLARED("nothing beyond what was declared"),
        /** One cause, or two that work together. */
        FOUND("found"),
        /** One of a few; the measurement does not tell which. */
        CANNOT_BE_TOLD_APART("cannot be told apart"),
        /** Something is wrong, and nothing on the list explains it. */
        NONE_OF_THESE("none of these"),
        /** Something may be wrong; more than a few causes would explain it as well. */
        CANNOT_BE_TOLD("cannot be told");

        private final String words;

        Finding(String words) {
            this.words = words;
        }

        /** As it is told. */
        public String words() {
            return words;
        }
    }

    /**
     * A cause with what speaks for it.
     *
     * @param share probability that it is at work, given what was measured; shares of causes that
     *     can work together may add up to more than 1
     * @param sizeN what it takes of the lift, most probable, N
     * @param lowN 5 % of its probability lie below, N
     * @param highN 5 % lie above, N
     * @param size how large it is, in words
     * @param logFactor natural logarithm of the Bayes factor against {@link Cause#NOTHING}
     */
    public record Weighed(
            Cause cause,
            double share,
            double sizeN,
            double lowN,
            double highN,
            String size,
            double logFactor) {}
}
