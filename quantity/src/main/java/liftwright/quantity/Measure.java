package liftwright.quantity;

/**
 * What a shown number measures: decides unit, usual size and rounding in either system of units.
 */
public enum Measure {
    THRUST,
    MASS,
    LENGTH,
    SMALL_LENGTH,
    AREA,
    TIME,
    ROTATION,
    SPEED,
    CURRENT,
    VOLTAGE,
    POWER,
    ENERGY,
    CHARGE,
    RESISTANCE,
    CAPACITANCE,
    TEMPERATURE,
    TEMPERATURE_DIFFERENCE,
    ANGLE,
    MOMENT,
    ANGULAR_ACCELERATION,
    INERTIA,
    DENSITY,
    PRESSURE,
    STIFFNESS,
    /** Of what flies or strikes, in joule. */
    IMPACT_ENERGY,
    /** A-weighted, dB. */
    SOUND_LEVEL,
    /** Of a vibration, in hertz: whole swings a second. */
    FREQUENCY,
    /** Events per running time. */
    FAILURE_RATE,
    /** A plain number: thrust over weight, a loss coefficient. */
    RATIO,
    /** A share shown in percent. */
    PERCENT,
    COUNT
}
