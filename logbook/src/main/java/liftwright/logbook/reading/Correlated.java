package liftwright.logbook.reading;

import java.util.Optional;
import liftwright.plant.recording.Samples;

/**
 * By how much two channels stand apart in time, found from their edges. Both are put on one grid,
 * turned into rises over about a second, and compared at every shift. Each shift gets the weight
 * that a straight line between the two, with normal errors, gives it: (1 − r²)^(−n/2)/√n, against 1
 * for two channels that share nothing. Not samples are counted by n but what tells something of its
 * own: no more than the independent points of the grid, and no more than some for each edge. The
 * confidence is the share of all weight near the best shift.
 *
 * <p>Weight of a regression against none: [SCHW78]. Samples worth as much as independent ones:
 * [BART35].
 */
final class Correlated {

    /** Most points of the grid over the longer of the two. */
    private static final int MOST_POINTS = 3000;

    /** Rises are taken over so long, s. */
    private static final double EDGE_S = 1;

    /** The two must share at least this part of the shorter. */
    private static final double LEAST_SHARED = 0.3;

    /** How much of the time of an edge counts as busy. */
    private static final double EVENT = 0.35;

    /** An edge can always be laid on another: so many say nothing. */
    private static final double FREE_EVENTS = 1.5;

    /** Each further one that meets its like makes the shift so many times likelier, logarithm. */
    private static final double OF_AN_EVENT = 8;

    /** A perfect likeness would weigh without end. */
    private static final double CLOSEST = 0.995;

    /**
     * The best shift.
     *
     * @param shiftS what is added to times of the second, s
     * @param toleranceS half the width that counts as the same shift, s
     * @param confidence 0 to 1
     */
    record Peak(double shiftS, double toleranceS, double confidence) {}

    private final double stepS;
    private final double[] a;
    private final double[] b;
    private final double startA;
    private final double startB;
    private final int span;

    private Correlated(Samples first, Samples second, double stepS) {
        this.stepS = stepS;
        this.span = Math.max(1, (int) Math.round(EDGE_S / stepS));
        this.a = rises(onGrid(first, stepS));
        this.b = rises(onGrid(second, stepS));
        this.startA = first.firstS();
        this.startB = second.firstS();
    }

    /**
     * Empty where there is too little of either.
     *
     * @param sign 1 where one rises with the other, −1 where it falls, 0 where either may be
     * @param delayS how far apart cause and effect may be, s
     */
    static Optional<Peak> find(Samples first, Samples second, int sign, double delayS) {
        double longest = Math.max(first.lastS() - first.firstS(), second.lastS() - second.firstS());
        double usual = Math.max(usualStep(first), usualStep(second));
        double stepS = Math.max(Math.max(usual, longest / MOST_POINTS), 1e-4);
        boolean tooShort =
                first.lastS() - first.firstS() < 5 * Math.max(EDGE_S, stepS)
                        || second.lastS() - second.firstS() < 5 * Math.max(EDGE_S, stepS);
        return tooShort
                ? Optional.empty()
                : new Correlated(first, second, stepS).peak(sign, delayS);
    }

    private static double usualStep(Samples samples) {
        return (samples.lastS() - samples.firstS()) / Math.max(1, samples.size() - 1);
    }

    /** Straight between samples, means where a point of the grid has several. */
    private static double[] onGrid(Samples samples, double stepS) {
        int n = (int) Math.floor((samples.lastS() - samples.firstS()) / stepS) + 1;
        var sums = new double[n];
        var counts = new int[n];
        for (int k = 0; k < samples.size(); k++) {
            int at = (int) Math.round((samples.timeS(k) - samples.firstS()) / stepS);
            if (at < n) {
                sums[at] += samples.si(k);
                counts[at]++;
            }
        }
        for (int k = 0; k < n; k++) {
            sums[k] =
                    counts[k] > 0
                            ? sums[k] / counts[k]
                            : samples.at(Math.min(samples.firstS() + k * stepS, samples.lastS()));
        }
        return sums;
    }

    /** Mean of what follows less mean of what was before, over {@code span} points together. */
    private double[] rises(double[] values) {
        int half = Math.max(1, span / 2);
        int n = Math.max(0, values.length - 2 * half + 1);
        var sums = new double[values.length + 1];
        for (int k = 0; k < values.length; k++) {
            sums[k + 1] = sums[k] + values[k];
        }
        var rises = new double[n];
        double mean = 0;
        for (int k = 0; k < n; k++) {
            rises[k] = (sums[k + 2 * half] - 2 * sums[k + half] + sums[k]) / half;
            mean += rises[k] / n;
        }
        for (int k = 0; k < n; k++) {
            rises[k] -= mean;
        }
        return rises;
    }

