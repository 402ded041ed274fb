package liftwright.trials.predict;

import liftwright.quantity.Measure;
import liftwright.trials.Abort.Side;
import liftwright.trials.Channel;

/**
 * Everything that a card can have read, with the error of its usual instrument and what the model
 * leaves out. Where a card has a better instrument, its reading falls well inside the band.
 *
 * <p>What the model leaves out is a share of how far a reading has gone from its start: of the rise
 * of a temperature, of the sag of a voltage. Where docs/validation.md has residuals, it is twice
 * their root mean square; else it is from memory.
 */
public enum Gauge {
    THRUST("card-thrust", Measure.THRUST, Side.ABOVE, "load cells under what holds the fans"),
    MOUNT_THRUST("card-mount-thrust", Measure.THRUST, Side.ABOVE, "load cell under the mount"),
    SCALE("card-scale", Measure.MASS, Side.BELOW, "the scale"),
    TETHER("card-tether-load", Measure.THRUST, Side.BELOW, "load cell in the tether"),
    PACK_CURRENT("card-pack-current", Measure.CURRENT, Side.ABOVE, "current sensor at each pack"),
    CELL_VOLTAGE("card-cell-voltage", Measure.VOLTAGE, Side.BELOW, "cell monitor on each pack"),
    SPEED("card-fan-speed", Measure.ROTATION, Side.ABOVE, "telemetry of the controllers"),
    WINDING_CURRENT(
            "card-winding-current",
            Measure.CURRENT,
            Side.ABOVE,
            "phase current in the telemetry of the controllers"),
    WIRE("card-wire", Measure.TEMPERATURE, Side.ABOVE, "sensor at the copper"),
    JOINT("card-joint", Measure.TEMPERATURE, Side.ABOVE, "sensor on the joint"),
    CONTROLLER("card-controller", Measure.TEMPERATURE, Side.ABOVE, "telemetry of the controllers"),
    WINDING("card-winding", Measure.TEMPERATURE, Side.ABOVE, "sensor in the winding"),
    MAGNETS("card-magnets", Measure.TEMPERATURE, Side.ABOVE, "sensor on the motor case"),
    CELLS("card-cells", Measure.TEMPERATURE, Side.ABOVE, "sensor between the cells"),
    CHARGE("card-charge-left", Measure.PERCENT, Side.BELOW, "charge counter of each pack"),
    ENERGY("card-energy", Measure.ENERGY, Side.ABOVE, "energy counters, summed"),
    HEIGHT("card-height", Measure.LENGTH, Side.ABOVE, "marked pole beside the rig, by eye"),
    CLOCK("card-time", Measure.TIME, Side.ABOVE, "clock of the one who calls the steps");

    private final String field;
    private final Measure measure;
    private final Side side;
    private final String words;

    Gauge(String field, Measure measure, Side side, String words) {
        this.field = field;
        this.measure = measure;
        this.side = side;
        this.words = words;
    }

    Side side() {
        return side;
    }

    /** Whether it is a temperature. */
    boolean isHeat() {
        return measure == Measure.TEMPERATURE;
    }

    /** +1 where more is worse. */
    int sign() {
        return side == Side.ABOVE ? 1 : -1;
    }

    /** 95 % of the errors of its usual instrument are smaller, SI. */
    private double errorSi() {
        return switch (this) {
            case THRUST, MOUNT_THRUST, TETHER -> 1;
            case SCALE -> 0.1;
            case PACK_CURRENT -> 0.5;
            case CELL_VOLTAGE -> 0.01;
            case SPEED -> 2 * Math.PI / 60 * 50;
            case WINDING_CURRENT -> 1;
            case WIRE, MAGNETS -> 3;
            case JOINT, CELLS -> 2;
            case CONTROLLER, WINDING -> 4;
            case CHARGE -> 0.02;
            case ENERGY -> 360;
            case HEIGHT -> 0.05;
            case CLOCK -> 0.5;
        };
    }

