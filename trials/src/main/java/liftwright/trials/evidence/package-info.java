/**
 * What was shown, and what that is worth today: passes with the inputs of the rig that they rest
 * on, what a change voids, which cards may be opened, and the shortest way to prove one again.
 */
@NullMarked
package liftwright.trials.evidence;

import org.jspecify.annotations.NullMarked;
