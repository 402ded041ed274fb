/**
 * A person who steers a rig by leaning and with the arms: how the rig moves when left alone, what
 * leaning does first and last, and whether a person can close the loop.
 */
@NullMarked
package liftwright.flight.pilot;

import org.jspecify.annotations.NullMarked;
