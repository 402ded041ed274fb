package liftwright.learning.explain;

/**
 * One thing that may be wrong.
 *
 * @param kind what is wrong
 * @param part with what: the id of a fan, a pack, an element of the wiring, the name of a type or
 *     of a channel; empty where the whole is meant
 */
public record Cause(CauseKind kind, String part) {

    /** Nothing beyond what was declared. */
    public static final Cause NOTHING = new Cause(CauseKind.AS_DECLARED, "");

    /** Something else. */
    public static final Cause OTHER = new Cause(CauseKind.NONE_OF_THESE, "");

    /** As it is told. */
    public String words() {
        return part.isEmpty() ? kind.words() : kind.words() + " (" + part + ")";
    }
}
