/** What holds a rig: loads in words and tables, a side view, standing wearers, scales, remedies. */
@NullMarked
package liftwright.review.restraint;

import org.jspecify.annotations.NullMarked;
