package liftwright.logbook.ask;

import java.util.Optional;
import liftwright.numerics.StudentT;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Track;
import liftwright.quantity.Band;

/**
 * Mean of a channel over a step. Neighbouring samples are alike, so the scatter is taken of the
 * means of batches, each many samples long (batch means, Law, Simulation Modeling and Analysis,
 * from memory); the instrument's error is added in quadrature.
 *
 * @param si mean
 * @param halfSi 95 % of such means lie within this of the truth
 */
record StepMean(double si, double halfSi) {

    private static final int BATCHES = 10;
    private static final int LEAST_SAMPLES = 2 * BATCHES;
    private static final double COVERAGE = 0.95;

    /** Empty where the channel has too few samples in the step. */
    static Optional<StepMean> of(Track track, Steps.Step step) {
        Samples samples = track.samples();
        int from = samples.upTo(Math.nextDown(step.fromS())) + 1;
        int count = samples.upTo(step.toS()) + 1 - from;
        if (count < LEAST_SAMPLES) {
            return Optional.empty();
        }
        double[] means = new double[BATCHES];
        double mean = 0;
        for (int b = 0; b < BATCHES; b++) {
            int begin = from + b * count / BATCHES;
            int end = from + (b + 1) * count / BATCHES;
            for (int k = begin; k < end; k++) {
                means[b] += samples.si(k) / (end - begin);
            }
            mean += means[b] / BATCHES;
        }
        double squares = 0;
        for (double one : means) {
            squares += (one - mean) * (one - mean);
        }
        double scatter =
                StudentT.within(COVERAGE, BATCHES - 1)
                        * Math.sqrt(squares / (BATCHES - 1) / BATCHES);
        double instrument = Math.hypot(track.errorSi(), track.errorShare() * Math.abs(mean));
        return Optional.of(new StepMean(mean, Math.hypot(scatter, instrument)));
    }

    Band band() {
        return new Band(
                si - halfSi,
                si + halfSi,
                COVERAGE,
                "scatter of the means of ten batches, and the instrument's error",
                0,
                0);
    }

    /** Another less this. */
    StepMean to(StepMean other) {
        return new StepMean(other.si - si, Math.hypot(halfSi, other.halfSi));
    }
}
