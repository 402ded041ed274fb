package liftwright.flight.sense;

import liftwright.rig.Control.Measures;

/** How far off the offsets of sensors are in one flight. */
@FunctionalInterface
public interface Biases {

    /** Every offset is in the middle of its doubt. */
    Biases NONE = (measures, axis) -> 0;

    /**
     * @param axis of the reading, from 0
     * @return in standard deviations of the declared doubt
     */
    double of(Measures measures, int axis);
}
