package liftwright.learning.replay;

import liftwright.plant.Discharge;

/** Reads off a run what a channel measures, SI. */
@FunctionalInterface
interface Probe {

    /**
     * @param run stands at a moment
     * @param vector what the numbers of this run make of the rig
     */
    double read(Discharge run, OfVector vector);
}
