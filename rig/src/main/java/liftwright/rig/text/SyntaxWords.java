package liftwright.rig.text;

import liftwright.rig.Problem;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/**
 * Says in our words what the parser stumbled over, and which line spoils the rest. The parser
 * notices many slips late, so the place is looked for in the text.
 */
final class SyntaxWords {

    private static final String QUOTE = "Put a text that holds such characters in quotes.";
    private static final String ALIGN =
            "Keys of one map start in the same column; indent with blanks.";

    private final Source source;
    private final TreeBuilder builder;
    private String path;

    SyntaxWords(Source source, TreeBuilder builder) {
        this.source = source;
        this.builder = builder;
        this.path = builder.path();
    }

    Slip explain(MarkedYamlEngineException error) {
        String problem = error.getProblem() == null ? "" : error.getProblem();
        String context = error.getContext() == null ? "" : error.getContext();
        int at = error.getProblemMark().map(mark -> source.offset(mark.getIndex())).orElse(0);
        int opened = error.getContextMark().map(mark -> source.offset(mark.getIndex())).orElse(at);
        if (tabbed(at)) {
            return tab(at);
        }
        if (context.contains("flow mapping") || context.contains("flow sequence")) {
            return inBrackets(opened, at);
        }
        if (context.contains("quoted scalar")) {
            return inQuotes(problem, opened, at);
        }
        if (context.contains("anchor")
                || context.contains("alias")
                || context.contains("tag")
                || context.contains("directive")
                || problem.contains("directive")
                || problem.contains("tag handle")) {
            return extra(context.isEmpty() ? at : opened, at);
        }
        if (context.contains("block scalar")) {
            return slip(
                    opened,
                    at,
                    "a block of lines that does not begin well",
                    "`|` and the lines below it, indented",
                    QUOTE);
        }
        if (problem.startsWith("mapping values")) {
            return colon(at);
        }
        if (problem.startsWith("could not find expected ':'")) {
            return noColon(opened, at);
        }
        if (problem.startsWith("found character")) {
            return slip(
                    at,
                    at,
                    "a text that begins with " + Excerpt.of(character(at)),
                    "a value",
                    QUOTE);
        }
        if (problem.startsWith("sequence entries")) {
            return slip(
                    at,
                    at,
                    "a `-` behind a key",
                    "list entries in lines of their own, or `[a, b]`",
                    "Quote a value that begins with a dash and a blank.");
        }
        if (problem.startsWith("expected the node content")) {
            return slip(at, at, stands(at) + " where a value should stand", "a value", QUOTE);
        }
        if (problem.startsWith("expected <block end>")
                || problem.startsWith("expected '<document start>'")) {
            return misplaced(at);
        }
        return unknown(at);
    }

    /** For errors that bring no place. */
    Slip explainUnknown() {
        return unknown(0);
    }

    private Slip unknown(int at) {
        return slip(at, at, "text that is no YAML from here on", "YAML", QUOTE);
    }

    /** A tab before the first character of the line, in the way of the indentation. */
    private boolean tabbed(int at) {
        return firstTab(at) >= 0;
    }

    private int firstTab(int at) {
        int line = source.lines().indexOf(at);
        int start = source.lines().start(line);
        int indent = source.indent(line);
        int tab = source.text().indexOf('\t', start);
        return tab >= 0 && tab < start + indent && tab <= at && !source.blankLine(line) ? tab : -1;
    }

    private Slip tab(int at) {
        int tab = firstTab(at);
        return slip(
                tab,
                at,
                "a tab in the indentation",
                "blanks",
                "YAML does not say how wide a tab is; indent with blanks.");
    }

    private Slip inBrackets(int opened, int at) {
        boolean map = character(opened).equals("{");
        String open = map ? "`{`" : "`[`";
        String close = map ? "`}`" : "`]`";
        int lineOpened = source.lines().indexOf(opened);
        int lineNoticed = source.lines().indexOf(at);
        String other = map ? "]" : "}";
        if (character(at).equals(other)) {
            return slip(
                    at,
                    opened,
                    at,
                    "`" + other + "` where " + close + " should stand",
                    close,
                    open + " stands in line " + (lineOpened + 1) + ".");
        }
        path = builder.pathOfOpen();
        if (lineNoticed > lineOpened || at >= source.text().length()) {
            return slip(
                    opened,
                    opened,
                    at,
                    open + " that is not closed",
                    close + " at its end and commas between its entries",
                    "");
        }
        return slip(
                at,
                opened,
                at,
                stands(at) + " inside " + open + "…" + close,
                "a comma or " + close,
                "Commas part the entries; " + QUOTE);
    }

