package liftwright.plant.body;

import java.util.Optional;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.RigPath;

/**
 * Which of several possible keys the builder used. Records hold values only; where one declaration
 * serves two sides, its error serves both too.
 */
final class DeclaredKeys {

    private final Declaration declaration;

    DeclaredKeys(Declaration declaration) {
        this.declaration = declaration;
    }

    /** Whether something is declared at the path; lists are not looked into. */
    boolean has(RigPath path) {
        return at(path).isPresent();
    }

    /** The text of the scalar at the path; empty for anything else. */
    Optional<String> text(RigPath path) {
        return at(path).flatMap(DeclaredKeys::text);
    }

    private static Optional<String> text(Tree tree) {
        return switch (tree) {
            case Tree.Text(var value) -> Optional.of(value);
            case Tree.Entries _, Tree.Items _ -> Optional.empty();
        };
    }

    private Optional<Tree> at(RigPath path) {
        Optional<Tree> tree = Optional.of(declaration.root());
        for (String key : path.segments()) {
            tree = tree.flatMap(each -> child(each, key));
        }
        return tree;
    }

    private static Optional<Tree> child(Tree tree, String key) {
        return switch (tree) {
            case Tree.Entries(var byKey) -> Optional.ofNullable(byKey.get(key));
            case Tree.Items _, Tree.Text _ -> Optional.empty();
        };
    }

    /** The first of the keys that is declared under the path, or the first at all. */
    RigPath firstOf(RigPath path, String... keys) {
        for (String key : keys) {
            if (has(path.child(key))) {
                return path.child(key);
            }
        }
        return path.child(keys[0]);
    }
}
