package liftwright.plant.body;

import liftwright.rig.Vec3;

/**
 * The mass of one part.
 *
 * @param kind what sort of part
 * @param name id of the part; of a segment for the wearer
 * @param massKg kg
 * @param at its centre in rig axes, m
 * @param own inertia about its own centre
 */
public record MassItem(Kind kind, String name, double massKg, Vec3 at, Inertia own) {

    public enum Kind {
        WEARER,
        /** Rotor, duct, motor and controller. */
        FAN,
        PACK,
        OTHER_PART
    }
}