    private Optional<Peak> peak(int sign, double delayS) {
        int least = (int) Math.ceil(LEAST_SHARED * Math.min(a.length, b.length));
        int from = least - b.length;
        int to = a.length - least;
        if (to <= from) {
            return Optional.empty();
        }
        double independent = Math.min(a.length, b.length) / alike();
        double events = Math.min(busy(a), busy(b)) / (EVENT * span);
        var logs = new double[to - from + 1];
        var likeness = new double[to - from + 1];
        int best = 0;
        for (int lag = from; lag <= to; lag++) {
            int k = lag - from;
            likeness[k] = likeness(lag, sign);
            int shared = Math.min(a.length, b.length + lag) - Math.max(0, lag);
            double share = (double) shared / Math.min(a.length, b.length);
            double n = Math.max(1, independent * share);
            double r = Math.min(CLOSEST, likeness[k]);
            logs[k] = weight(n, r, events * share);
            best = logs[k] > logs[best] ? k : best;
        }
        double tolerance = Math.max(2 * stepS, delayS);
        double near = 0;
        double all = 0;
        for (int k = 0; k < logs.length; k++) {
            double weight = Math.exp(logs[k] - logs[best]);
            all += weight;
            near += Math.abs(k - best) * stepS <= Math.max(tolerance, EDGE_S / 2) ? weight : 0;
        }
        double none = Math.exp(-logs[best]) * logs.length;
        double shift = startA - startB + (best + from + between(likeness, best)) * stepS;
        return Optional.of(new Peak(shift, tolerance, near / (all + none)));
    }

    /** Logarithm of the weight of a shift. */
    private static double weight(double n, double r, double events) {
        double most = OF_AN_EVENT * r * r * Math.max(0, events - FREE_EVENTS);
        double plain = -0.5 * n * Math.log1p(-r * r);
        // The smaller of the two, but rising with the likeness all the same.
        return (plain > 0 ? plain * most / (plain + most) : 0) - 0.5 * Math.log(n);
    }

    /** Where between the points of the grid the top of a parabola lies, −½ to ½. */
    private static double between(double[] likeness, int best) {
        if (best == 0 || best == likeness.length - 1) {
            return 0;
        }
        double below = likeness[best - 1];
        double above = likeness[best + 1];
        double bend = below - 2 * likeness[best] + above;
        return bend < 0 ? Math.clamp(0.5 * (below - above) / bend, -0.5, 0.5) : 0;
    }

    /** Correlation of the first with the second moved by {@code lag} points; not below 0. */
    private double likeness(int lag, int sign) {
        int begin = Math.max(0, lag);
        int end = Math.min(a.length, b.length + lag);
        double x = 0;
        double y = 0;
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int k = begin; k < end; k++) {
            double u = a[k];
            double v = b[k - lag];
            x += u;
            y += v;
            xx += u * u;
            yy += v * v;
            xy += u * v;
        }
        int n = end - begin;
        double sxx = xx - x * x / n;
        double syy = yy - y * y / n;
        if (!(sxx > 1e-12 * xx) || !(syy > 1e-12 * yy)) {
            return 0;
        }
        double r = (xy - x * y / n) / Math.sqrt(sxx * syy);
        return sign == 0 ? Math.abs(r) : Math.max(0, sign * r);
    }

    /** How many points in a row tell the same, after Bartlett. */
    private double alike() {
        double alike = 1;
        int farthest = Math.min(Math.min(a.length, b.length) / 4, 20 * span);
        for (int k = 1; k <= farthest; k++) {
            alike += 2 * Math.max(0, with(a, k) * with(b, k));
        }
        return alike;
    }

    private static double with(double[] x, int lag) {
        double sum = 0;
        double squares = 0;
        for (int k = 0; k < x.length; k++) {
            squares += x[k] * x[k];
            sum += k + lag < x.length ? x[k] * x[k + lag] : 0;
        }
        return squares > 0 ? sum / squares : 0;
    }

    /** Points in which something happens: one great edge is one event however long the log. */
    private static double busy(double[] x) {
        double squares = 0;
        double fourths = 0;
        for (double value : x) {
            squares += value * value;
            fourths += value * value * value * value;
        }
        return fourths > 0 ? squares * squares / fourths : 0;
    }
}
