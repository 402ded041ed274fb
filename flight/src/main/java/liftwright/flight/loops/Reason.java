package liftwright.flight.loops;

/** Why loops are refused. */
public enum Reason {
    /** Full throttle does not lift the weight, or leaves too little above it. */
    HOVER_THROTTLE_TOO_HIGH,
    /** No sharing out of thrust holds the weight level. */
    NO_TRIM,
    ROLL_AUTHORITY_SHORT,
    PITCH_AUTHORITY_SHORT,
    NO_YAW_AUTHORITY,
    SPOOL_LAG_TOO_LONG,
    CONTROLLER_DELAY_TOO_LONG,
    COMPUTER_DELAY_TOO_LONG,
    SENSOR_DELAY_TOO_LONG,
    FILTER_TOO_LOW,
    RATE_TOO_LOW,
    HARNESS_MODE_TOO_NEAR,
    LEGS_TOO_NEAR,
    /** One per revolution of the fans shows in the gyro as a slow turning. */
    GYRO_ALIASING,
    VELOCITY_ESTIMATE_TOO_LATE,
    DECLARED_CROSSOVER_TOO_HIGH,
    DECLARED_MARGIN_NOT_REACHED,
    DECLARED_WITHOUT_INTEGRAL,
    /** Nothing tells the computer how the rig leans. */
    NO_ESTIMATE,
    /** Shared throttle: no computer commands each fan. */
    NO_FLIGHT_COMPUTER
}
