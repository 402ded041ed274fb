package liftwright.plant.parameters;

import java.io.Serial;
import java.util.Locale;

/**
 * A parameter took a value that nothing can have, such as a resistance below zero: its declared
 * tolerance reaches that far.
 */
public final class ImpossibleValueException extends RuntimeException {

    @Serial private static final long serialVersionUID = 1;

    private final String parameter;
    private final double value;

    /**
     * @param parameter name of the parameter
     * @param value its value, SI
     * @param range what it can be; only its words leave this package
     */
    public ImpossibleValueException(String parameter, double value, Range range) {
        super(
                String.format(
                        Locale.ROOT,
                        "\"%s\" took the value %.6g; it must be %s%nits tolerance reaches values"
                                + " that cannot be: declare a narrower one",
                        parameter,
                        value,
                        range.words()));
        this.parameter = parameter;
        this.value = value;
    }

    /** Name of the parameter. */
    public String parameter() {
        return parameter;
    }

    /** The value, SI. */
    public double value() {
        return value;
    }
}
