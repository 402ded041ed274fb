package liftwright.rig.shape;

import java.util.Collection;

/** Writes indented JSON; enough for a schema, and no library needed in this room. */
final class JsonText {

    private final StringBuilder out = new StringBuilder();
    private int depth;
    private boolean first = true;

    /** Text of a JSON string with its quotes, RFC 8259. */
    static String quoted(String text) {
        var out = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                default -> {
                    if (c < ' ') {
                        out.append("\\u00")
                                .append(c < 16 ? "0" : "")
                                .append(Integer.toHexString(c));
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        return out.append('"').toString();
    }

    JsonText open(String key, char bracket) {
        key(key);
        return open(bracket);
    }

    JsonText open(char bracket) {
        out.append(bracket);
        depth++;
        first = true;
        return this;
    }

    JsonText close(char bracket) {
        depth--;
        if (!first) {
            newLine();
        }
        out.append(bracket);
        first = false;
        return this;
    }

    /** Begins an entry of a list. */
    JsonText item() {
        if (!first) {
            out.append(',');
        }
        newLine();
        first = false;
        return this;
    }

    JsonText text(String key, String value) {
        key(key);
        out.append(quoted(value));
        return this;
    }

    /** A value that is JSON already, such as a number. */
    JsonText raw(String key, String json) {
        key(key);
        out.append(json);
        return this;
    }

    /** An entry of a list that is JSON already. */
    JsonText json(String json) {
        out.append(json);
        return this;
    }

    JsonText texts(String key, Collection<String> values) {
        return raw(key, list(values));
    }

    static String list(Collection<String> values) {
        return values.stream()
                .map(JsonText::quoted)
                .collect(java.util.stream.Collectors.joining(", ", "[", "]"));
    }

    private void key(String key) {
        item();
        out.append(quoted(key)).append(": ");
    }

    private void newLine() {
        out.append('\n').append("  ".repeat(depth));
    }

    @Override
    public String toString() {
        return out + "\n";
    }
}
