package liftwright.rig.text;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;

/**
 * What came of reading a text. Values near a problem are missing from the tree, so what a later
 * check misses may be there but unread.
 *
 * @param text the text, character by character as in the file, byte order mark included
 * @param root its tree, as far as it could be read; empty when there is nothing to go on with
 * @param problems all that is wrong with it as YAML, in the order of the file
 */
public record Reading(String text, Optional<Node> root, List<Problem> problems) {
    public Reading {
        problems = List.copyOf(problems);
    }
}
