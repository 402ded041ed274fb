package liftwright.plant.recording;

import java.util.Optional;
import java.util.stream.Stream;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;

/**
 * What a channel of a recording measures. Names are those of the columns of a log; what a channel
 * is read of (a fan, a pack, a mount, a part that warms, or {@code all}) stands beside it in {@link
 * Track#of}.
 */
public enum Signal {
    /** Commanded, 0 to 1; of a fan, a control group, or all. */
    THROTTLE("throttle", Dimensions.DIMENSIONLESS),
    /** Along the axes of what pushes, by load cells; of a fan, a mount, or all. */
    THRUST("thrust", Dimensions.FORCE),
    /** What a scale under the rig shows. */
    SCALE("scale", Dimensions.MASS),
    /** Load in the tether. */
    TETHER_LOAD("tether load", Dimensions.FORCE),
    /** Turning moment on what holds the rig: left side up. */
    ROLL_MOMENT("roll moment", Dimensions.TORQUE),
    /** Nose up. */
    PITCH_MOMENT("pitch moment", Dimensions.TORQUE),
    /** Nose right. */
    YAW_MOMENT("yaw moment", Dimensions.TORQUE),
    /** Of a pack, a control group's fans, or a fan: into its controller. */
    CURRENT("current", Dimensions.CURRENT),
    /** At a pack's terminals or a controller's. */
    VOLTAGE("voltage", Dimensions.VOLTAGE),
    /** Least cell of a pack. */
    CELL_VOLTAGE("cell voltage", Dimensions.VOLTAGE),
    /** Of a fan's rotor. */
    SPEED("speed", Dimensions.ANGULAR_SPEED),
    /** Current in a motor's winding. */
    WINDING_CURRENT("winding current", Dimensions.CURRENT),
    /** Of a part that warms. */
    TEMPERATURE("temperature", Dimensions.TEMPERATURE),
    /** Charge that left a pack since the start. */
    CHARGE_USED("charge used", Dimensions.CHARGE),
    AIR_TEMPERATURE("air temperature", Dimensions.TEMPERATURE),
    AIR_PRESSURE("air pressure", Dimensions.PRESSURE),
    /** Relative, 0 to 1. */
    HUMIDITY("humidity", Dimensions.DIMENSIONLESS),
    WIND("wind", Dimensions.SPEED);

    private final String word;
    private final Dimension dimension;

    Signal(String word, Dimension dimension) {
        this.word = word;
        this.dimension = dimension;
    }

    /** As in the head of a log's column. */
    public String word() {
        return word;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** That which has this word; empty where none has. */
    public static Optional<Signal> of(String word) {
        return Stream.of(values()).filter(signal -> signal.word.equals(word)).findFirst();
    }
}
