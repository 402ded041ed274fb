package liftwright.learning.replay;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import liftwright.numerics.CounterStream;
import liftwright.numerics.Kept;
import liftwright.numerics.Quantiles;
import liftwright.plant.recording.Samples;

/**
 * What every instrument shows in every draw: the plant at drawn values, what the model leaves out
 * of it, the error of the instrument, and the noise of a block's mean.
 */
final class Bands implements Kept.Form {

    private static final double TAIL = 0.025;

    /**
     * The plant follows its throttle at once; rotors and telemetry take a while, which shows where
     * anything changes fast, k = 2, s; from memory.
     */
    private static final double LATE_S = 0.3;

    private final Driven driven;
    private final long seed;
    private final double[][][] shown;
    private final double[] wentS;
    private final double[] noiseSi;
    private final long[] leftOut;
    private final long[] instrument;
    private final long[] mean;

    Bands(Driven driven, long seed, int draws) {
        this.driven = driven;
        this.seed = seed;
        shown = new double[draws][][];
        Arrays.setAll(shown, any -> new double[0][]);
        wentS = new double[draws];
        int channels = driven.watched().size();
        noiseSi = new double[channels];
        leftOut = new long[channels];
        instrument = new long[channels];
        mean = new long[channels];
        for (int k = 0; k < channels; k++) {
            Watched watched = driven.watched().get(k);
            noiseSi[k] = Noise.of(values(watched.track().samples()));
            String stream = "replay/" + watched.track().name();
            leftOut[k] = CounterStream.channel(stream + "/left out");
            instrument[k] = CounterStream.channel(stream + "/instrument");
            mean[k] = CounterStream.channel(stream + "/mean");
        }
    }

    static double[] values(Samples samples) {
        return IntStream.range(0, samples.size()).mapToDouble(samples::si).toArray();
    }

    /** Takes what a draw came to; each draw by one thread alone. */
    void take(int draw, Driven own, double[][] out, double went) {
        for (int k = 0; k < out.length; k++) {
            Watched watched = driven.watched().get(k);
            double start = own.atStart(k);
            double left = CounterStream.normal(seed, leftOut[k], draw) / 2;
            double error = CounterStream.normal(seed, instrument[k], draw) / 2;
            double[] lateSi = late(watched.blocks().timesS(), out[k]);
            for (int block = 0; block < out[k].length; block++) {
                double value = out[k][block];
                double leftOutSi = Math.hypot(watched.leftOutSi(value - start), lateSi[block]);
                double truth = value + left * leftOutSi;
                double ofMean = noiseSi[k] / Math.sqrt(watched.blocks().counts()[block]);
                out[k][block] =
                        truth
                                + error * watched.errorSi(truth)
                                + ofMean * CounterStream.normal(seed, mean[k], draw, block);
            }
        }
        wentS[draw] = went;
        shown[draw] = out;
    }

    /** What coming late makes of each block. */
    private static double[] late(double[] timesS, double[] values) {
        double[] late = new double[values.length];
        for (int k = 0; k < late.length; k++) {
            int from = Math.max(0, k - 1);
            int to = Math.min(late.length - 1, k + 1);
            for (int other = from; other <= to; other++) {
                if (other != k) {
                    double slope =
                            Math.abs(values[other] - values[k])
                                    / Math.abs(timesS[other] - timesS[k]);
                    late[k] = Math.max(late[k], LATE_S * slope);
                }
            }
        }
        return late;
    }

    @Override
    public double[] numbers(int draw) {
        return Kept.flat(new double[] {wentS[draw]}, Kept.flat(shown[draw]));
    }

    @Override
    public void putBack(int draw, double[] numbers) {
        double[][] rows = Kept.rows(numbers);
        wentS[draw] = rows[0][0];
        shown[draw] = Kept.rows(rows[1]);
    }

    /** How many draws were taken. */
    int made() {
        return (int) Arrays.stream(shown).filter(of -> of.length > 0).count();
    }

    /** What a block's mean is shown as in each draw that gets so far, in the order of draws. */
    double[] shown(int channel, int block) {
        double timeS = driven.watched().get(channel).blocks().timesS()[block];
        return IntStream.range(0, shown.length)
                .filter(draw -> shown[draw].length > 0 && wentS[draw] >= timeS)
                .mapToDouble(draw -> shown[draw][channel][block])
                .toArray();
    }

    /** Mean of some blocks of a channel in each draw that gets to the last of them. */
    double[] means(int channel, int[] blocks) {
        double lastS = driven.watched().get(channel).blocks().timesS()[blocks[blocks.length - 1]];
        return IntStream.range(0, shown.length)
                .filter(draw -> shown[draw].length > 0 && wentS[draw] >= lastS)
                .mapToDouble(
                        draw ->
                                IntStream.of(blocks)
                                        .mapToDouble(block -> shown[draw][channel][block])
                                        .average()
                                        .orElseThrow())
                .toArray();
    }

    /** A channel with its band. */
    Replayed channel(int channel, double[] expected, double went, Optional<Lag> lag) {
        Watched watched = driven.watched().get(channel);
        double[] low = new double[expected.length];
        double[] high = new double[expected.length];
        int judged = 0;
        for (int block = 0; block < expected.length; block++) {
            double[] of = shown(channel, block);
            Arrays.sort(of);
            boolean told = of.length >= made() / 2 && of.length > 1;
            low[block] = told ? Quantiles.ofSorted(of, TAIL) : expected[block];
            high[block] = told ? Quantiles.ofSorted(of, 1 - TAIL) : expected[block];
            if (told && watched.blocks().timesS()[block] <= went && judged == block) {
                judged++;
            }
        }
        return new Replayed(watched, expected.clone(), low, high, lag, judged);
    }
}
