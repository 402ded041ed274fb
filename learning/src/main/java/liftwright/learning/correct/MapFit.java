package liftwright.learning.correct;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import liftwright.learning.replay.Driven;
import liftwright.numerics.PositiveDefinite;
import liftwright.numerics.Work;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.supply.CellDraw;

/**
 * The most probable numbers of a rig, given its tests: Gauss and Newton on |z|² + |whitened
 * residuals|², where z are deviates that the declared doubt makes independent and standard normal.
 *
 * <p>Source: A. Tarantola, Inverse Problem Theory, 2005, §3.2.3. Blocks far off lose weight by
 * Student's t (Lange, Little, Taylor 1989).
 */
final class MapFit {

    /** Step of slopes, in standard deviations of the declared doubt. */
    private static final double STEP = 0.3;

    private static final int ROUNDS = 8;

    /** Weights are settled by then: a fit that goes on weighing goes round in circles. */
    private static final int WEIGHED = 3;

    /** What is still moved in a round after which there is no other, in declared deviations. */
    private static final double STILL = 0.05;

    /** A gain in −2 ln of probability that tells nothing: 1 is a standard deviation. */
    private static final double GAIN = 0.5;

    private final List<FitTest> tests;
    private final Unknowns unknowns;
    private final List<List<Channel>> channels = new ArrayList<>();
    private final Work work;
    private double[] z;
    private double[][][] predicted;
    private final List<double[]> residuals = new ArrayList<>();
    private final List<double[]> slopes = new ArrayList<>();
    private double[] covariance = new double[0];
    private int outliers;
    private boolean converged;

    MapFit(List<FitTest> tests, Work work) {
        this.tests = List.copyOf(tests);
        this.work = work;
        unknowns = new Unknowns(this.tests);
        for (FitTest test : this.tests) {
            channels.add(test.driven().watched().stream().map(Channel::new).toList());
        }
        z = new double[unknowns.size()];
        predicted = new double[this.tests.size()][][];
    }

    Unknowns unknowns() {
        return unknowns;
    }

    double[] deviates() {
        return z;
    }

    /** Covariance of the deviates, row by row. */
    double[] covariance() {
        return covariance;
    }

    int outliers() {
        return outliers;
    }

    boolean converged() {
        return converged;
    }

    List<Channel> channels(int test) {
        return channels.get(test);
    }

    double[][] predicted(int test) {
        return predicted[test];
    }

    /**
     * Whether it came to an end; false when stopped.
     *
     * @param declared told what is predicted as declared, once
     */
    boolean run(Consumer<double[][][]> declared) {
        work.stage("fit", ROUNDS);
        predictAll();
        declared.accept(predicted.clone());
        for (int round = 0; round < ROUNDS && !converged; round++) {
            if (work.stopped()) {
                return false;
            }
            if (round < WEIGHED) {
                weigh();
            }
            linearise();
            if (work.stopped()) {
                return false;
            }
            step();
            work.done(1);
        }
        linearise();
        covariance = normal(-1).inverse();
        return !work.stopped();
    }

    private void weigh() {
        outliers = 0;
        for (int test = 0; test < tests.size(); test++) {
            for (int c = 0; c < channels.get(test).size(); c++) {
                outliers += channels.get(test).get(c).weigh(predicted[test][c]);
            }
        }
    }

    private void predictAll() {
        for (int test = 0; test < tests.size(); test++) {
            predicted[test] = predict(test, z);
        }
    }

    private double[][] predict(int test, double[] at) {
        Driven driven = tests.get(test).driven();
        double[] p = new double[driven.parameters().size()];
        unknowns.vector(test, at, p);
        double[][] out = driven.blocks();
        try {
            driven.parameters().check(p);
            driven.predict(p, new CellDraw.Expected(), out);
        } catch (ImpossibleValueException beyond) {
            return predicted[test] == null ? out : predicted[test];
        }
        return out;
    }

    /** Residuals and slopes of every test, whitened, at the present place. */
    private void linearise() {
        residuals.clear();
        slopes.clear();
        int n = unknowns.size();
        for (int test = 0; test < tests.size(); test++) {
            double[] residual = whitened(test, predicted[test], true);
            double[] slope = new double[residual.length * n];
            boolean[] seen = new boolean[n];
            for (int place : unknowns.places(test)) {
                if (place < 0 || seen[place] || work.stopped()) {
                    continue;
                }
                seen[place] = true;
                double[] moved = z.clone();
                // Towards what was declared: it is there that every number can be.
                double by = z[place] > 0 ? -STEP : STEP;
                moved[place] += by;
                double[][] there = predict(test, moved);
                for (int c = 0; c < there.length; c++) {
                    for (int i = 0; i < there[c].length; i++) {
                        there[c][i] = (there[c][i] - predicted[test][c][i]) / by;
                    }
                }
                double[] column = whitened(test, there, false);
                for (int i = 0; i < column.length; i++) {
                    slope[i * n + place] = column[i];
                }
            }
            residuals.add(residual);
            slopes.add(slope);
        }
    }

