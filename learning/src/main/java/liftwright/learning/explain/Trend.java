package liftwright.learning.explain;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a number moves from test to test.
 *
 * @param perTest slope, SI per unit of the abscissa
 * @param lowPerTest 2.5 % lie below
 * @param highPerTest 2.5 % lie above
 * @param reaches when a limit would be reached at this slope, on the abscissa; empty where the
 *     interval of the slope holds nought, or the limit is the other way
 */
public record Trend(
        double perTest, double lowPerTest, double highPerTest, Optional<Reached> reaches) {

    /**
     * @param likely at the slope most probable
     * @param soonest 2.5 % lie before
     * @param latest 2.5 % lie behind; empty where it may never be
     */
    public record Reached(double likely, double soonest, OptionalDouble latest) {}

    /** Whether anything may be claimed: the interval does not hold nought. */
    public boolean isClaimed() {
        return lowPerTest > 0 || highPerTest < 0;
    }
}
