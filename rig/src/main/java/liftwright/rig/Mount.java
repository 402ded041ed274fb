package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * A place that carries parts. Its axes are the body's axes when the person stands with hanging
 * arms; on a limb they turn with the limb, so that "down" runs along it towards the hand.
 *
 * @param name as declared
 * @param on what it is fixed to
 * @param at offset of its origin from the origin of what it is on, m, in that one's axes; on a limb
 *     see {@code along}
 * @param along on a limb: share of the segment's length from its upper joint, 0 to 1; elsewhere 0
 * @param turnForward mount error or set angle: tilt that leans the mount's "down" forward, rad
 * @param turnRight the same towards the right, rad
 * @param beam what holds it out from its carrier and gives under thrust; empty where nothing does
 */
public record Mount(
        String name,
        Carrier on,
        Vec3 at,
        Quantity along,
        Quantity turnForward,
        Quantity turnRight,
        Optional<Beam> beam) {

    /** A mount that does not give. */
    public Mount(
            String name,
            Carrier on,
            Vec3 at,
            Quantity along,
            Quantity turnForward,
            Quantity turnRight) {
        this(name, on, at, along, turnForward, turnRight, Optional.empty());
    }

    public enum Carrier {
        FRAME,
        TRUNK,
        LEFT_UPPER_ARM,
        RIGHT_UPPER_ARM,
        LEFT_FOREARM,
        RIGHT_FOREARM;

        /** The same place on the other side of the body. */
        public Carrier twin() {
            return switch (this) {
                case FRAME -> FRAME;
                case TRUNK -> TRUNK;
                case LEFT_UPPER_ARM -> RIGHT_UPPER_ARM;
                case RIGHT_UPPER_ARM -> LEFT_UPPER_ARM;
                case LEFT_FOREARM -> RIGHT_FOREARM;
                case RIGHT_FOREARM -> LEFT_FOREARM;
            };
        }

        public boolean onWearer() {
            return this != FRAME;
        }
    }
}
