package liftwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * What one of a unit is in coherent SI: {@code over / under × 10^tenPower}. Kept as a fraction with
 * the power of ten apart, so that {@code 12 mm} becomes the double nearest to 0.012 and {@code 90
 * km/h} becomes 25 m/s with no error at all: whole numbers are multiplied first and rounded once.
 *
 * @param over numerator, finite, &gt; 0
 * @param under denominator, finite, &gt; 0
 * @param tenPower power of ten
 */
record Scale(double over, double under, int tenPower) {

    static final Scale ONE = new Scale(1, 1, 0);

    /** Largest power of ten that a double holds exactly, and with it the reach of the fast path. */
    private static final int EXACT_TENS = 22;

    private static final double[] TENS = new double[EXACT_TENS + 1];

    /** Integers up to here are doubles. */
    private static final double EXACT_WHOLE = 0x1p53;

    private static final MathContext WIDE = new MathContext(40);

    static {
        for (int n = 0; n <= EXACT_TENS; n++) {
            TENS[n] = n == 0 ? 1 : TENS[n - 1] * 10; // exact up to 10^22
        }
    }

    /** {@code factor × 10^tenPower}. */
    static Scale of(double factor, int tenPower) {
        return new Scale(factor, 1, tenPower);
    }

    Scale times(Scale other) {
        return new Scale(over * other.over, under * other.under, tenPower + other.tenPower);
    }

    Scale per(Scale other) {
        return new Scale(over * other.under, under * other.over, tenPower - other.tenPower);
    }

    Scale power(int n) {
        return n >= 0
                ? new Scale(Math.pow(over, n), Math.pow(under, n), tenPower * n)
                : new Scale(Math.pow(under, -n), Math.pow(over, -n), tenPower * n);
    }

    boolean isUsable() {
        return over > 0
                && under > 0
                && Double.isFinite(over)
                && Double.isFinite(under)
                && Math.abs(tenPower) < 200;
    }

    /** {@code digits × 10^tens} of this unit in SI; infinite where no double is large enough. */
    double toSi(long digits, int tens) {
        int e = tens + tenPower;
        if (Math.abs(digits) <= EXACT_WHOLE && Math.abs(e) <= EXACT_TENS) {
            double top = digits * over;
            return e >= 0 ? top * TENS[e] / under : top / (under * TENS[-e]);
        }
        return toSi(BigDecimal.valueOf(digits).scaleByPowerOfTen(tens));
    }

    /** {@code value} of this unit in SI, rounded once. */
    double toSi(BigDecimal value) {
        return value.multiply(new BigDecimal(over))
                .divide(new BigDecimal(under), WIDE)
                .scaleByPowerOfTen(tenPower)
                .doubleValue();
    }

    /** The SI number in this unit, to 40 digits. */
    BigDecimal fromSi(double si) {
        return new BigDecimal(si)
                .multiply(new BigDecimal(under))
                .divide(new BigDecimal(over), WIDE)
                .scaleByPowerOfTen(-tenPower);
    }
}
