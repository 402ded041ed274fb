package liftwright.quantity;

import java.math.BigDecimal;

/**
 * A unit as written, compound or single: {@code mm}, {@code rpm/V}, {@code N·s²/rad²}. For heads of
 * columns and for showing values; a quantity holds no unit.
 */
public final class UnitExpression {

    /** A plain number. */
    static final UnitExpression ONE =
            new UnitExpression("", Dimension.NONE, Scale.ONE, Decimal.ZERO, false);

    private final String text;
    private final Dimension dimension;
    private final Scale scale;
    private final Decimal offset;
    private final boolean share;

    /**
     * @param text as written
     * @param share whether it stands for a share of something (%, ppm)
     */
    UnitExpression(String text, Dimension dimension, Scale scale, Decimal offset, boolean share) {
        this.text = text;
        this.dimension = dimension;
        this.scale = scale;
        this.offset = offset;
        this.share = share;
    }

    static UnitExpression of(String text, UnitIndex.Entry entry) {
        var unit = entry.unit();
        return new UnitExpression(
                text,
                unit.dimension(),
                entry.scale(),
                unit.offset(),
                unit.dimension().equals(Dimension.NONE));
    }

    /**
     * A unit that the product itself writes.
     *
     * @throws IllegalArgumentException where it is none
     */
    static UnitExpression known(String text) {
        var in = new Cursor(text);
        try {
            var unit = UnitReader.read(in);
            if (unit != null && in.atEnd()) {
                return unit;
            }
        } catch (RefusedException refused) {
            throw new IllegalArgumentException("no unit is written " + text, refused);
        }
        throw new IllegalArgumentException("no unit is written " + text);
    }

    /** The same under another name. */
    UnitExpression named(String name) {
        return new UnitExpression(name, dimension, scale, offset, share);
    }

    /** As it was written. */
    public String text() {
        return text;
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** Whether a value of 0 is not nothing: °C and °F. */
    public boolean hasOffset() {
        return !offset.isZero();
    }

    /** {@code value} of this unit in coherent SI, an offset applied; finite for usual values. */
    public double toSi(double value) {
        return scale.toSi(withOffset(new BigDecimal(value)));
    }

    /** The SI value in this unit, an offset applied. */
    public double fromSi(double si) {
        return exactFromSi(si).doubleValue();
    }

    /** A difference of SI values in this unit: no offset. */
    public double differenceFromSi(double si) {
        return scale.fromSi(si).doubleValue();
    }

    double toSi(Decimal value) {
        if (!hasOffset()) {
            return differenceToSi(value);
        }
        var sum = value.plus(offset);
        return sum == null ? scale.toSi(withOffset(value.exact())) : differenceToSi(sum);
    }

    double differenceToSi(Decimal value) {
        return scale.toSi(value.digits(), value.tens());
    }

    BigDecimal exactFromSi(double si) {
        var value = scale.fromSi(si);
        return hasOffset() ? value.subtract(offset.exact()) : value;
    }

    BigDecimal exactDifferenceFromSi(double si) {
        return scale.fromSi(si);
    }

    boolean isShare() {
        return share;
    }

    boolean sameAs(UnitExpression other) {
        return dimension.equals(other.dimension) && scale.equals(other.scale);
    }

    private BigDecimal withOffset(BigDecimal value) {
        return hasOffset() ? value.add(offset.exact()) : value;
    }

    @Override
    public String toString() {
        return text;
    }
}
