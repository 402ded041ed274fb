package liftwright.flight.loops;

import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.complex.Complex;

/**
 * Roots of closed loops with a delay, which stands as Padé's fraction of order six (any text on
 * control), by Laguerre's method of a library. Polynomials have their constant first.
 */
final class DelayedRoots {

    private DelayedRoots() {}

    /** Denominator of Padé's e^(−sT); the numerator is that with −T. */
    static double[] pade(double seconds) {
        double[] c = new double[7];
        double term = 1;
        for (int k = 0; k <= 6; k++) {
            c[k] = term * Math.pow(seconds, k);
            term *= (6.0 - k) / ((12.0 - k) * (k + 1));
        }
        return c;
    }

    static double[] times(double[] a, double[] b) {
        double[] c = new double[a.length + b.length - 1];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                c[i + j] += a[i] * b[j];
            }
        }
        return c;
    }

    /**
     * Greatest real part of the roots of a sum, 1/s.
     *
     * @param delayS by which time is counted, so that coefficients are of like size
     */
    static double rightmost(double[] one, double[] other, double delayS) {
        double[] sum = new double[Math.max(one.length, other.length)];
        for (int k = 0; k < sum.length; k++) {
            double term = (k < one.length ? one[k] : 0) + (k < other.length ? other[k] : 0);
            sum[k] = term * Math.pow(delayS, -k);
        }
        int degree = sum.length;
        while (sum[degree - 1] == 0) {
            degree--;
        }
        double most = Double.NEGATIVE_INFINITY;
        for (Complex root :
                new LaguerreSolver(1e-12)
                        .solveAllComplex(java.util.Arrays.copyOf(sum, degree), 0)) {
            most = Math.max(most, root.getReal() / delayS);
        }
        return most;
    }
}
