package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/**
 * What became of a joint since it was new, and what becomes of it when it is too hot.
 *
 * @param damage factor on its resistance alone, ≥ 1; how it gives off heat stays
 * @param growthPerS share of its resistance by which it grows in each second above its limit, 1/s,
 *     ≥ 0, for good; empty where it does not
 */
public record Wear(Quantity damage, Optional<Quantity> growthPerS) {

    /** As new, and it stays so. */
    public static final Wear NONE = new Wear(Quantity.exact(1, Dimension.NONE), Optional.empty());
}
