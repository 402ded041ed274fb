package liftwright.learning.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;

/**
 * What several tests leave unknown, as independent standard normal numbers before anything was
 * measured: rows of the tables by their names, the same in all tests, and what was different from
 * test to test (the air, charge and temperature of packs), one for each test.
 */
final class Unknowns {

    /**
     * One of them.
     *
     * @param test whose own it is; −1 where all share it
     * @param row by test: place in its table, −1 where it has none
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Unknown(String name, String label, int test, int[] row) {}

    private final List<Unknown> all = new ArrayList<>();
    private final List<ParameterTable> tables;

    Unknowns(List<ParameterTable> tables) {
        this.tables = List.copyOf(tables);
        Map<String, Unknown> known = new LinkedHashMap<>();
        for (int t = 0; t < tables.size(); t++) {
            for (int k = 0; k < tables.get(t).size(); k++) {
                Parameter row = tables.get(t).rows().get(k);
                if (row.input() < 0) {
                    continue;
                }
                boolean own = isOfTheDay(row.name());
                String key = own ? t + "/" + row.name() : row.name();
                Unknown unknown = known.get(key);
                if (unknown == null) {
                    int[] rows = new int[tables.size()];
                    java.util.Arrays.fill(rows, -1);
                    unknown = new Unknown(row.name(), row.label(), own ? t : -1, rows);
                    known.put(key, unknown);
                }
                unknown.row[t] = k;
            }
        }
        all.addAll(known.values());
    }

    /** Whether a number is that of the day and not of the rig. */
    static boolean isOfTheDay(String name) {
        String path = name.substring(name.indexOf(": ") < 0 ? 0 : name.indexOf(": ") + 2);
        return path.startsWith("site/")
                || (path.startsWith("packs/")
                        && (path.endsWith("/charge") || path.endsWith("/temperature")));
    }

    int size() {
        return all.size();
    }

    Unknown get(int k) {
        return all.get(k);
    }

    /**
     * The vector of a test.
     *
     * @param z one number for each unknown
     */
    double[] vector(int test, double[] z) {
        ParameterTable table = tables.get(test);
        double[] deviates = new double[table.size()];
        for (int k = 0; k < all.size(); k++) {
            if (all.get(k).row[test] >= 0) {
                deviates[all.get(k).row[test]] = z[k];
            }
        }
        double[] p = new double[table.size()];
        table.at(deviates, p);
        return p;
    }

    /** Whether a vector of a test can be at all. */
    boolean isPossible(int test, double[] p) {
        for (int k = 0; k < p.length; k++) {
            if (!tables.get(test).rows().get(k).range().contains(p[k])) {
                return false;
            }
        }
        return true;
    }
}
