package liftwright.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines for a terminal: everything is escaped, wrapped at spaces and never wider than the look
 * allows. The only way out of this room as text.
 */
final class Paper {

    /** Colour that repeats what the words beside it say. */
    enum Ink {
        PLAIN(""),
        STRONG("\u001b[1m"),
        STOPS("\u001b[1;31m"),
        WARNS("\u001b[1;33m"),
        FAINT("\u001b[2m");

        private final String code;

        Ink(String code) {
            this.code = code;
        }
    }

    private static final String END = "\u001b[0m";

    private final Look look;
    private final Door door;
    private final StringBuilder out = new StringBuilder();

    Paper(Look look) {
        this.look = look;
        this.door = new Door(look.ascii());
    }

    int columns() {
        return look.columns();
    }

    /** As it will be written: for whoever sets columns. */
    String plain(String text) {
        return door.plain(text);
    }

    void blank() {
        out.append('\n');
    }

    void heading(String text) {
        blank();
        block(0, 0, Ink.STRONG, text);
    }

    void text(int indent, String text) {
        block(indent, indent, Ink.PLAIN, text);
    }

    /** A word in the margin and text beside it, which stays beside it when it wraps. */
    void beside(int indent, String word, int textIndent, String text) {
        beside(indent, Ink.PLAIN, word, textIndent, text);
    }

    void beside(int indent, Ink ink, String word, int textIndent, String text) {
        String margin = " ".repeat(indent) + door.plain(word);
        List<String> lines = wrapped(door.plain(text), textIndent, textIndent);
        if (Columns.of(margin) >= textIndent) {
            block(indent, indent, ink, word);
        } else {
            String first = lines.removeFirst().substring(textIndent);
            String gap = " ".repeat(textIndent - Columns.of(margin));
            write(coloured(ink, margin) + gap + first);
        }
        lines.forEach(this::write);
    }

    /**
     * @param indent of the first line
     * @param hanging indent of the others
     */
    void block(int indent, int hanging, Ink ink, String text) {
        wrapped(door.plain(text), indent, hanging).forEach(line -> write(coloured(ink, line)));
    }

    /** A line that was set by columns and already fits: a bar in it may be longer than any word. */
    void set(String line) {
        write(door.escaped(line));
    }

    @Override
    public String toString() {
        return out.toString();
    }

    private void write(String line) {
        out.append(line.replace(Door.NO_BREAK_SPACE, ' ').stripTrailing()).append('\n');
    }

    private String coloured(Ink ink, String text) {
        return look.colour() && ink != Ink.PLAIN ? ink.code + text + END : text;
    }

    private List<String> wrapped(String text, int indent, int hanging) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder(" ".repeat(indent));
        int used = indent;
        boolean empty = true;
        for (String word : text.split(" ", -1)) {
            String rest = word;
            int needed = Columns.of(rest) + (empty ? 0 : 1);
            if (!empty && used + needed > look.columns()) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(hanging));
                used = hanging;
                empty = true;
            }
            while (used + Columns.of(rest) > look.columns() && !rest.isEmpty()) {
                int cut = Columns.fitting(rest, look.columns() - used);
                lines.add(line.append(rest, 0, cut).toString());
                rest = rest.substring(cut);
                line = new StringBuilder(" ".repeat(hanging));
                used = hanging;
            }
            if (!empty) {
                line.append(' ');
                used++;
            }
            line.append(rest);
            used += Columns.of(rest);
            empty = false;
        }
        lines.add(line.toString());
        return lines;
    }
}
