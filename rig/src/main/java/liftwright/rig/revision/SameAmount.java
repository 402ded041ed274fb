package liftwright.rig.revision;

import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;

/** Whether two texts say the same amount with the same doubt. */
final class SameAmount {

    /** Of units that are no whole multiples of each other, the last bits differ. */
    private static final double NEAR = 1e-12;

    private SameAmount() {}

    static boolean is(String one, String other) {
        return QuantityParser.parse(one) instanceof Reading.Parsed<Quantity>(var a)
                && QuantityParser.parse(other) instanceof Reading.Parsed<Quantity>(var b)
                && a.dimension().equals(b.dimension())
                && near(a.si(), b.si())
                && a.tolerance().form() == b.tolerance().form()
                && a.tolerance().scope() == b.tolerance().scope()
                && near(a.tolerance().plus(), b.tolerance().plus())
                && near(a.tolerance().minus(), b.tolerance().minus());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= NEAR * Math.max(Math.abs(a), Math.abs(b));
    }
}
