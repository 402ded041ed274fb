/** What a rig can do to those near it: fragments, jets, noise, stored energy, falls. */
@NullMarked
package liftwright.review.people;

import org.jspecify.annotations.NullMarked;
