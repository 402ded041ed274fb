package liftwright.learning.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import liftwright.learning.fit.Fitted.Residual;
import liftwright.learning.fit.Fitted.Untold;
import liftwright.numerics.PrincipalAxes;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;

/** What a fit found, told. */
final class Report {

    /** Moves and gains smaller than this, in declared deviations, are not told. */
    private static final double WORTH = 0.02;

    /** Of a combination: members with this share of the largest are told. */
    private static final double LEADING = 0.4;

    private static final double H = 1e-4;

    private final Stage stage;
    private final Unknowns unknowns;
    private final List<Integer> chosen;
    private final double[] z;
    private final double[][] covariance;
    private final double[][] leftOut;
    private final double[][][] declared;
    private final double[][][] now;
    private final boolean converged;

    /** Of each unknown among the chosen, −1 where it is none of them. */
    private final int[] placeOf;

    Report(
            Stage stage,
            Unknowns unknowns,
            List<Integer> chosen,
            double[] z,
            double[][] covariance,
            double[][] leftOut,
            double[][][] declared,
            double[][][] now,
            boolean converged) {
        this.stage = stage;
        this.unknowns = unknowns;
        this.chosen = chosen;
        this.z = z;
        this.covariance = covariance;
        this.leftOut = leftOut;
        this.declared = declared;
        this.now = now;
        this.converged = converged;
        placeOf = new int[z.length];
        Arrays.fill(placeOf, -1);
        for (int i = 0; i < chosen.size(); i++) {
            placeOf[chosen.get(i)] = i;
        }
    }

    /** A row of a table that the fit says something of. */
    private record Told(int unknown, int test, int row, boolean positive) {}

    Fitted made() {
        List<Told> told = new ArrayList<>();
        for (int k : chosen) {
            int own = chosen.indexOf(k);
            boolean moved = Math.abs(z[k]) > WORTH;
            boolean narrowed = Math.sqrt(covariance[own][own]) < 1 - WORTH;
            if (moved || narrowed) {
                int test =
                        IntStream.range(0, unknowns.get(k).row().length)
                                .filter(t -> unknowns.get(k).row()[t] >= 0)
                                .findFirst()
                                .orElseThrow();
                int row = unknowns.get(k).row()[test];
                told.add(new Told(k, test, row, isPositive(test, row)));
            }
        }
        double[][] slopes = new double[told.size()][];
        List<Estimate> estimates = new ArrayList<>();
        double[][] full = new double[told.size()][told.size()];
        for (int i = 0; i < told.size(); i++) {
            slopes[i] = slopes(told.get(i));
        }
        for (int i = 0; i < told.size(); i++) {
            for (int j = 0; j < told.size(); j++) {
                full[i][j] = between(slopes[i], slopes[j]);
            }
        }
        for (int i = 0; i < told.size(); i++) {
            estimates.add(estimate(told.get(i), slopes[i], full[i][i]));
        }
        return new Fitted(estimates, full, converged, untold(), residuals(), outliers(), notes());
    }

    private boolean isPositive(int test, int row) {
        ParameterTable table = stage.tests().get(test).parameters();
        for (ParameterTable.Together together : table.together()) {
            int member = together.rows().indexOf(row);
            if (member >= 0) {
                return together.factor().isPositive(member);
            }
        }
        Parameter of = table.rows().get(row);
        return of.nominal() > 0 && !of.range().contains(-1e-12);
    }

    private double coordinate(Told told, double[] at) {
        double si = unknowns.vector(told.test, at)[told.row];
        return told.positive ? Math.log(si) : si;
    }

    /** Of a row's coordinate by every unknown: those fitted together move it too. */
    private double[] slopes(Told told) {
        double[] slopes = new double[unknowns.size()];
        for (int k = 0; k < slopes.length; k++) {
            if (k == told.unknown || isTogether(told, k)) {
                double[] at = z.clone();
                at[k] = z[k] + H;
                double above = coordinate(told, at);
                at[k] = z[k] - H;
                slopes[k] = (above - coordinate(told, at)) / (2 * H);
            }
        }
        return slopes;
    }

