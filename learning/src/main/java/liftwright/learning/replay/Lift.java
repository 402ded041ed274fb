package liftwright.learning.replay;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import liftwright.numerics.Quantiles;
import liftwright.physics.Gravity;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.Band;

/** Reads lift off the channel that tells it best. */
final class Lift {

    private static final double TAIL = 0.025;

    /** In the order in which they are asked. */
    private static final List<Signal> TELL =
            List.of(Signal.THRUST, Signal.TETHER_LOAD, Signal.SCALE);

    private Lift() {}

    /** Empty where no channel tells lift, or no block of it has any. */
    static Optional<MissingLift> of(Driven driven, double[][] expected, double wentS, Bands bands) {
        for (Signal signal : TELL) {
            for (int k = 0; k < driven.watched().size(); k++) {
                Track track = driven.watched().get(k).track();
                if (track.signal() == signal && track.of().equals(Track.ALL)) {
                    Optional<MissingLift> found = of(driven, k, expected[k], wentS, bands);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Newtons of lift for one unit of what the channel shows. */
    private static double newtons(Signal signal) {
        return switch (signal) {
            case SCALE -> -Gravity.STANDARD_MPS2;
            case TETHER_LOAD -> -1;
            default -> 1;
        };
    }

    private static Optional<MissingLift> of(
            Driven driven, int channel, double[] expected, double wentS, Bands bands) {
        Blocks blocks = driven.watched().get(channel).blocks();
        double newtons = newtons(driven.watched().get(channel).track().signal());
        double start = newtons > 0 ? 0 : driven.atStart(channel);
        double most = 0;
        for (int k = 0; k < expected.length; k++) {
            most = Math.max(most, newtons * (expected[k] - start));
        }
        double least = MissingLift.FULL * most;
        int[] full =
                IntStream.range(0, expected.length)
                        .filter(k -> blocks.timesS()[k] <= wentS)
                        .filter(k -> newtons * (expected[k] - start) >= least)
                        .toArray();
        if (full.length == 0 || !(most > 0)) {
            return Optional.empty();
        }
        double predicted = mean(expected, full);
        double measured = mean(blocks.meansSi(), full);
        double[] missing =
                Arrays.stream(bands.means(channel, full))
                        .map(shown -> newtons * (shown - measured))
                        .sorted()
                        .toArray();
        if (missing.length < 2) {
            return Optional.empty();
        }
        Band band =
                new Band(
                        Quantiles.ofSorted(missing, TAIL),
                        Quantiles.ofSorted(missing, 1 - TAIL),
                        0.95,
                        "draws of the declared doubt, the instrument and what the model leaves out",
                        missing.length,
                        Math.max(
                                Quantiles.standardError(missing, TAIL),
                                Quantiles.standardError(missing, 1 - TAIL)));
        return Optional.of(
                new MissingLift(
                        driven.watched().get(channel).track().name(),
                        newtons * (predicted - start),
                        newtons * (measured - start),
                        newtons * (predicted - measured),
                        band,
                        full.length));
    }

    private static double mean(double[] of, int[] blocks) {
        return IntStream.of(blocks).mapToDouble(k -> of[k]).average().orElseThrow();
    }
}
