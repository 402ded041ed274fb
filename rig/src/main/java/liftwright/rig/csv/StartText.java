package liftwright.rig.csv;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import liftwright.rig.table.StartState;

/**
 * Writes a state as a table that {@link TableReader#startState} reads as the same state, to the
 * last bit of every number.
 */
public final class StartText {

    private static final BigDecimal ZERO_CELSIUS_K = new BigDecimal("273.15");
    private static final BigDecimal PERCENT = new BigDecimal("100");

    private StartText() {}

    /** The table, with a line feed at its end. */
    public static String write(StartState state) {
        var out = new StringBuilder("part,place,temperature [°C],charge [%],fuse [%]\n");
        for (StartState.Row row : state.rows()) {
            out.append(cell(row.part())).append(',').append(row.place().word());
            out.append(',').append(celsius(row.temperatureK()));
            out.append(',').append(percent(row.charge()));
            out.append(',').append(percent(row.fuse())).append('\n');
        }
        return out.toString();
    }

    private static String cell(String text) {
        return text.indexOf(',') < 0 && text.indexOf('"') < 0
                ? text
                : '"' + text.replace("\"", "\"\"") + '"';
    }

    private static String celsius(OptionalDouble k) {
        return k.isPresent() ? plain(decimal(k.getAsDouble()).subtract(ZERO_CELSIUS_K)) : "";
    }

    private static String percent(OptionalDouble share) {
        return share.isPresent() ? plain(decimal(share.getAsDouble()).multiply(PERCENT)) : "";
    }

    /** The shortest decimal that is read as that double. */
    private static BigDecimal decimal(double value) {
        return new BigDecimal(Double.toString(value));
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
