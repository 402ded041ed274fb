package liftwright.learning.trend;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a number moves from test to test.
 *
 * @param per slope, SI per unit of the abscissa
 * @param low 2.5 % lie below
 * @param high 2.5 % lie above
 * @param sure by how many standard deviations the slope is off nought, its sign kept
 * @param reaches when a limit is reached at this slope, on the abscissa; empty where the interval
 *     of the slope holds nought, the limit is the other way, or no limit was asked for
 */
public record Trend(double per, double low, double high, double sure, Optional<Reached> reaches) {

    /**
     * @param likely at the slope most probable
     * @param soonest at the steepest slope of its interval
     * @param latest at the flattest; empty where it may never be
     */
    public record Reached(double likely, double soonest, OptionalDouble latest) {}

    /** Whether anything may be claimed of this number alone: the interval does not hold nought. */
    public boolean isClaimed() {
        return low > 0 || high < 0;
    }
}
