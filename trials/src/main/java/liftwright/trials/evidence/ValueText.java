package liftwright.trials.evidence;

import java.util.Locale;
import liftwright.quantity.Quantity;
import liftwright.quantity.SiText;

/** Values as texts that tell every bit of them. */
final class ValueText {

    private ValueText() {}

    /** SI value with its unit and its doubt: {@code 0.74 kg ± 0.0148 each}. */
    static String of(Quantity quantity) {
        return SiText.of(quantity);
    }

    /** A word of an enum as a builder would write it. */
    static String of(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
