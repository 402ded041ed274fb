package liftwright.plant.heat;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/** A {@link HeatLine} alone in time, at given currents. */
final class HeatLineRun {

    private final HeatLineModel line;
    private final Extrapolation run;

    HeatLineRun(HeatLine of, double startK, double allowedK) {
        line = new HeatLineModel(of, 0);
        double[] start = new double[line.end()];
        Arrays.fill(start, startK);
        run =
                new Extrapolation(
                        new Extrapolation.Model() {
                            @Override
                            public int size() {
                                return start.length;
                            }

                            @Override
                            public void slope(double[] y, double[] f) {
                                line.slope(y, f);
                            }

                            @Override
                            public void factor(double[] y, double h) {
                                line.factor(y, h);
                            }

                            @Override
                            public void solve(double[] f) {
                                line.solve(f);
                            }

                            @Override
                            public double allowed(int component) {
                                return allowedK;
                            }
                        },
                        start);
    }

    /** From now on, A. */
    void ampere(double a) {
        line.ampere(a);
        run.restart();
    }

    double timeS() {
        return run.timeS();
    }

    /** Of a lump or of the copper of a piece, K. */
    double kelvin(int place) {
        return run.state()[line.of(place)];
    }

    /** Goes on for a time. */
    void go(double forS) {
        goUntil(forS, 0, 0, Double.POSITIVE_INFINITY);
    }

    /**
     * Goes on until one of the places from one to before another is at a temperature, or for a
     * time.
     *
     * @return the time since the start when it was; infinite if it never was
     */
    double goUntil(double forS, int from, int to, double limitK) {
        double end = run.timeS() + forS;
        ToDoubleFunction<double[]> hottest =
                y -> {
                    double most = 0;
                    for (int k = from; k < to; k++) {
                        most = Math.max(most, y[line.of(k)]);
                    }
                    return most;
                };
        if (run.reached(hottest, limitK)) {
            return run.timeS();
        }
        while (run.timeS() < end) {
            run.step(end);
            if (run.reached(hottest, limitK)) {
                return run.when(hottest, limitK);
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
