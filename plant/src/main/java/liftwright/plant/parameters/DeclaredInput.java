package liftwright.plant.parameters;

import java.util.List;
import liftwright.rig.RigPath;

/**
 * One value of the rig file that is in doubt: what a builder would measure to learn more.
 *
 * @param at where it is declared
 * @param label what it is, in words
 * @param rows the parameters that are drawn from it: one if shared, one per part if each
 */
public record DeclaredInput(RigPath at, String label, List<Integer> rows) {

    public DeclaredInput {
        rows = List.copyOf(rows);
    }
}
