package liftwright.testkit;

import java.util.Locale;
import java.util.random.RandomGenerator;

/** A text of random content, written line by line. */
public abstract class RandomText {

    protected final RandomGenerator random;

    /** What is written so far. */
    protected final StringBuilder out = new StringBuilder();

    /** Draws from {@code random}. */
    protected RandomText(RandomGenerator random) {
        this.random = random;
    }

    /** A number from a range. */
    protected final double in(double least, double most) {
        return random.nextDouble(least, most);
    }

    /** One of some words. */
    protected final String word(String... words) {
        return words[random.nextInt(words.length)];
    }

    /** Writes one line. */
    @SuppressWarnings("AnnotateFormatMethod") // formats are constants of those who write
    protected final void line(String format, Object... values) {
        out.append(text(format, values)).append('\n');
    }

    /** A formatted text, the same in every country. */
    @SuppressWarnings("AnnotateFormatMethod")
    protected static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
