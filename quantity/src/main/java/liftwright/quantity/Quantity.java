package liftwright.quantity;

/**
 * A value as declared: SI number (kelvin for temperatures), dimension and doubt.
 *
 * @param si value in the coherent SI unit of {@code dimension}; angles in radian; finite
 * @param dimension what it measures
 * @param tolerance declared doubt, in the same SI unit
 */
public record Quantity(double si, Dimension dimension, Tolerance tolerance) {

    public Quantity {
        if (Double.isNaN(si) || Double.isInfinite(si)) {
            throw new IllegalArgumentException("a quantity is finite, not " + si);
        }
    }

    public static Quantity exact(double si, Dimension dimension) {
        return new Quantity(si, dimension, Tolerance.NONE);
    }
}
