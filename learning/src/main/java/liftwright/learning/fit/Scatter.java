package liftwright.learning.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import liftwright.numerics.CholeskyFactor;
import liftwright.plant.recording.Signal;

/**
 * What stands between a model and what is read, as a normal covariance over all blocks of a
 * recording: noise, the error of each instrument, and what the model leaves out. Immutable.
 *
 * <p>Of an instrument's error seven tenths of the variance are the same all through a recording,
 * two tenths drift with a long memory (warmth, creep), and the rest is new in every block (from
 * memory). Clocks differ, and instruments show late: where a channel changes, by a tenth of a
 * second, the same all along. What the model leaves out is a share of the way from the start; it
 * remembers itself over time, as a first-order autoregressive process does (physics.md §11;
 * Brynjarsdóttir and O'Hagan [BRYN14] on why an estimate without it is far too sure), half of its
 * variance with a short and half with a long memory. Where several channels read the same kind of
 * thing, half of it is common to them (from memory): a law that is a little wrong is wrong for
 * every fan.
 */
public final class Scatter {

    /** Parts of the variance of an instrument's error that last, and that drift. */
    private static final double LASTS = 0.7;

    private static final double DRIFTS = 0.2;

    /** Of a channel behind the throttle once it was put in step, standard deviation, s. */
    public static final double LATE_S = 0.1;

    /** Part of the variance of what is left out that channels of one signal share. */
    private static final double COMMON = 0.5;

    /** Part of the way that a thermometer went for which the model is in doubt; from memory. */
    private static final double HALF = 0.5;

    /** Long memory over the length of the recording. */
    private static final double LONG = 2;

    /** Moments at which what is common to a signal is free. */
    private static final int KNOTS = 5;

    /** No channel is read better than this share of what its instrument or its model is worth. */
    private static final double FLOOR = 0.02;

    private final int[] at;
    private final int size;
    private final List<CholeskyFactor> factors = new ArrayList<>();
    private final List<double[]> shared = new ArrayList<>();
    private final double[][] leftOut;
    private final double[][] noise;
    private final double[][] variance;

    /**
     * What is not known of the scatter.
     *
     * @param leftOut for each channel: what the model leaves out over what is usually left out
     * @param memory the short memory over the length of the recording
     * @param outlying for each block of each channel: factor on the variance of its noise, ≥ 1
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    public record Assumed(double[] leftOut, double memory, double[][] outlying) {

        /** The usual, every block being good. */
        public static Assumed usual(List<Compared> channels) {
            return scaled(channels, 1, 0.15);
        }

