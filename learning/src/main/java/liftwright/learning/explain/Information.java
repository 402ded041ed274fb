package liftwright.learning.explain;

import liftwright.numerics.CholeskyFactor;

/**
 * What an experiment is expected to tell of unknowns that are normal before it: ½ ln det(1 + C½ Fᵀ
 * R⁻¹ F C½) nats, with C the covariance of the unknowns, F what one of each does to the readings, R
 * the covariance of these (Lindley [LINDLEY56] for the linear normal case).
 */
final class Information {

    private Information() {}

    /**
     * @param covariance of the unknowns, positive semi-definite
     * @param effects by unknown: what one of it does to each reading, in standard deviations of a
     *     reading whose errors are independent (whitened by R)
     */
    static double nats(double[][] covariance, double[][] effects) {
        int n = covariance.length;
        double[][] told = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double sum = 0;
                for (int k = 0; k < effects[i].length; k++) {
                    sum += effects[i][k] * effects[j][k];
                }
                told[i][j] = sum;
            }
        }
        double[][] root = root(covariance);
        double[][] inner = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double sum = i == j ? 1 : 0;
                for (int k = 0; k < n; k++) {
                    for (int l = 0; l < n; l++) {
                        sum += root[k][i] * told[k][l] * root[l][j];
                    }
                }
                inner[i][j] = sum;
            }
        }
        return 0.5 * CholeskyFactor.of(inner).logDeterminant();
    }

    /** Of positive semi-definite C some B with B Bᵀ = C. */
    private static double[][] root(double[][] covariance) {
        var axes = liftwright.numerics.PrincipalAxes.of(covariance);
        int n = covariance.length;
        double[][] root = new double[n][n];
        for (int k = 0; k < n; k++) {
            double length = Math.sqrt(Math.max(0, axes.value(k)));
            double[] axis = axes.axis(k);
            for (int i = 0; i < n; i++) {
                root[i][k] = length * axis[i];
            }
        }
        return root;
    }

    /** Of things of which one is at work: whether each is, by its share. */
    static double[][] ofShares(double[] shares) {
        int n = shares.length;
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i][j] = (i == j ? shares[i] : 0) - shares[i] * shares[j];
            }
        }
        return covariance;
    }
}
