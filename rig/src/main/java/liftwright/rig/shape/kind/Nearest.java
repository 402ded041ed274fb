package liftwright.rig.shape.kind;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * The word that was probably meant: least edit distance, with neighbours exchanged counted as one
 * edit (optimal string alignment), case left out.
 */
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
            int distance = distance(low, fold(word));
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

    static int distance(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + cost);
                if (i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1)) {
                    least = Math.min(least, before[j - 2] + 1);
                }
                row[j] = least;
            }
            int[] spare = before;
            before = last;
            last = row;
            row = spare;
        }
        return last[b.length()];
    }
}
