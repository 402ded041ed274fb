package liftwright.answer;

import java.util.List;
import liftwright.rig.Change;

/**
 * A change of the rig that was applied and recomputed on the same draws.
 *
 * @param name what it does, in words: "carry 6.5 kg less"
 * @param changes the edits
 * @param effect what came of it
 */
public record Remedy(Sentence name, List<Change> changes, Effect effect) {

    public Remedy {
        changes = List.copyOf(changes);
    }

    /** What came of it. */
    public sealed interface Effect {

        /**
         * The verdict becomes "holds"; one step less and it does not.
         *
         * @param after the judged value with the change
         * @param difference after less before, on the same draws
         * @param step the size of one step, in words
         */
        record Clears(Value after, Value difference, Sentence step) implements Effect {}

        /**
         * As far as it can go it helps and does not suffice.
         *
         * @param after the judged value with the change
         * @param difference after less before, on the same draws
         */
        record Helps(Value after, Value difference) implements Effect {}

        /**
         * It would break another limit.
         *
         * @param reason which, with value and limit
         */
        record Refused(Sentence reason) implements Effect {}
    }
}
