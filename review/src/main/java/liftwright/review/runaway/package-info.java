/** A rig that runs away upward: what stops it, how high it gets, how fast it comes down. */
@NullMarked
package liftwright.review.runaway;

import org.jspecify.annotations.NullMarked;
