package liftwright.learning.correct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import liftwright.numerics.Work;
import liftwright.plant.CorrectionMaker;
import liftwright.plant.Plant;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Rig;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;

/** Fits the numbers of a rig to its tests and makes a correction of what they found. */
public final class CorrectionFit {

    /** What went less far than this and lost less of its doubt than that stays as declared. */
    private static final double MOVED = 0.1;

    private static final double NARROWED = 0.98;

    /** Two values that are so much correlated are told as one. */
    private static final double ONE = 0.95;

    private static final int MOST_UNTOLD = 8;

    private final Rig rig;
    private final List<FitTest> tests;
    private final MapFit fit;
    private final ParameterTable table;

    private CorrectionFit(Rig declared, List<FitTest> tests, Work work) {
        rig = declared;
        this.tests = tests;
        fit = new MapFit(tests, work);
        table = Plant.assembleHeated(declared).parameters();
    }

    /**
     * Fits.
     *
     * @param declared the rig as declared, which drove the tests
     * @param tests at least one
     * @return empty when stopped
     */
    public static Optional<FitResult> of(Rig declared, List<FitTest> tests, Work work) {
        if (tests.isEmpty() || !declared.corrections().isEmpty()) {
            throw new IllegalArgumentException("a fit needs tests and a rig as it is declared");
        }
        return new CorrectionFit(declared, tests, work).result();
    }

    private Optional<FitResult> result() {
        List<List<Double>> before = new ArrayList<>();
        if (!fit.run(first -> before.addAll(rms(first)))) {
            return Optional.empty();
        }
        OptionalDouble heldOut = fit.heldOut();
        int[] rows = chosen();
        List<FitResult.Moved> moved = new ArrayList<>();
        Optional<Correction> correction =
                rows.length == 0 ? Optional.empty() : Optional.of(correction(rows, heldOut));
        correction.ifPresent(group -> group.found().forEach(found -> moved.add(moved(found))));
        moved.sort(Comparator.comparingDouble(one -> -Math.abs(one.by())));
        return Optional.of(
                new FitResult(
                        moved,
                        untold(),
                        residuals(before),
                        heldOut,
                        fit.outliers(),
                        fit.converged(),
                        correction,
                        tests.stream()
                                .flatMap(test -> test.driven().notes().stream())
                                .distinct()
                                .toList()));
    }

    private static double deviation(MapFit fit, int unknown) {
        int n = fit.unknowns().size();
        return Math.sqrt(fit.covariance()[unknown * n + unknown]);
    }

    /** Rows of the rig's own table that the tests moved or narrowed, joints whole. */
    private int[] chosen() {
        var chosen = new TreeSet<Integer>();
        for (int row = 0; row < table.size(); row++) {
            int unknown = unknown(row);
            if (unknown >= 0
                    && (Math.abs(fit.deviates()[unknown]) > MOVED
                            || deviation(fit, unknown) < NARROWED)) {
                chosen.add(row);
            }
        }
        List<Integer> byNews = new ArrayList<>(chosen);
        byNews.sort(Comparator.comparingDouble(row -> -news(row)));
        chosen.clear();
        chosen.addAll(byNews.subList(0, Math.min(byNews.size(), Correction.MOST / 2)));
        for (ParameterTable.Together together : table.together()) {
            if (together.rows().stream().anyMatch(chosen::contains)) {
                chosen.addAll(together.rows());
            }
        }
        return chosen.stream().mapToInt(Integer::intValue).toArray();
    }

    private double news(int row) {
        int unknown = unknown(row);
        return Math.abs(fit.deviates()[unknown]) + 1 - deviation(fit, unknown);
    }

    /** −1 for what no test could move: exact rows, and those of the day. */
    private int unknown(int row) {
        Parameter one = table.rows().get(row);
        return one.input() < 0 || Unknowns.isOfTheDay(one.name())
                ? -1
                : fit.unknowns().of(one.name());
    }

