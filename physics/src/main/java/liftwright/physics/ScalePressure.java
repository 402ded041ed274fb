package liftwright.physics;

/**
 * Jets that strike the platform on which the rig is weighed. A jet gives a flat platform all of its
 * momentum that meets it, so a scale under the wearer reads weight less thrust plus that share of
 * the thrust: where the whole jet lands on the platform, it shows no lift at all. Beyond the core
 * the jet is the Gaussian of {@link FreeJet}; within it a Gaussian through the same half of the
 * momentum, which is this project's own.
 */
public final class ScalePressure {

    private ScalePressure() {}

    /**
     * Share of one jet's momentum that meets a rectangle square to it.
     *
     * @param acrossM from the middle of the rectangle to the jet's axis, m
     * @param alongM the same the other way, m
     * @param widthM of the rectangle across, m
     * @param depthM of the rectangle along, m
     * @param distanceM from the exit, m, ≥ 0
     * @param exitAreaM2 m², &gt; 0
     */
    public static double share(
            double acrossM,
            double alongM,
            double widthM,
            double depthM,
            double distanceM,
            double exitAreaM2) {
        // exp(−(r/b)²) keeps half within b √(ln 2).
        double b = FreeJet.radiusM(0.5, distanceM, exitAreaM2) / Math.sqrt(Math.log(2));
        return strip(acrossM, widthM, b) * strip(alongM, depthM, b);
    }

    private static double strip(double offM, double widthM, double b) {
        return (erf((offM + widthM / 2) / b) - erf((offM - widthM / 2) / b)) / 2;
    }

    /** The error function by its series of positive terms, 2/√π e^(−x²) Σ 2ⁿ x^(2n+1)/(2n+1)!!. */
    private static double erf(double x) {
        if (Math.abs(x) > 6) {
            return Math.signum(x);
        }
        double term = x;
        double sum = x;
        for (int n = 1; Math.abs(term) > 1e-17 * Math.abs(sum); n++) {
            term *= 2 * x * x / (2 * n + 1);
            sum += term;
        }
        return 2 / Math.sqrt(Math.PI) * Math.exp(-x * x) * sum;
    }
}
