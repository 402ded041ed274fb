package liftwright.rig;

import java.util.List;
import java.util.Map;

/**
 * What a rig file says, without layout, comments or places: the tree that changes are applied to
 * and that rigs are made from. Two files that say the same in other words of layout have equal
 * declarations.
 *
 * @param root the whole file
 */
public record Declaration(Tree root) {

    /** A value of the file: a map in order, a list, or a text. */
    public sealed interface Tree {
        record Entries(Map<String, Tree> byKey) implements Tree {}

        record Items(List<Tree> items) implements Tree {}

        record Text(String value) implements Tree {}
    }
}
