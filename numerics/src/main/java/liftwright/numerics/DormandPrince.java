package liftwright.numerics;

import java.util.Arrays;

/**
 * Integrates y′ = f(t, y) from event to event by the embedded pair of orders 5 and 4 of
 * [DORMAND80], each step as long as the allowed error lets it be [HAIRER93]. For smooth problems
 * that are not stiff. Allocates nothing once made, and does the same on every run; for one thread.
 *
 * <p>Between the ends of a step values are of order 4, which is where events are looked for.
 *
 * <pre>{@code
 * DormandPrince fall = new DormandPrince(2, 1e-9, 1e-9);
 * fall.start(0, new double[] {10, 0});
 * int which = fall.run((t, y, slope) -> { slope[0] = y[1]; slope[1] = -9.80665; },
 *         60, 1e-9, (t, y) -> -y[0]);
 * }</pre>
 */
public final class DormandPrince {

    /** The right-hand side f. Called in the loop. */
    @FunctionalInterface
    public interface Slope {
        /**
         * @param y values, to be read
         * @param slope takes their derivatives by t
         */
        void at(double t, double[] y, double[] slope);
    }

    /**
     * Something that happens where this rises through 0: from below 0 to 0 or above. It counts from
     * when it was last below 0, so that an integration that begins on an event runs off it. Called
     * in the loop.
     */
    @FunctionalInterface
    public interface Event {
        double at(double t, double[] y);
    }

    /** What {@link #run} gives where the time was up before any event. */
    public static final int TIME_UP = -1;

    /** What {@link #run} gives where no step is short enough, or a value was not finite. */
    public static final int STUCK = -2;

    private static final int STAGES = DormandPrincePair.STAGES;
    private static final double CAUTION = 0.9;
    private static final double SHRINKS_TO = 0.2;
    private static final double GROWS_TO = 5;

    /**
     * Exponents of the error now and of that before, which keeps steps from swinging [HAIRER93].
     */
    private static final double NOW = 0.2 - 0.75 * 0.04;

    private static final double BEFORE = 0.04;

    /** Error of the step before that counts at least: one lucky step promises nothing. */
    private static final double LEAST_BEFORE = 1e-4;

    /** An event is looked for at so many places in each step. */
    private static final int LOOKS = 8;

    private final double relative;
    private final double[] absolute;
    private double longestS = Double.POSITIVE_INFINITY;

    private final double[] y;
    private final double[] next;
    private final double[] trial;
    private final double[][] k = new double[STAGES][];

    private final StepPolynomial between;

    /** Values at the places of a step where events are looked for, once they were asked for. */
    private final double[][] looked = new double[LOOKS][];

    private final boolean[] isLooked = new boolean[LOOKS];

    private double t;
    private double fromT;
    private double h;
    private double errorBefore = LEAST_BEFORE;
    private boolean fresh;
    private long evaluations;
    private long steps;

    /**
     * @param size how many values
     * @param relative allowed error of a step over the value, ≥ 1e-14
     * @param absolute allowed error of each value where it is near 0, &gt; 0, in its unit
     * @throws IllegalArgumentException outside these ranges
     */
    public DormandPrince(int size, double relative, double... absolute) {
        if (!(relative >= 1e-14) || (absolute.length != 1 && absolute.length != size)) {
            throw new IllegalArgumentException("allowed errors: one for all or one each");
        }
        this.relative = relative;
        this.absolute = new double[size];
        for (int i = 0; i < size; i++) {
            this.absolute[i] = absolute[absolute.length == 1 ? 0 : i];
            if (!(this.absolute[i] > 0)) {
                throw new IllegalArgumentException("an allowed error is above 0");
            }
        }
        y = new double[size];
        next = new double[size];
        trial = new double[size];
        for (int stage = 0; stage < STAGES; stage++) {
            k[stage] = new double[size];
        }
        between = new StepPolynomial(size);
        for (int look = 0; look < LOOKS; look++) {
            looked[look] = new double[size];
        }
    }

    /** Lets no step be longer than this; &gt; 0, in the unit of t. */
    public void longestStep(double longest) {
        longestS = longest;
    }

