package liftwright.rig.place;

import liftwright.rig.Mount;

/**
 * What words of place mean on what carries a part.
 *
 * @param outboard −1 where outboard is to the left, +1 to the right, 0 where the word means nothing
 * @param onLimb whether the carrier is a limb or on one
 * @param alongIsLength whether “along” says a length along the limb
 */
record Carriage(int outboard, boolean onLimb, boolean alongIsLength) {

    /** Nearer to the middle plane than this counts as in it, m. */
    private static final double IN_THE_MIDDLE_M = 1e-9;

    /** For a part on {@code mount}. */
    static Carriage on(Mount mount) {
        int limb = limb(mount.on());
        double y = mount.at().y();
        int own = Math.abs(y) < IN_THE_MIDDLE_M ? 0 : y < 0 ? -1 : 1;
        return new Carriage(limb != 0 ? limb : own, limb != 0, limb != 0);
    }

    /** For a mount itself; its “along” is a share of the limb. */
    static Carriage of(Mount.Carrier carrier) {
        int limb = limb(carrier);
        return new Carriage(limb, limb != 0, false);
    }

    private static int limb(Mount.Carrier carrier) {
        return switch (carrier) {
            case FRAME, TRUNK -> 0;
            case LEFT_UPPER_ARM, LEFT_FOREARM -> -1;
            case RIGHT_UPPER_ARM, RIGHT_FOREARM -> 1;
        };
    }
}
