/**
 * A rig that moves up and down as one body: runaways, falls, and the lines that catch it. Upright
 * and in one dimension; what turns it is asked elsewhere.
 */
@NullMarked
package liftwright.plant.motion;

import org.jspecify.annotations.NullMarked;
