package liftwright.flight.loops;

/**
 * From a command of one axis to what it moves, and from that to what is measured: lags and delays
 * round an integrator. All that a flight simulates stands here, fan by fan weighed together.
 *
 * @param spoolS lag of the fans that act on this axis, s
 * @param leadS lead of the moment over the thrust, from the reaction to rotors that are sped up;
 *     below 0 where it acts against the steady moment first, s
 * @param slowedS lag that the controller itself puts before this axis against the lead, s
 * @param forwardS delay of computer, half a sample and motor controllers, s
 * @param filterS lag of the filter of the sensor, s
 * @param sensorS delay of the sensor, s
 */
public record Actuation(
        double spoolS,
        double leadS,
        double slowedS,
        double forwardS,
        double filterS,
        double sensorS) {

    /** From command to what moves, without the integrator. */
    Complex forward(double radps, double lags) {
        return Complex.delay(radps, lags * forwardS)
                .times(Complex.onePlus(radps, leadS))
                .over(Complex.onePlus(radps, lags * spoolS).times(Complex.onePlus(radps, slowedS)));
    }

    /** From what moves to what is measured. */
    Complex measure(double radps, double lags) {
        return Complex.delay(radps, lags * sensorS).over(Complex.onePlus(radps, lags * filterS));
    }

    /** Phase lost at a frequency, rad: Σ atan(ωτ) + ωL − atan(ωT). */
    double lostRad(double radps) {
        return radps * (forwardS + sensorS)
                + Math.atan(radps * spoolS)
                + Math.atan(radps * filterS)
                + Math.atan(radps * slowedS)
                - Math.atan(radps * leadS);
    }

    /** Gain at a frequency over that at none, 1. */
    double share(double radps) {
        return Math.hypot(1, radps * leadS)
                / (Math.hypot(1, radps * spoolS)
                        * Math.hypot(1, radps * filterS)
                        * Math.hypot(1, radps * slowedS));
    }

    /** All lags and delays together, as slow sines feel them, s. */
    double totalS() {
        return spoolS + slowedS - leadS + forwardS + filterS + sensorS;
    }
}
