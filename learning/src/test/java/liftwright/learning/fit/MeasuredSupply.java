package liftwright.learning.fit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.parameters.Range;
import liftwright.plant.recording.Signal;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.RigPath;

/**
 * The supply of a measured motor: a rest voltage, a resistance, and a fall with the charge that
 * left; the measured current drives it. Source of the rows: src/test/resources/supply/SOURCE.md.
 */
final class MeasuredSupply implements Model {

    /** What the straight line leaves out of the way it has gone, k = 2; common practice. */
    static final double LEFT_OUT = 0.1;

    /** Four full cells. */
    static final double FULL_V = 16.8;

    final double[] timesS;
    final double[] volt;
    private final double[] amp;
    private final double[] usedAs;
    private final ParameterTable table = table();

    MeasuredSupply(String run) {
        List<String> lines;
        try {
            lines = Files.readAllLines(Path.of("src/test/resources/supply/" + run + ".csv"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        int rows = lines.size() - 1;
        timesS = new double[rows];
        volt = new double[rows];
        amp = new double[rows];
        usedAs = new double[rows];
        for (int k = 0; k < rows; k++) {
            String[] cells = lines.get(k + 1).split(",", -1);
            timesS[k] = Double.parseDouble(cells[0]);
            volt[k] = Double.parseDouble(cells[1]);
            amp[k] = Double.parseDouble(cells[2]);
            usedAs[k] = k == 0 ? 0 : usedAs[k - 1] + amp[k] * (timesS[k] - timesS[k - 1]);
        }
    }

    /** As one would declare them unseen. */
    static ParameterTable table() {
        ParameterRows rows = new ParameterRows();
        row(rows, "rest", new Quantity(FULL_V, Dimensions.VOLTAGE, wide(0.3)));
        row(rows, "resistance", new Quantity(0.07, Dimensions.RESISTANCE, wide(0.04)));
        row(rows, "fall", new Quantity(3e-5, Dimensions.RESISTANCE, wide(3e-5)));
        return rows.table();
    }

    private static void row(ParameterRows rows, String name, Quantity value) {
        rows.row(RigPath.of("supply", name), name, value, Range.ANY);
    }

    private static Tolerance wide(double by) {
        return new Tolerance(by, by, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED);
    }

    double predictedV(double[] p, int row) {
        return p[0] - p[1] * amp[row] - p[2] * usedAs[row];
    }

    /** Slope of what is predicted in each number. */
    double[] slopes(int row) {
        return new double[] {1, -amp[row], -usedAs[row]};
    }

    @Override
    public List<Compared> channels() {
        double[] noise = new double[volt.length];
        Arrays.fill(noise, 0.01);
        return List.of(
                new Compared(
                        Signal.VOLTAGE,
                        "all",
                        timesS,
                        volt,
                        noise,
                        0.03,
                        0,
                        LEFT_OUT,
                        0.03,
                        FULL_V));
    }

    @Override
    public ParameterTable parameters() {
        return table;
    }

    @Override
    public Predictor predictor() {
        return (p, out) -> {
            for (int k = 0; k < volt.length; k++) {
                out[0][k] = predictedV(p, k);
            }
            return true;
        };
    }
}
