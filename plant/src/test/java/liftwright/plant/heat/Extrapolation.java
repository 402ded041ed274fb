package liftwright.plant.heat;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Integrates a {@link Model}: linearly implicit Euler in 1, 2, 3 and 4 parts, extrapolated to order
 * four; the step goes by the difference of the last two columns (Hairer and Wanner, Solving
 * Ordinary Differential Equations II, section IV.9). The order does not hang on how exact the
 * model's Jacobian is, only stability does.
 */
final class Extrapolation {

    /** y' = f(y) with a linear system of its own. */
    interface Model {
        int size();

        /** Takes the slopes at a state. */
        void slope(double[] y, double[] f);

        /** Makes ready to solve with 1 − h J, J at a state. */
        void factor(double[] y, double h);

        /** A right-hand side in, (1 − h J)⁻¹ of it out. */
        void solve(double[] f);

        /** Error of a step that is allowed in a component. */
        double allowed(int component);
    }

    private static final int ORDER = 4;

    private final Model model;
    private final double[] allowed;
    private double[] state;
    private double[] slope;
    private double timeS;
    private double nextS = 1e-3;
    private double lastS;
    private double[] before;
    private double[] slopeBefore;

    Extrapolation(Model model, double[] start) {
        this.model = model;
        state = start.clone();
        slope = new double[start.length];
        before = state;
        slopeBefore = slope;
        allowed = new double[start.length];
        Arrays.setAll(allowed, model::allowed);
        restart();
    }

    /** What the model is asked changes at once. */
    void restart() {
        model.slope(state, slope);
        nextS = Math.min(nextS, 1e-2);
    }

    double timeS() {
        return timeS;
    }

    double[] state() {
        return state;
    }

    /** One step, not beyond a time; then the state stands there. */
    void step(double untilS) {
        while (true) {
            double left = untilS - timeS;
            double h = nextS >= left ? left : Math.min(nextS, left / 2);
            double[][] row = tableau(h);
            double error = 0;
            for (int i = 0; i < state.length; i++) {
                double miss = Math.abs(row[ORDER - 1][i] - row[ORDER - 2][i]) / allowed[i];
                error = miss <= error ? error : miss;
            }
            double grow = 0.8 * Math.pow(Math.max(error, 1e-9), -1.0 / ORDER);
            if (error <= 1) {
                nextS = Math.max(h < nextS ? nextS : 0, h * Math.min(grow, 3));
                before = state;
                slopeBefore = slope;
                state = row[ORDER - 1];
                slope = new double[state.length];
                model.slope(state, slope);
                timeS = h == left ? untilS : timeS + h;
                lastS = h;
                return;
            }
            if (h < 1e-8) {
                throw new AssertionError("the reference does not get on at " + timeS + " s");
            }
            nextS = h * (grow > 0.1 ? Math.min(grow, 0.7) : 0.1);
        }
    }

    private double[][] tableau(double h) {
        double[][] row = new double[ORDER][];
        for (int j = 0; j < ORDER; j++) {
            double[] value = eulers(h, j + 1);
            for (int k = 0; k <= j; k++) {
                double[] above = row[k];
                row[k] = value;
                if (k < j) {
                    double part = (j + 1.0) / (j - k) - 1;
                    double[] better = new double[value.length];
                    for (int i = 0; i < better.length; i++) {
                        better[i] = value[i] + (value[i] - above[i]) / part;
                    }
                    value = better;
                }
            }
        }
        return row;
    }

    private double[] eulers(double step, int parts) {
        double h = step / parts;
        model.factor(state, h);
        double[] y = state.clone();
        double[] f = slope.clone();
        for (int k = 0; k < parts; k++) {
            if (k > 0) {
                model.slope(y, f);
            }
            model.solve(f);
            for (int i = 0; i < y.length; i++) {
                y[i] += h * f[i];
            }
        }
        return y;
    }

    /** Whether a quantity rose to a value within the last step. */
    boolean reached(ToDoubleFunction<double[]> of, double value) {
        return of.applyAsDouble(state) >= value;
    }

    /** When it did, s; by the cubics through both ends of the last step. */
    double when(ToDoubleFunction<double[]> of, double value) {
        double low = 0;
        double high = 1;
        for (int k = 0; k < 45; k++) {
            double middle = (low + high) / 2;
            if (of.applyAsDouble(at(middle)) < value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return timeS - lastS + high * lastS;
    }

    /** The state within the last step. */
    double[] at(double s) {
        double[] y = new double[state.length];
        for (int i = 0; i < y.length; i++) {
            y[i] =
                    before[i] * (1 + 2 * s) * (1 - s) * (1 - s)
                            + lastS * slopeBefore[i] * s * (1 - s) * (1 - s)
                            + state[i] * s * s * (3 - 2 * s)
                            + lastS * slope[i] * s * s * (s - 1);
        }
        return y;
    }

    /** Goes back into the last step; {@link #restart} before it goes on. */
    void backTo(double whenS) {
        state = at((whenS - (timeS - lastS)) / lastS);
        lastS = whenS - (timeS - lastS);
        timeS = whenS;
    }
}
