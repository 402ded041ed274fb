package liftwright.quantity;

/** Readings taken apart, for tests. */
final class Read {

    private Read() {}

    static <T> T ok(Reading<T> reading) {
        return switch (reading) {
            case Reading.Parsed<T>(T value) -> value;
            case Reading.Refused<T>(Refusal refusal) -> throw new AssertionError(refusal);
        };
    }

    static <T> Refusal no(Reading<T> reading) {
        return switch (reading) {
            case Reading.Parsed<T>(T value) -> throw new AssertionError("was read as " + value);
            case Reading.Refused<T>(Refusal refusal) -> refusal;
        };
    }

    static Quantity quantity(String text) {
        return ok(QuantityParser.parse(text));
    }

    static double si(String text) {
        return quantity(text).si();
    }

    /** A constant of {@link Dimensions} by its name. */
    static Dimension dimension(String name) {
        try {
            return (Dimension) Dimensions.class.getField(name).get(null);
        } catch (ReflectiveOperationException unknown) {
            throw new LinkageError(name, unknown);
        }
    }
}
