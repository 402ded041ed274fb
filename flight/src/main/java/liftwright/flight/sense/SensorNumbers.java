package liftwright.flight.sense;

import liftwright.rig.Control.Measures;

/**
 * The numbers of one sensor. Units of values are SI: rad/s, m/s², m, m/s or rad by what it
 * measures.
 *
 * @param measures what it measures
 * @param rateHz how often it is read, &gt; 0
 * @param delayS how late its value is, its filter left out, ≥ 0
 * @param noise amplitude density N of its white noise, ≥ 0, unit of its values per √Hz; two-sided,
 *     as in [IEEE952]: the integral of the noise over a time t has the standard deviation N √t, and
 *     a reading at the rate f has N √f
 * @param bias middle of the offset of each axis
 * @param biasDoubt standard deviation of the offset of each axis, ≥ 0
 * @param range largest amount that it reads, &gt; 0; infinite without one
 * @param misalignmentRad k = 2 of the angle about each axis by which its axes are off, ≥ 0
 * @param dropout share of readings that are lost, 0 to 1
 * @param filterHz corner of the first-order filter of its readings, &gt; 0; infinite without one
 */
public record SensorNumbers(
        Measures measures,
        double rateHz,
        double delayS,
        double noise,
        double bias,
        double biasDoubt,
        double range,
        double misalignmentRad,
        double dropout,
        double filterHz) {

    public SensorNumbers {
        if (!(rateHz > 0 && range > 0 && filterHz > 0 && delayS >= 0 && noise >= 0)) {
            throw new IllegalArgumentException("numbers of a sensor that cannot be: " + measures);
        }
    }

    /** How many values it reads at once. */
    public int axes() {
        return axes(measures);
    }

    static int axes(Measures measures) {
        return switch (measures) {
            case TURN_RATE, ACCELERATION, VELOCITY -> 3;
            case POSITION -> 2;
            case HEIGHT, HEADING -> 1;
        };
    }

    /** Time constant of the filter, s; 0 without one. */
    public double filterS() {
        return 1 / (2 * Math.PI * filterHz);
    }

    /**
     * How late a slow change is read on average: delay, filter and half the time between two
     * readings, s.
     */
    public double latenessS() {
        return delayS + filterS() + 0.5 / rateHz;
    }

    /** One that reads everything as it is at this rate. */
    public static SensorNumbers perfect(Measures measures, double rateHz) {
        double none = Double.POSITIVE_INFINITY;
        return new SensorNumbers(measures, rateHz, 0, 0, 0, 0, none, 0, 0, none);
    }
}
