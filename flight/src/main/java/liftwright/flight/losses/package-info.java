/** Every single loss flown, and held against what the review of failures says of it. */
@NullMarked
package liftwright.flight.losses;

import org.jspecify.annotations.NullMarked;
