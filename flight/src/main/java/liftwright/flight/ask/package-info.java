/** The answer to "will the flight computer hold it?". */
@NullMarked
package liftwright.flight.ask;

import org.jspecify.annotations.NullMarked;
