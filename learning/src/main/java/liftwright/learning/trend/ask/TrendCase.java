package liftwright.learning.trend.ask;

import java.util.List;
import liftwright.learning.trend.DatedTest;

/**
 * Tests of a logbook that are asked for trends.
 *
 * @param rigDigest of the rig file as it is now
 * @param folder of the logbook, by its name
 * @param seed told with the answer; nothing is drawn
 * @param tests in the order of their days
 * @param left tests that tell nothing, with the reason
 */
public record TrendCase(
        String rigDigest, String folder, long seed, List<DatedTest> tests, List<String> left) {

    public TrendCase {
        tests = List.copyOf(tests);
        left = List.copyOf(left);
    }
}
