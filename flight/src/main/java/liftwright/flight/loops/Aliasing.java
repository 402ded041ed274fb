package liftwright.flight.loops;

import java.util.OptionalDouble;

/**
 * One per revolution of the fans, read by a gyro at its own rate: what lies above half of it shows
 * as something slower (667 Hz reads as 333 Hz at 1 kHz), and no filter behind the sampling takes it
 * away.
 */
final class Aliasing {

    private Aliasing() {}

    /** Frequency at which a vibration shows in readings at a rate, Hz. */
    static double shownHz(double trueHz, double rateHz) {
        return Math.abs(trueHz - rateHz * Math.rint(trueHz / rateHz));
    }

    /** Lowest frequency at which any of a range of vibrations shows, Hz. */
    static double lowestShownHz(double leastHz, double mostHz, double rateHz) {
        double near = Math.rint(leastHz / rateHz);
        double lowest = Math.min(shownHz(leastHz, rateHz), shownHz(mostHz, rateHz));
        // A multiple of the rate within the range shows as nothing that moves.
        for (double k = near; k * rateHz <= mostHz; k++) {
            if (k * rateHz >= leastHz && k > 0) {
                return 0;
            }
        }
        return lowest;
    }

    /** Least rate above the present one at which nothing shows below a frequency, Hz. */
    static OptionalDouble rateHz(double leastHz, double mostHz, double nowHz, double aboveHz) {
        // Beyond the highest vibration and the band above it, nothing of it folds below the band.
        double enough = (mostHz + aboveHz) * (1 + 1e-9);
        if (leastHz < aboveHz) {
            return OptionalDouble.empty();
        }
        double step = 0.001 * enough;
        for (double rate = nowHz; rate < enough; rate += step) {
            if (lowestShownHz(leastHz, mostHz, rate) > aboveHz) {
                return OptionalDouble.of(rate);
            }
        }
        return OptionalDouble.of(Math.max(enough, nowHz));
    }
}
