package liftwright.rig.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.rig.Change;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.RigPath;

/**
 * Changes applied in memory. A value of {@link Change.Set} is a text as it is; values of {@link
 * Change.Add} and {@link Change.Replace} that begin with a brace or a bracket are flow collections
 * in one line, others are texts as they are.
 */
public final class Edits {

    private Edits() {}

    /** {@code before} with {@code change} made, or why it cannot be made. */
    public static Edited apply(Declaration before, Change change) {
        if (change.at().segments().size() > YamlText.MOST_DEPTH) {
            return new Edited.Refused(
                    "No path has more than " + YamlText.MOST_DEPTH + " segments.");
        }
        try {
            return new Edited.Done(new Declaration(edit(before.root(), change.at(), 0, change)));
        } catch (Refusal refusal) {
            return new Edited.Refused(refusal.reason);
        }
    }

    /** Leaves the recursion; never leaves this class. */
    @SuppressWarnings("serial")
    private static final class Refusal extends RuntimeException {
        final String reason;

        Refusal(String reason) {
            super(reason, null, false, false);
            this.reason = reason;
        }
    }

    /** The tree with the change made below it; {@code depth} segments lead to it. */
    private static Tree edit(Tree tree, RigPath path, int depth, Change change) {
        var segments = path.segments();
        if (depth == segments.size()) {
            return switch (change) {
                case Change.Set(var _, var value) -> set(tree, path, value);
                case Change.Add(var _, var key, var value) -> add(tree, path, key, value);
                case Change.Replace(var _, var value) when depth > 0 -> value(value);
                case Change.Replace _, Change.Remove _, Change.Move _ ->
                        throw new Refusal("The whole file can only be changed entry by entry.");
            };
        }
        String segment = segments.get(depth);
        boolean last = depth + 1 == segments.size();
        return switch (tree) {
            case Tree.Entries(var byKey) -> {
                var edited = new LinkedHashMap<>(byKey);
                Tree value = byKey.get(segment);
                if (value == null) {
                    edited.put(segment, create(path, depth + 1, change));
                } else if (last && change instanceof Change.Remove) {
                    edited.remove(segment);
                } else if (last && change instanceof Change.Move) {
                    throw new Refusal(path + " is no entry of a list: only those move.");
                } else {
                    edited.put(segment, edit(value, path, depth + 1, change));
                }
                yield new Tree.Entries(Collections.unmodifiableMap(edited));
            }
            case Tree.Items list -> {
                int index = Segments.indexIn(list, segment);
                if (index < 0) {
                    throw new Refusal(absent(path, depth + 1));
                }
                var edited = new ArrayList<>(list.items());
                if (last && change instanceof Change.Remove) {
                    edited.remove(index);
                } else if (last && change instanceof Change.Move(var _, var to)) {
                    if (to < 0 || to >= edited.size()) {
                        throw new Refusal("The list has no position " + to + ".");
                    }
                    edited.add(to, edited.remove(index));
                } else {
                    edited.set(index, edit(edited.get(index), path, depth + 1, change));
                }
                yield new Tree.Items(List.copyOf(edited));
            }
            case Tree.Text(var text) -> {
                if (!text.isEmpty()) {
                    throw new Refusal(
                            new RigPath(segments.subList(0, depth))
                                    + " is a text: nothing can stand below it.");
                }
                yield new Tree.Entries(Map.of(segment, create(path, depth + 1, change)));
            }
        };
    }

    /** A value for the missing key in front of {@code depth}, with the maps on the way. */
    private static Tree create(RigPath path, int depth, Change change) {
        checkKey(path.segments().get(depth - 1));
        if (depth < path.segments().size()) {
            return new Tree.Entries(
                    Map.of(path.segments().get(depth), create(path, depth + 1, change)));
        }
        return switch (change) {
            case Change.Set(var _, var value) -> new Tree.Text(oneLine(value));
            case Change.Add(var _, var key, var value) -> first(key, value);
            case Change.Replace _, Change.Remove _, Change.Move _ ->
                    throw new Refusal(absent(path, depth));
        };
    }

    private static Tree set(Tree tree, RigPath path, String value) {
        return switch (tree) {
            case Tree.Text _ -> new Tree.Text(oneLine(value));
            case Tree.Entries _, Tree.Items _ ->
                    throw new Refusal(path + " holds more than one text: it cannot be set to one.");
        };
    }

    private static Tree add(Tree tree, RigPath path, String key, String value) {
        return switch (tree) {
            case Tree.Entries(var byKey) -> {
                checkKey(key);
                if (byKey.containsKey(key)) {
                    throw new Refusal(path.child(key) + " is there already.");
                }
                var edited = new LinkedHashMap<>(byKey);
                edited.put(key, value(value));
                yield new Tree.Entries(Collections.unmodifiableMap(edited));
            }
            case Tree.Items(var items) -> {
                var edited = new ArrayList<>(items);
                edited.add(value(value));
                yield new Tree.Items(List.copyOf(edited));
            }
            case Tree.Text(var text) -> {
                if (!text.isEmpty()) {
                    throw new Refusal(path + " is a text: nothing can be added to it.");
                }
                yield first(key, value);
            }
        };
    }

    /** The first entry makes the collection: a map if it has a key. */
    private static Tree first(String key, String value) {
        if (key.isEmpty()) {
            return new Tree.Items(List.of(value(value)));
        }
        checkKey(key);
        return new Tree.Entries(Map.of(key, value(value)));
    }

    private static Tree value(String text) {
        return switch (FlowValue.read(text)) {
            case FlowValue.Good(var tree) -> tree;
            case FlowValue.Bad(var reason) -> throw new Refusal(reason);
        };
    }

    private static String oneLine(String value) {
        if (FlowValue.barred(value)) {
            throw new Refusal("A value stands in one line and holds no invisible characters.");
        }
        return value;
    }

    private static void checkKey(String key) {
        if (key.isEmpty() || key.equals("<<") || key.indexOf('/') >= 0 || FlowValue.barred(key)) {
            throw new Refusal(Excerpt.of(key) + " cannot be a key.");
        }
    }

    private static String absent(RigPath path, int depth) {
        return "There is no " + new RigPath(path.segments().subList(0, depth)) + ".";
    }
}
