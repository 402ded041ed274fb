package liftwright.rig.text;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.rig.Problem;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/**
 * Makes the tree from the parser's events, one at a time and without recursion, so that depth and
 * size are checked before anything grows and what was read before an error is kept.
 */
final class TreeBuilder {

    private final Source source;
    private final List<Located> problems = new ArrayList<>();
    private final Deque<Frame> open = new ArrayDeque<>();
    private @Nullable Node root;
    private int documents;
    private String lastPath = "";
    private int nodes;

    TreeBuilder(Source source) {
        this.source = source;
    }

    /** An open map or list. */
    private static final class Frame {
        final boolean map;
        final int start;

        /** Not part of the tree: a key that is a collection. */
        final boolean discarded;

        final Map<String, Node.Entry> entries = new LinkedHashMap<>();
        final List<Node> items = new ArrayList<>();
        int begun;
        @Nullable String key;
        @Nullable Span keySpan;

        Frame(boolean map, int start, boolean discarded) {
            this.map = map;
            this.start = start;
            this.discarded = discarded;
        }

        boolean wantsKey() {
            return map && keySpan == null;
        }

        /** The id that this map has given so far. */
        @Nullable String id() {
            Node.Entry id = entries.get("id");
            return id != null && id.value() instanceof Node.Scalar(var value, var _, var _)
                    ? value
                    : null;
        }
    }

    List<Located> problems() {
        return problems;
    }

    @Nullable Node root() {
        return root;
    }

    /** Takes the next event; false when the rest is not to be read. */
    boolean take(Event event) {
        return switch (event) {
            case DocumentStartEvent document -> startDocument(document);
            case AliasEvent alias -> takeAlias(alias);
            case ScalarEvent scalar -> takeScalar(scalar);
            case CollectionStartEvent start -> startCollection(start);
            case CollectionEndEvent end -> {
                close(to(end));
                yield true;
            }
            // the ends of documents and of the stream; comments are not asked for
            default -> true;
        };
    }

    /** Closes what an error left open. */
    void closeAll() {
        while (!open.isEmpty()) {
            close(-1);
        }
    }

    /** Where reading stands, as a path in print. */
    String path() {
        return String.join("/", segments());
    }

    /** The path of the map or list that is being read. */
    String pathOfOpen() {
        var segments = segments();
        Frame frame = open.peek();
        if (frame != null && (!frame.map || frame.key != null)) {
            segments.removeLast();
        }
        return String.join("/", segments);
    }

    /** The path of the text read last. */
    String lastPath() {
        return lastPath;
    }

    private List<String> segments() {
        var segments = new ArrayList<String>();
        boolean listed = false;
        for (Iterator<Frame> frames = open.descendingIterator(); frames.hasNext(); ) {
            Frame frame = frames.next();
            String id = frame.id();
            if (listed && id != null) {
                segments.set(segments.size() - 1, id);
            }
            if (!frame.map) {
                segments.add(Integer.toString(Math.max(1, frame.begun)));
            } else if (frame.key != null) {
                segments.add(frame.key);
            }
            listed = !frame.map;
        }
        return segments;
    }

    private boolean startDocument(DocumentStartEvent document) {
        documents++;
        if (documents > 1) {
            refuse(from(document), "`---` and a second document", "one document in a file");
            return false;
        }
        int line = source.lines().indexOf(from(document));
        int last = source.lines().indexOf(to(document));
        for (; line < last; line++) {
            int start = source.lines().start(line);
            if (source.text().startsWith("%", start) && !source.blankLine(line)) {
                refuse(start, "a YAML directive", "no directives");
            }
        }
        return true;
    }

    private boolean takeAlias(AliasEvent alias) {
        begin();
        refuse(
                from(alias),
                "the alias *" + alias.getAlias().getValue(),
                "the value itself; aliases are not read");
        drop();
        return true;
    }

    private boolean takeScalar(ScalarEvent scalar) {
        int from = from(scalar);
        int to = to(scalar);
        if (!count(from)) {
            return false;
        }
        begin();
        refuseExtras(scalar.getAnchor().orElse(null), scalar.getTag().orElse(null), from);
        if (!scalar.isPlain() && !scalar.isSQuoted() && !scalar.isDQuoted()) {
            to = withoutBlanksAtEnd(from, to); // the mark of a block of lines runs to what follows
        }
        String value = scalar.getValue();
        barInvisible(value, from);
        Frame frame = open.peek();
        if (frame != null && frame.wantsKey()) {
            takeKey(frame, value, source.lines().span(from, to));
        } else {
            lastPath = path();
            put(new Node.Scalar(value, !scalar.isPlain(), source.lines().span(from, to)));
        }
        return true;
    }

    private void takeKey(Frame frame, String key, Span span) {
        frame.keySpan = span;
        if (frame.discarded) {
            return;
        }
        Node.Entry first = frame.entries.get(key);
        int before = span.from();
        while (before > 0 && source.text().charAt(before - 1) == ' ') {
            before--;
        }
        if (before < span.from() && before > 0 && source.text().charAt(before - 1) == '?') {
            refuse(before - 1, "a key behind `?`", "`key: value`");
        } else if (key.equals("<<")) {
            refuse(span.from(), "the merge key <<", "the entries themselves");
        } else if (key.isEmpty()) {
            refuse(span.from(), "a key without a name", "`key: value`");
        } else if (key.indexOf('/') >= 0) {
            report(
                    Problem.Code.BAD_ID,
                    span.from(),
                    "a slash in the key " + Excerpt.of(key),
                    "keys without slashes",
                    "Slashes join keys to paths; write a dash or a blank.");
        } else if (first != null) {
            report(
                    Problem.Code.DUPLICATE_KEY,
                    span.from(),
                    Excerpt.of(key) + " for a second time",
                    "each key once in a map",
                    "The first stands in line " + first.keySpan().line() + "; keep one of them.");
        } else {
            frame.key = key;
        }
    }

