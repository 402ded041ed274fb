package liftwright.flight.loops;

import java.util.List;
import liftwright.physics.Gravity;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;

/**
 * Numbers of a rig at hover from which loops are made.
 *
 * @param massKg of the whole
 * @param inertia about the centre of mass, body axes
 * @param fans every fan, as in the rig's list
 * @param hoverV voltage at each fan's controller at hover, V
 * @param lags of sensors, computer and controllers
 * @param flexible what is not rigid
 * @param yawHeld whether turning about the upright axis must be held
 */
public record Craft(
        double massKg,
        Inertia inertia,
        List<Lifter> fans,
        List<Double> hoverV,
        Lags lags,
        Flexible flexible,
        boolean yawHeld) {

    public Craft {
        fans = List.copyOf(fans);
        hoverV = List.copyOf(hoverV);
    }

    /** Weight under standard gravity, N. */
    public double weightN() {
        return massKg * Gravity.STANDARD_MPS2;
    }

    /** Force of all fans in a hover as installed, body axes, without gravity, N. */
    public Vec3 hoverForceN() {
        Vec3 sum = Vec3.ZERO;
        for (Lifter fan : fans) {
            sum = sum.plus(fan.force().times(fan.hoverN()));
        }
        return sum;
    }

    /** Acceleration that all fans give in a hover, body axes, without gravity, m/s². */
    Vec3 hoverMps2() {
        Vec3 sum = Vec3.ZERO;
        for (Lifter fan : fans) {
            sum = sum.plus(fan.axis().times(fan.hoverN() / massKg));
        }
        return sum;
    }

    /** Inertia about a turning axis, kg·m². */
    double inertiaKgm2(Axis axis) {
        return switch (axis) {
            case ROLL -> inertia.xx();
            case PITCH -> inertia.yy();
            case YAW -> inertia.zz();
            case CLIMB, ACROSS -> throw new IllegalArgumentException("nothing turns about " + axis);
        };
    }

    /** The same with other lags. */
    Craft with(Lags other) {
        return new Craft(massKg, inertia, fans, hoverV, other, flexible, yawHeld);
    }

    /** The same with all lags and delays longer or shorter by a factor. */
    Craft with(double factor) {
        return with(lags.times(factor))
                .with(fans.stream().map(fan -> fan.spooled(factor)).toList());
    }

    /** The same with another wearer. */
    Craft with(Flexible other) {
        return new Craft(massKg, inertia, fans, hoverV, lags, other, yawHeld);
    }

    /** The same with other fans. */
    Craft with(List<Lifter> other) {
        return new Craft(massKg, inertia, other, hoverV, lags, flexible, yawHeld);
    }
}
