package liftwright.physics;

/**
 * A fuse by its published time–current points, with memory: dθ/dt = (g(I) − θ)/τ, and it opens at θ
 * = 1. The gain g(I) = 1/(1 − exp(−t(I)/τ)) makes it open from cold (θ = 0) at t(I) exactly; θ left
 * from a load before makes it open earlier (this project's own, first order).
 *
 * <p>t(I) is straight in logarithms between the points. Above the last the melting energy is spent
 * before heat leaves, I² t = constant [IEC60949]. Below the first the element is a body that ends
 * at a temperature by I²: g = (I/I_m)², where the least fusing current I_m is the one at which g of
 * the first point meets that law. A current that the fuse is known to hold, its rating, goes before
 * that: where I_m would fall below it (a first point that opens soon, a long τ), I_m is the held
 * current, and g is straight in logarithms from there to the first point. So g has no jump
 * anywhere, every published point is met, and a current up to I_m never opens the fuse however long
 * it flows.
 *
 * <p>Times of fuses scatter by a factor of 2 and more about their middle; the points are declared
 * with that doubt. Currents are taken by their size: a fuse does not know their direction.
 */
public final class FuseCurve {

    private final double[] logA;
    private final double[] logS;
    private final double timeConstantS;
    private final double leastA;
    private final double power;

    /** A curve through points, of a fuse that is not known to hold any current. */
    public FuseCurve(double[] currentA, double[] timeS, double timeConstantS) {
        this(currentA, timeS, timeConstantS, 0);
    }

    /**
     * A curve through points.
     *
     * @param currentA currents, A, strictly rising
     * @param timeS time to open from cold at each, s, strictly falling
     * @param timeConstantS τ, s
     * @param holdsA current that it carries for ever, A; 0 for none. One at or above the first
     *     point is not held: the points go first
     * @throws IllegalArgumentException for points that do not run so, or values not above 0
     */
    public FuseCurve(double[] currentA, double[] timeS, double timeConstantS, double holdsA) {
        if (!(holdsA >= 0)) {
            throw new IllegalArgumentException("a fuse does not hold " + holdsA + " A");
        }
        if (currentA.length == 0 || currentA.length != timeS.length || !isPositive(timeConstantS)) {
            throw new IllegalArgumentException(
                    "a fuse has as many currents as times, at least one, and a time constant");
        }
        logA = new double[currentA.length];
        logS = new double[currentA.length];
        for (int point = 0; point < currentA.length; point++) {
            if (!isPositive(currentA[point]) || !isPositive(timeS[point])) {
                throw new IllegalArgumentException("currents and times of a fuse are above 0");
            }
            logA[point] = Math.log(currentA[point]);
            logS[point] = Math.log(timeS[point]);
            if (point > 0 && !(logA[point] > logA[point - 1] && logS[point] < logS[point - 1])) {
                throw new IllegalArgumentException(
                        "the currents of a fuse rise from point to point, and its times fall");
            }
        }
        this.timeConstantS = timeConstantS;
        double share = -Math.expm1(-timeS[0] / timeConstantS);
        double square = currentA[0] * Math.sqrt(share);
        boolean held = holdsA > square && holdsA < currentA[0];
        leastA = held ? holdsA : square;
        power = held ? -Math.log(share) / Math.log(currentA[0] / holdsA) : 2;
    }

    private static boolean isPositive(double value) {
        return value > 0 && value < Double.POSITIVE_INFINITY;
    }

    /** τ, s. */
    public double timeConstantS() {
        return timeConstantS;
    }

    /** Least fusing current I_m, A: at it and below the fuse never opens. */
    public double leastFusingA() {
        return leastA;
    }

    /**
     * Time to open from cold at a steady current, s; infinite at {@link #leastFusingA} and below.
     */
    public double timeS(double currentA) {
        double current = Math.abs(currentA);
        if (current <= leastA) {
            return Double.POSITIVE_INFINITY;
        }
        double log = Math.log(current);
        if (log < logA[0]) {
            return opensAfterS(0, gain(current), timeConstantS);
        }
        return publishedS(log);
    }

