/** Which cards a rig has, in which order, and what each of them rests on. */
@NullMarked
package liftwright.trials.programme;

import org.jspecify.annotations.NullMarked;