    private boolean isTogether(Told told, int unknown) {
        int row = unknowns.get(unknown).row()[told.test];
        return stage.tests().get(told.test).parameters().together().stream()
                .anyMatch(of -> of.rows().contains(row) && of.rows().contains(told.row));
    }

    private double between(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            int i = placeOf[k];
            for (int l = 0; a[k] != 0 && l < b.length; l++) {
                if (b[l] == 0) {
                    continue;
                }
                int j = placeOf[l];
                double shared = i >= 0 && j >= 0 ? covariance[i][j] : k == l ? 1 : 0;
                sum += a[k] * b[l] * shared;
            }
        }
        return sum;
    }

    private Estimate estimate(Told told, double[] slopes, double variance) {
        Parameter row = stage.tests().get(told.test).parameters().rows().get(told.row);
        double prior = 0;
        double[] origin = new double[z.length];
        for (int k = 0; k < slopes.length; k++) {
            if (slopes[k] != 0) {
                origin[k] = H;
                double above = coordinate(told, origin);
                origin[k] = -H;
                prior = Math.hypot(prior, (above - coordinate(told, origin)) / (2 * H));
                origin[k] = 0;
            }
        }
        return new Estimate(
                row.name(),
                row.label(),
                row.dimension(),
                row.nominal(),
                told.positive,
                coordinate(told, z),
                Math.sqrt(Math.max(0, variance)),
                Math.max(prior, 1e-300));
    }

    /** Axes of what is left, widest first; and what does nothing at all. */
    private List<Untold> untold() {
        List<Untold> untold = new ArrayList<>();
        PrincipalAxes axes = PrincipalAxes.of(covariance);
        for (int k = 0; k < axes.size(); k++) {
            double spread = Math.sqrt(Math.max(0, axes.value(k)));
            if (spread > Fit.OPEN) {
                untold.add(untold(axes.axis(k), spread));
            }
        }
        return untold;
    }

    private Untold untold(double[] axis, double spread) {
        double most = 0;
        for (double one : axis) {
            most = Math.max(most, Math.abs(one));
        }
        double least = LEADING * most;
        List<Integer> leading =
                IntStream.range(0, axis.length)
                        .boxed()
                        .filter(i -> Math.abs(axis[i]) >= least)
                        .sorted(Comparator.comparingDouble((Integer i) -> -Math.abs(axis[i])))
                        .limit(4)
                        .toList();
        double sign = Math.signum(axis[leading.getFirst()]);
        StringBuilder words = new StringBuilder();
        for (int i : leading) {
            words.append(
                    words.isEmpty() ? "" : sign * axis[i] > 0 ? " together with " : " against ");
            words.append(unknowns.get(chosen.get(i)).name());
        }
        return new Untold(
                words.toString(),
                leading.stream().map(i -> unknowns.get(chosen.get(i)).name()).toList(),
                Math.min(1, spread));
    }

    private List<Residual> residuals() {
        List<Residual> all = new ArrayList<>();
        for (int t = 0; t < now.length; t++) {
            List<Compared> channels = stage.tests().get(t).channels();
            for (int c = 0; c < channels.size(); c++) {
                all.add(
                        new Residual(
                                t,
                                channels.get(c).name(),
                                rms(channels.get(c), now[t][c]),
                                rms(channels.get(c), declared[t][c]),
                                leftOut[t][c]));
            }
        }
        return all;
    }

    private static double rms(Compared channel, double[] predicted) {
        double sum = 0;
        for (int k = 0; k < predicted.length; k++) {
            double off = channel.measuredSi()[k] - predicted[k];
            sum += off * off;
        }
        return Math.sqrt(sum / predicted.length);
    }

    private int outliers() {
        int count = 0;
        for (int t = 0; t < now.length; t++) {
            for (double[] channel : Outliers.of(stage.tests().get(t).channels(), now[t])) {
                for (double factor : channel) {
                    count += factor > 2 ? 1 : 0;
                }
            }
        }
        return count;
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!converged) {
            notes.add(
                    "the fit did not settle: what it found is not the most probable, and must not"
                            + " be used");
        }
        for (Model test : stage.tests()) {
            for (Compared channel : test.channels()) {
                Optional<String> note = Settling.note(channel);
                note.ifPresent(notes::add);
            }
        }
        return notes;
    }
}
