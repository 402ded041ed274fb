package liftwright.report;

import liftwright.quantity.UnitSystem;

/**
 * How an answer is written on a terminal. Colour only repeats what words say.
 *
 * @param columns that no line exceeds, 40 to 100
 * @param ascii whether only ASCII may be written
 * @param colour whether escape codes for colour may be written
 * @param units of every number
 */
public record Look(int columns, boolean ascii, boolean colour, UnitSystem units) {

    /** What every line fits in, on any terminal. */
    public static final int WIDEST = 100;

    private static final int NARROWEST = 40;

    public Look {
        if (columns < NARROWEST || columns > WIDEST) {
            throw new IllegalArgumentException("lines of " + columns + " columns");
        }
    }
}