    /** Begins anew at a moment, with values that are copied. */
    public void start(double fromTime, double[] values) {
        t = fromTime;
        fromT = fromTime;
        System.arraycopy(values, 0, y, 0, y.length);
        between.rest(values);
        h = 0;
        errorBefore = LEAST_BEFORE;
        fresh = true;
    }

    /** Tells that f is another from here on; the values stay. */
    public void changed() {
        fresh = true;
    }

    /** Where the integration stands. */
    public double t() {
        return t;
    }

    /** The values there, to be read; overwritten by the next step. */
    public double[] y() {
        return y;
    }

    /** Where the last step began. */
    public double stepFrom() {
        return fromT;
    }

    /** How often the right-hand side was asked since this was made. */
    public long evaluations() {
        return evaluations;
    }

    /** Steps accepted since this was made. */
    public long steps() {
        return steps;
    }

    /**
     * One step, not beyond a time.
     *
     * @param until &gt; t
     * @return false where no step is short enough or a value is not finite: nothing changed then
     */
    public boolean step(Slope f, double until) {
        if (fresh) {
            slope(f, t, y, k[0]);
            h = firstStep(f, until);
            fresh = false;
        }
        double length = Math.min(Math.min(h, longestS), until - t);
        boolean last = t + length >= until - 4 * Math.ulp(until);
        boolean refused = false;
        while (true) {
            if (last) {
                length = until - t;
            }
            if (!(length > 4 * Math.ulp(t)) && !last) {
                return false;
            }
            stages(f, length);
            double error = error(length);
            double factor =
                    error > 0
                            ? CAUTION * Math.pow(error, -NOW) * Math.pow(errorBefore, BEFORE)
                            : GROWS_TO;
            if (error <= 1) {
                accept(length, last ? until : t + length, error);
                // A step cut short by the time asked for tells nothing about the next.
                double longer = length * Math.clamp(factor, SHRINKS_TO, refused ? 1 : GROWS_TO);
                h = last ? Math.max(h, longer) : longer;
                return true;
            }
            // Also where the error is no number: a trial value left what f is made for.
            length *=
                    error < Double.POSITIVE_INFINITY
                            ? Math.clamp(factor, SHRINKS_TO, 1)
                            : SHRINKS_TO;
            h = length;
            last = false;
            refused = true;
            if (!(length > 4 * Math.ulp(Math.max(Math.abs(t), Double.MIN_NORMAL)))) {
                return false;
            }
        }
    }

    /**
     * Steps until a time or the first event, and stands there.
     *
     * @param until ≥ t
     * @param tolerance how near in t an event is found, &gt; 0; on the side where it has happened
     * @param events may be none
     * @return which event (of several at once the first in the list), {@link #TIME_UP} or {@link
     *     #STUCK}
     */
    public int run(Slope f, double until, double tolerance, Event... events) {
        while (t < until) {
            if (!step(f, until)) {
                return STUCK;
            }
            int which = first(tolerance, events);
            if (which >= 0) {
                return which;
            }
        }
        return TIME_UP;
    }

    /**
     * Looks for the first event of the last step, and goes back to it.
     *
     * @param tolerance as for {@link #run}
     * @return which, or {@link #TIME_UP} where there was none
     */
    public int first(double tolerance, Event... events) {
        double length = t - fromT;
        double best = Double.POSITIVE_INFINITY;
        int which = TIME_UP;
        Arrays.fill(isLooked, false);
        for (int e = 0; e < events.length; e++) {
            double low = 0;
            boolean below = look(events[e], 0, length) < 0;
            for (int look = 1; look <= LOOKS; look++) {
                double high = (double) look / LOOKS;
                boolean above = look(events[e], look, length) >= 0;
                if (below && above) {
                    double found = locate(events[e], low, high, length, tolerance);
                    if (found < best) {
                        best = found;
                        which = e;
                    }
                    break;
                }
                below = !above;
                low = high;
            }
        }
        if (which >= 0) {
            goTo(best);
        }
        return which;
    }

    /**
     * Values within the last step, of order 4.
     *
     * @param time from {@link #stepFrom} to {@link #t}
     * @param out takes them
     */
    public void at(double time, double[] out) {
        double length = t - fromT;
        between.at(length > 0 ? (time - fromT) / length : 0, out);
    }

