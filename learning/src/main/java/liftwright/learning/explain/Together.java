package liftwright.learning.explain;

/**
 * What two causes do together beyond what each does alone, at their likeliest sizes.
 *
 * @param first number of a hypothesis
 * @param second number of another
 * @param effect readings with both less what each alone would add, all blocks of all channels
 * @param firstN what the first takes of the lift beside the second, over what it takes alone, N
 * @param secondN the same of the second
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
record Together(int first, int second, double[] effect, double firstN, double secondN) {

    /** Whether it is of these two, in either order. */
    boolean isOf(int one, int other) {
        return (first == one && second == other) || (first == other && second == one);
    }

    /** What one of them takes beside the other over what it takes alone, N. */
    double newtons(int of) {
        return of == first ? firstN : secondN;
    }
}
