package liftwright.flight.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import liftwright.physics.Dryden;
import liftwright.rig.Vec3;

/**
 * How much of which noise one of several modules in one air meets. Each module's turbulence is made
 * of the noises of all in such parts that its own strength and spectrum stay, and that two of them
 * are as alike as Dryden's turbulence is at their places ({@link Dryden#alongCorrelation}, {@link
 * Dryden#acrossCorrelation}): over the distance of their starts, with the scales near the ground,
 * which are the shortest. That u at one place and v at another hang together is left out, and a
 * gust is everywhere at once.
 *
 * @param seeds of the noises
 * @param u part of each in what blows along the mean wind
 * @param v part of each in what blows across it
 * @param w part of each in what blows upright
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
public record GustShare(long[] seeds, double[] u, double[] v, double[] w) {

    private static final double[] ALL = {1};

    /** Of one that is alone. */
    public static GustShare alone(long seed) {
        return new GustShare(new long[] {seed}, ALL, ALL, ALL);
    }

    /**
     * Of every module of a scene; the first meets its own noise alone.
     *
     * @param seeds one each
     * @param starts where each starts, scene axes, m
     * @param fromRad where the mean wind comes from
     */
    public static List<GustShare> among(long[] seeds, List<Vec3> starts, double fromRad) {
        double levelM = Dryden.levelScaleM(0);
        double uprightM = Dryden.uprightScaleM(0);
        double x = Math.cos(fromRad);
        double y = Math.sin(fromRad);
        double[][] u = parts(starts, (a, b) -> level(b.minus(a), x, y, levelM));
        double[][] v = parts(starts, (a, b) -> level(b.minus(a), -y, x, levelM));
        double[][] w =
                parts(starts, (a, b) -> Dryden.acrossCorrelation(b.minus(a).length(), uprightM));
        List<GustShare> shares = new ArrayList<>();
        for (int k = 0; k < seeds.length; k++) {
            shares.add(new GustShare(seeds, u[k], v[k], w[k]));
        }
        return shares;
    }

    /** Of a speed that points along (x, y): g + (f − g) cos² of the angle to the distance. */
    private static double level(Vec3 apart, double x, double y, double scaleM) {
        double r = apart.length();
        if (r == 0) {
            return 1;
        }
        double cos = (apart.x() * x + apart.y() * y) / r;
        double across = Dryden.acrossCorrelation(r, scaleM);
        return across + (Dryden.alongCorrelation(r, scaleM) - across) * cos * cos;
    }

    /** Cholesky's factor of the correlations: lower rows, each of length 1. */
    private static double[][] parts(List<Vec3> at, ToDoubleBiFunction<Vec3, Vec3> alike) {
        int n = at.size();
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            double left = 1;
            for (int j = 0; j < i; j++) {
                double sum = alike.applyAsDouble(at.get(i), at.get(j));
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                l[i][j] = l[j][j] > 0 ? sum / l[j][j] : 0;
                left -= l[i][j] * l[i][j];
            }
            l[i][i] = left > 1e-12 ? Math.sqrt(left) : 0;
        }
        return l;
    }
}
