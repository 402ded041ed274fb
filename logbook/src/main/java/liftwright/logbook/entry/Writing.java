package liftwright.logbook.entry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityWriter;
import liftwright.quantity.Tolerance;
import liftwright.rig.text.QuotedText;

/**
 * Writes maps and lists line by line. Every text of a builder stands in double quotes, so that no
 * reader of YAML can take it for something else.
 */
final class Writing {

    private final StringBuilder out = new StringBuilder();
    private String indent = "";
    private String lead = "";

    /** Begins below a key that stands already. */
    Writing below() {
        indent = "  ";
        lead = indent;
        return this;
    }

    Writing comment(String text) {
        out.append("# ").append(text).append('\n');
        return this;
    }

    Writing line(String key, String value) {
        out.append(lead).append(key).append(value.isEmpty() ? ":" : ": ").append(value);
        out.append('\n');
        lead = indent;
        return this;
    }

    Writing text(String key, String value) {
        return line(key, QuotedText.of(value));
    }

    /** Left out where there is nothing to say. */
    Writing textIfAny(String key, String value) {
        return value.isEmpty() ? this : text(key, value);
    }

    Writing textIfAny(String key, Optional<String> value) {
        return value.map(v -> text(key, v)).orElse(this);
    }

    Writing amount(String key, Quantity value) {
        return line(key, QuotedText.of(QuantityWriter.write(value)));
    }

    Writing amountIfAny(String key, Optional<Quantity> value) {
        return value.map(v -> amount(key, v)).orElse(this);
    }

    Writing seconds(String key, double seconds) {
        return line(key, QuotedText.of(plain(seconds) + " s"));
    }

    Writing share(String key, double share) {
        return amount(key, Quantity.exact(share, Dimensions.DIMENSIONLESS));
    }

    Writing texts(String key, List<String> values) {
        return values.isEmpty()
                ? this
                : line(
                        key,
                        values.stream()
                                .map(QuotedText::of)
                                .collect(Collectors.joining(", ", "[", "]")));
    }

    /** Begins a map or list below a key. */
    Writing open(String key) {
        line(key, "");
        indent += "  ";
        lead = indent;
        return this;
    }

    /** Begins an entry of a list, a map itself. */
    Writing item() {
        lead = indent + "- ";
        indent += "  ";
        return this;
    }

    /** A list of maps; left out where there is none. */
    <T> Writing list(String key, List<T> entries, Consumer<T> write) {
        if (entries.isEmpty()) {
            return this;
        }
        open(key);
        for (T entry : entries) {
            item();
            write.accept(entry);
            close();
        }
        return close();
    }

    Writing close() {
        indent = indent.substring(2);
        lead = indent;
        return this;
    }

    /** A difference of temperatures, or what is counted like one. */
    static String kelvin(Quantity value) {
        Tolerance doubt = value.tolerance();
        String sides =
                doubt.isNone()
                        ? ""
                        : doubt.plus() == doubt.minus()
                                ? " ± " + plain(doubt.plus()) + " K"
                                : " +" + plain(doubt.plus()) + "/-" + plain(doubt.minus()) + " K";
        String form = doubt.form() == Tolerance.Form.BOUND ? " bound" : "";
        String scope = doubt.scope() == Tolerance.Scope.EACH ? " each" : "";
        return QuotedText.of(
                plain(value.si()) + " K" + sides + (sides.isEmpty() ? "" : form + scope));
    }

    /** All digits, no exponent beyond what is needed. */
    static String plain(double value) {
        return value == 0 ? "0" : new BigDecimal(Double.toString(value)).toString();
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
