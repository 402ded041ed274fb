package liftwright.learning.replay;

import liftwright.plant.recording.Signal;
import liftwright.quantity.Measure;

/** How a channel's numbers are written. */
public final class Measures {

    private Measures() {}

    /** Unit and rounding of what a signal measures. */
    public static Measure of(Signal signal) {
        return switch (signal) {
            case THROTTLE, HUMIDITY -> Measure.PERCENT;
            case THRUST, TETHER_LOAD -> Measure.THRUST;
            case SCALE -> Measure.MASS;
            case ROLL_MOMENT, PITCH_MOMENT, YAW_MOMENT -> Measure.MOMENT;
            case CURRENT, WINDING_CURRENT -> Measure.CURRENT;
            case VOLTAGE, CELL_VOLTAGE -> Measure.VOLTAGE;
            case SPEED -> Measure.ROTATION;
            case TEMPERATURE, AIR_TEMPERATURE -> Measure.TEMPERATURE;
            case CHARGE_USED -> Measure.CHARGE;
            case AIR_PRESSURE -> Measure.PRESSURE;
            case WIND -> Measure.SPEED;
        };
    }

    /** The same of a difference of two such numbers. */
    public static Measure ofDifference(Signal signal) {
        Measure measure = of(signal);
        return measure == Measure.TEMPERATURE ? Measure.TEMPERATURE_DIFFERENCE : measure;
    }
}
