package liftwright.review.referee;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import liftwright.answer.Outcome;

/** The referee's own sample of a judged number. */
final class RefereeBand {

    private final double[] sorted;

    private RefereeBand(double[] sorted) {
        this.sorted = sorted;
    }

    static RefereeBand of(RefereeRig rig, long seed, int draws, String halved) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] ratios = new double[draws];
        for (int i = 0; i < draws; i++) {
            ratios[i] = RefereeLift.ratio(rig, RefereeDraw.of(random.split(), halved));
        }
        return of(ratios);
    }

    /** Of any sample. */
    static RefereeBand of(double[] sample) {
        double[] sorted = sample.clone();
        Arrays.sort(sorted);
        return new RefereeBand(sorted);
    }

    double low() {
        return at(0.025);
    }

    double high() {
        return at(0.975);
    }

    double halfWidth() {
        return (high() - low()) / 2;
    }

    /** Plain order statistic; of thousands of draws the definition does not matter. */
    private double at(double p) {
        return sorted[(int) Math.round(p * (sorted.length - 1))];
    }

    /** Distance over which a 2.5 % end wanders from sample to sample, by its order statistics. */
    double endError() {
        double s = Math.sqrt(sorted.length * 0.025 * 0.975) / (sorted.length - 1);
        return Math.max(at(0.025 + s) - at(0.025 - s), at(0.975 + s) - at(0.975 - s)) / 2;
    }

    enum Says {
        MET(Outcome.HOLDS),
        MISSED(Outcome.DOES_NOT_HOLD),
        OPEN(Outcome.CANNOT_BE_TOLD);

        private final Outcome outcome;

        Says(Outcome outcome) {
            this.outcome = outcome;
        }

        /** The verdict that says the same. */
        Outcome outcome() {
            return outcome;
        }
    }

    Says decides(double demand) {
        return low() >= demand ? Says.MET : high() < demand ? Says.MISSED : Says.OPEN;
    }

    /** The decision where the noise of so many draws cannot have made it. */
    Optional<Says> certain(double demand) {
        return certain(demand, sorted.length);
    }

    /**
     * The same with the distance that the noise of a smaller sample asks for.
     *
     * @param draws of that sample
     */
    Optional<Says> certain(double demand, int draws) {
        double noise = 5 * endError() * Math.sqrt((double) sorted.length / draws);
        if (Math.abs(low() - demand) < noise || Math.abs(high() - demand) < noise) {
            return Optional.empty();
        }
        return Optional.of(decides(demand));
    }
}
