package liftwright.app.bay;

import liftwright.rig.file.RigReading;

/** Gives the rigs of the opened folder as they stand, saved or not. */
@FunctionalInterface
interface Readings {

    /**
     * A rig as it stands.
     *
     * @param rig its path from the folder
     * @throws FaultException when there is none
     */
    RigReading of(String rig);
}
