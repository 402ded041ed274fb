package liftwright.rig;

/**
 * A value that the file leaves open.
 *
 * @param at where it would be written
 * @param value what stands in, as it would be written
 * @param origin where that comes from
 * @param ofHeat whether the question of heat alone reads it
 */
public record DefaultUsed(RigPath at, String value, String origin, boolean ofHeat) {

    /** One that every question may read. */
    public DefaultUsed(RigPath at, String value, String origin) {
        this(at, value, origin, false);
    }
}
