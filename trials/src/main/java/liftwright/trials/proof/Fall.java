package liftwright.trials.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A reading that falls, and between which moments what it stands for fell below a level.
 *
 * <p>What is measured, x, never rises while it falls. So the mean of x over some readings is no
 * more than x at the first of them and no less than x at the last: means bound crossings, and
 * longer ones with less noise. A first-order smoothing of time constant τ gives y with x = y + τ
 * y'; its mean between two readings a time T apart is (y₂ − a y₁)/(1 − a), a = e^(−T/τ), weighted
 * and exact for any x; and y ≥ x, so that a bound from above needs no correction. Noise counts with
 * {@value #SURE} standard deviations.
 */
final class Fall {

    /** Many means are held against one level, so that the usual three would be passed by chance. */
    private static final double SURE = 3.5;

    /** A rise is called only where it is beyond chance. */
    private static final double SURE_OF_RISE = 5;

    private static final int MOST_IN_MEAN = 64;

    /**
     * @param afterS the last moment at which it was surely above the level; minus infinity where
     *     none was
     * @param byS the first at which it was surely below; empty where none was
     */
    record Crossing(double afterS, OptionalDouble byS) {}

    private final double[] t;
    private final double[] y;
    private final Level level;
    private final double smoothingS;
    private final double pressS;
    private final int held;

    Fall(Samples samples, Level level, double smoothingS, double pressS) {
        t = samples.timeS();
        y = samples.value();
        this.level = level;
        this.smoothingS = smoothingS;
        this.pressS = pressS;
        held = Math.max(level.held(), heldInFall());
    }

    /** What the readings themselves say of their doubt. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (held > 1) {
            notes.add("each reading stands in up to " + held + " rows: it is older than its row");
        }
        return notes;
    }

    /** The longest repetition on the way down. */
    private int heldInFall() {
        int longest = 1;
        int run = 1;
        for (int k = 1; k < y.length; k++) {
            boolean falling = y[k] < 0.9 * level.mean() && y[k] > 0.1 * level.mean();
            run = falling && y[k] == y[k - 1] ? run + 1 : 1;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    /**
     * When it fell below a share of the level before.
     *
     * @param share of the mean before the press
     */
    Crossing below(double share) {
        double limit = share * level.mean();
        double doubt = 2 * share * level.meanDoubt();
        OptionalDouble by = OptionalDouble.empty();
        for (int q = 0; q < y.length && by.isEmpty(); q++) {
            if (t[q] >= pressS && least(q, limit - doubt)) {
                by = OptionalDouble.of(t[q]);
            }
        }
        double after = Double.NEGATIVE_INFINITY;
        double endS = by.orElse(Double.MAX_VALUE);
        for (int p = 0; p < y.length && t[p] <= endS; p++) {
            if (most(p, limit + doubt, endS)) {
                after = Math.max(after, t[Math.max(0, p - (held - 1))]);
            }
        }
        return new Crossing(after, by);
    }

    /** Whether a mean that ends at a reading is surely below a limit. */
    private boolean least(int q, double limit) {
        double sum = 0;
        int next = 1;
        for (int n = 1; n <= MOST_IN_MEAN && q - n + 1 >= 0 && t[q - n + 1] >= pressS; n++) {
            sum += y[q - n + 1];
            if (n == next) {
                if (sum / n + SURE * noise(n) < limit) {
                    return true;
                }
                next *= 2;
            }
        }
        return false;
    }

    /** Whether what was measured is surely above a limit at a reading. */
    private boolean most(int p, double limit, double endS) {
        return smoothingS > 0 ? mostSmoothed(p, limit, endS) : mostPlain(p, limit, SURE, endS);
    }

    /** No mean reaches beyond an end: there the next run may have begun. */
    private boolean mostPlain(int p, double limit, double sure, double endS) {
        double sum = 0;
        int next = 1;
        for (int n = 1; n <= MOST_IN_MEAN && within(p + n - 1, endS); n++) {
            sum += y[p + n - 1];
            if (n == next) {
                if (sum / n - sure * noise(n) > limit) {
                    return true;
                }
                next *= 2;
            }
        }
        return false;
    }

    private boolean within(int k, double endS) {
        return k < y.length && t[k] <= endS;
    }

    /** What stands in several rows was read in the first of them: less time lies between two. */
    private boolean mostSmoothed(int p, double limit, double endS) {
        for (int n = held; n <= MOST_IN_MEAN && within(p + n, endS); n *= 2) {
            double a = Math.exp(-(t[p + n] - t[p + held - 1]) / smoothingS);
            double mean = (y[p + n] - a * y[p]) / (1 - a);
            double noise = level.scatter() * Math.sqrt(1 + a * a) / (1 - a);
            if (mean - SURE * noise > limit) {
                return true;
            }
        }
        return false;
    }

    private double noise(int n) {
        return level.scatter() * Math.sqrt(Math.min(1, level.alike() / n));
    }

    /**
     * When it is next surely above a share of the level before; empty where it is not.
     *
     * @param fromS later than this
     * @param toS no later than this
     */
    Optional<Double> above(double share, double fromS, double toS) {
        double limit = share * level.mean() + 2 * share * level.meanDoubt();
        for (int p = 0; p < y.length && t[p] <= toS; p++) {
            if (t[p] > fromS && mostPlain(p, limit, SURE_OF_RISE, toS)) {
                return Optional.of(t[p]);
            }
        }
        return Optional.empty();
    }
}
