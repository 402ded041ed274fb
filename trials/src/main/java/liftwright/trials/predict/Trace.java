package liftwright.trials.predict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.plant.Discharge;

/** The readings of one run at the declared values, moment by moment. */
final class Trace implements CardRun.Listener {

    private final Reader reader;
    private final int count;
    private final List<double[]> rows = new ArrayList<>();
    private final List<Double> times = new ArrayList<>();

    /** Where each step ends, in moments. */
    private final List<Integer> ends = new ArrayList<>();

    private double[] afterwards = new double[0];

    Trace(Reader reader, int count) {
        this.reader = reader;
        this.count = count;
    }

    @Override
    public void at(Discharge run, int step) {
        double[] row = new double[count];
        reader.read(run, row);
        if (!times.isEmpty() && run.timeS() == times.getLast()) {
            rows.set(rows.size() - 1, row);
            return;
        }
        rows.add(row);
        times.add(run.timeS());
    }

    void stepEnds() {
        ends.add(times.size() - 1);
    }

    /** Highest that each reading comes to in the rest after the run. */
    void rests(double[] highest) {
        afterwards = highest.clone();
    }

    int steps() {
        return ends.size();
    }

    /** Moment at which a step ends. */
    int end(int step) {
        return ends.get(step);
    }

    double[] timesS() {
        return times.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** One reading over the moments. */
    double[] of(int watch) {
        return rows.stream().mapToDouble(row -> row[watch]).toArray();
    }

    double atEnd(int step, int watch) {
        return rows.get(ends.get(step))[watch];
    }

    double atStart(int watch) {
        return rows.getFirst()[watch];
    }

    /** What a reading still rises after the fans stopped, ≥ 0. */
    double afterwards(int watch) {
        return afterwards.length == 0
                ? 0
                : Math.max(0, afterwards[watch] - Arrays.stream(of(watch)).max().orElseThrow());
    }
}
