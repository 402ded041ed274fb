package liftwright.quantity;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A number as written: {@code digits × 10^tens}. Kept in decimal until the unit is known, so that
 * number and unit are rounded together and once.
 *
 * @param digits signed whole number of at most 18 digits
 * @param tens power of ten
 */
record Decimal(long digits, int tens) {

    static final Decimal ZERO = new Decimal(0, 0);

    /** Sums beyond this many digits are left to {@link BigDecimal}. */
    private static final int SAFE_SHIFT = 9;

    BigDecimal exact() {
        return BigDecimal.valueOf(digits).scaleByPowerOfTen(tens);
    }

    /** The exact sum, or null where it may need more digits than a long has. */
    @Nullable Decimal plus(Decimal other) {
        int low = Math.min(tens, other.tens);
        if (Math.max(tens, other.tens) - low > SAFE_SHIFT
                || Math.max(Math.abs(digits), Math.abs(other.digits)) > 1_000_000_000L) {
            return null;
        }
        return new Decimal(shifted(low) + other.shifted(low), low);
    }

    private long shifted(int low) {
        long value = digits;
        for (int n = tens; n > low; n--) {
            value *= 10;
        }
        return value;
    }

    boolean isZero() {
        return digits == 0;
    }

    boolean isNegative() {
        return digits < 0;
    }
}