    private boolean startCollection(CollectionStartEvent start) {
        int from = from(start);
        if (!count(from)) {
            return false;
        }
        begin();
        if (open.size() == YamlText.MOST_DEPTH) {
            report(
                    Problem.Code.TOO_DEEP,
                    from,
                    "maps and lists nested more than " + YamlText.MOST_DEPTH + " deep",
                    "at most " + YamlText.MOST_DEPTH + " levels",
                    "");
            return false;
        }
        refuseExtras(start.getAnchor().orElse(null), start.getTag().orElse(null), from);
        Frame parent = open.peek();
        boolean key = parent != null && parent.wantsKey();
        if (key) {
            refuse(from, "a map or a list as a key", "a key that is a single text");
        }
        boolean discarded = key || (parent != null && parent.discarded);
        open.push(new Frame(start instanceof MappingStartEvent, from, discarded));
        return true;
    }

    /**
     * @param end offset behind the closing token; negative when an error closes
     */
    private void close(int end) {
        Frame frame = open.pop();
        Frame parent = open.peek();
        if (frame.discarded) {
            if (parent != null && !parent.discarded && parent.wantsKey()) {
                parent.keySpan = source.lines().span(frame.start, frame.start);
            } else if (parent != null) {
                drop();
            }
            return;
        }
        int to = frame.start;
        if (frame.map) {
            for (var entry : frame.entries.values()) {
                to = Math.max(to, Math.max(afterColon(entry), entry.value().span().to()));
            }
        } else {
            for (var item : frame.items) {
                to = Math.max(to, item.span().to());
            }
        }
        char first = frame.start < source.text().length() ? source.text().charAt(frame.start) : 0;
        // A pair in a flow list, [a: 1], is a map without braces.
        if (end >= 0 && first == (frame.map ? '{' : '[')) {
            to = end;
        }
        var span = source.lines().span(frame.start, to);
        put(
                frame.map
                        ? new Node.Entries(List.copyOf(frame.entries.values()), span)
                        : new Node.Items(frame.items, span));
    }

    private static int afterColon(Node.Entry entry) {
        return Math.max(entry.keySpan().to(), entry.value().span().from());
    }

    /** Counts the entries of a list as they begin. */
    private void begin() {
        Frame frame = open.peek();
        if (frame != null && !frame.map) {
            frame.begun++;
        }
    }

    private void put(Node node) {
        Frame frame = open.peek();
        if (frame == null) {
            root = node;
        } else if (!frame.map) {
            frame.items.add(node);
        } else {
            if (frame.key != null && frame.keySpan != null) {
                frame.entries.put(frame.key, new Node.Entry(frame.key, frame.keySpan, node));
            }
            drop();
        }
    }

    /** Leaves the value that is due out of the tree. */
    private void drop() {
        Frame frame = open.peek();
        if (frame != null && frame.map) {
            if (frame.keySpan == null) {
                frame.keySpan = source.lines().span(frame.start, frame.start);
                return; // the key itself was dropped: its value follows
            }
            frame.key = null;
            frame.keySpan = null;
        }
    }

    private boolean count(int from) {
        if (++nodes <= YamlText.MOST_NODES) {
            return true;
        }
        report(
                Problem.Code.TOO_LARGE,
                from,
                "more than " + YamlText.MOST_NODES + " keys and values",
                "fewer",
                "Keep measured tables in files of their own.");
        return false;
    }

    private void refuseExtras(@Nullable Anchor anchor, @Nullable String tag, int from) {
        if (anchor != null) {
            refuse(from, "the anchor &" + anchor.getValue(), "the value alone");
        }
        if (tag != null) {
            refuse(from, "a YAML tag", "the value alone");
        }
    }

    private void barInvisible(String value, int from) {
        value.codePoints()
                .filter(Characters::barredInValues)
                .findFirst()
                .ifPresent(
                        c -> {
                            int raw = source.text().indexOf(Character.toString(c), from);
                            boolean here = raw >= 0 && raw - from <= value.length() + 2;
                            report(
                                    Problem.Code.NOT_TEXT,
                                    here ? raw : from,
                                    Characters.name(c),
                                    "text that reads as it shows",
                                    "Take it out; it hides what is really read.");
                        });
    }

    private void refuse(int offset, String found, String expected) {
        report(
                Problem.Code.NOT_ALLOWED_IN_RIG_FILES,
                offset,
                found,
                expected,
                "Rig files use plain maps, lists and texts only.");
    }

    private void report(
            Problem.Code code, int offset, String found, String expected, String advice) {
        problems.add(new Located(code, offset, path(), found, expected, advice));
    }

    private int withoutBlanksAtEnd(int from, int to) {
        int end = to;
        while (end > from && source.text().charAt(end - 1) <= ' ') {
            end--;
        }
        return end;
    }

    private int from(Event event) {
        return source.offset(event.getStartMark().orElseThrow().getIndex());
    }

    private int to(Event event) {
        return source.offset(event.getEndMark().orElseThrow().getIndex());
    }
}
