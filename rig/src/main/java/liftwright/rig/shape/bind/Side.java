package liftwright.rig.shape.bind;

import liftwright.rig.Mount;

/** Which side of the body a thing is on, as the factor that turns "outboard" into "right". */
final class Side {

    /** Nearer to the middle plane than this counts as in it, m. */
    private static final double IN_THE_MIDDLE_M = 1e-9;

    static final int NONE = 0;

    private Side() {}

    /** −1 left, +1 right, 0 in the middle. */
    static int of(double y) {
        return Math.abs(y) < IN_THE_MIDDLE_M ? NONE : y < 0 ? -1 : 1;
    }

    static int of(Mount.Carrier carrier) {
        return switch (carrier) {
            case FRAME, TRUNK -> NONE;
            case LEFT_UPPER_ARM, LEFT_FOREARM -> -1;
            case RIGHT_UPPER_ARM, RIGHT_FOREARM -> 1;
        };
    }

    /** That of the limb, else that of the mount's own place. */
    static int of(Mount mount) {
        int limb = of(mount.on());
        return limb != NONE ? limb : of(mount.at().y());
    }

    /** Of a thing {@code y} right of its mount's origin. */
    static int of(Mount mount, double y) {
        int limb = of(mount.on());
        return limb != NONE ? limb : of(mount.at().y() + y);
    }
}
