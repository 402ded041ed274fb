package liftwright.rig;

import liftwright.quantity.Quantity;

/**
 * A slender beam between a carrier and a mount: clamped at its root, the mount at its tip.
 *
 * @param runs from root to tip, unit vector in the axes of what the mount is on
 * @param length m
 * @param section what resists bending and twisting
 */
public record Beam(Vec3 runs, Quantity length, Section section) {

    /** Cross-section, the same all along. */
    public sealed interface Section {}

    /**
     * A round tube.
     *
     * @param outside diameter, m
     * @param wall its thickness, m; at most half of the diameter
     * @param modulus of elasticity (Young's), Pa
     * @param shearModulus Pa
     */
    public record Tube(Quantity outside, Quantity wall, Quantity modulus, Quantity shearModulus)
            implements Section {}

    /**
     * Any section, by what was measured or worked out elsewhere.
     *
     * @param bending E I, N·m²
     * @param torsion G J, N·m²
     */
    public record Rigidities(Quantity bending, Quantity torsion) implements Section {}
}
