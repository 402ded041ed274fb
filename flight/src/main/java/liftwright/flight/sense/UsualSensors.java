package liftwright.flight.sense;

import static liftwright.rig.shape.words.SensorKeys.BIAS;
import static liftwright.rig.shape.words.SensorKeys.DELAY;
import static liftwright.rig.shape.words.SensorKeys.DROPOUT;
import static liftwright.rig.shape.words.SensorKeys.FILTER;
import static liftwright.rig.shape.words.SensorKeys.MISALIGNMENT;
import static liftwright.rig.shape.words.SensorKeys.NOISE;
import static liftwright.rig.shape.words.SensorKeys.RANGE;
import static liftwright.rig.shape.words.SensorKeys.RATE;

import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.rig.Control.Measures;
import liftwright.rig.shape.kind.Key;

/**
 * What is taken of a sensor where the file is silent: a small one of the kind that such rigs carry,
 * none of the best. All from memory of common practice; a data sheet is better.
 */
final class UsualSensors {

    /** What is said of every value that stands in. */
    static final String ORIGIN = "common practice, from memory; your sensor's sheet is better";

    private UsualSensors() {}

    /** As it would be written; empty where nothing is assumed. */
    static Optional<String> text(Measures measures, Key<?> key) {
        String name = key.name();
        String text =
                switch (measures) {
                    case TURN_RATE ->
                            pick(
                                    name,
                                    "1 kHz",
                                    "1 ms",
                                    "0.005 deg/s/√Hz",
                                    "± 0.5 deg/s",
                                    "2000 deg/s",
                                    "1°",
                                    "90 Hz");
                    case ACCELERATION ->
                            pick(
                                    name,
                                    "1 kHz",
                                    "1 ms",
                                    "0.001 m/s²/√Hz",
                                    "± 0.2 m/s²",
                                    "150 m/s²",
                                    "1°",
                                    "30 Hz");
                    case HEIGHT ->
                            pick(name, "50 Hz", "20 ms", "0.005 m/√Hz", "± 20 mm", "12 m", "", "");
                    case POSITION ->
                            pick(name, "10 Hz", "100 ms", "0.01 m/√Hz", "± 50 mm", "", "", "");
                    case VELOCITY ->
                            pick(name, "10 Hz", "100 ms", "0.02 m/s/√Hz", "", "", "1°", "");
                    case HEADING ->
                            pick(name, "50 Hz", "20 ms", "0.1 deg/√Hz", "± 3 deg", "", "", "");
                };
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private static String pick(
            String key,
            String rate,
            String delay,
            String noise,
            String bias,
            String range,
            String misalignment,
            String filter) {
        if (key.equals(RATE.name())) {
            return rate;
        } else if (key.equals(DELAY.name())) {
            return delay;
        } else if (key.equals(NOISE.name())) {
            return noise;
        } else if (key.equals(BIAS.name())) {
            return bias;
        } else if (key.equals(RANGE.name())) {
            return range;
        } else if (key.equals(MISALIGNMENT.name())) {
            return misalignment;
        } else if (key.equals(FILTER.name())) {
            return filter;
        } else if (key.equals(DROPOUT.name())) {
            return "0.1 %";
        }
        throw new IllegalArgumentException("a sensor has no " + key);
    }

    /** The number behind such a text; a doubt alone is about zero. */
    static Quantity parse(String text) {
        String whole = text.startsWith("±") ? "0 " + unit(text) + " " + text : text;
        return switch (QuantityParser.parse(whole)) {
            case Reading.Parsed<Quantity>(var quantity) -> quantity;
            case Reading.Refused<Quantity>(var refusal) ->
                    throw new IllegalStateException(whole + ": " + refusal.message());
        };
    }

    private static String unit(String doubt) {
        return doubt.substring(doubt.lastIndexOf(' ') + 1);
    }
}
