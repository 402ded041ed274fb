/** Logs of tests as they could truly have been, with what is hidden in them: the outside judge. */
@NullMarked
package liftwright.learning.truth;

import org.jspecify.annotations.NullMarked;
