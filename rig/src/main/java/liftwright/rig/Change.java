package liftwright.rig;

/**
 * One edit of a rig: the one mechanism behind remedies, sliders, undo and comparison. Applied to
 * the declaration it gives the same rig as spliced into the text. Values are written as they would
 * stand in the file.
 */
public sealed interface Change {

    RigPath at();

    /**
     * Gives the value at {@code at}, a single scalar that may or may not stand there yet, the text
     * {@code value}.
     */
    record Set(RigPath at, String value) implements Change {}

    /**
     * Puts {@code value} at the end of the list, or as key {@code key} (may be empty for lists)
     * into the map, at {@code at}.
     */
    record Add(RigPath at, String key, String value) implements Change {}

    /** Takes out the entry at {@code at} with the comments it owns. */
    record Remove(RigPath at) implements Change {}

    /**
     * Puts {@code value}, which may be a flow collection, in place of whatever stands at {@code
     * at}.
     */
    record Replace(RigPath at, String value) implements Change {}

    /** Moves the list entry at {@code at} to stand at position {@code index} from 0. */
    record Move(RigPath at, int index) implements Change {}
}
