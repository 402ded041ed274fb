package liftwright.review;

import java.util.Arrays;

/** A search for a better arrangement, asked for beside the question of balance. */
public enum Search {
    /** Which way each fan turns. */
    SPINS("spins"),
    /** How far fans lean along their circle, to yaw by. */
    CANT("cant"),
    /** Which pack feeds which fans. */
    PAIRING("pairing");

    private final String word;

    Search(String word) {
        this.word = word;
    }

    /** As the command line says it. */
    public String word() {
        return word;
    }

    /** All words, for people. */
    public static String words() {
        return String.join(" or ", Arrays.stream(values()).map(Search::word).toList());
    }
}
