/** What is asked about the trials of a rig, answered from its programme, passes and predictions. */
@NullMarked
package liftwright.trials.ask;

import org.jspecify.annotations.NullMarked;
