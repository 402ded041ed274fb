package liftwright.rig.shape.kind;

/** What it means when a key is not written. */
public sealed interface Need {

    /** A problem. */
    record Required() implements Need {}

    /**
     * Nothing is assumed.
     *
     * @param means what the rig then has or lacks
     */
    record Open(String means) implements Need {}

    /**
     * A value stands in, and every answer says so.
     *
     * @param text as it would be written
     * @param origin where the value comes from
     */
    record Default(String text, String origin) implements Need {}

    /**
     * A value is worked out from other values, and every answer says so.
     *
     * @param rule how, in words
     */
    record Computed(String rule) implements Need {}
}
