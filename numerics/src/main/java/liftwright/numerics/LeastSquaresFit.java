package liftwright.numerics;

/**
 * What {@link LeastSquares} found. Covariances are of the coordinates: ln x of a positive unknown,
 * x of any other, as {@link JointFactor} draws them.
 */
public final class LeastSquaresFit {

    /** How far the result can be relied on; only {@link #CONVERGED} is a result. */
    public enum Status {
        /**
         * Proven: no step lowers the sum of squares to first or second order; every unknown counts.
         */
        CONVERGED,
        /** The rows leave a combination of unknowns open: the covariance of it means nothing. */
        UNDETERMINED,
        /** Stopped where a lower sum of squares is near, or the model has no value. */
        NOT_CONVERGED
    }

    private final double[] solution;
    private final double[] covariance;
    private final double[] residuals;
    private final double sumOfSquares;
    private final int freedom;
    private final int evaluations;
    private final Status status;

    LeastSquaresFit(
            double[] solution,
            double[] covariance,
            double[] residuals,
            double sumOfSquares,
            int freedom,
            int evaluations,
            Status status) {
        this.solution = solution;
        this.covariance = covariance;
        this.residuals = residuals;
        this.sumOfSquares = sumOfSquares;
        this.freedom = freedom;
        this.evaluations = evaluations;
        this.status = status;
    }

    public Status status() {
        return status;
    }

    /** Value of an unknown, not its logarithm. */
    public double value(int unknown) {
        return solution[unknown];
    }

    /** How many unknowns. */
    public int unknowns() {
        return solution.length;
    }

    /** Values of all unknowns. */
    public double[] values() {
        return solution.clone();
    }

    /**
     * (JᵀJ)⁻¹ of two coordinates: their covariance if the rows were in true standard deviations.
     */
    public double covariance(int one, int other) {
        return covariance[one * solution.length + other];
    }

    /** Standard deviation of a coordinate if the rows were in true standard deviations. */
    public double deviation(int unknown) {
        return Math.sqrt(covariance(unknown, unknown));
    }

    /** Weighted residual of a row, priors not among them. */
    public double residual(int row) {
        return residuals[row];
    }

    /** Sum of the squared rows, priors included. */
    public double sumOfSquares() {
        return sumOfSquares;
    }

    /** Rows and priors less unknowns. */
    public int freedom() {
        return freedom;
    }

    /**
     * √(sum of squares / freedom): what one row scatters by; 1 where the rows were in true standard
     * deviations. 0 without freedom.
     */
    public double scatter() {
        return freedom > 0 ? Math.sqrt(sumOfSquares / freedom) : 0;
    }

    /** How often the model was asked. */
    public int evaluations() {
        return evaluations;
    }
}
