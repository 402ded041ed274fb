package liftwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How many digits a shown number deserves. Where there is doubt, the doubt decides: its half-width
 * keeps two digits if it starts with 1 or 2, else one (JCGM 100, 7.2.6: at most two). Where there
 * is none, three digits, four if the number starts with 1: a step of the last digit is then 0.1 to
 * 0.5 % of the value. A number that is a short decimal, as what was declared is, shows those digits
 * and no zeros behind them.
 */
final class Rounding {

    /** No shown number has more decimals; below that lies nothing that a rig can notice. */
    private static final int MOST_DECIMALS = 9;

    /** Digits of the longest number that still reads as declared and not as computed. */
    private static final int DIGITS_AS_DECLARED = 6;

    /** Of the number itself: what a conversion of units and back may leave. */
    private static final double CONVERSION = 1e-12;

    private Rounding() {}

    /** Decimals for a number in doubt by ±{@code halfWidth}; negative where tens are rounded. */
    static int decimalsForDoubt(double halfWidth) {
        return decimals(halfWidth, halfWidth < 3 * magnitude(halfWidth) ? 2 : 1);
    }

    /** Decimals for a number without known doubt. */
    static int decimals(double value) {
        double size = Math.abs(value);
        if (size == 0) {
            return 0;
        }
        return Math.max(0, decimals(size, size < 2 * magnitude(size) ? 4 : 3));
    }

    /** The decimals of a number that is a short decimal; else as many as were given. */
    static int asDeclared(double value, int decimals) {
        double size = Math.abs(value);
        int most = size == 0 ? 0 : Math.max(0, decimals(size, DIGITS_AS_DECLARED));
        for (int few = 0; few <= most; few++) {
            var rounded = new BigDecimal(size).setScale(few, RoundingMode.HALF_EVEN);
            if (Math.abs(rounded.doubleValue() - size) <= CONVERSION * size) {
                return few;
            }
        }
        return decimals;
    }

    private static int decimals(double size, int digits) {
        int leading = (int) Math.floor(Math.log10(size));
        return Math.min(digits - 1 - leading, MOST_DECIMALS);
    }

    private static double magnitude(double size) {
        return Math.pow(10, Math.floor(Math.log10(size)));
    }

    /** {@code value} to this many decimals, with a true minus sign; −0 is written 0. */
    static String text(double value, int decimals) {
        var rounded =
                new BigDecimal(value)
                        .setScale(decimals, RoundingMode.HALF_EVEN)
                        .setScale(Math.max(0, decimals), RoundingMode.UNNECESSARY);
        String digits = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? "\u2212" + digits : digits;
    }
}
