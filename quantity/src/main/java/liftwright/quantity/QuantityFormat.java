package liftwright.quantity;

/**
 * Writes computed numbers for people: rounded, in the reader's units. For text that is read back
 * use {@link QuantityWriter}.
 *
 * <p>Number and unit are joined by a no-break space, which the parser reads as a space.
 *
 * @param units of the reader
 * @param ascii whether signs beyond ASCII must be spelt out: {@code ohm}, {@code degC}, {@code m^2}
 */
public record QuantityFormat(UnitSystem units, boolean ascii) {

    private static final char NO_BREAK_SPACE = '\u00a0';

    /** A thousandth of a newton metre turns nothing that a person wears or lifts. */
    private static final int MOMENT_DECIMALS = 3;

    /** Number and unit: {@code 412 N}. */
    public String amount(Measure measure, double si) {
        var unit = unit(measure, si);
        return joined(number(measure, unit, si), unit);
    }

    /** The same with the digits that the band leaves: {@code 412 N} where it is ± 13 N. */
    public String amount(Measure measure, double si, Band band) {
        var unit = unit(measure, si);
        return joined(Rounding.text(unit.fromSi(si), decimals(measure, unit, si, band)), unit);
    }

    /**
     * The ends of a band: {@code 398 to 425 N}, to the digits of {@code amount} with that band;
     * empty where both read as the amount does, so that the reader would learn nothing.
     */
    public String band(Measure measure, double si, Band band) {
        var unit = unit(measure, si);
        int decimals = decimals(measure, unit, si, band);
        String low = Rounding.text(unit.fromSi(band.low()), decimals);
        String high = Rounding.text(unit.fromSi(band.high()), decimals);
        boolean alike = low.equals(high) && low.equals(Rounding.text(unit.fromSi(si), decimals));
        return alike ? "" : plain(low) + " to " + joined(high, unit);
    }

    /** Amount and band, where that says more: {@code 412 N (398 to 425 N)}. */
    public String amountWithBand(Measure measure, double si, Band band) {
        String ends = band(measure, si, band);
        String amount = amount(measure, si, band);
        return ends.isEmpty() ? amount : amount + " (" + ends + ")";
    }

    /** The unit alone for values of about this size, as in the head of a column; may be empty. */
    public String unitText(Measure measure, double si) {
        return plain(unit(measure, si).text());
    }

    /** The number alone in the unit for values of about {@code sizeSi}. */
    public String number(Measure measure, double si, double sizeSi) {
        return plain(number(measure, unit(measure, sizeSi), si));
    }

    /** A value in the unit for values of about {@code sizeSi}, not rounded: for a picture. */
    public double inUnit(Measure measure, double si, double sizeSi) {
        return unit(measure, sizeSi).fromSi(si);
    }

    private UnitExpression unit(Measure measure, double si) {
        return DisplayUnit.of(measure, units, si);
    }

    private static String number(Measure measure, UnitExpression unit, double si) {
        double value = unit.fromSi(si);
        return Rounding.text(value, plainDecimals(measure, value));
    }

    private static int plainDecimals(Measure measure, double value) {
        return Rounding.asDeclared(value, computedDecimals(measure, value));
    }

    private static int computedDecimals(Measure measure, double value) {
        return switch (measure) {
            case COUNT -> 0;
            case TEMPERATURE, TEMPERATURE_DIFFERENCE, SOUND_LEVEL -> 1;
            case PERCENT, ANGLE -> Math.min(2, Rounding.decimals(value));
            case MOMENT -> Math.min(MOMENT_DECIMALS, Rounding.decimals(value));
            case THRUST,
                    MASS,
                    LENGTH,
                    SMALL_LENGTH,
                    AREA,
                    TIME,
                    ROTATION,
                    SPEED,
                    CURRENT,
                    VOLTAGE,
                    POWER,
                    ENERGY,
                    CHARGE,
                    RESISTANCE,
                    CAPACITANCE,
                    ANGULAR_ACCELERATION,
                    INERTIA,
                    DENSITY,
                    PRESSURE,
                    STIFFNESS,
                    IMPACT_ENERGY,
                    FREQUENCY,
                    FAILURE_RATE,
                    RATIO ->
                    Rounding.decimals(value);
        };
    }

    private static int decimals(Measure measure, UnitExpression unit, double si, Band band) {
        double halfWidth = unit.differenceFromSi(band.width() / 2);
        int most = measure == Measure.MOMENT ? MOMENT_DECIMALS : Integer.MAX_VALUE;
        return halfWidth > 0
                ? Math.clamp(Rounding.decimalsForDoubt(halfWidth), 0, most)
                : plainDecimals(measure, unit.fromSi(si));
    }

    private String joined(String number, UnitExpression unit) {
        String text = unit.text();
        if (text.isEmpty()) {
            return plain(number);
        }
        boolean close = text.equals("°");
        return plain(close ? number + text : number + NO_BREAK_SPACE + text);
    }

    private String plain(String text) {
        return ascii ? PlainSpelling.of(text) : text;
    }
}
