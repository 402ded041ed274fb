package liftwright.rig.csv;

import java.util.List;

/**
 * One line of a table that is no comment.
 *
 * @param number from 1
 * @param end column after its last character
 * @param cells at least one
 */
record Line(int number, int end, List<Cell> cells) {
    Line {
        cells = List.copyOf(cells);
    }
}
