package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * Anything else that has mass.
 *
 * @param id lasting name
 * @param declaredAt where it is written
 * @param mass kg
 * @param mount what carries it
 * @param at place in the mount's axes, m
 * @param box edges forward, right, up, m; empty for a point
 */
public record OtherPart(
        PartId id, RigPath declaredAt, Quantity mass, Mount mount, Vec3 at, Optional<Vec3> box) {}
