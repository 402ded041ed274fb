/**
 * What a flight computer knows: sensors that read late, noisily and at their own rates, and the
 * estimate that is made of their readings.
 */
@NullMarked
package liftwright.flight.sense;

import org.jspecify.annotations.NullMarked;
