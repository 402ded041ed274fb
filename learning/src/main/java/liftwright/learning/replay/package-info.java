/**
 * A recording replayed: its throttle and air drive the plant, and each channel stands beside what
 * the plant predicts for it.
 */
@NullMarked
package liftwright.learning.replay;

import org.jspecify.annotations.NullMarked;
