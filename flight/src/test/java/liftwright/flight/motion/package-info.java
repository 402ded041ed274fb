@NullMarked
package liftwright.flight.motion;

import org.jspecify.annotations.NullMarked;
