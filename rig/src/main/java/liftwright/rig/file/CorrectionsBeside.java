package liftwright.rig.file;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.CorrectionsRead;
import liftwright.rig.correction.text.CorrectionsReading;
import liftwright.rig.csv.Beside;
import liftwright.rig.text.FolderGuard;

/**
 * The file of corrections beside a rig file.
 *
 * @param corrections what it says; empty where there is none, or where there are problems
 * @param digest of its bytes
 * @param problems why it cannot be read
 */
record CorrectionsBeside(Optional<Corrections> corrections, String digest, List<Problem> problems) {

    private static final CorrectionsBeside NONE =
            new CorrectionsBeside(Optional.empty(), "", List.of());

    private static final String ENDING = ".corrections.yaml";

    /** Looks for it. */
    static CorrectionsBeside of(String rigFile, Beside beside) {
        String name = CorrectionsReading.nameBeside(rigFile);
        if (FolderGuard.objection(name).isPresent()) {
            return NONE; // the rig file has a name that no rig's folder gives to a reference
        }
        return switch (beside.fetch(name)) {
            case Beside.Fetched.Bytes(var bytes) -> {
                CorrectionsReading reading = CorrectionsReading.read(name, bytes);
                yield new CorrectionsBeside(
                        reading.corrections(), RigReading.digest(bytes), reading.problems());
            }
            case Beside.Fetched.Not(var code, var found, var advice) ->
                    isMissing(code, found)
                            ? NONE
                            : new CorrectionsBeside(
                                    Optional.empty(),
                                    "",
                                    List.of(
                                            new Problem(
                                                    code,
                                                    new Problem.Place(name, 1, 1, ""),
                                                    found,
                                                    "what tests found, or no such file",
                                                    advice)));
        };
    }

    /** A rig without corrections is the usual case, and so is one without a folder. */
    private static boolean isMissing(Code code, String found) {
        return code == Code.NO_SUCH_PART && !found.equals(Folder.UNREADABLE);
    }

    /** Everything beside a rig file but its corrections. */
    static Beside hiddenIn(Beside beside) {
        return path ->
                path.endsWith(ENDING)
                        ? new Beside.Fetched.Not(Code.NO_SUCH_PART, "left out of account", "")
                        : beside.fetch(path);
    }

    /**
     * As they count for a rig.
     *
     * @param rig digest of the rig file and its tables
     */
    CorrectionsRead read(String rig) {
        return corrections
                .map(content -> new CorrectionsRead(content, digest, !content.rig().equals(rig)))
                .orElse(CorrectionsRead.NONE);
    }
}
