package liftwright.flight.run;

import liftwright.numerics.CounterStream;
import liftwright.numerics.Spread;

/**
 * What is drawn in a flight besides the declared numbers of the rig: air, sensors, and what the
 * loops were not made for. Flight 0 has none of it. Each has a random stream of its own name, so
 * that whoever ranks what drove the misses finds what was drawn from seed and number alone.
 *
 * <p>Half-widths are common practice, except inertia and lag, which are what the loops are asked to
 * stand (± 30 %).
 */
public enum Deviate {
    INERTIA_ROLL("inertia in roll", 0.30, true),
    INERTIA_PITCH("inertia in pitch", 0.30, true),
    INERTIA_YAW("inertia in yaw", 0.30, true),
    SPOOL_LAG("lag of the fans", 0.30, true),
    CONTROL_DELAY("delay of the control", 0.30, true),
    WIND_SPEED("mean wind", 0.20, false),
    WIND_FROM("direction of the wind", Math.toRadians(15), false),
    GUST_SIZE("size of the gust", 0.30, false),
    HARNESS_FREQUENCY("frequency of the harness", 0.45, true),
    HARNESS_DAMPING("damping of the harness", 0.50, true),
    LEGS_FREQUENCY("frequency of swinging legs", 0.18, true),
    GYRO_BIAS_ROLL("bias of the roll rate", 2, false),
    GYRO_BIAS_PITCH("bias of the pitch rate", 2, false),
    GYRO_BIAS_YAW("bias of the yaw rate", 2, false),
    ACCELERATION_BIAS_FORWARD("bias of the acceleration forward", 2, false),
    ACCELERATION_BIAS_RIGHT("bias of the acceleration right", 2, false),
    ACCELERATION_BIAS_DOWN("bias of the acceleration down", 2, false),
    HEIGHT_BIAS("bias of the height", 2, false);

    private final String label;
    private final double halfWidth;
    private final boolean bound;
    private final long channel;

    Deviate(String label, double halfWidth, boolean bound) {
        this.label = label;
        this.halfWidth = halfWidth;
        this.bound = bound;
        channel = CounterStream.channel("flight: " + label);
    }

    /** In words. */
    public String label() {
        return label;
    }

    /** ± (k = 2, or a rectangle): a share, rad for a direction, standard deviations for a bias. */
    public double halfWidth() {
        return halfWidth;
    }

    /** Its half-width in words. */
    public String words() {
        String amount =
                switch (this) {
                    case WIND_FROM -> Math.round(Math.toDegrees(halfWidth)) + "°";
                    case GYRO_BIAS_ROLL,
                            GYRO_BIAS_PITCH,
                            GYRO_BIAS_YAW,
                            ACCELERATION_BIAS_FORWARD,
                            ACCELERATION_BIAS_RIGHT,
                            ACCELERATION_BIAS_DOWN,
                            HEIGHT_BIAS ->
                            Math.round(halfWidth) + " standard deviations of the sensor";
                    default -> Math.round(100 * halfWidth) + " %";
                };
        return "± " + amount + (bound ? ", anything in between alike" : "");
    }

    /** Whether the half-width is a rectangle's. */
    public boolean bound() {
        return bound;
    }

    /**
     * Deviation in a flight: a share to add to 1, an angle in rad, or for a bias how many of the
     * sensor's declared standard deviations.
     *
     * @param number of the flight, ≥ 0; nought in flight 0
     */
    public double of(long seed, int number) {
        return number == 0
                ? 0
                : Spread.sample(
                        halfWidth, halfWidth, bound, CounterStream.uniform(seed, channel, number));
    }
}
