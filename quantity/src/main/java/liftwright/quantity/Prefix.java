package liftwright.quantity;

import java.util.List;

/**
 * An SI prefix (NIST SP 811, table 5), as far as anything on a rig needs them.
 *
 * @param symbol letter before the unit
 * @param name in words
 * @param tenPower its power of ten
 */
record Prefix(String symbol, String name, int tenPower) {

    static final List<Prefix> ALL =
            List.of(
                    new Prefix("p", "pico", -12),
                    new Prefix("n", "nano", -9),
                    new Prefix("µ", "micro", -6),
                    new Prefix("m", "milli", -3),
                    new Prefix("c", "centi", -2),
                    new Prefix("d", "deci", -1),
                    new Prefix("h", "hecto", 2),
                    new Prefix("k", "kilo", 3),
                    new Prefix("M", "mega", 6),
                    new Prefix("G", "giga", 9));

    /** µ is U+00B5, the Greek mu U+03BC, or u where the keyboard has neither. */
    List<String> spellings() {
        return symbol.equals("µ") ? List.of("µ", "u", "\u03bc") : List.of(symbol);
    }

    String ascii() {
        return symbol.equals("µ") ? "u" : symbol;
    }
}
