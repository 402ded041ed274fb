package liftwright.plant.move;

import liftwright.rig.Vec3;

/**
 * Where a part shall be.
 *
 * @param part id of a fan, a pack or another part, or name of a mount; {@code mounts/NAME} means
 *     the mount where both are called the same
 * @param to where its middle shall be in rig axes, m: the rig at lift-off without twist
 * @param snap whether it may come to stand in line with others and on round values
 * @param twin whether its mirror image goes along
 * @param whole whether all of its group move by the same
 */
public record Wish(String part, Vec3 to, boolean snap, boolean twin, boolean whole) {}
