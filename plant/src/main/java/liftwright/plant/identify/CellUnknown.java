package liftwright.plant.identify;

import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;

/** What the tests of a cell can tell beside its curves over charge. */
public enum CellUnknown {
    /** Charge of a full cell, A·s. */
    CAPACITY("capacity", true, Dimensions.CHARGE),
    /** R0 at 25 °C and half charge, Ω. */
    RESISTANCE("resistance", true, Dimensions.RESISTANCE),
    /** B of R = R25 · exp(B (1/T − 1/298.15 K)), K. */
    TEMPERATURE("temperature coefficient", false, Dimensions.TEMPERATURE),
    /** What builds up within seconds, Ω. */
    FAST_RESISTANCE("settling resistance 1", true, Dimensions.RESISTANCE),
    FAST_TIME("settling time 1", true, Dimensions.TIME),
    /** What builds up within minutes, Ω. */
    SLOW_RESISTANCE("settling resistance 2", true, Dimensions.RESISTANCE),
    SLOW_TIME("settling time 2", true, Dimensions.TIME);

    private final String words;
    private final boolean positive;
    private final Dimension dimension;

    CellUnknown(String words, boolean positive, Dimension dimension) {
        this.words = words;
        this.positive = positive;
        this.dimension = dimension;
    }

    /** In words, for labels. */
    public String words() {
        return words;
    }

    /** Whether it is above 0, and fitted and drawn in logarithms. */
    public boolean positive() {
        return positive;
    }

    public Range range() {
        return positive ? Range.POSITIVE : Range.ANY;
    }

    public Dimension dimension() {
        return dimension;
    }
}
