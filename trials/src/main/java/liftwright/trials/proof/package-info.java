/**
 * Whether the kills work today: what a log shows of each way to stop, how high and how near that
 * lets anyone go, and the file that says so until the end of the day.
 */
@NullMarked
package liftwright.trials.proof;

import org.jspecify.annotations.NullMarked;
