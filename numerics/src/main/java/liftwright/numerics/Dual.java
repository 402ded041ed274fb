package liftwright.numerics;

/**
 * A number with its exact derivatives by the unknowns of a fit (forward differentiation), so that
 * nobody differentiates a model by hand. Immutable. For fits, not for hot loops: every operation
 * allocates.
 */
public final class Dual {

    private final double value;
    private final double[] slope;

    private Dual(double value, double[] slope) {
        this.value = value;
        this.slope = slope;
    }

    /** A number that depends on no unknown. */
    public static Dual constant(double value, int unknowns) {
        return new Dual(value, new double[unknowns]);
    }

    /** Unknown number {@code index} of {@code unknowns}. */
    public static Dual unknown(double value, int index, int unknowns) {
        double[] slope = new double[unknowns];
        slope[index] = 1;
        return new Dual(value, slope);
    }

    /**
     * A number whose derivatives were found elsewhere.
     *
     * @param slope by each unknown; not copied
     */
    static Dual given(double value, double[] slope) {
        return new Dual(value, slope);
    }

    public double value() {
        return value;
    }

    /** Derivative by one unknown. */
    public double slope(int unknown) {
        return slope[unknown];
    }

    public Dual plus(double other) {
        return new Dual(value + other, slope);
    }

    public Dual minus(double other) {
        return new Dual(value - other, slope);
    }

    public Dual times(double factor) {
        return along(value * factor, factor);
    }

    public Dual over(double divisor) {
        return times(1 / divisor);
    }

    public Dual negated() {
        return times(-1);
    }

    public Dual plus(Dual other) {
        return along(value + other.value, 1, other, 1);
    }

    public Dual minus(Dual other) {
        return along(value - other.value, 1, other, -1);
    }

    public Dual times(Dual other) {
        return along(value * other.value, other.value, other, value);
    }

    public Dual over(Dual other) {
        double quotient = value / other.value;
        return along(quotient, 1 / other.value, other, -quotient / other.value);
    }

    /** To a fixed power; the value is above 0 unless the power is whole. */
    public Dual pow(double power) {
        return along(Math.pow(value, power), power * Math.pow(value, power - 1));
    }

    /** To an unknown power; the value is above 0. */
    public Dual pow(Dual power) {
        return log().times(power).exp();
    }

    public Dual sqrt() {
        double root = Math.sqrt(value);
        return along(root, 0.5 / root);
    }

    public Dual exp() {
        double e = Math.exp(value);
        return along(e, e);
    }

    /** Natural logarithm; the value is above 0. */
    public Dual log() {
        return along(Math.log(value), 1 / value);
    }

    private Dual along(double result, double factor) {
        double[] by = new double[slope.length];
        for (int k = 0; k < by.length; k++) {
            by[k] = factor * slope[k];
        }
        return new Dual(result, by);
    }

    private Dual along(double result, double factor, Dual other, double otherFactor) {
        double[] by = new double[slope.length];
        for (int k = 0; k < by.length; k++) {
            by[k] = factor * slope[k] + otherFactor * other.slope[k];
        }
        return new Dual(result, by);
    }
}
