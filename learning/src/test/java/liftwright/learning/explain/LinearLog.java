package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import liftwright.learning.fit.Compared;
import liftwright.plant.recording.Signal;

/**
 * A log of a linear rig, drawn: stairs of throttle, channels that answer to it, doubts and causes
 * with effects of their own, and what no model has: offsets by level, slow drifts with heavy tails,
 * noise, errors of instruments. No code of what it judges.
 */
final class LinearLog {

    private static final Signal[] SIGNALS = {
        Signal.THRUST,
        Signal.CURRENT,
        Signal.VOLTAGE,
        Signal.SPEED,
        Signal.TEMPERATURE,
        Signal.CELL_VOLTAGE
    };

    /** What a cause does to each channel for a size of 1: by throttle, and growing with time. */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    private record Effect(double[] byThrottle, double[] byTime) {}

    final List<Compared> channels = new ArrayList<>();
    final double[][] predicted;
    final List<double[]> doubts = new ArrayList<>();
    final List<Hypothesis> hypotheses = new ArrayList<>();

    /** Numbers of the causes at work; empty if healthy or unlisted. */
    final List<Integer> hidden = new ArrayList<>();

    final List<Double> sizes = new ArrayList<>();
    final boolean unlisted;
    final int blocks;

    LinearLog(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        blocks = random.nextInt(20, 45);
        int count = random.nextInt(3, 14);
        double[] throttle = new double[blocks];
        double level = 0.3;
        for (int k = 0; k < blocks; k++) {
            if (k % 4 == 0) {
                level = random.nextDouble(0.2, 1);
            }
            throttle[k] = level;
        }
        predicted = new double[count][blocks];
        Signal[] signal = new Signal[count];
        double[] scale = new double[count];
        double[] leftOut = new double[count];
        double[] error = new double[count];
        for (int c = 0; c < count; c++) {
            signal[c] = SIGNALS[c % SIGNALS.length];
            scale[c] = random.nextDouble(1, 50);
            leftOut[c] = random.nextDouble(0.02, 0.10);
            error[c] = random.nextDouble(0.004, 0.02);
            double power = random.nextDouble(1, 2);
            for (int k = 0; k < blocks; k++) {
                predicted[c][k] = scale[c] * Math.pow(throttle[k], power);
            }
        }
        double[][] truth = new double[count][];
        for (int c = 0; c < count; c++) {
            truth[c] = predicted[c].clone();
        }
        doubts(random, count, throttle, scale, truth);
        List<Effect> effects = causes(random, count, throttle);
        double kind = random.nextDouble();
        unlisted = kind < 0.2;
        int many = kind < 0.4 ? 0 : kind < 0.6 ? 2 : 1;
        for (int k = 0; k < many; k++) {
            int cause = random.nextInt(effects.size());
            if (hidden.contains(cause)) {
                continue;
            }
            double size = Math.exp(random.nextDouble(Math.log(0.06), Math.log(0.5)));
            hidden.add(cause);
            sizes.add(size);
            add(effects.get(cause), size, throttle, truth, scale);
        }
        if (unlisted) {
            unlisted(random, throttle, scale, truth);
        }
        read(random, signal, scale, leftOut, error, truth);
    }

    private void doubts(
            SplittableRandom random,
            int count,
            double[] throttle,
            double[] scale,
            double[][] truth) {
        int many = random.nextInt(4, 20);
        for (int d = 0; d < many; d++) {
            Effect effect = effect(random, count);
            double wide = random.nextDouble(0.005, 0.03);
            double[] column = column(effect, wide, throttle, scale);
            doubts.add(column);
            double z = random.nextGaussian();
            for (int c = 0; c < count; c++) {
                for (int k = 0; k < blocks; k++) {
                    truth[c][k] += z * column[c * blocks + k];
                }
            }
        }
    }

    private List<Effect> causes(SplittableRandom random, int count, double[] throttle) {
        int many = random.nextInt(8, 40);
        List<Effect> effects = new ArrayList<>();
        double[] scale = new double[count];
        for (int c = 0; c < count; c++) {
            scale[c] = scaleOf(c);
        }
        for (int h = 0; h < many; h++) {
            Effect effect = effect(random, count);
            effects.add(effect);
            double[] sizes = {0.06, 0.2, 0.5};
            double[][] each = new double[3][];
            for (int k = 0; k < 3; k++) {
                each[k] = column(effect, sizes[k], throttle, scale);
            }
            hypotheses.add(
                    new Hypothesis(
                            new Cause(CauseKind.WEAK_FAN, "f." + h),
                            1.0 / many,
                            sizes,
                            each,
                            new double[] {6, 20, 50},
                            0.05,
                            (low, size, high) -> "",
                            0));
        }
        return effects;
    }

