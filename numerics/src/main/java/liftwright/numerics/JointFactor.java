package liftwright.numerics;

/**
 * A group of parameters known together: one factor of uncertainty with correlated members, drawn
 * through the Cholesky factor of its covariance. Positive members are drawn in logarithms, so no
 * draw turns a resistance negative.
 */
public final class JointFactor {

    /**
     * A pivot this far below its diagonal is taken as exact dependence. Rounding moves later pivots
     * by about 1e-16 / √1e-9 of their diagonal, well below it.
     */
    private static final double DEPENDENT = 1e-9;

    private final double[] nominal;
    private final boolean[] positive;
    private final double[] lower;

    private JointFactor(double[] nominal, boolean[] positive, double[] lower) {
        this.nominal = nominal;
        this.positive = positive;
        this.lower = lower;
    }

    /**
     * @param nominal value of each member (the median of its draws)
     * @param positive whether the member is drawn in logarithms; its nominal value is then &gt; 0
     * @param covariance row by row, of the coordinates drawn: ln x for positive members (so √ of
     *     the diagonal is a relative standard deviation), x for others
     * @throws IllegalArgumentException if sizes disagree, or the matrix is not symmetric and
     *     positive semi-definite
     */
    public static JointFactor of(double[] nominal, boolean[] positive, double[] covariance) {
        int n = nominal.length;
        if (positive.length != n || covariance.length != n * n) {
            throw new IllegalArgumentException(
                    "a joint factor of " + n + " members needs " + n + " signs and a full matrix");
        }
        for (int i = 0; i < n; i++) {
            if (positive[i] && !(nominal[i] > 0)) {
                throw new IllegalArgumentException("a positive member has value " + nominal[i]);
            }
        }
        return new JointFactor(nominal.clone(), positive.clone(), cholesky(covariance, n));
    }

    private static double[] cholesky(double[] covariance, int n) {
        double[] lower = new double[n * n];
        for (int j = 0; j < n; j++) {
            double diagonal = covariance[j * n + j];
            double pivot = diagonal;
            for (int k = 0; k < j; k++) {
                pivot -= lower[j * n + k] * lower[j * n + k];
            }
            if (!(pivot >= -DEPENDENT * diagonal)) {
                throw new IllegalArgumentException("not a covariance: member " + j);
            }
            boolean dependent = pivot <= DEPENDENT * diagonal;
            double root = dependent ? 0 : Math.sqrt(pivot);
            lower[j * n + j] = root;
            for (int i = j + 1; i < n; i++) {
                double below = covariance[i * n + j];
                double scale = Math.sqrt(diagonal * covariance[i * n + i]);
                if (!(Math.abs(below - covariance[j * n + i]) <= DEPENDENT * scale)) {
                    throw new IllegalArgumentException("a covariance is symmetric");
                }
                for (int k = 0; k < j; k++) {
                    below -= lower[i * n + k] * lower[j * n + k];
                }
                if (dependent && Math.abs(below) > Math.sqrt(DEPENDENT) * scale) {
                    throw new IllegalArgumentException("not a covariance: members " + j + ", " + i);
                }
                lower[i * n + j] = dependent ? 0 : below / root;
            }
        }
        return lower;
    }

    /** How many members. */
    public int size() {
        return nominal.length;
    }

    /**
     * One draw; member i uses step i of the channel.
     *
     * @param values takes one value per member from {@code at}
     */
    public void draw(long seed, long channel, int draw, double[] values, int at) {
        for (int i = 0; i < nominal.length; i++) {
            values[at + i] = CounterStream.normal(seed, channel, draw, i);
        }
        transform(values, at);
    }

    /** Turns independent standard normal deviates into a draw, in place. */
    public void transform(double[] values, int at) {
        int n = nominal.length;
        // From the last member back: member i needs the deviates 0 to i and no later one.
        for (int i = n - 1; i >= 0; i--) {
            double sum = 0;
            for (int k = 0; k <= i; k++) {
                sum += lower[i * n + k] * values[at + k];
            }
            values[at + i] = positive[i] ? nominal[i] * Math.exp(sum) : nominal[i] + sum;
        }
    }

    /**
     * The same for members that do not stand in a row.
     *
     * @param at place of each member in {@code values}
     */
    public void transform(double[] values, int[] at) {
        int n = nominal.length;
        for (int i = n - 1; i >= 0; i--) {
            double sum = 0;
            for (int k = 0; k <= i; k++) {
                sum += lower[i * n + k] * values[at[k]];
            }
            values[at[i]] = positive[i] ? nominal[i] * Math.exp(sum) : nominal[i] + sum;
        }
    }

    /** Covariance of two members, of the coordinates drawn. */
    public double covariance(int i, int j) {
        int n = nominal.length;
        double sum = 0;
        for (int k = 0; k <= Math.min(i, j); k++) {
            sum += lower[i * n + k] * lower[j * n + k];
        }
        return sum;
    }

    /** Whether a member is drawn in logarithms. */
    public boolean isPositive(int i) {
        return positive[i];
    }
}
