package liftwright.app.bay;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import liftwright.app.bay.FaultException.Kind;
import liftwright.app.record.TrialsRecord;
import liftwright.rig.Rig;
import liftwright.trials.ask.TrialsCase;
import liftwright.trials.day.Day;
import liftwright.trials.evidence.Pass;
import liftwright.trials.proof.KillProof;

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
        return fromDisk(() -> of(rig).read(declared, digest, today.get()));
    }

    /**
     * The day file beside a rig, where one reads.
     *
     * @throws FaultException when the disk does not give it
     */
    default Optional<Day> day(String rig, Rig declared) {
        return fromDisk(() -> of(rig).day(declared));
    }

    /**
     * A proof of the kills beside a rig, by its name.
     *
     * @throws FaultException when the disk does not give it
     */
    default Optional<KillProof> proof(String rig, String named) {
        return fromDisk(() -> of(rig).proof(named));
    }

    /**
     * Passes beside a rig, as far as they read.
     *
     * @throws FaultException when the disk does not give it
     */
    default List<Pass> passes(String rig) {
        return fromDisk(() -> of(rig).folder().read().passes());
    }

    /** What is read, or cannot be. */
    @FunctionalInterface
    interface Read<T> {
        T now() throws IOException;
    }

    private static <T> T fromDisk(Read<T> read) {
        try {
            return read.now();
        } catch (IOException e) {
            throw new FaultException(
                    Kind.REFUSED,
                    AnswerLines.harmless(
                            "What lies beside the rig file about its tests cannot be read: "
                                    + e.getMessage()));
        }
    }
}
