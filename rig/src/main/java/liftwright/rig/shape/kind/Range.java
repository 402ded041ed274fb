package liftwright.rig.shape.kind;

/**
 * Which values are allowed, SI.
 *
 * @param least smallest; negative infinity for none
 * @param leastAllowed whether the smallest itself is allowed
 * @param most largest; infinity for none
 */
public record Range(double least, boolean leastAllowed, double most) {

    public static final Range ANY =
            new Range(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY);
    public static final Range POSITIVE = new Range(0, false, Double.POSITIVE_INFINITY);
    public static final Range NOT_NEGATIVE = new Range(0, true, Double.POSITIVE_INFINITY);

    /** A share of a whole. */
    public static final Range SHARE = new Range(0, true, 1);

    public static Range between(double least, double most) {
        return new Range(least, true, most);
    }

    /** More than nothing, at most {@code most}. */
    public static Range upTo(double most) {
        return new Range(0, false, most);
    }

    public boolean holds(double si) {
        return (leastAllowed ? si >= least : si > least) && si <= most;
    }

    /** Whether only values above zero, or zero itself, are allowed. */
    boolean isOneSided() {
        return least >= 0;
    }

    /** In words, after the kind of quantity: empty when all are allowed. */
    String words(Measure measure) {
        boolean top = most != Double.POSITIVE_INFINITY;
        boolean bottom = least != Double.NEGATIVE_INFINITY;
        if (bottom && top) {
            return (leastAllowed ? " from " : " above ")
                    + measure.show(least)
                    + (leastAllowed ? " to " : " and up to ")
                    + measure.show(most);
        }
        if (bottom) {
            return leastAllowed
                    ? " of at least " + measure.show(least)
                    : " above " + measure.show(least);
        }
        return top ? " of at most " + measure.show(most) : "";
    }
}
