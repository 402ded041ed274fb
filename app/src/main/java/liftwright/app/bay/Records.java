package liftwright.app.bay;

import java.io.IOException;
import java.time.LocalDate;
import java.util.function.Supplier;
import liftwright.app.bay.FaultException.Kind;
import liftwright.app.record.TrialsRecord;
import liftwright.rig.Rig;
import liftwright.trials.ask.TrialsCase;

/** What is on record about the tests of the rigs of the opened folder. */
@FunctionalInterface
interface Records {

    /**
     * Where it is.
     *
     * @param rig its path from the folder
     * @throws FaultException when the name leads elsewhere
     */
    TrialsRecord of(String rig);

    /** Beside the rig files of a folder. */
    static Records beside(OpenedFolder folder) {
        return rig -> new TrialsRecord(folder.place(rig));
    }

    /**
     * A rig with all of it.
     *
     * @param rig its path from the folder
     * @param declared the rig as it stands, saved or not
     * @param digest of what it was read from
     * @param today the day
     * @throws FaultException when the disk does not give it
     */
    default TrialsCase read(String rig, Rig declared, String digest, Supplier<LocalDate> today) {
        try {
            return of(rig).read(declared, digest, today.get());
        } catch (IOException e) {
            throw new FaultException(
                    Kind.REFUSED,
                    AnswerLines.harmless(
                            "What lies beside the rig file about its tests cannot be read: "
                                    + e.getMessage()));
        }
    }
}
