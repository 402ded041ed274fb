package liftwright.plant.parameters;

import liftwright.quantity.Dimension;
import liftwright.quantity.Tolerance;

/**
 * One number of a rig.
 *
 * @param name unique; the path of its declaration, or {@code <part id>: <path>} where every part
 *     has a number of its own
 * @param channel name of its random deviate: equal to {@code name}, or the bare path where several
 *     parts with unlike nominal values share one error
 * @param label what it is, in words
 * @param nominal SI
 * @param dimension what it measures
 * @param tolerance doubt of this one number, SI
 * @param range what it can be at all
 * @param input index of its {@link DeclaredInput}; −1 if it is exact
 */
public record Parameter(
        String name,
        String channel,
        String label,
        double nominal,
        Dimension dimension,
        Tolerance tolerance,
        Range range,
        int input) {}
