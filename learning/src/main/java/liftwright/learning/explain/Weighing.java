package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.learning.fit.Compared;
import liftwright.learning.fit.Outliers;
import liftwright.learning.fit.Scatter;
import liftwright.plant.recording.Signal;

/** From readings, predictions and hypotheses to what may be said. */
final class Weighing {

    /** What is left out over what usually is, with how likely that is; from memory. */
    private static final double[][] LEFT_OUT = {{0.5, 0.25}, {1, 0.5}, {2, 0.25}};

    /** Short memory over the length of the recording. */
    private static final double MEMORY = 0.2;

    /**
     * How a part warms is left to luck: its place in the air, how a sensor holds, what a joint
     * gives to its wires. So many times what is left out of others, with how likely that is; from
     * memory.
     */
    private static final double[][] OF_TEMPERATURES = {{2.5, 0.7}, {7, 0.3}};

    private Weighing() {}

    /** How much is left out of each channel, by how much in general and of temperatures. */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    private record LeftOut(double[] factors, double prior) {}

    private static List<LeftOut> leftOut(List<Compared> channels) {
        boolean warmth =
                channels.stream().anyMatch(channel -> channel.signal() == Signal.TEMPERATURE);
        List<LeftOut> all = new ArrayList<>();
        for (double[] general : LEFT_OUT) {
            for (double[] of : warmth ? OF_TEMPERATURES : new double[][] {{1, 1}}) {
                all.add(new LeftOut(factors(channels, general[0], of[0]), general[1] * of[1]));
            }
        }
        return all;
    }

    private static double[] factors(
            List<Compared> channels, double leftOut, double ofTemperatures) {
        return channels.stream()
                .mapToDouble(
                        channel ->
                                channel.signal() == Signal.TEMPERATURE
                                        ? ofTemperatures * leftOut
                                        : leftOut)
                .toArray();
    }

    /**
     * @param predicted as declared, one for each channel
     * @param doubts effects of what was declared, in standard deviations, all blocks of all
     *     channels
     */
    static Judged of(
            List<Compared> channels,
            double[][] predicted,
            List<double[]> doubts,
            List<Hypothesis> hypotheses) {
        return of(
                new Readings(channels, predicted, predicted, Lifted.UNKNOWN, true),
                doubts,
                hypotheses,
                List.of());
    }

    /**
     * What was read and what would be.
     *
     * @param predicted as declared, one for each channel
     * @param likely with what is likeliest to be wrong: what a model leaves out grows with what it
     *     is asked to explain
     * @param lift as declared and as measured
     * @param last whether more is asked for than which causes are likeliest
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Readings(
            List<Compared> channels,
            double[][] predicted,
            double[][] likely,
            Lifted lift,
            boolean last) {

        /** For each block the one of both that is farther from where the channel began. */
        double[][] farthest() {
            double[][] far = new double[predicted.length][];
            for (int c = 0; c < far.length; c++) {
                double start = channels.get(c).startSi();
                far[c] = predicted[c].clone();
                for (int k = 0; k < far[c].length; k++) {
                    if (Math.abs(likely[c][k] - start) > Math.abs(far[c][k] - start)) {
                        far[c][k] = likely[c][k];
                    }
                }
            }
            return far;
        }

        /** What may be late: all that the throttle does, and what is likely to be wrong besides. */
        List<double[][]> courses() {
            double[][] besides = new double[predicted.length][];
            for (int c = 0; c < besides.length; c++) {
                besides[c] = likely[c].clone();
                for (int k = 0; k < besides[c].length; k++) {
                    besides[c][k] -= predicted[c][k];
                }
            }
            return List.of(predicted, besides);
        }

        /** What is a glitch whichever of both is taken. */
        double[][] outlying() {
            double[][] one = Outliers.of(channels, predicted);
            double[][] other = Outliers.of(channels, likely);
            for (int c = 0; c < one.length; c++) {
                for (int k = 0; k < one[c].length; k++) {
                    one[c][k] = Math.min(one[c][k], other[c][k]);
                }
            }
            return one;
        }
    }

    /**
     * The same with what some pairs do beyond what each of them does alone.
     *
     * @param together numbers of hypotheses are those of the list
     */
    static Judged of(
            Readings readings,
            List<double[]> doubts,
            List<Hypothesis> hypotheses,
            List<Together> together) {
        List<Compared> channels = readings.channels;
        double[][] predicted = readings.predicted;
        double[][] farthest = readings.farthest();
        double[][] outlying = readings.outlying();
        List<Weigher.Setting> settings = new ArrayList<>();
        for (LeftOut leftOut : leftOut(channels)) {
            Scatter scatter =
                    Scatter.of(
                            channels,
                            farthest,
                            new Scatter.Assumed(leftOut.factors, MEMORY, outlying),
                            readings.courses());
            Reduced reduced = new Reduced(scatter, doubts);
            double[] left = new double[scatter.size()];
            for (int c = 0; c < predicted.length; c++) {
                for (int k = 0; k < predicted[c].length; k++) {
                    left[scatter.at(c) + k] = channels.get(c).measuredSi()[k] - predicted[c][k];
                }
            }
            settings.add(new Weigher.Setting(leftOut.prior, reduced, reduced.of(left)));
        }
        Scatter usual =
                Scatter.of(
                        channels,
                        farthest,
                        new Scatter.Assumed(
                                factors(channels, 1, OF_TEMPERATURES[0][0]), MEMORY, outlying),
                        readings.courses());
        return new Judged(
                new Weigher(
                        settings,
                        hypotheses,
                        together,
                        readings.last
                                ? Optional.of(new FreePatterns(channels, usual))
                                : Optional.empty()),
                hypotheses,
                readings.lift);
    }
}
