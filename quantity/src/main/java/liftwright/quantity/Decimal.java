package liftwright.quantity;

/**
 * A number as written: {@code digits × 10^tens}. Kept in decimal until the unit is known, so that
 * number and unit are rounded together and once.
 *
 * @param digits signed whole number of at most 18 digits
 * @param tens power of ten
 */
record Decimal(long digits, int tens) {

    static final Decimal ONE = new Decimal(1, 0);

    boolean isZero() {
        return digits == 0;
    }

    boolean isNegative() {
        return digits < 0;
    }
}
