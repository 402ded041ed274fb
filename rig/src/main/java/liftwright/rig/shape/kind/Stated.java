package liftwright.rig.shape.kind;

/**
 * A value that the file states, and where.
 *
 * @param spot where
 * @param value what
 */
public record Stated<T>(Spot spot, T value) {}
