package liftwright.report.html;

import java.util.Set;
import java.util.function.UnaryOperator;
import liftwright.report.Door;

/**
 * HTML, and SVG within it, written front to back. Every text and every attribute value passes its
 * door: what could act, break out or hide is written as its code, and marks by their entities.
 * Names of elements and attributes are the program's own.
 */
final class Markup {

    private static final Door DOOR = new Door(false);

    /** Within a line a line end would be read as a space. */
    private static final Set<String> WITHIN_LINES = Set.of("a", "code", "strong", "title", "desc");

    private final StringBuilder out = new StringBuilder(64 * 1024);
    private final UnaryOperator<String> letters;

    /** For a reader who has every letter. */
    Markup() {
        this(UnaryOperator.identity());
    }

    /**
     * @param letters what becomes of a harmless text so that the reader's font has all of it
     */
    Markup(UnaryOperator<String> letters) {
        this.letters = letters;
    }

    /**
     * An element around others.
     *
     * @param attributes name, value, name, value
     */
    Markup element(String name, Runnable inside, String... attributes) {
        open(name, attributes);
        inside.run();
        return close(name);
    }

    /** An element around text. */
    Markup element(String name, String text, String... attributes) {
        open(name, attributes);
        text(text);
        return close(name);
    }

    /** One without content: void in HTML, closed at once in SVG; both read this spelling. */
    Markup empty(String name, String... attributes) {
        tag(name, attributes);
        out.append("/>\n");
        return this;
    }

    /** Text within an element, or between two. */
    Markup text(String text) {
        out.append(written(text));
        return this;
    }

    /** The program's own text that is no markup, such as a style sheet; taken as it is. */
    Markup own(String text) {
        out.append(text);
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }

    private Markup close(String name) {
        out.append("</").append(name).append(WITHIN_LINES.contains(name) ? ">" : ">\n");
        return this;
    }

    private void open(String name, String... attributes) {
        tag(name, attributes);
        out.append('>');
    }

    private void tag(String name, String... attributes) {
        out.append('<').append(name);
        for (int k = 0; k < attributes.length; k += 2) {
            out.append(' ')
                    .append(attributes[k])
                    .append("=\"")
                    .append(written(attributes[k + 1]))
                    .append('"');
        }
    }

    /** As it will be read: what acts is written as its code, what no line holds is shortened. */
    static String plain(String text) {
        return DOOR.plain(text);
    }

    private String written(String text) {
        return entities(letters.apply(plain(text)));
    }

    static String escaped(String text) {
        return entities(plain(text));
    }

    /** Marks as their entities; of a text that is harmless already. */
    static String entities(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints()
                .forEach(
                        c -> {
                            switch (c) {
                                case '<' -> safe.append("&lt;");
                                case '>' -> safe.append("&gt;");
                                case '&' -> safe.append("&amp;");
                                case '"' -> safe.append("&quot;");
                                case '\'' -> safe.append("&#39;");
                                default -> safe.appendCodePoint(c);
                            }
                        });
        return safe.toString();
    }
}
