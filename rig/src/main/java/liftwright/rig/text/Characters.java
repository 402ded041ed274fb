package liftwright.rig.text;

import java.util.Locale;

/** Which characters have no business in a rig file. */
final class Characters {

    private Characters() {}

    /** Whether YAML forbids it anywhere in a text (YAML 1.2.2, chapter 5.1), or hides in it. */
    static boolean barredAnywhere(int codePoint) {
        return switch (codePoint) {
            case '\t', '\n', '\r' -> false;
            case 0xFEFF, 0xFFFE, 0xFFFF -> true;
            default -> Character.isISOControl(codePoint);
        };
    }

    /**
     * Whether it may not stand in a key or value: it would show as another order of letters or
     * another number of lines than is read. In comments it does no harm.
     */
    static boolean barredInValues(int codePoint) {
        return switch (codePoint) {
            case '\n', '\t' -> false;
            case 0x061C, 0x200B, 0x200E, 0x200F, 0x2028, 0x2029, 0x2060, 0xFEFF -> true;
            default ->
                    Character.isISOControl(codePoint)
                            || (codePoint >= 0x202A && codePoint <= 0x202E)
                            || (codePoint >= 0x2066 && codePoint <= 0x2069)
                            || (codePoint >= 0xFFFE && codePoint <= 0xFFFF)
                            || (codePoint >= 0xD800 && codePoint <= 0xDFFF);
        };
    }

    /** U+0007 and the like: what cannot be shown is named. */
    static String name(int codePoint) {
        return String.format(Locale.ROOT, "the invisible character U+%04X", codePoint);
    }
}
