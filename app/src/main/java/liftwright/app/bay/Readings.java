package liftwright.app.bay;

import liftwright.app.bay.FaultException.Kind;
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

    /**
     * The rig that a request means, in the state that it means.
     *
     * @throws FaultException when there is none, or it was changed since
     */
    default RigReading asked(Json.Members body) {
        RigReading reading = of(body.text("rig"));
        if (!reading.digest().equals(body.text("base"))) {
            throw new FaultException(
                    Kind.STALE, "The rig was changed elsewhere meanwhile: ask again.");
        }
        return reading;
    }
}
