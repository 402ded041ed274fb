package liftwright.logbook.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;

/** Gathers what is wrong with one log. */
final class LogFaults {

    /** So many are told; a file with more is of another kind altogether. */
    private static final int MOST = 50;

    private final String file;
    private final List<Problem> found = new ArrayList<>();

    LogFaults(String file) {
        this.file = file;
    }

    /**
     * @param column from 1, in code points
     * @param path the head concerned, or empty
     */
    void add(
            Code code,
            long line,
            int column,
            String path,
            String what,
            String expected,
            String advice) {
        if (found.size() < MOST) {
            var place =
                    new Problem.Place(file, (int) Math.min(line, Integer.MAX_VALUE), column, path);
            found.add(new Problem(code, place, what, expected, advice));
        }
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    List<Problem> inOrder() {
        return found.stream()
                .sorted(
                        Comparator.comparingInt((Problem p) -> p.at().line())
                                .thenComparingInt(p -> p.at().column()))
                .toList();
    }
}
