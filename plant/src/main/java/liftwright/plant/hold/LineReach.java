package liftwright.plant.hold;

import liftwright.rig.Vec3;

/**
 * Where a slack line can get: a point is within its reach where the ways from anchor and ring to it
 * are together no longer than the line, an ellipsoid about both.
 */
public final class LineReach {

    private LineReach() {}

    /**
     * Least length of a line that reaches the edge of an intake, m; never less than from anchor to
     * ring.
     *
     * @param anchor place, m
     * @param ring place, m
     * @param intake middle of it, m
     * @param radiusM of it
     */
    public static double neededM(Vec3 anchor, Vec3 ring, Vec3 intake, double radiusM) {
        double around = intake.minus(anchor).length() + intake.minus(ring).length() - 2 * radiusM;
        return Math.max(anchor.minus(ring).length(), around);
    }
}
