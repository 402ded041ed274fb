package liftwright.rig.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.shape.Read;
import liftwright.rig.shape.RigReader;
import liftwright.rig.text.RigText;

/**
 * A rig file read to the end: its text, the rig it declares, and everything that is wrong with it.
 *
 * @param text the file itself; edits go through it
 * @param rig the rig; empty when any problem is an error
 * @param problems all of them, in the order of the file
 */
public record RigFile(RigText text, Optional<Rig> rig, List<Problem> problems) {

    public RigFile {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file; never throws whatever its bytes are.
     *
     * @param fileName as problems shall call it
     */
    public static RigFile read(String fileName, byte[] bytes) {
        return of(RigText.read(fileName, bytes));
    }

    /** Reads an edited text. */
    public static RigFile of(RigText text) {
        List<Problem> problems = new ArrayList<>(text.problems());
        // Faults of YAML leave a tree with holes: what its shape lacks is not the builder's fault.
        if (!problems.isEmpty() || text.root().isEmpty()) {
            return new RigFile(text, Optional.empty(), problems);
        }
        Read read = RigReader.read(text.fileName(), text.root().get());
        return new RigFile(text, read.rig(), read.problems());
    }
}
