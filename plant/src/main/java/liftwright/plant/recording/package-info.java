/** What was recorded in a test: channels with units on one clock. */
@NullMarked
package liftwright.plant.recording;

import org.jspecify.annotations.NullMarked;