    /** Gain g(I) of the state; the square of I over I_m up to I_m. */
    public double gain(double currentA) {
        double current = Math.abs(currentA);
        double log = Math.log(current);
        if (log < logA[0]) {
            double share = current / leastA;
            return share > 1 && power > 2 ? Math.pow(share, power) : share * share;
        }
        return -1 / Math.expm1(-publishedS(log) / timeConstantS);
    }

    /**
     * How far the gain is above 1, g(I) − 1, without cancellation: a published time of many time
     * constants leaves less above 1 than a number near 1 can hold, and yet opens the fuse.
     */
    public double excess(double currentA) {
        double current = Math.abs(currentA);
        double log = Math.log(current);
        if (log < logA[0]) {
            double share = current / leastA;
            return Math.expm1((share > 1 && power > 2 ? power : 2) * Math.log(share));
        }
        return 1 / Math.expm1(publishedS(log) / timeConstantS);
    }

    private double publishedS(double log) {
        int last = logA.length - 1;
        if (log >= logA[last]) {
            return Math.exp(logS[last] - 2 * (log - logA[last]));
        }
        int above = 1;
        while (log > logA[above]) {
            above++;
        }
        double share = (log - logA[above - 1]) / (logA[above] - logA[above - 1]);
        return Math.exp(logS[above - 1] + share * (logS[above] - logS[above - 1]));
    }

    /**
     * Time to open at a steady current from any state, s; infinite if it never does.
     *
     * @param theta state now, 0 to 1
     */
    public double prospectiveS(double theta, double currentA) {
        return opensAfterS(theta, gain(currentA), timeConstantS);
    }

    /** State after a step at one gain, exact: θ + (g − θ)(1 − exp(−h/τ)). */
    public static double after(double theta, double gain, double stepS, double timeConstantS) {
        return theta - (gain - theta) * Math.expm1(-stepS / timeConstantS);
    }

    /**
     * State after a step in which the gain runs straight from one value to another, exact.
     *
     * @param nearGain at the start of the step
     * @param farGain at its end
     */
    public static double after(
            double theta, double nearGain, double farGain, double stepS, double timeConstantS) {
        return CellLaw.pairAfterV(theta, nearGain, farGain, 1, timeConstantS, stepS);
    }

    /**
     * What is left to opening, 1 − θ, after a step in which the gain runs straight from one value
     * to another: exact, and without cancellation however near to 0 it is.
     *
     * @param room 1 − θ at the start of the step
     * @param nearExcess {@link #excess} there
     * @param farExcess that at its end
     * @param stepS &gt; 0, s
     */
    public static double roomAfter(
            double room, double nearExcess, double farExcess, double stepS, double timeConstantS) {
        double part = stepS / timeConstantS;
        double gone = -Math.expm1(-part);
        double lag = part > 1e-4 ? 1 - gone / part : part / 2 * (1 - part / 3);
        double left = room * Math.exp(-part);
        if (nearExcess == 0 && farExcess == 0 && room > 0) {
            // More than 700 time constants to go: what no number can tell does not open it.
            return Math.max(left, Double.MIN_NORMAL);
        }
        return left - nearExcess * gone - (farExcess - nearExcess) * lag;
    }

    /** Time until θ = 1 at one gain, τ ln((g − θ)/(g − 1)), s; infinite for g ≤ 1; 0 if open. */
    public static double opensAfterS(double theta, double gain, double timeConstantS) {
        if (theta >= 1) {
            return 0;
        }
        if (gain <= 1) {
            return Double.POSITIVE_INFINITY;
        }
        return timeConstantS * Math.log1p((1 - theta) / (gain - 1));
    }

    /**
     * Longest time constant at which a fuse still holds a current for ever, −t₁/ln(1 − (I_h/I₁)²),
     * s: with a longer one the least fusing current of the curve falls below it.
     *
     * @param holdsA I_h that the fuse carries for ever, A, below the first point's current
     * @param firstA I₁, A
     * @param firstS t₁, s
     */
    public static double longestTimeConstantS(double holdsA, double firstA, double firstS) {
        if (!(holdsA > 0 && holdsA < firstA) || !isPositive(firstS)) {
            throw new IllegalArgumentException(
                    "a fuse holds a current below that of its first point");
        }
        double share = holdsA / firstA;
        return -firstS / Math.log1p(-share * share);
    }
}
