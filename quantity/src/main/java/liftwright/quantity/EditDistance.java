package liftwright.quantity;

/**
 * Slips of the key between two words: a letter too many, too few, another, or two neighbours
 * swapped (optimal string alignment, Damerau 1964).
 */
public final class EditDistance {

    private EditDistance() {}

    /** The number of slips. */
    public static int between(String a, String b) {
        return between(a, b, Math.max(a.length(), b.length()));
    }

    /** The number of slips, or {@code limit + 1} where it is above {@code limit}. */
    static int between(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) > limit) {
            return limit + 1;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, d, i, j);
            }
        }
        return Math.min(d[a.length()][b.length()], limit + 1);
    }

    private static int step(String a, String b, int[][] d, int i, int j) {
        int other = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(d[i - 1][j - 1] + other, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped =
                i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
