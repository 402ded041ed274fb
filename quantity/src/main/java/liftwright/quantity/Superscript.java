package liftwright.quantity;

/** Digits of a power, raised. */
final class Superscript {

    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private Superscript() {}

    static String of(int power) {
        var out = new StringBuilder();
        for (char digit : Integer.toString(power).toCharArray()) {
            out.append(RAISED.charAt(digit - '0'));
        }
        return out.toString();
    }

    /** The digit that {@code c} raises, or -1. */
    static int digit(char c) {
        return RAISED.indexOf(c);
    }
}
