package liftwright.rig.revision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.RigPath;
import liftwright.rig.revision.FileChange.Kind;

/**
 * What changed from one revision of a rig file to another: each place once, in the order of the
 * first file, what the second adds where it stands among its neighbours. Entries of lists are known
 * by their ids, so that a part that comes first changes no other. Layout and comments count for
 * nothing.
 */
public final class FileChanges {

    private final List<FileChange> found = new ArrayList<>();

    private FileChanges() {}

    /** Empty where both say the same. */
    public static List<FileChange> between(Declaration before, Declaration after) {
        var changes = new FileChanges();
        changes.tree(new RigPath(List.of()), before.root(), after.root());
        return List.copyOf(changes.found);
    }

    private void tree(RigPath at, Tree before, Tree after) {
        if (before.equals(after)) {
            return;
        }
        if (before instanceof Tree.Entries(var was) && after instanceof Tree.Entries(var is)) {
            entries(at, was, is);
        } else if (before instanceof Tree.Items(var was)
                && after instanceof Tree.Items(var is)
                && named(was).isPresent()
                && named(is).isPresent()) {
            entries(at, named(was).get(), named(is).get());
            order(at, named(was).get().keySet(), named(is).get().keySet());
        } else if (before instanceof Tree.Items(var was)
                && after instanceof Tree.Items(var is)
                && was.size() == is.size()
                && was.stream().noneMatch(Tree.Text.class::isInstance)) {
            for (int k = 0; k < was.size(); k++) {
                tree(at.child(Integer.toString(k + 1)), was.get(k), is.get(k));
            }
        } else {
            String from = Shown.of(before);
            String to = Shown.of(after);
            found.add(
                    new FileChange(
                            at, SameAmount.is(from, to) ? Kind.REWORDED : Kind.CHANGED, from, to));
        }
    }

    private void entries(RigPath at, Map<String, Tree> before, Map<String, Tree> after) {
        for (String key : inOrder(before.keySet(), after.keySet())) {
            Tree was = before.get(key);
            Tree is = after.get(key);
            RigPath here = at.child(key);
            if (was == null && is != null) {
                found.add(new FileChange(here, Kind.ADDED, "", Shown.of(is)));
            } else if (was != null && is == null) {
                found.add(new FileChange(here, Kind.REMOVED, Shown.of(was), ""));
            } else if (was != null && is != null) {
                tree(here, was, is);
            }
        }
    }

    /** Keys of the first in their order, each new one behind the one that it follows. */
    private static List<String> inOrder(Set<String> before, Set<String> after) {
        List<String> keys = new ArrayList<>(before);
        int place = 0;
        for (String key : after) {
            int known = keys.indexOf(key);
            if (known >= 0) {
                place = known + 1;
            } else {
                keys.add(place++, key);
            }
        }
        return keys;
    }

    private void order(RigPath at, Set<String> before, Set<String> after) {
        Set<String> was = new LinkedHashSet<>(before);
        was.retainAll(after);
        Set<String> is = new LinkedHashSet<>(after);
        is.retainAll(before);
        if (!List.copyOf(was).equals(List.copyOf(is))) {
            found.add(
                    new FileChange(
                            at, Kind.REORDERED, String.join(", ", was), String.join(", ", is)));
        }
    }

    /** Items by their ids; empty where one has none, or two have the same. */
    private static Optional<Map<String, Tree>> named(List<Tree> items) {
        Map<String, Tree> byId = new LinkedHashMap<>();
        for (Tree item : items) {
            if (!(item instanceof Tree.Entries(var byKey))
                    || !(byKey.get("id") instanceof Tree.Text(var id))
                    || byId.put(id, item) != null) {
                return Optional.empty();
            }
        }
        return Optional.of(byId);
    }
}
