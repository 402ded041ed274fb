/**
 * One flight: what joins the rotors on their supply, the body that moves, the sensors that look on
 * and the loops that answer, each at its own rate.
 */
@NullMarked
package liftwright.flight.run;

import org.jspecify.annotations.NullMarked;
