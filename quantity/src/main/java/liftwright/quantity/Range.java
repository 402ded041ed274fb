package liftwright.quantity;

/**
 * Two ends of one dimension, as in {@code -40…180 mm}; a single value reads as a range whose ends
 * are that value, with its tolerance.
 *
 * @param from first end
 * @param to second end, not below the first
 */
public record Range(Quantity from, Quantity to) {

    public Range {
        if (!from.dimension().equals(to.dimension()) || from.si() > to.si()) {
            throw new IllegalArgumentException("no range runs from " + from + " to " + to);
        }
    }

    /** Whether both ends are one value. */
    public boolean isSingle() {
        return from.si() == to.si();
    }
}
