package liftwright.learning.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.CholeskyFactor;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;

/** All tests of a fit at once: predictions, slopes, and the sum that is made least. */
final class Stage {

    /** A side that moves so many times as far as the other fell over an edge. */
    private static final double EDGE = 2.5;

    /** Less than this, in deviations, is no edge. */
    private static final double NEAR = 0.05;

    private final List<Model> tests;
    private final Unknowns unknowns;
    private final int threads;
    private final Work work;
    private List<Scatter> scatters = List.of();

    Stage(List<Model> tests, Unknowns unknowns, int threads, Work work) {
        this.tests = List.copyOf(tests);
        this.unknowns = unknowns;
        this.threads = threads;
        this.work = work;
    }

    void scattered(List<Scatter> by) {
        scatters = List.copyOf(by);
    }

    List<Scatter> scatters() {
        return scatters;
    }

    /** What all tests would show; empty where one cannot be or does not run to its end. */
    Optional<double[][][]> predict(double[] z) {
        double[][][] all = new double[tests.size()][][];
        for (int t = 0; t < all.length; t++) {
            Optional<double[][]> one = predict(t, z, tests.get(t).predictor());
            if (one.isEmpty()) {
                return Optional.empty();
            }
            all[t] = one.get();
        }
        return Optional.of(all);
    }

    private Optional<double[][]> predict(int test, double[] z, Model.Predictor predictor) {
        double[] p = unknowns.vector(test, z);
        double[][] out = room(test);
        return unknowns.isPossible(test, p) && predictor.predict(p, out)
                ? Optional.of(out)
                : Optional.empty();
    }

    private double[][] room(int test) {
        return tests.get(test).channels().stream()
                .map(channel -> new double[channel.size()])
                .toArray(double[][]::new);
    }

    /** Measured less predicted, whitened, one array for each test. */
    double[][] left(double[][][] predicted) {
        double[][] left = new double[tests.size()][];
        for (int t = 0; t < left.length; t++) {
            double[][] off = room(t);
            for (int c = 0; c < off.length; c++) {
                double[] measured = tests.get(t).channels().get(c).measuredSi();
                for (int k = 0; k < off[c].length; k++) {
                    off[c][k] = measured[k] - predicted[t][c][k];
                }
            }
            left[t] = scatters.get(t).whiten(scatters.get(t).stack(off));
        }
        return left;
    }

    /**
     * Slopes by the unknowns: central differences over a step in standard deviations. Where one
     * side moves far more than the other, it fell over an edge (a controller cut off, a fuse
     * opened) that says nothing of the slope here: then the other side alone is taken.
     *
     * @param here what all tests show at {@code z}
     * @return for each unknown of the list one array for each test; empty where it does not run
     */
    List<Optional<double[][]>> slopes(
            double[] z, double[][][] here, List<Integer> by, double step) {
        List<Optional<double[][]>> slopes = new ArrayList<>();
        by.forEach(one -> slopes.add(Optional.empty()));
        work.stage("slopes", Math.max(1, by.size()));
        Draws.forEach(
                work,
                threads,
                by.size(),
                () -> tests.stream().map(Model::predictor).toList(),
                (predictors, i) -> slopes.set(i, slope(z, here, by.get(i), step, predictors)));
        return slopes;
    }

    private Optional<double[][]> slope(
            double[] z, double[][][] here, int by, double step, List<Model.Predictor> predictors) {
        double[][] slope = new double[tests.size()][];
        for (int t = 0; t < slope.length; t++) {
            slope[t] = new double[scatters.get(t).size()];
            if (unknowns.get(by).row()[t] < 0) {
                continue;
            }
            double[] moved = z.clone();
            moved[by] = z[by] + step;
            Optional<double[][]> above = predict(t, moved, predictors.get(t));
            moved[by] = z[by] - step;
            Optional<double[][]> below = predict(t, moved, predictors.get(t));
            if (above.isEmpty() || below.isEmpty()) {
                return Optional.empty();
            }
            double[] high = scatters.get(t).stack(above.get());
            double[] low = scatters.get(t).stack(below.get());
            double[] middle = scatters.get(t).stack(here[t]);
            double up = far(t, high, middle);
            double down = far(t, low, middle);
            if (up > EDGE * down + NEAR) {
                high = mirrored(low, middle);
            } else if (down > EDGE * up + NEAR) {
                low = mirrored(high, middle);
            }
            for (int i = 0; i < high.length; i++) {
                slope[t][i] = (high[i] - low[i]) / (2 * step);
            }
        }
        return Optional.of(slope);
    }

