package liftwright.plant.body;

import liftwright.rig.Vec3;

/**
 * Axes of something in place, in rig axes.
 *
 * @param origin m
 * @param forward unit vector
 * @param right unit vector
 * @param down unit vector
 */
public record Axes(Vec3 origin, Vec3 forward, Vec3 right, Vec3 down) {

    /** A point given in these axes, in rig axes, m. */
    public Vec3 place(Vec3 own) {
        return origin.plus(forward.times(own.x()))
                .plus(right.times(own.y()))
                .plus(down.times(own.z()));
    }

    /** A point given in rig axes, in these axes, m. */
    public Vec3 own(Vec3 place) {
        Vec3 from = place.minus(origin);
        return new Vec3(dot(from, forward), dot(from, right), dot(from, down));
    }

    /** These axes seen in a mirror through the middle plane of the body. */
    public Axes mirrored() {
        return new Axes(
                origin.mirrored(), forward.mirrored(), right.mirrored().times(-1), down.mirrored());
    }

    /** Whether both look the same way. */
    public boolean isParallelTo(Axes other) {
        return near(forward, other.forward) && near(right, other.right);
    }

    private static boolean near(Vec3 one, Vec3 other) {
        return one.minus(other).length() < 1e-9;
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }
}
