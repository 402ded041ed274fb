/** Two revisions of a rig beside each other: what changed in the file and in every answer. */
@NullMarked
package liftwright.review.compare;

import org.jspecify.annotations.NullMarked;
