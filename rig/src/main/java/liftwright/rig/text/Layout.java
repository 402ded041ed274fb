package liftwright.rig.text;

/**
 * What the tree does not say about a text: dashes, colons, comments and line endings. The parser's
 * end marks run to the next token and swallow comments, so ends come from the last scalar, and what
 * belongs to an entry is found in the lines.
 */
final class Layout {

    private final String text;
    private final Lines lines;

    Layout(String text) {
        this.text = text;
        this.lines = new Lines(text);
    }

    Lines lines() {
        return lines;
    }

    boolean flow(Node node) {
        return switch (node) {
            case Node.Entries map -> at(map.span().from()) == '{';
            case Node.Items list -> at(list.span().from()) == '[';
            case Node.Scalar _ -> false;
        };
    }

    /** Whether the last node of the trail or one above it stands in brackets. */
    boolean inFlow(Trail trail) {
        return trail.nodes().stream().anyMatch(this::flow);
    }

    boolean blockOfLines(Node.Scalar scalar) {
        char first = at(scalar.span().from());
        return scalar.quoted() && (first == '|' || first == '>');
    }

    /** The character at {@code offset}, or a line feed behind the end. */
    char at(int offset) {
        return offset >= 0 && offset < text.length() ? text.charAt(offset) : '\n';
    }

    /** Offset behind the colon of an entry; −1 for a key that stands alone. */
    int afterColon(Node.Entry entry) {
        int at = entry.keySpan().to();
        while (at(at) == ' ' || at(at) == '\t') {
            at++;
        }
        return at(at) == ':' ? at + 1 : -1;
    }

    /** Offset behind the last character of an entry. */
    int end(Node.Entry entry) {
        int colon = afterColon(entry);
        boolean nothing = entry.value().span().from() == entry.value().span().to();
        return nothing ? Math.max(colon, entry.keySpan().to()) : entry.value().span().to();
    }

    /** Offset of the dash of item {@code index} of a block list. */
    int dash(Node.Items list, int index) {
        if (index == 0) {
            return list.span().from();
        }
        int line = lines.indexOf(list.items().get(index - 1).span().to()) + 1;
        while (blankOrComment(line)) {
            line++;
        }
        return firstOn(line);
    }

    private boolean blankOrComment(int line) {
        int first = firstOn(line);
        return first == lines.end(line) ? line + 1 < lines.count() : at(first) == '#';
    }

    /** Offset of the first character of a line that is no blank. */
    int firstOn(int line) {
        int first = lines.start(line);
        while (first < lines.end(line) && (at(first) == ' ' || at(first) == '\t')) {
            first++;
        }
        return first;
    }

    /** Whether only blanks stand before {@code offset} in its line. */
    boolean beginsLine(int offset) {
        return firstOn(lines.indexOf(offset)) == offset;
    }

    /** Whether nothing but blanks and a comment follow {@code offset} in its line. */
    boolean endsLine(int offset) {
        int next = skipBlanks(offset);
        return next >= lines.end(lines.indexOf(offset)) || (at(next) == '#' && next > offset);
    }

    int skipBlanks(int offset) {
        int next = offset;
        while (at(next) == ' ' || at(next) == '\t') {
            next++;
        }
        return next;
    }

    int lastOnLine(int offset) {
        return lines.end(lines.indexOf(offset));
    }

    /**
     * Line, from 0, where the comments begin that the entry at {@code offset} owns: comment lines
     * directly above in its column. Its own line if there are none.
     */
    int ownedFrom(int offset) {
        int line = lines.indexOf(offset);
        int indent = offset - lines.start(line);
        int owned = line;
        while (owned > 0
                && at(firstOn(owned - 1)) == '#'
                && firstOn(owned - 1) < lines.end(owned - 1)
                && firstOn(owned - 1) - lines.start(owned - 1) == indent) {
            owned--;
        }
        return owned;
    }

    /** The line ending in use around {@code offset}. */
    String lineEnding(int offset) {
        for (int line = lines.indexOf(offset); line >= 0; line--) {
            String ending = text.substring(lines.end(line), lines.next(line));
            if (!ending.isEmpty()) {
                // a run of lone carriage returns would count as one
                return ending.startsWith("\r\n") ? "\r\n" : ending.substring(0, 1);
            }
        }
        int first = lines.end(0);
        return first < text.length() && text.startsWith("\r\n", first) ? "\r\n" : "\n";
    }

    /** Blanks up to the column of {@code span}. */
    static String indent(Span span) {
        return " ".repeat(span.column() - 1);
    }
}
