/**
 * What a test taught: its recording beside what the plant predicted for the same throttle and air,
 * the numbers of the rig that the two together leave, what each missing newton is due to. Pure: it
 * knows no file.
 */
@NullMarked
package liftwright.learning;

import org.jspecify.annotations.NullMarked;
