package liftwright.learning.trend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.learning.explain.Departures;
import liftwright.numerics.CholeskyFactor;

/**
 * Sizes of a few parts' departures in all tests of a logbook, found together: one size for each
 * part and test without any prior, and one deviate for each declared number, which all tests share.
 * What was declared a little wrong then moves all tests alike and makes no trend. Least squares by
 * Gauss and Newton; steps that make it worse are halved.
 */
final class AllTests {

    private static final int MOST_STEPS = 12;
    private static final double SMALL = 1e-6;

    /**
     * No part departs by more than so many times its first size: keeps apart, by a doubt without
     * end, two parts that do the same to all readings.
     */
    private static final double WIDEST = 1e3;

    private final List<DatedTest> tests;
    private final Map<String, Integer> shared = new LinkedHashMap<>();
    private final List<Map<WornPart, Integer>> parts = new ArrayList<>();
    private final double[][] prior;

    AllTests(List<DatedTest> tests) {
        this.tests = tests;
        for (DatedTest test : tests) {
            Map<WornPart, Integer> here = new LinkedHashMap<>();
            List<Departures.Part> all = test.departures().parts();
            for (int k = 0; k < all.size(); k++) {
                here.put(WornPart.of(all.get(k).cause(), test.rig()), k);
            }
            parts.add(here);
            test.departures().shared().forEach(name -> shared.putIfAbsent(name, shared.size()));
        }
        prior = prior();
    }

    /** Second derivative by the deviates alone, the same for all sizes. */
    private double[][] prior() {
        double[][] square = new double[shared.size()][shared.size()];
        for (int d = 0; d < square.length; d++) {
            square[d][d] = 1;
        }
        for (DatedTest test : tests) {
            Departures of = test.departures();
            for (int i = 0; i < of.shared().size(); i++) {
                for (int j = 0; j < of.shared().size(); j++) {
                    square[at(of, i)][at(of, j)] +=
                            of.product(of.placeOfShared(i), of.placeOfShared(j));
                }
            }
        }
        return square;
    }

    private int at(Departures of, int shared) {
        return this.shared.getOrDefault(of.shared().get(shared), -1);
    }

    /** Number of a part in a test; −1 where the test tells nothing of it. */
    int number(WornPart part, int test) {
        return parts.get(test).getOrDefault(part, -1);
    }

    List<WornPart> all() {
        return parts.stream().flatMap(here -> here.keySet().stream()).distinct().toList();
    }

    /** A vector of one test: places with weights. */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    private record Sparse(int[] places, double[] weights) {

        double product(Departures of, Sparse other) {
            double sum = 0;
            for (int i = 0; i < places.length; i++) {
                for (int j = 0; weights[i] != 0 && j < other.places.length; j++) {
                    if (other.weights[j] != 0) {
                        sum +=
                                weights[i]
                                        * other.weights[j]
                                        * of.product(places[i], other.places[j]);
                    }
                }
            }
            return sum;
        }
    }

    /** One size that is sought. */
    private record Sought(WornPart part, int test, int number) {}

