package liftwright.learning.ask;

import liftwright.answer.Value;
import liftwright.plant.recording.Signal;

/** Fields of what channels show. */
final class ChannelWords {

    private ChannelWords() {}

    static String field(Signal signal) {
        return switch (signal) {
            case THROTTLE, HUMIDITY -> "log-share";
            case THRUST, TETHER_LOAD -> "log-thrust";
            case SCALE -> "log-scale";
            case ROLL_MOMENT, PITCH_MOMENT, YAW_MOMENT -> "log-moment";
            case CURRENT, WINDING_CURRENT -> "log-current";
            case VOLTAGE, CELL_VOLTAGE -> "log-voltage";
            case SPEED -> "log-speed";
            case TEMPERATURE, AIR_TEMPERATURE -> "log-temperature";
            case CHARGE_USED -> "log-charge";
            case AIR_PRESSURE -> "log-pressure";
            case WIND -> "log-wind";
        };
    }

    /** A difference of two values of a channel. */
    static Value off(Signal signal, double si) {
        String field = field(signal);
        return Value.of(field.equals("log-temperature") ? "off-temperature" : field, si);
    }
}
