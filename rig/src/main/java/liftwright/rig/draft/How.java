package liftwright.rig.draft;

import java.util.List;
import liftwright.rig.Change;

/** How an edit came about, which decides whether it can be made again on another text. */
sealed interface How {

    /** By changes: they can be made on another text too. */
    record Made(List<Change> changes) implements How {
        public Made {
            changes = List.copyOf(changes);
        }
    }

    /** By typing, by taking back, or by another program: it is this text and no other. */
    record Typed() implements How {}
}