    /** The same as a share of the reading, in quadrature. */
    private double errorShare() {
        return switch (this) {
            case THRUST, MOUNT_THRUST, TETHER -> 0.01;
            case SCALE, SPEED -> 0.005;
            case PACK_CURRENT -> 0.02;
            case WINDING_CURRENT -> 0.05;
            case ENERGY -> 0.02;
            case CELL_VOLTAGE, WIRE, JOINT, CONTROLLER, WINDING, MAGNETS, CELLS, CHARGE -> 0;
            case HEIGHT, CLOCK -> 0;
        };
    }

    private String errorOrigin() {
        return this == CLOCK || this == HEIGHT ? "from memory" : "common practice";
    }

    /** Share of the way from its start that the model leaves out, k = 2. */
    public double missing() {
        return switch (this) {
            case THRUST, MOUNT_THRUST, SCALE, TETHER -> 0.036;
            case PACK_CURRENT -> 0.05;
            case WINDING_CURRENT -> 0.04;
            case CELL_VOLTAGE -> 0.10;
            case SPEED -> 0.02;
            case WIRE, CONTROLLER, WINDING, MAGNETS -> 0.25;
            case JOINT -> 0.45;
            case CELLS -> 0.12;
            case CHARGE, ENERGY -> 0.05;
            case HEIGHT, CLOCK -> 0;
        };
    }

    /**
     * The same where it has not gone anywhere, SI: rest voltages are not quite those of the curve,
     * and the air at a part is not quite that of the site; from memory.
     */
    public double missingSi() {
        return this == CELL_VOLTAGE ? 0.012 : isHeat() ? 1.5 : 0;
    }

    /** Where that is from. */
    public String missingOrigin() {
        return switch (this) {
            case THRUST, MOUNT_THRUST, SCALE, TETHER ->
                    "docs/validation.md, thrust at speed: 1.8 % rms";
            case PACK_CURRENT, WINDING_CURRENT, SPEED -> "from memory";
            case CELL_VOLTAGE ->
                    "docs/validation.md, cells: 8 to 44 mV rms in sags of some 0.5 V; rest voltage from memory";
            case WIRE -> "docs/validation.md, cable in open air: within 25 %";
            case JOINT -> "docs/validation.md, cable: sensors of one bundle differ by 45 %";
            case CONTROLLER, WINDING, MAGNETS -> "from memory, as for the cable";
            case CELLS -> "docs/validation.md, cell surfaces: 0.6 to 2 K rms of 21 to 42 K";
            case CHARGE, ENERGY -> "docs/validation.md, cells: end and energy up to 5 % off";
            case HEIGHT, CLOCK -> "nothing";
        };
    }

    /** Finest step that is read, SI; values to stop at are rounded to it. */
    double stepSi() {
        return switch (this) {
            case THRUST, MOUNT_THRUST, TETHER -> 1;
            case SCALE -> 0.1;
            case PACK_CURRENT, WINDING_CURRENT -> 1;
            case CELL_VOLTAGE -> 0.01;
            case SPEED -> 2 * Math.PI / 60 * 100;
            case WIRE, JOINT, CONTROLLER, WINDING, MAGNETS, CELLS -> 1;
            case CHARGE -> 0.01;
            case ENERGY -> 360;
            case HEIGHT -> 0.05;
            case CLOCK -> 1;
        };
    }

    /** Where its steps begin: whole degrees Celsius are not whole kelvin. */
    private double zeroSi() {
        return isHeat() ? 273.15 : 0;
    }

    /** Rounded to its step away from the limit. */
    double shown(double si) {
        double steps = (si - zeroSi()) / stepSi();
        // A value that is whole but for the last bit stays what it is.
        double whole = sign() > 0 ? Math.floor(steps + 1e-9) : Math.ceil(steps - 1e-9);
        return zeroSi() + whole * stepSi();
    }

    /** A reading within what its instrument can show: a pack has no more than all its charge. */
    double within(double si) {
        return this == CHARGE ? Math.min(1, si) : isHeat() ? si : Math.max(0, si);
    }

    /** 95 % of the errors are smaller at a reading, SI. */
    double errorSi(double readingSi) {
        return Math.hypot(errorSi(), errorShare() * readingSi);
    }

    /** What is read of a part, with its usual instrument. */
    public Channel channel(String part) {
        return new Channel(
                field,
                part,
                measure,
                new Channel.Instrument(words, errorSi(), errorShare(), errorOrigin()));
    }
}
