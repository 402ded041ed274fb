package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.flight.run.Deviate;
import liftwright.numerics.CounterStream;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;

/**
 * What was drawn in flights, found again from seed and numbers alone: the numbers of the rig that
 * are in doubt, and what is drawn besides.
 */
public final class DriverValues {

    private final List<String> labels;
    private final double[][] values;

    private DriverValues(List<String> labels, double[][] values) {
        this.labels = List.copyOf(labels);
        this.values = values;
    }

    /**
     * @param tables numbers of the rig as they are flown
     * @param numbers of flights of which every drawn number can be
     */
    public static DriverValues of(List<ParameterTable> tables, long seed, int[] numbers) {
        List<String> labels = new ArrayList<>();
        List<double[]> values = new ArrayList<>();
        tables.forEach(table -> draw(table, seed, numbers, labels, values));
        for (Deviate each : Deviate.values()) {
            labels.add(each.label());
            values.add(
                    Arrays.stream(numbers).mapToDouble(number -> each.of(seed, number)).toArray());
        }
        return new DriverValues(labels, values.toArray(double[][]::new));
    }

    private static void draw(
            ParameterTable table,
            long seed,
            int[] numbers,
            List<String> labels,
            List<double[]> values) {
        List<Integer> rows = new ArrayList<>();
        List<double[]> drawn = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            Parameter parameter = table.rows().get(row);
            String label = parameter.label() + " (" + parameter.name() + ")";
            if (table.inputOf(row) >= 0 && !labels.contains(label)) {
                rows.add(row);
                labels.add(label);
                drawn.add(new double[numbers.length]);
            }
        }
        double[] p = table.nominal();
        for (int i = 0; i < numbers.length; i++) {
            table.draw(seed, numbers[i], p);
            for (int k = 0; k < rows.size(); k++) {
                drawn.get(k)[i] = p[rows.get(k)];
            }
        }
        values.addAll(drawn);
    }

    /**
     * Numbers drawn as standard normals of their names, for flights that are no rig's.
     *
     * @param names of streams
     */
    static DriverValues normals(List<String> names, long seed, int[] numbers) {
        double[][] values = new double[names.size()][numbers.length];
        for (int d = 0; d < values.length; d++) {
            long channel = CounterStream.channel(names.get(d));
            for (int i = 0; i < numbers.length; i++) {
                values[d][i] = CounterStream.normal(seed, channel, numbers[i]);
            }
        }
        return new DriverValues(names, values);
    }

    /** How many there are. */
    public int size() {
        return labels.size();
    }

    /** What a driver is, in words. */
    public String label(int driver) {
        return labels.get(driver);
    }

    /** Its value in each flight, in their order. */
    double[] of(int driver) {
        return values[driver];
    }
}
