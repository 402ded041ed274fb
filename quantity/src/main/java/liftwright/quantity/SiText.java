package liftwright.quantity;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Quantities as texts that tell every bit of them, for files that the program writes: always in the
 * coherent SI unit, as in {@code 0.74 kg ± 0.0148 each}. What is written is read back to the same
 * number; for people there is {@link Measure}.
 */
public final class SiText {

    /** Units that have a name that builders know; all coherent, so that no number changes. */
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

    private static final Map<String, Dimension> BY_NAME =
            KNOWN.entrySet().stream()
                    .collect(Collectors.toMap(Map.Entry::getValue, Map.Entry::getKey));

    private static final String NUMBER = "-?[0-9]+(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]{1,3})?";
    private static final String WIDTH = "[0-9]+(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]{1,3})?";

    private static final Pattern WHOLE =
            Pattern.compile(
                    "("
                            + NUMBER
                            + ")(?: ([^±+]*?))??(?: (?:± ("
                            + WIDTH
                            + ")|\\+("
                            + WIDTH
                            + ")/−("
                            + WIDTH
                            + ")))?( bound)?( each)?");

    private static final Pattern POWER = Pattern.compile("(√s|kg|m|s|A|K|rad|dBA)(-?[0-9]{1,2})?");

    private SiText() {}

    /** SI value with its unit and its doubt. */
    public static String of(Quantity quantity) {
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

    /** What {@link #of} wrote; empty for any other text. */
    public static Optional<Quantity> parse(String text) {
        Matcher whole = WHOLE.matcher(text);
        if (text.length() > 200 || !whole.matches()) {
            return Optional.empty();
        }
        double plus = width(whole.group(3), whole.group(4));
        double minus = width(whole.group(3), whole.group(5));
        double si = Double.parseDouble(whole.group(1));
        if (Double.isInfinite(si) || Double.isInfinite(plus) || Double.isInfinite(minus)) {
            return Optional.empty();
        }
        String unit = whole.group(2) == null ? "" : whole.group(2);
        var doubt =
                new Tolerance(
                        plus,
                        minus,
                        whole.group(6) == null ? Tolerance.Form.NORMAL : Tolerance.Form.BOUND,
                        whole.group(7) == null ? Tolerance.Scope.SHARED : Tolerance.Scope.EACH);
        return dimension(unit).map(dimension -> new Quantity(si, dimension, doubt));
    }

    private static double width(@Nullable String both, @Nullable String one) {
        String text = both == null ? one : both;
        return text == null ? 0 : Double.parseDouble(text);
    }

    /** Base units with their powers where no name is known; empty for a plain number. */
    public static String unit(Dimension d) {
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

    /** What a unit of {@link #unit} measures; empty for any other text. */
    public static Optional<Dimension> dimension(String unit) {
        if (unit.isEmpty()) {
            return Optional.of(Dimension.NONE);
        }
        Dimension known = BY_NAME.get(unit);
        if (known != null) {
            return Optional.of(known);
        }
        var powers = new TreeMap<String, Integer>();
        for (String part : unit.split(" ", -1)) {
            Matcher power = POWER.matcher(part);
            if (!power.matches()) {
                return Optional.empty();
            }
            String digits = power.group(2);
            powers.put(power.group(1), digits == null ? 1 : Integer.parseInt(digits));
        }
        var found =
                new Dimension(
                        powers.getOrDefault("m", 0),
                        powers.getOrDefault("kg", 0),
                        powers.getOrDefault("s", 0),
                        powers.getOrDefault("A", 0),
                        powers.getOrDefault("K", 0),
                        powers.getOrDefault("rad", 0),
                        powers.getOrDefault("√s", 0),
                        powers.getOrDefault("dBA", 0));
        // Only what would be written so: one text for one unit.
        return unit(found).equals(unit) ? Optional.of(found) : Optional.empty();
    }
}
