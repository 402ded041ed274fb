/**
 * What is measured on a rig before it flies, and what should be read there: masses, centre of mass,
 * swings, cells, a tap on the frame, throttle, thrust, spool lag, proof spin. Each card predicts
 * its readings from the rig with the doubt of rig, set-up, instrument and law together, and says
 * where in the rig file the reading goes.
 */
@NullMarked
package liftwright.trials.measure;

import org.jspecify.annotations.NullMarked;
