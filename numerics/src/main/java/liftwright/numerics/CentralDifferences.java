package liftwright.numerics;

/**
 * Rows of a model that is a run of steps and no formula, with slopes from the rows a little to
 * either side of each unknown. Exact to second order: about 1e-8 of the slope where the model is
 * smooth.
 */
public final class CentralDifferences implements LeastSquares.Rows {

    /** The model: rows from natural values of the unknowns. */
    @FunctionalInterface
    public interface Model {
        /**
         * @param rows takes every row
         */
        void at(double[] unknowns, double[] rows);
    }

    private static final double STEP = 1e-6;

    private final Model model;
    private final boolean[] positive;
    private final double[] scale;

    /**
     * @param positive whether an unknown is above 0; the step is then 1e-6 of its value
     * @param scale of the others: a size that matters; the step is 1e-6 of it
     */
    public CentralDifferences(Model model, boolean[] positive, double[] scale) {
        this.model = model;
        this.positive = positive.clone();
        this.scale = scale.clone();
    }

    @Override
    public void valuesAt(double[] unknowns, double[] rows) {
        model.at(unknowns, rows);
    }

    @Override
    public void at(Dual[] unknowns, Dual[] rows) {
        int n = unknowns.length;
        double[] x = new double[n];
        for (int k = 0; k < n; k++) {
            x[k] = unknowns[k].value();
        }
        double[] middle = new double[rows.length];
        model.at(x, middle);
        double[][] slope = new double[rows.length][n];
        double[] above = new double[rows.length];
        double[] below = new double[rows.length];
        for (int k = 0; k < n; k++) {
            double here = x[k];
            double h = STEP * (positive[k] ? here : scale[k]);
            x[k] = here + h;
            model.at(x, above);
            x[k] = here - h;
            model.at(x, below);
            x[k] = here;
            for (int i = 0; i < rows.length; i++) {
                slope[i][k] = (above[i] - below[i]) / (2 * h) * unknowns[k].slope(k);
            }
        }
        for (int i = 0; i < rows.length; i++) {
            rows[i] = Dual.given(middle[i], slope[i]);
        }
    }
}
