package liftwright.logbook.store;

import java.util.Optional;
import liftwright.rig.Problem;

/**
 * Something in a logbook that is not as it was written.
 *
 * @param kind what of it
 * @param file below the folder of the logbook, parts joined by slashes
 * @param words one sentence
 * @param problem where in the file, for one that does not read
 */
public record Flaw(Kind kind, String file, String words, Optional<Problem> problem) {

    /** What can be wrong with a file. */
    public enum Kind {
        /** Other bytes than were written. */
        CHANGED("changed"),
        /** Written once, and gone. */
        MISSING("missing"),
        /** Not written by this program, or not here. */
        TOO_MANY("too many"),
        /** Leads elsewhere. */
        LINK("a link"),
        /** Does not read as what it should be. */
        UNREADABLE("does not read"),
        /** Left by an interrupted addition that was never acknowledged: harmless. */
        REMAINS("remains");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** For a reader. */
        public String word() {
            return word;
        }
    }

    /** Whether the logbook can be trusted no less for it. */
    public boolean isHarmless() {
        return kind == Kind.REMAINS;
    }

    static Flaw of(Kind kind, String file, String words) {
        return new Flaw(kind, file, words, Optional.empty());
    }

    static Flaw unreadable(String file, Problem problem) {
        return new Flaw(
                Kind.UNREADABLE,
                file,
                "line "
                        + problem.at().line()
                        + ": "
                        + problem.found()
                        + "; expected "
                        + problem.expected(),
                Optional.of(problem));
    }
}
