package liftwright.rig;

/**
 * A point (m) or direction (1) in inside axes: x forward, y right, z down (ISO 1151-1). Files and
 * screens use words.
 *
 * @param x forward
 * @param y right
 * @param z down
 */
public record Vec3(double x, double y, double z) {

    public static final Vec3 ZERO = new Vec3(0, 0, 0);

    public Vec3 plus(Vec3 other) {
        return new Vec3(x + other.x, y + other.y, z + other.z);
    }

    public Vec3 minus(Vec3 other) {
        return new Vec3(x - other.x, y - other.y, z - other.z);
    }

    /** Vector product, this × other. */
    public Vec3 cross(Vec3 other) {
        return new Vec3(
                y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public Vec3 times(double factor) {
        return new Vec3(x * factor, y * factor, z * factor);
    }

    public double length() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** This point seen in a mirror through the plane y = 0. */
    public Vec3 mirrored() {
        return new Vec3(x, -y, z);
    }
}
