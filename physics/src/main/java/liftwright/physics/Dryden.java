package liftwright.physics;

/**
 * Turbulence near the ground in Dryden's form, MIL-F-8785C § 3.7.3.4 [MIL8785C]: u along the mean
 * wind, v across it, w upright. Spectral densities at angular frequency ω of who flies through it
 * at airspeed V, one-sided, with τ = L/V:
 *
 * <pre>
 *   Φ_u = σ_u² (2 τ_u/π) / (1 + (τ_u ω)²)
 *   Φ_v = σ_v² (τ_v/π) (1 + 3 (τ_v ω)²) / (1 + (τ_v ω)²)²      (w alike)
 * </pre>
 *
 * <p>Scales and strengths are printed for heights in feet; here metres go in and out, and feet are
 * used inside. They hold from 10 ft to 1000 ft; nearer and farther the height counts as the end of
 * that range. The airspeed of a rig that hovers is the mean wind. MIL-HDBK-1797 writes the same
 * spectra with scales of twice these lengths across.
 *
 * <p>A series is made by what keeps the spectrum exactly at any step: u is a first-order filter of
 * white noise, v and w are √3 x₁ + (1 − √3) x₂ of dx₁ = −a x₁ + noise, dx₂ = −a x₂ + a x₁, a = 1/τ.
 */
public final class Dryden {

    /** Heights between which the law holds, ft. */
    public static final double LOWEST_FT = 10;

    public static final double HIGHEST_FT = 1000;

    private static final double FOOT_M = 0.3048;

    private static final double SQRT3 = Math.sqrt(3);

    private Dryden() {}

    private static double heightFt(double heightM) {
        return Math.clamp(heightM / FOOT_M, LOWEST_FT, HIGHEST_FT);
    }

    /** Scale of u and v, h/(0.177 + 0.000823 h)^1.2 with h in feet, m. */
    public static double levelScaleM(double heightM) {
        double h = heightFt(heightM);
        return FOOT_M * h / Math.pow(0.177 + 0.000823 * h, 1.2);
    }

    /** Scale of w: the height, m. */
    public static double uprightScaleM(double heightM) {
        return FOOT_M * heightFt(heightM);
    }

    /**
     * Standard deviation of w: a tenth of the wind at 20 ft, m/s.
     *
     * @param windAt20FtMps W₂₀; 15, 30 and 45 kt are light, moderate and severe
     */
    public static double uprightMps(double windAt20FtMps) {
        return 0.1 * windAt20FtMps;
    }

    /** Standard deviation of u and of v, σ_w/(0.177 + 0.000823 h)^0.4 with h in feet, m/s. */
    public static double levelMps(double heightM, double windAt20FtMps) {
        return uprightMps(windAt20FtMps) / Math.pow(0.177 + 0.000823 * heightFt(heightM), 0.4);
    }

    /**
     * Correlation of the speed along the line between two places with itself, e^(−r/L): the
     * transform of Φ_u in air that is carried past unchanged (Taylor).
     *
     * @param apartM r, m, ≥ 0
     * @param scaleM L, m, &gt; 0
     */
    public static double alongCorrelation(double apartM, double scaleM) {
        return Math.exp(-apartM / scaleM);
    }

    /**
     * The same of the speed across that line, e^(−r/L) (1 − r/2L): the transform of Φ_v, and what
     * continuity makes of the one along it in turbulence that is alike in all directions, f + (r/2)
     * df/dr (von Kármán and Howarth 1938, from memory).
     */
    public static double acrossCorrelation(double apartM, double scaleM) {
        return Math.exp(-apartM / scaleM) * (1 - apartM / (2 * scaleM));
    }

    /**
     * One step of u over its standard deviation.
     *
     * @param x u before
     * @param steps dt over τ, ≥ 0
     * @param normal a standard normal deviate
     */
    public static double along(double x, double steps, double normal) {
        return Math.exp(-steps) * x + Math.sqrt(-Math.expm1(-2 * steps)) * normal;
    }

    /**
     * One step of v or w over its standard deviation.
     *
     * @param x in, out: x₁ and x₂ from {@code at}
     * @param steps dt over τ, ≥ 0
     * @param first a standard normal deviate
     * @param second another
     */
    public static void across(double[] x, int at, double steps, double first, double second) {
        if (steps <= 0) {
            return;
        }
        double decay = Math.exp(-steps);
        double x1 = x[at];
        double own = -Math.expm1(-2 * steps) / 2;
        double root = Math.sqrt(own);
        double shared = ramp(2 * steps) / 4 / root;
        double rest = Math.sqrt(Math.max(0, square(2 * steps) / 8 - shared * shared));
        x[at] = decay * x1 + root * first;
        x[at + 1] = decay * (x[at + 1] + steps * x1) + shared * first + rest * second;
    }

    /** x₁ and x₂ of a series that has run for ever. */
    public static void settled(double[] x, int at, double first, double second) {
        x[at] = Math.sqrt(0.5) * first;
        x[at + 1] = Math.sqrt(0.125) * (first + second);
    }

    /** v or w over its standard deviation. */
    public static double acrossOf(double[] x, int at) {
        return SQRT3 * x[at] + (1 - SQRT3) * x[at + 1];
    }

    /** ∫₀ˣ t e^(−t) dt. */
    private static double ramp(double x) {
        return x < 1 ? x * x * Math.exp(-x) * series(x, 2) : 1 - Math.exp(-x) * (1 + x);
    }

    /** ∫₀ˣ t² e^(−t) dt. */
    private static double square(double x) {
        return x < 1
                ? x * x * x * Math.exp(-x) * series(x, 3)
                : 2 - Math.exp(-x) * (2 + x * (2 + x));
    }

    /** Σ xᵏ / (n (n + 1) … (n + k)): the closed forms lose all digits of a small x. */
    private static double series(double x, int n) {
        double term = 1.0 / n;
        double sum = term;
        for (int k = 1; term > 1e-17 * sum; k++) {
            term *= x / (n + k);
            sum += term;
        }
        return sum;
    }
}
