package liftwright.logbook.ask;

import java.util.Optional;
import liftwright.answer.Value;
import liftwright.plant.recording.Signal;
import liftwright.quantity.Band;

/** Numbers of channels as values: the field is that of what the channel measures. */
final class Readings {

    private Readings() {}

    static Value of(Signal signal, double si) {
        return Value.of(field(signal), si);
    }

    static Value of(Signal signal, double si, Band band) {
        return Value.of(field(signal), si, band);
    }

    /** A difference of two values, or an error. */
    static Value difference(Signal signal, double si, Optional<Band> band) {
        return Value.of(
                field(signal).equals("read-temperature") ? "read-difference" : field(signal),
                si,
                band);
    }

    private static String field(Signal signal) {
        return switch (signal) {
            case THROTTLE, HUMIDITY -> "read-share";
            case THRUST, TETHER_LOAD -> "read-force";
            case SCALE -> "read-mass";
            case ROLL_MOMENT, PITCH_MOMENT, YAW_MOMENT -> "read-moment";
            case CURRENT, WINDING_CURRENT -> "read-current";
            case VOLTAGE, CELL_VOLTAGE -> "read-voltage";
            case SPEED -> "read-rotation";
            case TEMPERATURE, AIR_TEMPERATURE -> "read-temperature";
            case CHARGE_USED -> "read-charge";
            case AIR_PRESSURE -> "read-pressure";
            case WIND -> "read-speed";
        };
    }
}