    /**
     * Finds them.
     *
     * @param chosen parts; sizes and covariance of the last are told
     */
    Sizes of(List<WornPart> chosen) {
        List<Sought> sought = new ArrayList<>();
        for (WornPart part : chosen) {
            for (int t = 0; t < tests.size(); t++) {
                if (number(part, t) >= 0) {
                    sought.add(new Sought(part, t, number(part, t)));
                }
            }
        }
        int sizes = sought.size();
        double[] x = new double[sizes + shared.size()];
        double square = square(sought, x);
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] move = CholeskyFactor.of(curved(sought, x)).solve(slope(sought, x));
            double share = 1;
            double[] next = moved(x, move, share);
            double then = square(sought, next);
            while (then > square && share > SMALL) {
                share /= 2;
                next = moved(x, move, share);
                then = square(sought, next);
            }
            double gained = square - then;
            if (gained > 0) {
                x = next;
                square = then;
            }
            if (gained < SMALL * (1 + square)) {
                break;
            }
        }
        return sizes(sought, chosen.getLast(), x, square);
    }

    private Sizes sizes(List<Sought> sought, WornPart of, double[] x, double square) {
        CholeskyFactor factor = CholeskyFactor.of(curved(sought, x));
        int[] mine =
                java.util.stream.IntStream.range(0, sought.size())
                        .filter(k -> sought.get(k).part.equals(of))
                        .toArray();
        double[][] covariance = new double[mine.length][mine.length];
        double[] si = new double[mine.length];
        int[] at = new int[mine.length];
        for (int i = 0; i < mine.length; i++) {
            double[] unit = new double[x.length];
            unit[mine[i]] = 1;
            double[] column = factor.solve(unit);
            for (int j = 0; j < mine.length; j++) {
                covariance[i][j] = column[mine[j]];
            }
            si[i] = x[mine[i]];
            at[i] = sought.get(mine[i]).test;
        }
        return new Sizes(of, at, si, covariance, square);
    }

    private static double[] moved(double[] x, double[] move, double share) {
        double[] next = x.clone();
        for (int k = 0; k < next.length; k++) {
            next[k] += share * move[k];
        }
        return next;
    }

    /** What is left of a test's readings. */
    private Sparse left(List<Sought> sought, double[] x, int test) {
        Departures of = tests.get(test).departures();
        List<Integer> places = new ArrayList<>(List.of(0));
        List<Double> weights = new ArrayList<>(List.of(1.0));
        for (int k = 0; k < sought.size(); k++) {
            if (sought.get(k).test == test) {
                int number = sought.get(k).number;
                double[] all = new double[of.sizesOf(number)];
                of.weights(number, x[k], all);
                for (int i = 0; i < all.length; i++) {
                    places.add(of.placeOf(number) + i);
                    weights.add(-all[i]);
                }
            }
        }
        for (int d = 0; d < of.shared().size(); d++) {
            places.add(of.placeOfShared(d));
            weights.add(-x[sought.size() + at(of, d)]);
        }
        return new Sparse(
                places.stream().mapToInt(Integer::intValue).toArray(),
                weights.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** How what a part does changes with its size. */
    private Sparse change(Sought of, double size) {
        Departures departures = tests.get(of.test).departures();
        double step = 1e-3 * Math.abs(departures.stepOf(of.number));
        int n = departures.sizesOf(of.number);
        double[] above = new double[n];
        double[] below = new double[n];
        departures.weights(of.number, size + step, above);
        departures.weights(of.number, size - step, below);
        int[] places = new int[n];
        for (int k = 0; k < n; k++) {
            places[k] = departures.placeOf(of.number) + k;
            above[k] = (above[k] - below[k]) / (2 * step);
        }
        return new Sparse(places, above);
    }

    private Sparse ofShared(Departures of, int d) {
        return new Sparse(new int[] {of.placeOfShared(d)}, new double[] {1});
    }

    private double square(List<Sought> sought, double[] x) {
        double sum = 0;
        for (int t = 0; t < tests.size(); t++) {
            Sparse left = left(sought, x, t);
            sum += left.product(tests.get(t).departures(), left);
        }
        for (int k = 0; k < x.length; k++) {
            sum += k < sought.size() ? loose(sought.get(k)) * x[k] * x[k] : x[k] * x[k];
        }
        return sum;
    }

    private double loose(Sought of) {
        double wide = WIDEST * tests.get(of.test).departures().stepOf(of.number);
        return 1 / (wide * wide);
    }

    /** Downhill. */
    private double[] slope(List<Sought> sought, double[] x) {
        double[] slope = new double[x.length];
        for (int t = 0; t < tests.size(); t++) {
            Departures of = tests.get(t).departures();
            Sparse left = left(sought, x, t);
            for (int k = 0; k < sought.size(); k++) {
                if (sought.get(k).test == t) {
                    slope[k] += change(sought.get(k), x[k]).product(of, left);
                }
            }
            for (int d = 0; d < of.shared().size(); d++) {
                slope[sought.size() + at(of, d)] += ofShared(of, d).product(of, left);
            }
        }
        for (int k = 0; k < x.length; k++) {
            slope[k] -= k < sought.size() ? loose(sought.get(k)) * x[k] : x[k];
        }
        return slope;
    }

    private double[][] curved(List<Sought> sought, double[] x) {
        int n = sought.size();
        double[][] curved = new double[x.length][x.length];
        for (int d = 0; d < shared.size(); d++) {
            System.arraycopy(prior[d], 0, curved[n + d], n, shared.size());
        }
        List<Sparse> changes = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            changes.add(change(sought.get(k), x[k]));
        }
        for (int k = 0; k < n; k++) {
            Departures of = tests.get(sought.get(k).test).departures();
            for (int j = 0; j <= k; j++) {
                if (sought.get(j).test == sought.get(k).test) {
                    curved[k][j] = changes.get(k).product(of, changes.get(j));
                    curved[j][k] = curved[k][j];
                }
            }
            curved[k][k] += loose(sought.get(k));
            for (int d = 0; d < of.shared().size(); d++) {
                double both = changes.get(k).product(of, ofShared(of, d));
                curved[n + at(of, d)][k] += both;
                curved[k][n + at(of, d)] += both;
            }
        }
        return curved;
    }
}
