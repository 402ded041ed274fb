/** Corrections: which numbers of a rig its tests find, with the doubt that they leave. */
@NullMarked
package liftwright.learning.correct;

import org.jspecify.annotations.NullMarked;