    /** By halves, since an event need not be smooth: the end at which it has happened. */
    private double locate(Event event, double from, double to, double length, double tolerance) {
        double low = from;
        double high = to;
        while ((high - low) * length > tolerance) {
            double middle = (low + high) / 2;
            if (!(middle > low && middle < high)) {
                break; // neighbouring numbers
            }
            if (value(event, middle, length) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** An event at one of the places where each is looked for; values are found once for all. */
    private double look(Event event, int look, double length) {
        if (look == LOOKS) {
            return event.at(t, y);
        }
        double share = (double) look / LOOKS;
        if (!isLooked[look]) {
            between.at(share, looked[look]);
            isLooked[look] = true;
        }
        return event.at(fromT + share * length, looked[look]);
    }

    private double value(Event event, double share, double length) {
        if (share == 1) {
            return event.at(t, y);
        }
        between.at(share, trial);
        return event.at(fromT + share * length, trial);
    }

    private void goTo(double share) {
        if (share < 1) {
            between.at(share, y);
            t = fromT + share * (t - fromT);
        }
        // The polynomial still speaks of the whole step: what follows begins anew.
        between.rest(y);
        fromT = t;
        fresh = true;
    }

    private void slope(Slope f, double time, double[] values, double[] out) {
        evaluations++;
        f.at(time, values, out);
    }

    private void stages(Slope f, double length) {
        for (int stage = 1; stage < STAGES; stage++) {
            double[] to = stage == STAGES - 1 ? next : trial;
            double[] weights = DormandPrincePair.A[stage];
            for (int i = 0; i < y.length; i++) {
                double sum = 0;
                for (int of = 0; of < stage; of++) {
                    sum += weights[of] * k[of][i];
                }
                to[i] = y[i] + length * sum;
            }
            slope(f, t + DormandPrincePair.C[stage] * length, to, k[stage]);
        }
    }

    /** Root mean square of the estimated errors over what is allowed. */
    private double error(double length) {
        double squares = 0;
        for (int i = 0; i < y.length; i++) {
            double sum = 0;
            for (int stage = 0; stage < STAGES; stage++) {
                sum += DormandPrincePair.E[stage] * k[stage][i];
            }
            double allowed = absolute[i] + relative * Math.max(Math.abs(y[i]), Math.abs(next[i]));
            squares += length * sum / allowed * (length * sum / allowed);
        }
        double error = Math.sqrt(squares / Math.max(1, y.length));
        return Double.isNaN(error) ? Double.POSITIVE_INFINITY : error;
    }

    private void accept(double length, double to, double error) {
        between.step(y, next, k, length);
        System.arraycopy(next, 0, y, 0, y.length);
        double[] first = k[0];
        k[0] = k[STAGES - 1];
        k[STAGES - 1] = first;
        fromT = t;
        t = to;
        errorBefore = Math.max(error, LEAST_BEFORE);
        steps++;
    }

    /** A first step whose error of order 1 is small against what is allowed [HAIRER93]. */
    private double firstStep(Slope f, double until) {
        double span = Math.min(until - t, longestS);
        double sizes = norm(y);
        double slopes = norm(k[0]);
        double guess = sizes < 1e-5 || slopes < 1e-5 ? 1e-6 : 0.01 * sizes / slopes;
        guess = Math.min(guess, span);
        for (int i = 0; i < y.length; i++) {
            trial[i] = y[i] + guess * k[0][i];
        }
        slope(f, t + guess, trial, k[1]);
        for (int i = 0; i < y.length; i++) {
            next[i] = k[1][i] - k[0][i];
        }
        double bends = norm(next) / guess;
        double most = Math.max(slopes, bends);
        double second = most <= 1e-15 ? Math.max(1e-6, guess * 1e-3) : Math.pow(0.01 / most, 0.2);
        double first = Math.min(100 * guess, second);
        return first > 0 && first < Double.POSITIVE_INFINITY ? Math.min(first, span) : span;
    }

    private double norm(double[] values) {
        double squares = 0;
        for (int i = 0; i < y.length; i++) {
            double share = values[i] / (absolute[i] + relative * Math.abs(y[i]));
            squares += share * share;
        }
        return Math.sqrt(squares / Math.max(1, y.length));
    }
}
