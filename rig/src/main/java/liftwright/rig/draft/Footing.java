package liftwright.rig.draft;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Change;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.RigPath;

/**
 * Whether changes that were thought out on one text mean the same on another: what they name must
 * still be there, and an entry that is only counted must still have its number.
 */
final class Footing {

    private Footing() {}

    /**
     * Why the changes cannot be made on {@code now}; empty if nothing stands against it.
     *
     * @param base what they were made on, where that is known
     */
    static Optional<String> objection(
            Optional<Declaration> base, Declaration now, List<Change> changes) {
        return changes.stream()
                .flatMap(change -> objection(base, now, change).stream())
                .findFirst();
    }

    /**
     * Whether somebody else changed a value that these changes change too, and not to the same:
     * made on top, they would take back what stands there now.
     *
     * @param base what they were made on
     * @param mine what they made of it
     */
    static boolean clash(
            Declaration base, Declaration mine, Declaration now, List<Change> changes) {
        return changes.stream()
                .map(Change::at)
                .anyMatch(
                        at -> {
                            var here = now.at(at);
                            return !here.equals(base.at(at)) && !here.equals(mine.at(at));
                        });
    }

    private static Optional<String> objection(
            Optional<Declaration> base, Declaration now, Change change) {
        var segments = change.at().segments();
        // What a change may make by itself need not be there: the last step of what is set.
        int needed = change instanceof Change.Set ? segments.size() - 1 : segments.size();
        Tree then = base.map(Declaration::root).orElse(null);
        Tree here = now.root();
        for (int depth = 0; depth < segments.size(); depth++) {
            String segment = segments.get(depth);
            var path = new RigPath(segments.subList(0, depth + 1));
            boolean sure = then != null;
            if (here instanceof Tree.Items items
                    && then instanceof Tree.Items before
                    && isCounted(before, segment)
                    && hasMoved(before, items, segment)) {
                return Optional.of(
                        "The list that holds "
                                + path
                                + " has changed meanwhile, and its entries are known by their"
                                + " number only.");
            }
            Tree nextThen = then == null ? null : child(then, segment).orElse(null);
            var next = child(here, segment);
            if (next.isEmpty()) {
                boolean expected = sure ? nextThen != null : depth < needed;
                return expected
                        ? Optional.of("There is no " + path + " any more.")
                        : Optional.empty();
            }
            here = next.get();
            then = nextThen;
        }
        return Optional.empty();
    }

    private static Optional<Tree> child(Tree tree, String segment) {
        return new Declaration(tree).at(RigPath.of(segment));
    }

    private static boolean isCounted(Tree.Items list, String segment) {
        return child(list, segment)
                .filter(
                        entry ->
                                !(entry instanceof Tree.Entries(var byKey)
                                        && new Tree.Text(segment).equals(byKey.get("id"))))
                .isPresent();
    }

    private static boolean hasMoved(Tree.Items before, Tree.Items now, String segment) {
        if (before.items().size() != now.items().size()) {
            return true;
        }
        var then = child(before, segment);
        return !then.equals(child(now, segment)) && then.filter(now.items()::contains).isPresent();
    }
}
