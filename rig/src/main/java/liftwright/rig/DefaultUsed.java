package liftwright.rig;

/**
 * A value that the file leaves open.
 *
 * @param at where it would be written
 * @param value what stands in, as it would be written
 * @param origin where that comes from
 * @param reader which question reads it
 */
public record DefaultUsed(RigPath at, String value, String origin, Reader reader) {

    /** Who reads a default. */
    public enum Reader {
        /** Every question may. */
        ANY,
        /** Heat and what builds on it: failures. */
        HEAT,
        /** Failures and restraint. */
        FAILURES,
        /** Restraint alone. */
        RESTRAINT,
        /** Flight alone. */
        FLIGHT
    }

    /** One that every question may read. */
    public DefaultUsed(RigPath at, String value, String origin) {
        this(at, value, origin, Reader.ANY);
    }

    /** Whether the question of heat, but not those before it, reads it. */
    public boolean ofHeat() {
        return reader == Reader.HEAT;
    }
}
