/**
 * The rig as a body that moves: pushed by its fans, turned by what spins in them, held back by the
 * air it takes in, standing on its feet, hung from lines, with a wearer who gives in the harness.
 */
@NullMarked
package liftwright.flight.motion;

import org.jspecify.annotations.NullMarked;
