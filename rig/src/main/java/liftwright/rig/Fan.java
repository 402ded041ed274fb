package liftwright.rig;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/**
 * One fan in its place.
 *
 * @param id lasting name
 * @param declaredAt the group it comes from
 * @param type its kind
 * @param mount what carries it
 * @param at place in the mount's axes, m
 * @param blows direction of its jet before any lean, unit vector in the mount's axes
 * @param leans declared cants of the jet: direction ∝ blows + Σ tan(angle) · towards
 * @param seat how its seat turns the jet besides, and the doubt of that; added as the leans are
 * @param spin sense of rotation seen along the thrust
 * @param intake what stands before it; empty when nothing does
 * @param installation thrust when installed over thrust on the stand, 1
 * @param serial serial number; empty when none is declared
 */
public record Fan(
        PartId id,
        RigPath declaredAt,
        FanType type,
        Mount mount,
        Vec3 at,
        Vec3 blows,
        List<Lean> leans,
        List<Lean> seat,
        Spin spin,
        Optional<Intake> intake,
        Declared<Quantity> installation,
        Optional<String> serial) {

    public Fan {
        leans = List.copyOf(leans);
        seat = List.copyOf(seat);
    }

    /** A fan whose seat is true. */
    public Fan(
            PartId id,
            RigPath declaredAt,
            FanType type,
            Mount mount,
            Vec3 at,
            Vec3 blows,
            List<Lean> leans,
            Spin spin,
            Optional<Intake> intake,
            Declared<Quantity> installation,
            Optional<String> serial) {
        this(
                id,
                declaredAt,
                type,
                mount,
                at,
                blows,
                leans,
                List.of(),
                spin,
                intake,
                installation,
                serial);
    }

    /** The same on a bench: nothing stands before it, and nothing about it takes of its thrust. */
    public Fan bare() {
        return new Fan(
                id,
                declaredAt,
                type,
                mount,
                at,
                blows,
                leans,
                seat,
                spin,
                Optional.empty(),
                new Declared<>(installation.at(), Quantity.exact(1, Dimension.NONE)),
                serial);
    }

    /** Right-hand: turns as a right-hand screw that advances along the thrust. */
    public enum Spin {
        LEFT_HAND,
        RIGHT_HAND
    }

    /**
     * @param declaredAt where the angle is written
     * @param angle rad
     * @param towards unit vector in the mount's axes, at right angles to {@code blows}
     */
    public record Lean(RigPath declaredAt, Quantity angle, Vec3 towards) {}
}
