package liftwright.rig.revision;

import liftwright.rig.RigPath;

/**
 * One place at which two revisions of a rig file differ.
 *
 * @param at where, with the ids of entries of lists
 * @param kind what became of it
 * @param from as the first revision has it, in the words and units of its file; empty where it has
 *     nothing
 * @param to as the second has it; empty where it has nothing
 */
public record FileChange(RigPath at, Kind kind, String from, String to) {

    /** What became of a place. */
    public enum Kind {
        CHANGED("changed"),
        ADDED("added"),
        REMOVED("removed"),
        /** The same amount, written otherwise: 100 cm for 1 m. */
        REWORDED("written otherwise"),
        /** The same entries in another order. */
        REORDERED("in another order");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** For a reader. */
        public String word() {
            return word;
        }
    }
}
