/**
 * How parts change from test to test: one estimate for each part and test, all tests of a logbook
 * taken together, a line through them, and when it meets a limit.
 */
@NullMarked
package liftwright.learning.trend;

import org.jspecify.annotations.NullMarked;
