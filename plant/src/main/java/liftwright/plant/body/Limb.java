package liftwright.plant.body;

import liftwright.rig.Vec3;

/**
 * One segment of the posed wearer as a line, to be drawn.
 *
 * @param name of the segment
 * @param from its proximal end in rig axes, m
 * @param to its distal end
 */
public record Limb(String name, Vec3 from, Vec3 to) {}
