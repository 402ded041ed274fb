package liftwright.plant.hold;

import liftwright.rig.Vec3;

/**
 * How far a rig reaches, in rig axes.
 *
 * @param bottomM of the soles, or of the lowest part of a rig that nobody wears: its z, m
 * @param topM of the head or what is higher: its z, m
 * @param shouldersM z of the middle between the shoulders, or of the highest part, m
 * @param sideM farthest from the upright through the ring, m
 */
public record Extent(double bottomM, double topM, double shouldersM, double sideM) {

    /** Height of the top above the soles, m. */
    public double heightM() {
        return bottomM - topM;
    }

    /** Height of the shoulders above the soles, m. */
    public double shoulderHeightM() {
        return bottomM - shouldersM;
    }

    /** Height above the soles of a place in rig axes, m. */
    public double aboveSolesM(Vec3 place) {
        return bottomM - place.z();
    }
}
