/** What is said of parts that change over the tests of a logbook. */
@NullMarked
package liftwright.learning.trend.ask;

import org.jspecify.annotations.NullMarked;
