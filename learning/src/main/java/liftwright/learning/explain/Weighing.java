package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.List;
import liftwright.learning.fit.Compared;
import liftwright.learning.fit.Outliers;
import liftwright.learning.fit.Scatter;

/** From readings, predictions and hypotheses to what may be said. */
final class Weighing {

    /** What is left out over what usually is, with how likely that is; from memory. */
    private static final double[][] LEFT_OUT = {{0.5, 0.25}, {1, 0.5}, {2, 0.25}};

    /** Short memories over the length of the recording, as likely. */
    private static final double[] MEMORIES = {0.04, 0.2};

    private Weighing() {}

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
        double[][] outlying = Outliers.of(channels, predicted);
        List<Weigher.Setting> settings = new ArrayList<>();
        for (double[] leftOut : LEFT_OUT) {
            for (double memory : MEMORIES) {
                Scatter.Assumed assumed = Scatter.Assumed.scaled(channels, leftOut[0], memory);
                Scatter scatter =
                        Scatter.of(
                                channels,
                                predicted,
                                new Scatter.Assumed(assumed.leftOut(), memory, outlying));
                Reduced reduced = new Reduced(scatter, doubts);
                double[] left = new double[scatter.size()];
                for (int c = 0; c < predicted.length; c++) {
                    for (int k = 0; k < predicted[c].length; k++) {
                        left[scatter.at(c) + k] = channels.get(c).measuredSi()[k] - predicted[c][k];
                    }
                }
                settings.add(
                        new Weigher.Setting(
                                leftOut[1] / MEMORIES.length, reduced, reduced.of(left)));
            }
        }
        Scatter usual = Scatter.of(channels, predicted, Scatter.Assumed.usual(channels));
        return new Judged(
                new Weigher(settings, hypotheses, new FreePatterns(channels, usual)), hypotheses);
    }
}
