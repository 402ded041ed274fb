package liftwright.rig.revision;

import java.util.stream.Collectors;
import liftwright.rig.Declaration.Tree;

/** A value of the file in one line, long ones cut. */
final class Shown {

    private static final int MOST = 160;

    private Shown() {}

    static String of(Tree tree) {
        String whole = whole(tree);
        return whole.length() <= MOST ? whole : whole.substring(0, MOST - 1) + "…";
    }

    private static String whole(Tree tree) {
        return switch (tree) {
            case Tree.Text(var text) -> text;
            case Tree.Items(var items) ->
                    items.stream().map(Shown::whole).collect(Collectors.joining(", ", "[", "]"));
            case Tree.Entries(var byKey) ->
                    byKey.entrySet().stream()
                            .map(entry -> entry.getKey() + ": " + whole(entry.getValue()))
                            .collect(Collectors.joining(", ", "{", "}"));
        };
    }
}
