package liftwright.flight.loops;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of the inertia on a spring with a damper, while sensor and fans are on the rest. What the
 * rest answers over what a rigid body of the same whole would:
 *
 * <pre>
 *   (1 + 2ζ s/ω + s²/((1 − h) ω²)) / (1 + 2ζ s/ω + s²/ω²)
 * </pre>
 *
 * <p>Two inertias and a spring, by Newton; its zeros lie below its poles, so that it leads between
 * them, which a loop may live on where its own lag leaves room.
 *
 * @param radps ω, both free, &gt; 0
 * @param damping ζ, share of critical
 * @param share h, 0 to below 1
 */
record FlexMode(double radps, double damping, double share) {

    static final FlexMode RIGID = new FlexMode(1, 1, 0);

    /** From the lowest to the highest frequency of common practice, 3 to 8 Hz, as factors. */
    private static final double[] SPAN = {1, 1.22, 1.48, 1.8, 2.19, 8.0 / 3};

    /** Modes that a loop has to bear: everything between the ends of practice. */
    static List<FlexMode> of(Flexible flexible, double share) {
        List<FlexMode> modes = new ArrayList<>();
        if (Double.isFinite(flexible.harnessHz()) && share > 0) {
            for (double factor : SPAN) {
                double radps = 2 * Math.PI * factor * flexible.harnessHz();
                modes.add(new FlexMode(radps, flexible.harnessDamping(), share));
            }
        }
        return List.copyOf(modes);
    }

    /** Answer over that of a rigid body. */
    Complex at(double w) {
        double x = w / radps;
        Complex under = new Complex(1 - x * x, 2 * damping * x);
        return new Complex(1 - x * x / (1 - share), 2 * damping * x).over(under);
    }

    /** Greatest gain over that of a rigid body, at least nearly: at its frequency. */
    double peak() {
        return at(radps).gain();
    }

    /** Whether a loop is so slow that the mode cannot matter to it, whatever its phase. */
    boolean isFarFrom(double crossoverRadps) {
        return crossoverRadps * Math.max(1, peak()) < 0.1 * radps;
    }
}