        /** The same share for all channels, every block being good. */
        public static Assumed scaled(List<Compared> channels, double leftOut, double memory) {
            double[] factors = new double[channels.size()];
            java.util.Arrays.fill(factors, leftOut);
            double[][] outlying = new double[channels.size()][];
            for (int c = 0; c < outlying.length; c++) {
                outlying[c] = new double[channels.get(c).size()];
                java.util.Arrays.fill(outlying[c], 1);
            }
            return new Assumed(factors, memory, outlying);
        }
    }

    private Scatter(
            List<Compared> channels,
            double[][] predicted,
            Assumed assumed,
            List<double[][]> courses) {
        at = new int[channels.size() + 1];
        leftOut = new double[channels.size()][];
        noise = new double[channels.size()][];
        variance = new double[channels.size()][];
        Map<Signal, Integer> count = new EnumMap<>(Signal.class);
        for (Compared channel : channels) {
            count.merge(channel.signal(), 1, Integer::sum);
        }
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < channels.size(); c++) {
            Compared channel = channels.get(c);
            at[c + 1] = at[c] + channel.size();
            leftOut[c] = leftOut(channel, predicted[c], assumed.leftOut[c]);
            from = Math.min(from, channel.timesS()[0]);
            to = Math.max(to, channel.timesS()[channel.size() - 1]);
        }
        size = at[channels.size()];
        double longS = Math.max(to - from, 1e-9);
        for (int c = 0; c < channels.size(); c++) {
            boolean alone = count.getOrDefault(channels.get(c).signal(), 1) == 1;
            factors.add(
                    CholeskyFactor.of(
                            covariance(
                                    channels.get(c),
                                    c,
                                    longS,
                                    assumed,
                                    alone ? 1 : 1 - COMMON,
                                    late(channels.get(c), c, courses))));
        }
        count.forEach(
                (signal, many) -> {
                    if (many > 1) {
                        common(channels, signal);
                    }
                });
    }

    /**
     * @param channels what is compared
     * @param predicted what the model says of them
     */
    public static Scatter of(List<Compared> channels, double[][] predicted, Assumed assumed) {
        return new Scatter(channels, predicted, assumed, List.<double[][]>of(predicted));
    }

    /**
     * The same where other things may be late than what is predicted.
     *
     * @param courses of all channels, each late by itself: what the throttle does, and what a cause
     *     that begins in mid-run does besides
     */
    public static Scatter of(
            List<Compared> channels,
            double[][] predicted,
            Assumed assumed,
            List<double[][]> courses) {
        return new Scatter(channels, predicted, assumed, courses);
    }

    /** What is left out of each block of a channel, standard deviation, SI. */
    private static double[] leftOut(Compared channel, double[] predicted, double factor) {
        double[] deviation = new double[channel.size()];
        boolean remembers = channel.signal() == Signal.TEMPERATURE;
        double farthest = 0;
        for (int k = 0; k < deviation.length; k++) {
            double way = predicted[k] - channel.startSi();
            if (remembers) {
                // What is warm cools at a rate of its own: it is as doubtful as when hottest; and
                // what grew far hotter than expected is as doubtful as that is hot.
                double shown = HALF * Math.abs(channel.measuredSi()[k] - channel.startSi());
                farthest = Math.max(farthest, Math.max(shown, Math.abs(way)));
            }
            way = Math.max(farthest, Math.abs(way));
            deviation[k] =
                    factor / 2 * Math.hypot(channel.leftOutShare() * way, channel.leftOutSi());
        }
        return deviation;
    }

    private double[][] covariance(
            Compared channel, int c, double longS, Assumed assumed, double own, double[][] late) {
        int n = channel.size();
        double shortS = assumed.memory * longS;
        double[][] covariance = new double[n][n];
        double floor = 0;
        for (int i = 0; i < n; i++) {
            floor = Math.max(floor, FLOOR * Math.hypot(leftOut[c][i], error(channel, i)));
        }
        floor = Math.max(floor, 1e-12);
        noise[c] = new double[n];
        variance[c] = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double apartS = Math.abs(channel.timesS()[i] - channel.timesS()[j]);
                double slowly = Math.exp(-apartS / (LONG * longS));
                double remembered = 0.5 * Math.exp(-apartS / shortS) + 0.5 * slowly;
                double lasting =
                        channel.errorSi() * channel.errorSi() / 4
                                + channel.errorShare()
                                        * channel.errorShare()
                                        / 4
                                        * channel.measuredSi()[i]
                                        * channel.measuredSi()[j];
                covariance[i][j] =
                        own * leftOut[c][i] * leftOut[c][j] * remembered
                                + (LASTS + DRIFTS * slowly) * lasting
                                + rounding(channel, i, j);
                for (double[] one : late) {
                    covariance[i][j] += one[i] * one[j];
                }
                covariance[j][i] = covariance[i][j];
            }
            double error = error(channel, i);
            double scatter = channel.noiseSi()[i];
            noise[c][i] = scatter * scatter + (1 - LASTS - DRIFTS) * error * error + floor * floor;
            covariance[i][i] += assumed.outlying[c][i] * noise[c][i];
            variance[c][i] = covariance[i][i] + (1 - own) * leftOut[c][i] * leftOut[c][i];
        }
        return covariance;
    }

    /** What a channel shows less where each of the courses is late, standard deviation, SI. */
    private static double[][] late(Compared channel, int c, List<double[][]> courses) {
        boolean slow = channel.signal() == Signal.TEMPERATURE;
        return courses.stream()
                .limit(slow ? 0 : courses.size())
                .map(course -> late(channel.timesS(), course[c]))
                .toArray(double[][]::new);
    }

    private static double[] late(double[] timesS, double[] course) {
        double[] late = new double[course.length];
        for (int k = 0; k < late.length; k++) {
            int before = Math.max(0, k - 1);
            int after = Math.min(late.length - 1, k + 1);
            double apartS = timesS[after] - timesS[before];
            late[k] = apartS > 0 ? LATE_S * (course[after] - course[before]) / apartS : 0;
        }
        return late;
    }

    /** What is rounded off is the same as long as the same is shown. */
    private static double rounding(Compared channel, int i, int j) {
        double step = channel.stepSi();
        double apart = Math.abs(channel.measuredSi()[i] - channel.measuredSi()[j]);
        return step > 0 ? step * step / 12 * Math.exp(-apart / step) : 0;
    }

    /** Of the instrument at a block, standard deviation, SI. */
    private static double error(Compared channel, int k) {
        return Math.hypot(channel.errorSi(), channel.errorShare() * channel.measuredSi()[k]) / 2;
    }

    /** Hats over time: what all channels of a signal have in common. */
    private void common(List<Compared> channels, Signal signal) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (Compared channel : channels) {
            if (channel.signal() == signal) {
                from = Math.min(from, channel.timesS()[0]);
                to = Math.max(to, channel.timesS()[channel.size() - 1]);
            }
        }
        // Half is the same all the time and half is free at each knot.
        for (int knot = -1; knot < KNOTS; knot++) {
            double[] column = new double[size];
            for (int c = 0; c < channels.size(); c++) {
                Compared channel = channels.get(c);
                for (int k = 0; channel.signal() == signal && k < channel.size(); k++) {
                    double hat = hat(channel.timesS()[k], from, to, knot, KNOTS);
                    column[at[c] + k] = Math.sqrt(COMMON / 2) * hat * leftOut[c][k];
                }
            }
            shared.add(column);
        }
    }

    /** 1 at a knot and 0 at all others, straight between; 1 everywhere for knot −1. */
    public static double hat(double timeS, double fromS, double toS, int knot, int knots) {
        if (knot < 0) {
            return 1;
        }
        double step = Math.max(toS - fromS, 1e-9) / (knots - 1);
        return Math.max(0, 1 - Math.abs(timeS - fromS - knot * step) / step);
    }

    /** All blocks of all channels. */
    public int size() {
        return size;
    }

    /** Where a channel begins among all blocks. */
    public int at(int channel) {
        return at[channel];
    }

    /** What is left out of a block of a channel, standard deviation, SI. */
    public double leftOutSi(int channel, int block) {
        return leftOut[channel][block];
    }

    /** Variance of what is new in every block of a channel, outliers not counted, SI². */
    double[] noiseVariance(int channel) {
        return noise[channel].clone();
    }

    /** Variance of one block by itself, all in, SI². */
    public double varianceSi(int channel, int block) {
        return variance[channel][block];
    }

    /** Turns what has this covariance, but for what is shared, into unit scatter; in place. */
    public double[] whiten(double[] stacked) {
        for (int c = 0; c < factors.size(); c++) {
            factors.get(c).whiten(stacked, at[c]);
        }
        return stacked;
    }

    /** ln det of the covariance, but for what is shared. */
    public double logDeterminant() {
        return factors.stream().mapToDouble(CholeskyFactor::logDeterminant).sum();
    }

    /** The factor of one channel. */
    public CholeskyFactor factor(int channel) {
        return factors.get(channel);
    }

    /** What channels share: effects of independent standard normal numbers, not whitened. */
    public List<double[]> shared() {
        return shared.stream().map(double[]::clone).toList();
    }

    /** One array from one for each channel. */
    public double[] stack(double[][] of) {
        double[] stacked = new double[size];
        for (int c = 0; c < of.length; c++) {
            System.arraycopy(of[c], 0, stacked, at[c], of[c].length);
        }
        return stacked;
    }
}
