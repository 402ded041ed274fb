package liftwright.quantity;

import org.jspecify.annotations.Nullable;

/**
 * Exponents of the base dimensions of a quantity. Plane angle is kept as a base dimension of its
 * own so that a speed in rpm is not mistaken for a frequency and a motor's speed constant is not
 * mistaken for something per volt-second; where SI treats the radian as one, {@link
 * #withoutAngle()} says so explicitly.
 *
 * @param length exponent of metre
 * @param mass exponent of kilogram
 * @param time exponent of second
 * @param current exponent of ampere
 * @param temperature exponent of kelvin
 * @param angle exponent of radian
 * @param rootTime exponent of the square root of the second, 0 or 1 (pairs are carried over to
 *     {@code time}): a noise density is per √Hz
 * @param level exponent of the decibel: a level is a logarithm, so that it is mistaken for no plain
 *     number
 */
public record Dimension(
        int length,
        int mass,
        int time,
        int current,
        int temperature,
        int angle,
        int rootTime,
        int level) {

    public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0, 0);

    public Dimension {
        time += Math.floorDiv(rootTime, 2);
        rootTime = Math.floorMod(rootTime, 2);
    }

    /** What has no level. */
    public Dimension(
            int length, int mass, int time, int current, int temperature, int angle, int rootTime) {
        this(length, mass, time, current, temperature, angle, rootTime, 0);
    }

    public Dimension(int length, int mass, int time, int current, int temperature, int angle) {
        this(length, mass, time, current, temperature, angle, 0);
    }

    public Dimension times(Dimension other) {
        return new Dimension(
                length + other.length,
                mass + other.mass,
                time + other.time,
                current + other.current,
                temperature + other.temperature,
                angle + other.angle,
                rootTime + other.rootTime,
                level + other.level);
    }

    public Dimension power(int n) {
        return new Dimension(
                length * n,
                mass * n,
                time * n,
                current * n,
                temperature * n,
                angle * n,
                rootTime * n,
                level * n);
    }

    public Dimension per(Dimension other) {
        return times(other.power(-1));
    }

    /**
     * Written out: what the language makes for a record is linked at its first call, and that takes
     * a cold start longer than reading a rig file.
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Dimension d
                        && length == d.length
                        && mass == d.mass
                        && time == d.time
                        && current == d.current
                        && temperature == d.temperature
                        && angle == d.angle
                        && rootTime == d.rootTime
                        && level == d.level);
    }

    @Override
    public int hashCode() {
        int hash = 31 * (31 * (31 * length + mass) + time) + current;
        return 31 * (31 * (31 * (31 * hash + temperature) + angle) + rootTime) + level;
    }

    public Dimension withoutAngle() {
        return new Dimension(length, mass, time, current, temperature, 0, rootTime, level);
    }
}
