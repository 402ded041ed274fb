package liftwright.quantity;

import java.util.Map;

/** Quantities where only ASCII can be shown; the parser reads both. */
final class PlainSpelling {

    private static final Map<Character, String> SIGNS =
            Map.ofEntries(
                    Map.entry('±', "+/-"),
                    Map.entry('\u2212', "-"),
                    Map.entry('Ω', "ohm"),
                    Map.entry('µ', "u"),
                    Map.entry('°', "deg"),
                    Map.entry('·', "*"),
                    Map.entry('√', "rt"),
                    Map.entry('…', ".."),
                    Map.entry('\u00a0', " "),
                    Map.entry('⁻', "^-"));

    private PlainSpelling() {}

    /** {@code 4.2 mohm +/- 4 %} for {@code 4.2 mΩ ± 4 %}. */
    static String of(String text) {
        var out = new StringBuilder(text.length() + 8);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int power = Superscript.digit(c);
            if (power >= 0) {
                boolean negative = i > 0 && text.charAt(i - 1) == '⁻';
                out.append(negative ? "" : "^").append(power);
            } else {
                out.append(SIGNS.getOrDefault(c, String.valueOf(c)));
            }
        }
        return out.toString();
    }
}
