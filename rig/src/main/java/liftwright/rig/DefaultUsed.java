package liftwright.rig;

/**
 * A value that the file leaves open.
 *
 * @param at where it would be written
 * @param value what stands in, as it would be written
 * @param origin where that comes from
 */
public record DefaultUsed(RigPath at, String value, String origin) {}