    /** How far two predictions of a test are from each other, in deviations. */
    private double far(int test, double[] one, double[] other) {
        double[] off = one.clone();
        for (int i = 0; i < off.length; i++) {
            off[i] -= other[i];
        }
        scatters.get(test).whiten(off);
        return Math.sqrt(dot(off, off));
    }

    private static double[] mirrored(double[] side, double[] middle) {
        double[] other = new double[side.length];
        for (int i = 0; i < side.length; i++) {
            other[i] = 2 * middle[i] - side[i];
        }
        return other;
    }

    /** As the scatters of now whiten it, a new array. */
    double[][] whitened(double[][] slope) {
        double[][] white = new double[slope.length][];
        for (int t = 0; t < white.length; t++) {
            white[t] = scatters.get(t).whiten(slope[t].clone());
        }
        return white;
    }

    /** What channels of a test have in common, whitened. */
    private List<double[]> shared(int test) {
        List<double[]> shared = scatters.get(test).shared();
        shared.forEach(scatters.get(test)::whiten);
        return shared;
    }

    /** Takes out of vectors of a test what its channels have in common: products of P½. */
    final class Common {
        private final List<double[]> columns;
        private final Optional<CholeskyFactor> factor;

        Common(int test) {
            columns = shared(test);
            double[][] inner = new double[columns.size()][columns.size()];
            for (int i = 0; i < inner.length; i++) {
                for (int j = 0; j < inner.length; j++) {
                    inner[i][j] = dot(columns.get(i), columns.get(j)) + (i == j ? 1 : 0);
                }
            }
            factor = inner.length == 0 ? Optional.empty() : Optional.of(CholeskyFactor.of(inner));
        }

        double[] along(double[] white) {
            double[] along = new double[columns.size()];
            for (int d = 0; d < along.length; d++) {
                along[d] = dot(columns.get(d), white);
            }
            factor.ifPresent(of -> of.whiten(along, 0));
            return along;
        }
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** The sum of squares that is made least: of all readings, and of the unknowns. */
    double sum(double[][] left, double[] z) {
        double sum = dot(z, z);
        for (int t = 0; t < left.length; t++) {
            double[] along = new Common(t).along(left[t]);
            sum += dot(left[t], left[t]) - dot(along, along);
        }
        return sum;
    }

    /** Normal equations: Σ slopeᵀ P slope + 1, and slopeᵀ P left − z. */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Normal(double[][] matrix, double[] right) {}

    Normal normal(List<double[][]> slopes, double[][] left, double[] z, List<Integer> by) {
        int n = by.size();
        double[][] matrix = new double[n][n];
        double[] right = new double[n];
        for (int t = 0; t < left.length; t++) {
            Common common = new Common(t);
            double[] of = common.along(left[t]);
            double[][] along = new double[n][];
            for (int i = 0; i < n; i++) {
                double[] slope = slopes.get(i)[t];
                along[i] = common.along(slope);
                right[i] += dot(slope, left[t]) - dot(along[i], of);
                for (int j = 0; j <= i; j++) {
                    matrix[i][j] += dot(slope, slopes.get(j)[t]) - dot(along[i], along[j]);
                }
            }
        }
        for (int i = 0; i < n; i++) {
            matrix[i][i] += 1;
            right[i] -= z[by.get(i)];
            for (int j = 0; j < i; j++) {
                matrix[j][i] = matrix[i][j];
            }
        }
        return new Normal(matrix, right);
    }

    List<Model> tests() {
        return tests;
    }

    /** Scatters made for predictions, outlying blocks found anew. */
    static List<Scatter> scatters(
            List<Model> tests, double[][][] predicted, double[][] leftOut, double memory) {
        List<Scatter> made = new ArrayList<>();
        for (int t = 0; t < tests.size(); t++) {
            List<Compared> channels = tests.get(t).channels();
            double[][] outlying = Outliers.of(channels, predicted[t]);
            made.add(
                    Scatter.of(
                            channels,
                            predicted[t],
                            new Scatter.Assumed(leftOut[t], memory, outlying)));
        }
        return made;
    }

    static double[][] ones(List<Model> tests) {
        double[][] ones = new double[tests.size()][];
        for (int t = 0; t < ones.length; t++) {
            ones[t] = new double[tests.get(t).channels().size()];
            Arrays.fill(ones[t], 1);
        }
        return ones;
    }
}
