package liftwright.physics;

/** A gust that comes and stays, MIL-F-8785C § 3.7.2.3 [MIL8785C]. */
public final class Gust {

    private Gust() {}

    /**
     * Wind of a gust, ½ V_m (1 − cos(π x/d_m)) up to x = d_m and V_m from there on, m/s: it does
     * not fade again.
     *
     * @param throughM x flown through it so far, m; none before 0
     * @param lengthM d_m in which it grows, &gt; 0, m
     * @param fullMps V_m, m/s
     */
    public static double windMps(double throughM, double lengthM, double fullMps) {
        if (throughM <= 0) {
            return 0;
        }
        return throughM < lengthM
                ? fullMps / 2 * (1 - Math.cos(Math.PI * throughM / lengthM))
                : fullMps;
    }
}
