package liftwright.flight.loops;

/**
 * Everything between a turning of the rig and the thrust that answers it, except the spooling of
 * the fans themselves.
 *
 * @param controlHz how often commands are given, Hz; half a period counts as delay (a held command)
 * @param computerS from sensor to command, s
 * @param escS delay of the motor controllers, s
 * @param gyroS how late a turn rate is, s
 * @param gyroHz how often turn rates are read, Hz
 * @param filterHz corner of the first-order filter of turn rates, Hz; infinite without one
 * @param velocityS how late an estimate of velocity is, s
 * @param positionS how late an estimate of position is, s
 */
public record Lags(
        double controlHz,
        double computerS,
        double escS,
        double gyroS,
        double gyroHz,
        double filterHz,
        double velocityS,
        double positionS) {

    // The same with one number at another value.

    Lags controlHz(double to) {
        return new Lags(to, computerS, escS, gyroS, gyroHz, filterHz, velocityS, positionS);
    }

    Lags computerS(double to) {
        return new Lags(controlHz, to, escS, gyroS, gyroHz, filterHz, velocityS, positionS);
    }

    Lags escS(double to) {
        return new Lags(controlHz, computerS, to, gyroS, gyroHz, filterHz, velocityS, positionS);
    }

    Lags gyroS(double to) {
        return new Lags(controlHz, computerS, escS, to, gyroHz, filterHz, velocityS, positionS);
    }

    Lags gyroHz(double to) {
        return new Lags(controlHz, computerS, escS, gyroS, to, filterHz, velocityS, positionS);
    }

    Lags filterHz(double to) {
        return new Lags(controlHz, computerS, escS, gyroS, gyroHz, to, velocityS, positionS);
    }

    Lags velocityS(double to) {
        return new Lags(controlHz, computerS, escS, gyroS, gyroHz, filterHz, to, positionS);
    }

    /** All longer or shorter by a factor; how often a gyro is read stays. */
    Lags times(double factor) {
        return new Lags(
                controlHz / factor,
                factor * computerS,
                factor * escS,
                factor * gyroS,
                gyroHz,
                filterHz / factor,
                factor * velocityS,
                factor * positionS);
    }

    /** Delay in the rate loop: sensor, computer, half a sample, motor controller, s. */
    public double rateDelayS() {
        return gyroS + computerS + 0.5 / controlHz + escS;
    }

    /** Lag of the filter, s. */
    public double filterS() {
        return 1 / (2 * Math.PI * filterHz);
    }
}
