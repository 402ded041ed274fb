package liftwright.quantity;

/**
 * The dimensions that the product speaks of. Plane angle counts as a base dimension (see {@link
 * Dimension}), so a speed of rotation is {@code rad/s}, a thrust coefficient is {@code N·s²/rad²}
 * and a motor's speed constant is {@code rad/(s·V)}. Torque is force times arm, without an angle,
 * and so has the dimension of energy.
 *
 * <p>Each constant names the coherent SI unit in its comment; that is the unit of {@link
 * Quantity#si()}.
 */
public final class Dimensions {

    /** 1, a ratio. */
    public static final Dimension DIMENSIONLESS = Dimension.NONE;

    /** m. */
    public static final Dimension LENGTH = new Dimension(1, 0, 0, 0, 0, 0);

    /** kg. */
    public static final Dimension MASS = new Dimension(0, 1, 0, 0, 0, 0);

    /** s. */
    public static final Dimension TIME = new Dimension(0, 0, 1, 0, 0, 0);

    /** A. */
    public static final Dimension CURRENT = new Dimension(0, 0, 0, 1, 0, 0);

    /** K. */
    public static final Dimension TEMPERATURE = new Dimension(0, 0, 0, 0, 1, 0);

    /** rad. */
    public static final Dimension ANGLE = new Dimension(0, 0, 0, 0, 0, 1);

    /** m². */
    public static final Dimension AREA = LENGTH.power(2);

    /** m³. */
    public static final Dimension VOLUME = LENGTH.power(3);

    /** m/s. */
    public static final Dimension SPEED = LENGTH.per(TIME);

    /** m/s². */
    public static final Dimension ACCELERATION = SPEED.per(TIME);

    /** m³/s. */
    public static final Dimension VOLUME_FLOW = VOLUME.per(TIME);

    /** kg/s. */
    public static final Dimension MASS_FLOW = MASS.per(TIME);

    /** kg/m³. */
    public static final Dimension DENSITY = MASS.per(VOLUME);

    /** kg/m. */
    public static final Dimension MASS_PER_LENGTH = MASS.per(LENGTH);

    /** N. */
    public static final Dimension FORCE = MASS.times(ACCELERATION);

    /** Pa; also disc loading, N/m². */
    public static final Dimension PRESSURE = FORCE.per(AREA);

    /** Pa·s. */
    public static final Dimension DYNAMIC_VISCOSITY = PRESSURE.times(TIME);

    /** N/m. */
    public static final Dimension STIFFNESS = FORCE.per(LENGTH);

    /** N/(m/s). */
    public static final Dimension DAMPING = FORCE.per(SPEED);

    /** J. */
    public static final Dimension ENERGY = FORCE.times(LENGTH);

    /** N·m; the same dimension as {@link #ENERGY}. */
    public static final Dimension TORQUE = ENERGY;

    /** W. */
    public static final Dimension POWER = ENERGY.per(TIME);

    /** J/kg. */
    public static final Dimension SPECIFIC_ENERGY = ENERGY.per(MASS);

    /** W/kg. */
    public static final Dimension SPECIFIC_POWER = POWER.per(MASS);

    /** N/W: thrust bought by a watt. */
    public static final Dimension THRUST_PER_POWER = FORCE.per(POWER);

    /** kg·m². */
    public static final Dimension INERTIA = MASS.times(AREA);

    /** Hz, 1/s: events per time, without an angle. */
    public static final Dimension FREQUENCY = TIME.power(-1);

    /** rad/s. */
    public static final Dimension ANGULAR_SPEED = ANGLE.per(TIME);

    /** rad/s². */
    public static final Dimension ANGULAR_ACCELERATION = ANGULAR_SPEED.per(TIME);

    /** kg·m²·rad/s. */
    public static final Dimension ANGULAR_MOMENTUM = INERTIA.times(ANGULAR_SPEED);

    /** V. */
    public static final Dimension VOLTAGE = POWER.per(CURRENT);

    /** Ω. */
    public static final Dimension RESISTANCE = VOLTAGE.per(CURRENT);

    /** Ω/m. */
    public static final Dimension RESISTANCE_PER_LENGTH = RESISTANCE.per(LENGTH);

    /** Ω·m. */
    public static final Dimension RESISTIVITY = RESISTANCE.times(LENGTH);

    /** C, A·s. */
    public static final Dimension CHARGE = CURRENT.times(TIME);

    /** F. */
    public static final Dimension CAPACITANCE = CHARGE.per(VOLTAGE);

    /** H. */
    public static final Dimension INDUCTANCE = VOLTAGE.times(TIME).per(CURRENT);

    /** A/m². */
    public static final Dimension CURRENT_DENSITY = CURRENT.per(AREA);

    /** A²·s: what melts a fuse. */
    public static final Dimension MELTING_INTEGRAL = CURRENT.power(2).times(TIME);

    /** rad/(s·V): a motor's K_v. */
    public static final Dimension SPEED_CONSTANT = ANGULAR_SPEED.per(VOLTAGE);

    /** N·m/A: a motor's K_t. */
    public static final Dimension TORQUE_CONSTANT = TORQUE.per(CURRENT);

    /** N·s²/rad²: thrust over speed of rotation squared. */
    public static final Dimension THRUST_COEFFICIENT = FORCE.per(ANGULAR_SPEED.power(2));

    /** N·m·s²/rad²: torque over speed of rotation squared. */
    public static final Dimension TORQUE_COEFFICIENT = TORQUE.per(ANGULAR_SPEED.power(2));

    /** J/K. */
    public static final Dimension HEAT_CAPACITY = ENERGY.per(TEMPERATURE);

    /** J/(kg·K). */
    public static final Dimension SPECIFIC_HEAT = HEAT_CAPACITY.per(MASS);

    /** W/K. */
    public static final Dimension THERMAL_CONDUCTANCE = POWER.per(TEMPERATURE);

    /** K/W. */
    public static final Dimension THERMAL_RESISTANCE = TEMPERATURE.per(POWER);

    /** W/(m·K). */
    public static final Dimension THERMAL_CONDUCTIVITY = THERMAL_CONDUCTANCE.per(LENGTH);

    /** W/(m²·K). */
    public static final Dimension HEAT_TRANSFER_COEFFICIENT = THERMAL_CONDUCTANCE.per(AREA);

    /** W/m². */
    public static final Dimension HEAT_FLUX = POWER.per(AREA);

    /** 1/K. */
    public static final Dimension TEMPERATURE_COEFFICIENT = TEMPERATURE.power(-1);

    /** K/m: lapse. */
    public static final Dimension TEMPERATURE_GRADIENT = TEMPERATURE.per(LENGTH);

    /** dB: a level. */
    public static final Dimension SOUND_LEVEL = new Dimension(0, 0, 0, 0, 0, 0, 0, 1);

    /** rad/s/√Hz: a rate gyro's noise density. */
    public static final Dimension ANGULAR_SPEED_NOISE =
            ANGULAR_SPEED.times(new Dimension(0, 0, 0, 0, 0, 0, 1));

    /** m/s²/√Hz: an accelerometer's noise density. */
    public static final Dimension ACCELERATION_NOISE =
            ACCELERATION.times(new Dimension(0, 0, 0, 0, 0, 0, 1));

    private Dimensions() {}
}
