package liftwright.app;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The word somebody probably meant. */
final class Nearest {

    private Nearest() {}

    /** Empty when none is near: more than a third of the letters differ. */
    static Optional<String> to(String word, Collection<String> known) {
        return known.stream()
                .min(Comparator.<String>comparingInt(k -> distance(word, k)).thenComparing(k -> k))
                .filter(
                        k ->
                                distance(word, k)
                                        <= Math.max(1, Math.max(k.length(), word.length()) / 3));
    }

    /** Letters to insert, delete, replace or swap with a neighbour (Damerau 1964, restricted). */
    static int distance(String one, String other) {
        int[][] d = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int same = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + same);
                if (i > 1
                        && j > 1
                        && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[one.length()][other.length()];
    }
}
