package liftwright.learning.correct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;
import liftwright.quantity.Quantity;
import liftwright.rig.correction.Found;

/**
 * The numbers in doubt over several tests. Those of the rig are shared by name. Air, and charge and
 * temperature of packs, are each day's own: they are found beside the others and corrected nowhere.
 */
final class Unknowns {

    private final List<ParameterTable> tables = new ArrayList<>();
    private final Map<String, Integer> byKey = new LinkedHashMap<>();
    private final List<String> names = new ArrayList<>();
    private final List<int[]> places = new ArrayList<>();

    Unknowns(List<FitTest> tests) {
        for (int test = 0; test < tests.size(); test++) {
            ParameterTable table = tests.get(test).driven().parameters();
            tables.add(table);
            int[] place = new int[table.size()];
            for (int row = 0; row < place.length; row++) {
                Parameter one = table.rows().get(row);
                place[row] = one.input() < 0 ? -1 : number(one.name(), test);
            }
            places.add(place);
        }
    }

    private int number(String name, int test) {
        String key = isOfTheDay(name) ? name + " @" + test : name;
        return byKey.computeIfAbsent(
                key,
                _ -> {
                    names.add(isOfTheDay(name) ? "" : name);
                    return names.size() - 1;
                });
    }

    /** Whether a number is another on another day. */
    static boolean isOfTheDay(String parameter) {
        String path = new Found(parameter, "", NOTHING, 0, 0, false).path();
        return path.startsWith("site/")
                || path.startsWith("packs/")
                        && (path.endsWith("/charge") || path.endsWith("/temperature"));
    }

    private static final Quantity NOTHING = Quantity.exact(0, liftwright.quantity.Dimension.NONE);

    int size() {
        return names.size();
    }

    /** Name of the parameter; empty text where it is a day's own. */
    String name(int unknown) {
        return names.get(unknown);
    }

    /** Number of an unknown of the rig; −1 if there is none. */
    int of(String parameter) {
        return byKey.getOrDefault(parameter, -1);
    }

    /** Which unknown moves each row of a test's table; −1 for rows without doubt. */
    int[] places(int test) {
        return places.get(test);
    }

    /** The vector of a test's table at given deviates. */
    void vector(int test, double[] z, double[] p) {
        int[] place = places.get(test);
        double[] deviates = new double[place.length];
        for (int row = 0; row < place.length; row++) {
            deviates[row] = place[row] < 0 ? 0 : z[place[row]];
        }
        tables.get(test).at(deviates, p);
    }
}
