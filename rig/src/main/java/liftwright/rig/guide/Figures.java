package liftwright.rig.guide;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.quantity.UnitSystem;
import liftwright.quantity.WrittenQuantity;

/** Writes what is worked out for a sketch: few digits, in the builder's units. */
record Figures(UnitSystem units) {

    private static final int DIGITS = 3;

    private boolean us() {
        return units == UnitSystem.US;
    }

    /** A length to 5 mm or a quarter of an inch. */
    String length(double metres) {
        double step = us() ? 0.25 * 0.0254 : 0.005;
        return text(Math.rint(metres / step) * step, us() ? "in" : "mm", Dimensions.LENGTH);
    }

    String mass(double kilograms) {
        return rounded(kilograms, us() ? "lb" : kilograms < 0.5 ? "g" : "kg", Dimensions.MASS);
    }

    String force(double newtons) {
        return rounded(newtons, us() ? "lbf" : "N", Dimensions.FORCE);
    }

    String area(double squareMetres) {
        return rounded(squareMetres, us() ? "in²" : "cm²", Dimensions.AREA);
    }

    /** Anything that both systems write alike. */
    String plain(double si, String unit) {
        var one = QuantityParser.parse("1 " + unit);
        if (one instanceof Reading.Parsed<liftwright.quantity.Quantity>(var quantity)) {
            return rounded(si, unit, quantity.dimension());
        }
        throw new IllegalArgumentException("no unit: " + unit);
    }

    private static String rounded(double si, String unit, Dimension dimension) {
        var one = WrittenQuantity.read("1 " + unit, dimension).orElseThrow();
        var value =
                BigDecimal.valueOf(si / one.unitSi())
                        .round(new MathContext(DIGITS, RoundingMode.HALF_EVEN));
        return text(value.doubleValue() * one.unitSi(), unit, dimension);
    }

    private static String text(double si, String unit, Dimension dimension) {
        return WrittenQuantity.read("0 " + unit, dimension)
                .orElseThrow()
                .with(si, Math.abs(si) / 1e5 + 1e-12);
    }

    /** The value above, of those that parts are sold in; the last where none is enough. */
    static double above(double least, double... sold) {
        for (double each : sold) {
            if (each >= least) {
                return each;
            }
        }
        return sold[sold.length - 1];
    }
}
