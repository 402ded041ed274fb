package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * A line from an anchor overhead to the rig or its wearer.
 *
 * @param anchorHeight above the ground, m
 * @param anchorStrength pull that the anchor holds, N; empty: nothing is assumed
 * @param length of the line, m
 * @param stiffness of the line, N/m
 * @param damping of the line, N·s/m
 * @param lineStrength pull that the line holds, N
 * @param gantry that carries the anchor, where nothing built does
 * @param sideReach how far the rig may swing sideways before it meets something, m
 * @param harnessPoint height of the ring above the soles, m; where it is empty, the shoulders, or
 *     the top of a rig that nobody wears
 * @param downLines lines to the ground that stop a climb
 * @param gettingDown how a hanging wearer gets down, in words
 * @param harnessLimit pull that the harness is made for, N
 */
public record Tether(
        RigPath declaredAt,
        Quantity anchorHeight,
        Optional<Quantity> anchorStrength,
        Quantity length,
        Quantity stiffness,
        Quantity damping,
        Optional<Quantity> lineStrength,
        Optional<Gantry> gantry,
        Optional<Quantity> sideReach,
        Optional<Quantity> harnessPoint,
        Optional<DownLines> downLines,
        Optional<String> gettingDown,
        Optional<Quantity> harnessLimit) {

    /**
     * A frame on the ground that carries the anchor.
     *
     * @param mass kg
     * @param feetApart sideways, m
     * @param feetDeep fore and aft, m
     * @param friction coefficient of its feet on the ground, 1
     */
    public record Gantry(
            RigPath declaredAt,
            Quantity mass,
            Quantity feetApart,
            Quantity feetDeep,
            Quantity friction) {}

    /**
     * Lines from the ring to the ground, evenly around the rig: straight when the ring is √(length²
     * − spread²) above the ground.
     *
     * @param count ≥ 1
     * @param length of each, m
     * @param spread how far from below the rig they are fastened, m
     * @param stiffness of each, N/m
     * @param strength pull that each holds with its anchor, N
     */
    public record DownLines(
            int count,
            Quantity length,
            Quantity spread,
            Quantity stiffness,
            Optional<Quantity> strength) {}
}
