package liftwright.flight.loops;

import java.util.List;
import liftwright.rig.Vec3;

/**
 * Lift and moments that each newton of each fan gives, and its inverse of least squares: how much
 * each fan gives for a newton of lift or a newton metre.
 */
public final class FanMatrix {

    /** Rows: lift along the body's upright, roll, pitch, yaw. */
    public static final int ROWS = 4;

    private final double[][] rows;
    private final double[][] shares;

    private FanMatrix(double[][] rows, double[][] shares) {
        this.rows = rows;
        this.shares = shares;
    }

    /** Of fans of which each counts by the thrust it can give at most. */
    public static FanMatrix of(List<Lifter> fans) {
        double[][] rows = new double[ROWS][fans.size()];
        double[] weight = new double[fans.size()];
        for (int f = 0; f < fans.size(); f++) {
            Vec3 moment = fans.get(f).moment();
            rows[0][f] = -fans.get(f).force().z();
            rows[1][f] = moment.x();
            rows[2][f] = moment.y();
            rows[3][f] = moment.z();
            weight[f] = fans.get(f).mostN() * fans.get(f).mostN();
        }
        return new FanMatrix(rows, inverse(rows, weight));
    }

    /** Newtons or newton metres for each newton of a fan, row by row. */
    public double row(int row, int fan) {
        return rows[row][fan];
    }

    /** Newtons of a fan for one newton of lift (row 0) or one newton metre of a moment. */
    public double share(int row, int fan) {
        return shares[row][fan];
    }

    public int fans() {
        return rows[0].length;
    }

    /** W Bᵀ (B W Bᵀ)⁻¹, where a row that the fans cannot give at all is left out. */
    private static double[][] inverse(double[][] rows, double[] weight) {
        int fans = weight.length;
        double[][] gram = new double[ROWS][ROWS];
        for (int i = 0; i < ROWS; i++) {
            for (int j = 0; j < ROWS; j++) {
                for (int f = 0; f < fans; f++) {
                    gram[i][j] += rows[i][f] * weight[f] * rows[j][f];
                }
            }
        }
        double[][] inverse = Small.inverse(gram);
        double[][] shares = new double[ROWS][fans];
        for (int row = 0; row < ROWS; row++) {
            for (int f = 0; f < fans; f++) {
                for (int k = 0; k < ROWS; k++) {
                    shares[row][f] += weight[f] * rows[k][f] * inverse[k][row];
                }
            }
        }
        return shares;
    }
}
