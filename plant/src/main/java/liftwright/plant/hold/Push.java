package liftwright.plant.hold;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.Vec3;

/**
 * What one fan at full throttle, or a weight, does to a stand, in axes of the ground: x to the
 * front of the stand, y to its right, z down, origin in the middle between its feet.
 *
 * @param force N
 * @param moment about the origin, N·m
 */
public record Push(Vec3 force, Vec3 moment) {

    /** Nothing. */
    public static final Push NONE = new Push(Vec3.ZERO, Vec3.ZERO);

    /** Lengths below which two directions are one. */
    private static final double ONE = 1e-12;

    /**
     * The fans on a stand.
     *
     * @param fans those it holds
     * @param up where the direction that is up on the rig as worn points on the stand, unit vector
     * @param heightM of their middle above the ground; the middle is above that of the feet
     */
    public static List<Push> onStand(List<FanAlone> fans, Vec3 up, double heightM) {
        Vec3 middle = middle(fans);
        List<Push> pushes = new ArrayList<>();
        for (FanAlone fan : fans) {
            Vec3 at = turned(fan.at().minus(middle), up).plus(new Vec3(0, 0, -heightM));
            Vec3 direction = turned(fan.direction(), up);
            Vec3 force = direction.times(fan.thrustN());
            pushes.add(new Push(force, at.cross(force).plus(direction.times(fan.swirlNm()))));
        }
        return pushes;
    }

    /** Middle of the fans, each counted as it pushes; the plain middle where none does. */
    public static Vec3 middle(List<FanAlone> fans) {
        Vec3 sum = Vec3.ZERO;
        Vec3 plain = Vec3.ZERO;
        double weight = 0;
        for (FanAlone fan : fans) {
            sum = sum.plus(fan.at().times(fan.thrustN()));
            plain = plain.plus(fan.at());
            weight += fan.thrustN();
        }
        if (fans.isEmpty()) {
            return Vec3.ZERO;
        }
        return weight > 0 ? sum.times(1 / weight) : plain.times(1.0 / fans.size());
    }

    /**
     * A direction of the rig, turned the shortest way that takes its "up" to {@code up}; where that
     * is down, over the front.
     */
    public static Vec3 turned(Vec3 v, Vec3 up) {
        // Rodrigues, about (0, 0, −1) × up, with 1/(1 + cos) in place of (1 − cos)/sin².
        double cos = -up.z();
        if (cos < -1 + ONE) {
            return new Vec3(-v.x(), v.y(), -v.z());
        }
        Vec3 axis = new Vec3(0, 0, -1).cross(up);
        double along = axis.x() * v.x() + axis.y() * v.y() + axis.z() * v.z();
        return v.times(cos).plus(axis.cross(v)).plus(axis.times(along / (1 + cos)));
    }

    /** A weight at a place. */
    public static Push weight(double newton, Vec3 at) {
        Vec3 force = new Vec3(0, 0, newton);
        return new Push(force, at.cross(force));
    }

    public Push plus(Push other) {
        return new Push(force.plus(other.force), moment.plus(other.moment));
    }

    /** Upwards, N. */
    public double upN() {
        return -force.z();
    }
}
