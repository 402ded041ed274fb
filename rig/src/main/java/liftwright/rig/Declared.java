package liftwright.rig;

/**
 * A value together with the place that decides it, for values that a group may take from its type.
 *
 * @param at where it is written, or where it would be written when a default stands in
 * @param value the value
 */
public record Declared<T>(RigPath at, T value) {}
