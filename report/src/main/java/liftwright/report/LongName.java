package liftwright.report;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Names of wiring and of places in the file are long: where a line must end within one, it ends
 * after a dot or a slash.
 */
public final class LongName {

    private static final Pattern JOINT =
            Pattern.compile("(?<=[a-z0-9-]{2}[./])(?=[a-z0-9-])|(?<=[./][0-9]{1,3}[./])(?=[a-z])");

    /** Shorter ones stay on one line. */
    private static final int LONG = 14;

    private LongName() {}

    /**
     * What of a text without spaces stays together.
     *
     * @param word without spaces
     */
    public static List<String> pieces(String word) {
        return word.length() <= LONG ? List.of(word) : List.of(JOINT.split(word, -1));
    }
}
