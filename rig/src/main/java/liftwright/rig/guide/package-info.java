/** A rig from nothing: what has to be known, asked step by step, and the file that it makes. */
@NullMarked
package liftwright.rig.guide;

import org.jspecify.annotations.NullMarked;
