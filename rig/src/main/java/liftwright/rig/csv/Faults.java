package liftwright.rig.csv;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;

/**
 * Gathers what is wrong with one table. Of the same fault in the same column the first {@value
 * #MOST_ALIKE} are told one by one and the others counted: a wrong column is wrong in every row.
 */
final class Faults {

    static final int MOST_ALIKE = 20;

    private final String file;
    private final List<Problem> found = new ArrayList<>();
    private final Map<String, Alike> alike = new HashMap<>();

    /** How often a fault came, and where the first that was not told stands. */
    private static final class Alike {
        int count;
        int line;
        int column;
    }

    Faults(String file) {
        this.file = file;
    }

    void add(Code code, Cell at, String name, String what, String expected, String advice) {
        add(code, at.line(), at.column(), name, what, expected, advice);
    }

    void add(
            Code code,
            int line,
            int column,
            String name,
            String what,
            String expected,
            String advice) {
        Alike same = alike.computeIfAbsent(code + "/" + name, _ -> new Alike());
        same.count++;
        if (same.count == MOST_ALIKE + 1) {
            same.line = line;
            same.column = column;
        }
        if (same.count <= MOST_ALIKE) {
            found.add(
                    new Problem(
                            code,
                            new Problem.Place(file, line, column, name),
                            what,
                            expected,
                            advice));
        }
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** All of them in the order of the file. */
    List<Problem> inOrder() {
        var all = new ArrayList<>(found);
        alike.forEach(
                (key, same) -> {
                    if (same.count > MOST_ALIKE) {
                        int slash = key.indexOf('/');
                        all.add(
                                new Problem(
                                        Code.valueOf(key.substring(0, slash)),
                                        new Problem.Place(
                                                file,
                                                same.line,
                                                same.column,
                                                key.substring(slash + 1)),
                                        (same.count - MOST_ALIKE) + " more like those before",
                                        "what was expected there",
                                        ""));
                    }
                });
        all.sort(
                Comparator.comparingInt((Problem p) -> p.at().line())
                        .thenComparingInt(p -> p.at().column()));
        return all;
    }
}
