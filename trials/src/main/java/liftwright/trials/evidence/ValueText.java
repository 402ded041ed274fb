package liftwright.trials.evidence;

import java.util.Locale;
import java.util.Map;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;

/** Values as texts that tell every bit of them. */
final class ValueText {

    private ValueText() {}

    /** SI value with its unit and its doubt: {@code 0.74 kg ± 0.0148 each}. */
    static String of(Quantity quantity) {
        String unit = unit(quantity.dimension());
        var text = new StringBuilder().append(quantity.si());
        if (!unit.isEmpty()) {
            text.append(' ').append(unit);
        }
        Tolerance doubt = quantity.tolerance();
        if (!doubt.isNone()) {
            text.append(
                    doubt.plus() == doubt.minus()
                            ? " ± " + doubt.plus()
                            : " +" + doubt.plus() + "/−" + doubt.minus());
        }
        // A form and a scope stand also behind no doubt: they are part of the value.
        text.append(doubt.form() == Tolerance.Form.BOUND ? " bound" : "");
        text.append(doubt.scope() == Tolerance.Scope.EACH ? " each" : "");
        return text.toString();
    }

    /** A word of an enum as a builder would write it. */
    static String of(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Units of their own that builders know; all of them coherent, so that no number changes. */
    private static final Map<Dimension, String> KNOWN =
            Map.ofEntries(
                    Map.entry(new Dimension(1, 1, -2, 0, 0, 0), "N"),
                    Map.entry(new Dimension(2, 1, -2, 0, 0, 0), "N m"),
                    Map.entry(new Dimension(2, 1, -3, 0, 0, 0), "W"),
                    Map.entry(new Dimension(2, 1, -3, -1, 0, 0), "V"),
                    Map.entry(new Dimension(2, 1, -3, -2, 0, 0), "Ω"),
                    Map.entry(new Dimension(-2, -1, 4, 2, 0, 0), "F"),
                    Map.entry(new Dimension(0, 0, 1, 1, 0, 0), "C"),
                    Map.entry(new Dimension(-1, 1, -2, 0, 0, 0), "Pa"),
                    Map.entry(new Dimension(2, 1, -2, 0, -1, 0), "J/K"),
                    Map.entry(new Dimension(2, 1, -3, 0, -1, 0), "W/K"),
                    Map.entry(new Dimension(0, 1, -2, 0, 0, 0), "N/m"),
                    Map.entry(new Dimension(0, 1, -1, 0, 0, 0), "N s/m"),
                    Map.entry(new Dimension(1, 0, -1, 0, 0, 0), "m/s"),
                    Map.entry(new Dimension(0, 0, -1, 0, 0, 0), "1/s"),
                    Map.entry(new Dimension(0, 0, -1, 0, 0, 1), "rad/s"),
                    Map.entry(new Dimension(0, 0, -2, 0, 0, 1), "rad/s2"),
                    Map.entry(new Dimension(-2, -1, 2, 1, 0, 1), "rad/(V s)"),
                    Map.entry(new Dimension(0, 0, 0, 0, -1, 0), "1/K"));

    /** Base units with their powers where no name is known; empty for a plain number. */
    static String unit(Dimension d) {
        String known = KNOWN.get(d);
        if (known != null) {
            return known;
        }
        var unit = new StringBuilder();
        append(unit, "kg", d.mass());
        append(unit, "m", d.length());
        append(unit, "s", d.time());
        append(unit, "√s", d.rootTime());
        append(unit, "A", d.current());
        append(unit, "K", d.temperature());
        append(unit, "rad", d.angle());
        append(unit, "dBA", d.level());
        return unit.toString();
    }

    private static void append(StringBuilder unit, String symbol, int power) {
        if (power == 0) {
            return;
        }
        if (!unit.isEmpty()) {
            unit.append(' ');
        }
        unit.append(symbol);
        if (power != 1) {
            unit.append(power);
        }
    }
}
