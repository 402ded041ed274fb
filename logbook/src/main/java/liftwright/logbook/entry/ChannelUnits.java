package liftwright.logbook.entry;

import liftwright.plant.recording.Signal;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityWriter;
import liftwright.rig.shape.kind.Measure;

/** In which quantity the error of a channel is written: that of its values, or a difference. */
final class ChannelUnits {

    private ChannelUnits() {}

    static Measure errorOf(Signal signal) {
        return switch (signal) {
            case THROTTLE, HUMIDITY -> Measure.RATIO;
            case THRUST, TETHER_LOAD -> Measure.FORCE;
            case SCALE -> Measure.MASS;
            case ROLL_MOMENT, PITCH_MOMENT, YAW_MOMENT -> Measure.TORQUE;
            case CURRENT, WINDING_CURRENT -> Measure.CURRENT;
            case VOLTAGE, CELL_VOLTAGE -> Measure.VOLTAGE;
            case SPEED -> Measure.ROTATION;
            case TEMPERATURE, AIR_TEMPERATURE -> Measure.KELVIN;
            case CHARGE_USED -> Measure.CHARGE;
            case AIR_PRESSURE -> Measure.PRESSURE;
            case WIND -> Measure.SPEED;
        };
    }

    /** Such an error as a text that is read as the same to the last bit. */
    static String text(Signal signal, double errorSi) {
        return errorOf(signal) == Measure.KELVIN
                ? Writing.plain(errorSi) + " K"
                : QuantityWriter.write(Quantity.exact(errorSi, signal.dimension()));
    }
}