    private Slip inQuotes(String problem, int opened, int at) {
        if (problem.contains("end of stream") || problem.contains("document separator")) {
            return slip(
                    opened,
                    opened,
                    at,
                    "a quote that is never closed",
                    Excerpt.of(character(opened)) + " at the end of the text",
                    "");
        }
        return slip(
                at,
                opened,
                at,
                "a backslash with something that it does not go with",
                "one of the escapes of YAML",
                "Use single quotes, in which a backslash is a backslash.");
    }

    private Slip extra(int opened, int at) {
        String what = character(opened);
        var problem =
                new Located(
                        Problem.Code.NOT_ALLOWED_IN_RIG_FILES,
                        opened,
                        path,
                        "a value that begins with " + Excerpt.of(what),
                        "a plain text",
                        "Rig files know no anchors, aliases, tags or directives. " + QUOTE);
        return new Slip(problem, opened, at);
    }

    /** A colon that makes no key, because a value is under way. */
    private Slip colon(int at) {
        int line = source.lines().indexOf(at);
        String before = source.text().substring(source.lines().start(line), at);
        if (before.contains(": ")) {
            path = builder.lastPath();
            return slip(at, at, "a second `:` in one value", "one value behind the key", QUOTE);
        }
        int above = lineAbove(line);
        if (above >= 0 && !holdsColon(above)) {
            return noColon(source.lines().start(above) + source.indent(above), at);
        }
        path = builder.lastPath();
        int first = source.lines().start(line) + source.indent(line);
        return slip(
                first,
                at,
                "a key that is indented deeper than the value above it allows",
                "the column of its neighbours",
                ALIGN);
    }

    private Slip noColon(int offset, int at) {
        int line = source.lines().indexOf(offset);
        int first = source.lines().start(line) + source.indent(line);
        return slip(first, at, "a line without `: `", "`key: value`", "A blank follows the colon.");
    }

    private Slip misplaced(int at) {
        int line = source.lines().indexOf(at);
        int first = source.lines().start(line) + source.indent(line);
        if (source.text().startsWith("%", source.lines().start(lineOfDirective(line)))) {
            return extra(source.lines().start(lineOfDirective(line)), at);
        }
        if (at > first && !character(first).equals("-")) {
            return slip(at, at, stands(at) + " behind a value that is complete", "nothing", QUOTE);
        }
        String character = character(at);
        if (character.equals("}") || character.equals("]") || character.equals(",")) {
            return slip(at, at, stands(at) + " that belongs to nothing", "a key", "");
        }
        if (character.equals(":")) {
            return slip(at, at, "a `:` without a key", "`key: value`", "");
        }
        if (character.equals("-") && !holdsDash(lineAbove(line))) {
            return slip(at, at, "a list entry among keys", "a key in this column", ALIGN);
        }
        return slip(at, at, "a line in a column that fits no neighbour", "the same column", ALIGN);
    }

    private int lineOfDirective(int line) {
        int above = lineAbove(line);
        return above >= 0 ? above : line;
    }

    private int lineAbove(int line) {
        int above = line - 1;
        while (above >= 0 && (source.blankLine(above) || source.comment(above))) {
            above--;
        }
        return above;
    }

    private boolean holdsColon(int line) {
        String text = source.text().substring(source.lines().start(line), source.lines().end(line));
        return text.contains(": ") || text.endsWith(":");
    }

    private boolean holdsDash(int line) {
        return line >= 0
                && source.text().startsWith("-", source.lines().start(line) + source.indent(line));
    }

    private String stands(int at) {
        String character = character(at);
        return character.isBlank() ? "the end of the line" : Excerpt.of(character);
    }

    private String character(int at) {
        String text = source.text();
        return at < text.length() ? Character.toString(text.codePointAt(at)) : "";
    }

    private Slip slip(int place, int at, String found, String expected, String advice) {
        return slip(place, place, at, found, expected, advice);
    }

    private Slip slip(
            int place, int spoiled, int at, String found, String expected, String advice) {
        var problem = new Located(Problem.Code.SYNTAX, place, path, found, expected, advice);
        return new Slip(problem, spoiled, at);
    }
}