    private double scaleOf(int c) {
        double most = 1e-9;
        for (double value : predicted[c]) {
            most = Math.max(most, value);
        }
        return most;
    }

    /** A few channels answer, the others hardly. */
    private static Effect effect(SplittableRandom random, int count) {
        double[] byThrottle = new double[count];
        double[] byTime = new double[count];
        for (int c = 0; c < count; c++) {
            double much = random.nextDouble() < 0.35 ? 1 : 0.1;
            byThrottle[c] = much * random.nextDouble(-1, 1);
            byTime[c] = random.nextDouble() < 0.3 ? 0.5 * much * random.nextDouble(-1, 1) : 0;
        }
        return new Effect(byThrottle, byTime);
    }

    private double[] column(Effect effect, double size, double[] throttle, double[] scale) {
        double[] column = new double[effect.byThrottle.length * blocks];
        for (int c = 0; c < effect.byThrottle.length; c++) {
            for (int k = 0; k < blocks; k++) {
                double time = (double) k / blocks;
                column[c * blocks + k] =
                        size
                                * scale[c]
                                * throttle[k]
                                * (effect.byThrottle[c] + effect.byTime[c] * time);
            }
        }
        return column;
    }

    private void add(
            Effect effect, double size, double[] throttle, double[][] truth, double[] ignored) {
        double[] scale = new double[truth.length];
        for (int c = 0; c < scale.length; c++) {
            scale[c] = scaleOf(c);
        }
        double[] column = column(effect, size, throttle, scale);
        for (int c = 0; c < truth.length; c++) {
            for (int k = 0; k < blocks; k++) {
                truth[c][k] += column[c * blocks + k];
            }
        }
    }

    /** Something that none of the causes does: a step, a wave, or a band of throttle. */
    private void unlisted(
            SplittableRandom random, double[] throttle, double[] scale, double[][] truth) {
        int form = random.nextInt(3);
        double from = random.nextDouble(0.2, 0.7) * blocks;
        for (int c = 0; c < truth.length; c++) {
            if (random.nextDouble() < 0.5 && c > 0) {
                continue;
            }
            double size = scale[c] * random.nextDouble(0.15, 0.6) * (random.nextBoolean() ? 1 : -1);
            for (int k = 0; k < blocks; k++) {
                double shape =
                        switch (form) {
                            case 0 -> k > from ? 1 : 0;
                            case 1 -> Math.sin(2 * Math.PI * k / (0.4 * blocks));
                            default -> throttle[k] > 0.5 && throttle[k] < 0.75 ? 1 : 0;
                        };
                truth[c][k] += size * shape * throttle[k];
            }
        }
    }

    /** Adds what the model leaves out, and reads with instruments. */
    private void read(
            SplittableRandom random,
            Signal[] signal,
            double[] scale,
            double[] leftOut,
            double[] error,
            double[][] truth) {
        for (int c = 0; c < truth.length; c++) {
            double worse = Math.exp(0.35 * random.nextGaussian());
            double share = worse * leftOut[c] / 2;
            double always = 0.6 * tailed(random);
            double slope = 0.5 * random.nextGaussian();
            double drift = 0.6 * random.nextGaussian();
            double bias = error[c] / 2 * random.nextGaussian();
            double[] times = new double[blocks];
            double[] measured = new double[blocks];
            double[] noise = new double[blocks];
            for (int k = 0; k < blocks; k++) {
                double at = predicted[c][k] / Math.max(scale[c], 1e-9);
                drift = 0.8 * drift + 0.6 * 0.6 * random.nextGaussian();
                double off = share * predicted[c][k] * (always + slope * (at - 0.5) + drift);
                noise[k] = 0.002 * scale[c];
                double spike = random.nextDouble() < 0.01 ? 20 : 1;
                times[k] = 2 * k + 1;
                measured[k] =
                        truth[c][k]
                                + off
                                + bias * truth[c][k]
                                + spike * noise[k] * random.nextGaussian();
            }
            channels.add(
                    new Compared(
                            signal[c],
                            "c." + c,
                            times,
                            measured,
                            noise,
                            0.001 * scale[c],
                            error[c],
                            leftOut[c],
                            0,
                            0));
        }
    }

    private static double tailed(SplittableRandom random) {
        double square = 0;
        for (int k = 0; k < 5; k++) {
            double z = random.nextGaussian();
            square += z * z;
        }
        return random.nextGaussian() / Math.sqrt(square / 5);
    }
}