    private double[] whitened(int test, double[][] values, boolean residual) {
        int size = 0;
        for (double[] channel : values) {
            size += channel.length;
        }
        double[] all = new double[size];
        int at = 0;
        for (int c = 0; c < values.length; c++) {
            double[] one = values[c].clone();
            if (residual) {
                channels.get(test).get(c).residual(values[c], one);
            } else {
                channels.get(test).get(c).whiten(one);
            }
            System.arraycopy(one, 0, all, at, one.length);
            at += one.length;
        }
        return all;
    }

    /** I + Σ JᵀJ over all tests but one. */
    private PositiveDefinite normal(int without) {
        int n = unknowns.size();
        double[] normal = new double[n * n];
        for (int i = 0; i < n; i++) {
            normal[i * n + i] = 1;
        }
        for (int test = 0; test < tests.size(); test++) {
            if (test == without) {
                continue;
            }
            double[] j = slopes.get(test);
            int rows = residuals.get(test).length;
            for (int r = 0; r < rows; r++) {
                for (int a = 0; a < n; a++) {
                    double one = j[r * n + a];
                    if (one != 0) {
                        for (int b = 0; b <= a; b++) {
                            normal[a * n + b] += one * j[r * n + b];
                        }
                    }
                }
            }
        }
        return PositiveDefinite.of(normal, n);
    }

    /** Where the linear problem without one test has its best place, from here. */
    private double[] towards(int without) {
        int n = unknowns.size();
        double[] gradient = new double[n];
        for (int i = 0; i < n; i++) {
            gradient[i] = -z[i];
        }
        for (int test = 0; test < tests.size(); test++) {
            if (test != without) {
                double[] r = residuals.get(test);
                double[] j = slopes.get(test);
                for (int row = 0; row < r.length; row++) {
                    for (int a = 0; a < n; a++) {
                        gradient[a] += j[row * n + a] * r[row];
                    }
                }
            }
        }
        normal(without).solve(gradient);
        return gradient;
    }

    private double cost(double[] at, double[][][] there) {
        double sum = 0;
        for (double one : at) {
            sum += one * one;
        }
        for (int test = 0; test < tests.size(); test++) {
            for (double one : whitened(test, there[test], true)) {
                sum += one * one;
            }
        }
        return sum;
    }

    /** Goes as far as it gains; where it gains nothing any more it has arrived. */
    private void step() {
        double[] by = towards(-1);
        double before = cost(z, predicted);
        for (double share = 1; share > 0.05; share /= 2) {
            double[] next = z.clone();
            double farthest = 0;
            for (int i = 0; i < next.length; i++) {
                next[i] += share * by[i];
                farthest = Math.max(farthest, Math.abs(share * by[i]));
            }
            double[][][] there = new double[tests.size()][][];
            for (int test = 0; test < there.length; test++) {
                there[test] = predict(test, next);
            }
            double after = cost(next, there);
            if (after <= before) {
                z = next;
                predicted = there;
                converged = farthest < STILL || before - after < GAIN;
                return;
            }
        }
        converged = true;
    }

    /**
     * How well the others tell each test that is held out: root mean square of its residuals over
     * what was expected of them, by the slopes at the place found. Empty for a single test.
     */
    OptionalDouble heldOut() {
        if (tests.size() < 2) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        int count = 0;
        int n = unknowns.size();
        for (int test = 0; test < tests.size(); test++) {
            double[] by = towards(test);
            double[] left = normal(test).inverse();
            double[] r = residuals.get(test);
            double[] j = slopes.get(test);
            for (int row = 0; row < r.length; row++) {
                double off = r[row];
                double expected = 1;
                for (int a = 0; a < n; a++) {
                    double one = j[row * n + a];
                    off -= one * by[a];
                    double sumA = 0;
                    for (int b = 0; one != 0 && b < n; b++) {
                        sumA += left[a * n + b] * j[row * n + b];
                    }
                    expected += one * sumA;
                }
                sum += off * off / expected;
            }
            count += r.length;
        }
        return OptionalDouble.of(Math.sqrt(sum / count));
    }
}