    private Correction correction(int[] rows, OptionalDouble heldOut) {
        int n = rows.length;
        double[] deviates = new double[table.size()];
        for (int row = 0; row < deviates.length; row++) {
            deviates[row] = unknown(row) < 0 ? 0 : fit.deviates()[unknown(row)];
        }
        double[] values = new double[table.size()];
        table.at(deviates, values);
        boolean[] logs = new boolean[n];
        double[] found = new double[n];
        double distance = 0;
        for (int i = 0; i < n; i++) {
            found[i] = values[rows[i]];
            logs[i] = logarithmic(rows[i], found[i]);
            distance = Math.max(distance, Math.abs(deviates[rows[i]]));
        }
        double[] slopes = slopes(rows, deviates, logs);
        double[] covariance = new double[n * n];
        double[] own = fit.covariance();
        int all = fit.unknowns().size();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int a = 0; a < n; a++) {
                    for (int b = 0; b < n && slopes[i * n + a] != 0; b++) {
                        int ua = unknown(rows[a]);
                        int ub = unknown(rows[b]);
                        double between =
                                ua < 0 || ub < 0 ? (a == b ? 1 : 0) : own[ua * all + ub];
                        sum += slopes[i * n + a] * slopes[j * n + b] * between;
                    }
                }
                covariance[i * n + j] = sum;
                covariance[j * n + i] = sum;
            }
        }
        return new CorrectionMaker(rig, table)
                .make(
                        tests.size() == 1
                                ? "found by test " + tests.getFirst().name().id()
                                : "found by " + tests.size() + " tests",
                        new CorrectionMaker.Posterior(rows, found, logs, covariance),
                        new Grounds(
                                tests.stream().map(FitTest::name).toList(), heldOut, distance));
    }

    /** As its table draws it; by itself, in logarithms wherever it can be no less than 0. */
    private boolean logarithmic(int row, double value) {
        for (ParameterTable.Together together : table.together()) {
            int member = together.rows().indexOf(row);
            if (member >= 0) {
                return together.factor().isPositive(member);
            }
        }
        return value > 0 && !table.rows().get(row).range().contains(-1e-9);
    }

    /**
     * Of coordinates drawn over deviates: chords from the place found over what is left of the
     * doubt, the steeper of both sides. At the end of a rectangle the tangent would tell that a
     * value is known of which the tests say nothing.
     */
    private double[] slopes(int[] rows, double[] deviates, boolean[] logs) {
        int n = rows.length;
        double[] slopes = new double[n * n];
        double[] here = new double[table.size()];
        double[] there = new double[table.size()];
        table.at(deviates, here);
        for (int a = 0; a < n; a++) {
            double left = unknown(rows[a]) < 0 ? 1 : deviation(fit, unknown(rows[a]));
            for (double step : new double[] {left, -left}) {
                double[] moved = deviates.clone();
                moved[rows[a]] += step;
                table.at(moved, there);
                for (int i = 0; i < n; i++) {
                    double by =
                            logs[i]
                                    ? Math.log(there[rows[i]] / here[rows[i]])
                                    : there[rows[i]] - here[rows[i]];
                    if (Math.abs(by / step) > Math.abs(slopes[i * n + a])) {
                        slopes[i * n + a] = by / step;
                    }
                }
            }
        }
        return slopes;
    }

    private FitResult.Moved moved(Found found) {
        int unknown = fit.unknowns().of(found.parameter());
        return new FitResult.Moved(
                found,
                unknown < 0 ? 0 : fit.deviates()[unknown],
                unknown < 0 ? 1 : deviation(fit, unknown));
    }

    /** Pairs that the tests tell only together. */
    private List<String> untold() {
        int n = fit.unknowns().size();
        List<String> untold = new ArrayList<>();
        for (int a = 0; a < n && untold.size() < MOST_UNTOLD; a++) {
            for (int b = 0; b < a && untold.size() < MOST_UNTOLD; b++) {
                String one = fit.unknowns().name(b);
                String other = fit.unknowns().name(a);
                double between =
                        fit.covariance()[a * n + b] / deviation(fit, a) / deviation(fit, b);
                if (Math.abs(between) > ONE && !one.isEmpty() && !other.isEmpty()) {
                    untold.add(
                            one
                                    + " and "
                                    + other
                                    + " are told only together: more of the one looks like "
                                    + (between < 0 ? "more" : "less")
                                    + " of the other");
                }
            }
        }
        return untold;
    }

    private List<List<Double>> rms(double[][][] predicted) {
        List<List<Double>> all = new ArrayList<>();
        for (int test = 0; test < tests.size(); test++) {
            List<Double> one = new ArrayList<>();
            for (int c = 0; c < fit.channels(test).size(); c++) {
                one.add(fit.channels(test).get(c).rmsSi(predicted[test][c]));
            }
            all.add(one);
        }
        return all;
    }

    private List<FitResult.Residual> residuals(List<List<Double>> before) {
        List<FitResult.Residual> residuals = new ArrayList<>();
        for (int test = 0; test < tests.size(); test++) {
            for (int c = 0; c < fit.channels(test).size(); c++) {
                residuals.add(
                        new FitResult.Residual(
                                tests.get(test).name().id(),
                                fit.channels(test).get(c).name(),
                                before.get(test).get(c),
                                fit.channels(test).get(c).rmsSi(fit.predicted(test)[c])));
            }
        }
        return residuals;
    }
}
