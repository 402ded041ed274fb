package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.List;

/**
 * What was heard of the fans together, on an even grid: their mean speed over its greatest, 0 where
 * nothing is heard. Weighs what is said of it: that they turned as a log tells, or that they have
 * nothing to do with it.
 *
 * <p>A sample has two parts. Whether a fan is heard at all goes with its speed ({@link Turning}).
 * The speed that is heard lies about the one that is expected with an error that is not known and
 * remembers itself for a while, so that of many samples few count. All weights are natural
 * logarithms.
 */
final class HeardCourse {

    static final double STEP_S = 0.02;

    /** Silence before a start, s. */
    private static final double SILENCE_S = 0.3;

    /** How long an error remembers itself, s; from memory. */
    private static final double MEMORY_S = 0.3;

    /** No law of throttle and speed is nearer than this, over the greatest speed; from memory. */
    private static final double OFF = 0.03;

    /** What a change of level costs besides its place: its new level, told to some per cent. */
    private static final double LEVEL = 3;

    private final double[] speed;
    private final List<Integer> starts;
    private final int[] audible;

    /**
     * @param fans as they were heard
     * @param lengthS of the recording
     */
    HeardCourse(List<FanSpeed> fans, double lengthS) {
        speed = mean(fans, lengthS);
        starts = starts(speed, 0);
        audible = new int[speed.length + 1];
        for (int i = 0; i < speed.length; i++) {
            audible[i + 1] = audible[i] + (speed[i] > 0 ? 1 : 0);
        }
    }

    private static double[] mean(List<FanSpeed> fans, double lengthS) {
        double[] sum = new double[(int) (lengthS / STEP_S) + 1];
        int[] count = new int[sum.length];
        for (FanSpeed fan : fans) {
            for (int k = 0; k + 1 < fan.size(); k++) {
                double a = fan.timesS()[k];
                double b = fan.timesS()[k + 1];
                for (int i = (int) Math.ceil(Math.max(0, a) / STEP_S);
                        b - a < SILENCE_S && i < sum.length && i * STEP_S < b;
                        i++) {
                    double part = (i * STEP_S - a) / (b - a);
                    sum[i] += (1 - part) * fan.speedRadS()[k] + part * fan.speedRadS()[k + 1];
                    count[i]++;
                }
            }
        }
        double most = 0;
        for (int i = 0; i < sum.length; i++) {
            sum[i] = count[i] == 0 ? 0 : sum[i] / count[i];
            most = Math.max(most, sum[i]);
        }
        for (int i = 0; i < sum.length && most > 0; i++) {
            sum[i] /= most;
        }
        return sum;
    }

    /** Where something comes after silence, on the grid. */
    static List<Integer> starts(double[] course, double least) {
        var starts = new ArrayList<Integer>();
        int silent = 0;
        for (int k = 0; k < course.length; k++) {
            if (course[k] > least && silent * STEP_S >= SILENCE_S) {
                starts.add(k);
            }
            silent = course[k] > least ? 0 : silent + 1;
        }
        return starts;
    }

    int size() {
        return speed.length;
    }

    boolean silent() {
        return audible() == 0;
    }

    private int audible() {
        return audible[speed.length];
    }

    /** Whether it begins with a start, and not while fans already turn. */
    boolean starts() {
        return !starts.isEmpty();
    }

    /** Whether a start with the silence before it lies between two places. */
    boolean startsWithin(int from, int to) {
        int silence = (int) (SILENCE_S / STEP_S);
        return starts.stream().anyMatch(k -> k - silence >= from && k < to);
    }

    /** Share of what is heard that lies between two places, 0 to 1. */
    double share(int from, int to) {
        return (audible[to] - audible[from]) / (double) audible();
    }

    /**
     * That the fans turned as told; where nothing is told, that they stood.
     *
     * @param shift what is to be added to a place of ours for that of the told
     * @param stride only each of so many samples is looked at
     */
    double as(Turning told, int shift, int stride) {
        double both = 0;
        double squares = 0;
        double own = 0;
        double detected = 0;
        int count = 0;
        for (int i = 0; i < speed.length; i += stride) {
            int at = i + shift;
            boolean within = at >= 0 && at < told.speed().length;
            double expected = within ? told.speed()[at] : 0;
            detected += within ? told.of(speed[i], at) : Turning.ENDS.of(speed[i], 0);
            if (speed[i] > 0 && expected > 0) {
                both += speed[i] * expected;
                squares += expected * expected;
                own += speed[i] * speed[i];
                count++;
            }
        }
        double left = squares > 0 ? own - both * both / squares : 0;
        return parts(stride) * (detected + levels(left, count));
    }

    /**
     * That they have nothing to do with a log: some fan is switched on, its level is changed at
     * most twice, and it is switched off, whenever somebody likes.
     */
    double byItself(int stride) {
        int first = 0;
        while (speed[first] == 0) {
            first++;
        }
        int last = speed.length - 1;
        while (speed[last] == 0) {
            last--;
        }
        double detected = 0;
        for (int i = 0; i < speed.length; i += stride) {
            detected += Turning.ENDS.of(speed[i], i >= first && i <= last ? 1 : 0);
        }
        double places = speed.length / (double) stride;
        double told = parts(stride) * detected - Math.log(places * places / 2);
        double[] left = new Steps(speed, stride).left();
        double all = Double.NEGATIVE_INFINITY;
        for (int changes = 0; changes < left.length; changes++) {
            double weight =
                    parts(stride) * levels(left[changes], audible() / stride)
                            - changes * (Math.log(places) + LEVEL);
            all = StartUp.add(all, weight);
        }
        return told + all;
    }

    /** So many samples count as one. */
    private static double parts(int stride) {
        return stride * STEP_S / MEMORY_S;
    }

    /** Of a normal error whose size is not known, against a speed that may be any. */
    private static double levels(double squares, int count) {
        return count == 0
                ? 0
                : -count / 2.0 * (Math.log(2 * Math.PI * (squares / count + OFF * OFF)) + 1);
    }
}
