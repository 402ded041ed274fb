package liftwright.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * JSON (RFC 8259) written front to back on one line: members in the order of the calls, numbers as
 * the shortest text that reads back to the same double, so that equal answers are equal bytes.
 *
 * <p>Text from files passes here on its way out. Besides what JSON demands, every control, format,
 * separator, surrogate, private and unassigned character is escaped: a name can neither move a
 * terminal's cursor nor turn the reading direction of what stands beside it.
 */
public final class JsonText {

    private static final String HEX = "0123456789abcdef";

    private final StringBuilder out = new StringBuilder(4096);
    private boolean first = true;

    /** Nothing written yet. */
    public JsonText() {}

    /** An object; {@code members} calls {@link #name} and then one value for each. */
    public JsonText object(Runnable members) {
        return enclosed('{', members, '}');
    }

    /** A list; {@code elements} writes one value after the other. */
    public JsonText array(Runnable elements) {
        return enclosed('[', elements, ']');
    }

    /** The name of the member whose value comes next. */
    public JsonText name(String name) {
        separate();
        quoted(name);
        out.append(':');
        first = true; // its value needs no comma
        return this;
    }

    /** A text as value. */
    public JsonText text(String value) {
        separate();
        quoted(value);
        return this;
    }

    /** Finite numbers only: JSON has no others, and neither has an answer. */
    public JsonText number(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("JSON has no number " + value);
        }
        separate();
        out.append(value);
        return this;
    }

    /** A whole number as value. */
    public JsonText whole(long value) {
        separate();
        out.append(value);
        return this;
    }

    /** True or false as value. */
    public JsonText truth(boolean value) {
        separate();
        out.append(value);
        return this;
    }

    /** Null as value. */
    public JsonText nothing() {
        separate();
        out.append("null");
        return this;
    }

    /**
     * A value that was written by another of these.
     *
     * @param written one whole value
     */
    public JsonText json(String written) {
        separate();
        out.append(written);
        return this;
    }

    /** A member with a text. */
    public JsonText member(String name, String value) {
        return name(name).text(value);
    }

    /** A member with a text, where there is one. */
    public JsonText member(String name, Optional<String> value) {
        value.ifPresent(text -> member(name, text));
        return this;
    }

    /** A member with a list of texts. */
    public JsonText texts(String name, List<String> values) {
        return each(name, values, this::text);
    }

    /** A member with a list, each item written by {@code element}. */
    public <T> JsonText each(String name, List<T> items, Consumer<T> element) {
        return name(name).array(() -> items.forEach(element));
    }

    @Override
    public String toString() {
        return out.toString();
    }

    private JsonText enclosed(char open, Runnable inside, char close) {
        separate();
        out.append(open);
        first = true;
        inside.run();
        out.append(close);
        first = false;
        return this;
    }

    private void separate() {
        if (!first) {
            out.append(',');
        }
        first = false;
    }

    private void quoted(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); ) {
            char plain = text.charAt(i);
            if (plain >= ' ' && plain < 0x7f && plain != '"' && plain != '\\') {
                out.append(plain); // nearly all there is
                i++;
            } else {
                int c = text.codePointAt(i);
                character(c);
                i += Character.charCount(c);
            }
        }
        out.append('"');
    }

    private void character(int c) {
        if (c == '"' || c == '\\') {
            out.append('\\').append((char) c);
        } else if (Untrusted.isHarmless(c)) {
            out.appendCodePoint(c);
        } else if (Character.isBmpCodePoint(c)) {
            escaped((char) c);
        } else {
            escaped(Character.highSurrogate(c));
            escaped(Character.lowSurrogate(c));
        }
    }

    private void escaped(char c) {
        out.append("\\u")
                .append(HEX.charAt(c >> 12))
                .append(HEX.charAt(c >> 8 & 15))
                .append(HEX.charAt(c >> 4 & 15))
                .append(HEX.charAt(c & 15));
    }
}
