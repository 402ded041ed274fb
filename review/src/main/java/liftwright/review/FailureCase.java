package liftwright.review;

/**
 * What the question of failures is asked about, beside every single fault.
 *
 * @param pairsShown how many pairs of faults are told, the worst first; all are counted
 * @param triples whether every three fans that stop are looked at too
 * @param timelines whether it is told by a heated run what goes next
 */
public record FailureCase(int pairsShown, boolean triples, boolean timelines) {

    private static final int SHOWN = 12;

    public FailureCase {
        if (pairsShown < 0) {
            throw new IllegalArgumentException("so many pairs cannot be shown: " + pairsShown);
        }
    }

    /** The twelve worst pairs and what goes next, no triples. */
    public static FailureCase usual() {
        return new FailureCase(SHOWN, false, true);
    }

    /** Nothing that takes its time. */
    public static FailureCase quick() {
        return new FailureCase(SHOWN, false, false);
    }
}
