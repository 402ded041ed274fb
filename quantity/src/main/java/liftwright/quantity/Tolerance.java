package liftwright.quantity;

/**
 * The declared doubt of one value (architecture contract 1). {@code ±} means 95 % coverage (k = 2,
 * JCGM 100) of a normal distribution; unequal sides are a split normal with k = 2 on each side;
 * {@code bound} is a rectangle between the ends.
 *
 * @param plus upper half-width, in the SI unit of the value it belongs to, ≥ 0
 * @param minus lower half-width, same unit, ≥ 0 (written as a positive number)
 * @param form distribution
 * @param scope whether one draw serves all parts made from the value, or each part draws its own
 */
public record Tolerance(double plus, double minus, Form form, Scope scope) {

    public enum Form {
        NORMAL,
        BOUND
    }

    public enum Scope {
        /**
         * All alike: the scale's error. What a value on a type means unless it says {@code each}.
         */
        SHARED,
        /** Scatter from unit to unit. */
        EACH
    }

    public static final Tolerance NONE = new Tolerance(0, 0, Form.NORMAL, Scope.SHARED);

    public Tolerance {
        if (!(plus >= 0) || !(minus >= 0) || Double.isInfinite(plus) || Double.isInfinite(minus)) {
            throw new IllegalArgumentException(
                    "a tolerance has finite half-widths ≥ 0, not +" + plus + " −" + minus);
        }
    }

    public boolean isNone() {
        return plus == 0 && minus == 0;
    }

    /** The same tolerance with both half-widths multiplied by {@code factor} ≥ 0. */
    public Tolerance scaled(double factor) {
        return new Tolerance(plus * factor, minus * factor, form, scope);
    }
}
