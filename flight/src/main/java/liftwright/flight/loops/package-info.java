/**
 * Loops that explain themselves: gains from inertia, lag and delay for a stated margin, or a
 * refusal that names what would have to change; the controller that runs them; the mixer that
 * shares thrust out to the fans. Numbers of a rig come in as {@link liftwright.flight.loops.Craft}.
 */
@NullMarked
package liftwright.flight.loops;

import org.jspecify.annotations.NullMarked;
