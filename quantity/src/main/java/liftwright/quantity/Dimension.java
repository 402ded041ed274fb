package liftwright.quantity;

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
 */
public record Dimension(
        int length, int mass, int time, int current, int temperature, int angle, int rootTime) {

    public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0, 0);

    public Dimension {
        time += Math.floorDiv(rootTime, 2);
        rootTime = Math.floorMod(rootTime, 2);
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
                rootTime + other.rootTime);
    }

    public Dimension power(int n) {
        return new Dimension(
                length * n,
                mass * n,
                time * n,
                current * n,
                temperature * n,
                angle * n,
                rootTime * n);
    }

    public Dimension per(Dimension other) {
        return times(other.power(-1));
    }

    public Dimension withoutAngle() {
        return new Dimension(length, mass, time, current, temperature, 0, rootTime);
    }
}
