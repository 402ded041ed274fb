package liftwright.rig.shape.kind;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import liftwright.quantity.EditDistance;

/** The word that was probably meant: the fewest slips of the key, case left out. */
public final class Nearest {

    private static final int LONGEST = 48;

    private Nearest() {}

    /** The nearest of {@code words}, if it is near: at most a third of its letters differ. */
    public static Optional<String> to(String given, Collection<String> words) {
        if (given.length() > LONGEST) {
            return Optional.empty();
        }
        String low = fold(given);
        String best = "";
        int least = Integer.MAX_VALUE;
        for (String word : words) {
            if (Math.abs(word.length() - low.length()) > word.length() / 3 + 1) {
                continue;
            }
            int distance = EditDistance.between(low, fold(word));
            if (distance < least) {
                least = distance;
                best = word;
            }
        }
        return least <= Math.max(1, best.length() / 3) ? Optional.of(best) : Optional.empty();
    }

    /** Advice for a problem: empty when nothing is near. */
    public static String advice(String given, Collection<String> words) {
        return to(given, words).map(word -> "Perhaps “" + word + "” is meant.").orElse("");
    }

    private static String fold(String text) {
        return text.toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' ');
    }
}
