package liftwright.rig.draft;

import java.util.Optional;
import liftwright.rig.file.RigReading;

/**
 * A draft at one moment. Immutable.
 *
 * @param rig name of the file in its folder, parts joined by {@code /}
 * @param revision digest of text and tables
 * @param reading the text and the rig it declares
 * @param saved whether the file on disk holds exactly this text
 * @param undo what undo would take back, in words
 * @param redo what redo would do again, in words
 * @param conflict what stands on disk where it could not be merged
 * @param told what happened on the way here and is to be told, each thing once
 */
public record DraftView(
        String rig,
        String revision,
        RigReading reading,
        boolean saved,
        Optional<String> undo,
        Optional<String> redo,
        Optional<Conflict> conflict,
        Optional<String> told) {

    /**
     * Another program wrote the file while this text was not saved.
     *
     * @param diskText what it wrote
     * @param sentence for the reader
     */
    public record Conflict(String diskText, String sentence) {}
}
