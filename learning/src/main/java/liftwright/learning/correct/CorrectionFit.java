package liftwright.learning.correct;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import liftwright.learning.fit.Compared;
import liftwright.learning.fit.DrivenModel;
import liftwright.learning.fit.Estimate;
import liftwright.learning.fit.Fit;
import liftwright.learning.fit.Fitted;
import liftwright.learning.fit.LeftOneOut;
import liftwright.learning.fit.Model;
import liftwright.numerics.Work;
import liftwright.plant.CorrectionMaker;
import liftwright.plant.CorrectionMaker.Posterior;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Rig;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;

/** Fits the numbers of a rig to its tests and makes a correction of what they found. */
public final class CorrectionFit {

    /** Of more tests these last ones are held out, one after the other. */
    private static final int MOST_HELD_OUT = 3;

    private final Rig rig;
    private final List<FitTest> tests;
    private final List<Model> models;
    private final int threads;
    private final Work work;

    private CorrectionFit(Rig declared, List<FitTest> tests, int threads, Work work) {
        rig = declared;
        this.tests = List.copyOf(tests);
        models = tests.stream().<Model>map(test -> DrivenModel.of(test.driven())).toList();
        this.threads = threads;
        this.work = work;
    }

    /**
     * Fits.
     *
     * @param declared the rig as declared, which drove the tests
     * @param tests at least one
     * @param threads ≥ 1
     * @return empty when stopped
     * @throws IllegalArgumentException where a test has no channel that can be compared, or the rig
     *     as declared would not have run to its end
     */
    public static Optional<FitResult> of(
            Rig declared, List<FitTest> tests, int threads, Work work) {
        if (!declared.corrections().isEmpty()) {
            throw new IllegalArgumentException("a fit starts from a rig as it is declared");
        }
        return new CorrectionFit(declared, tests, threads, work).result();
    }

    private Optional<FitResult> result() {
        LeftOneOut found = Fit.leavingOut(models, MOST_HELD_OUT, threads, work);
        Fitted fitted = found.fitted();
        OptionalDouble heldOut = heldOut(found.told());
        if (work.stopped()) {
            return Optional.empty();
        }
        Optional<Correction> correction = correction(fitted, heldOut);
        List<FitResult.Moved> moved = new ArrayList<>();
        correction.ifPresent(group -> moved.addAll(moved(group, fitted)));
        return Optional.of(new FitResult(fitted, moved, heldOut, correction));
    }

    private Optional<Correction> correction(Fitted fitted, OptionalDouble heldOut) {
        ParameterTable table = Plant.assembleHeated(rig).parameters();
        Posterior all = fitted.posterior(table);
        if (all.rows().length == 0) {
            return Optional.empty();
        }
        String name =
                tests.size() == 1
                        ? "found by test " + tests.getFirst().name().id()
                        : "found by " + tests.size() + " tests";
        // What is not proven to be most probable counts, but bears nothing out.
        var grounds =
                new Grounds(
                        tests.stream().map(FitTest::name).toList(),
                        fitted.converged() ? heldOut : OptionalDouble.empty(),
                        fitted.distance());
        return Optional.of(
                new CorrectionMaker(rig, table).make(name, mostTold(all, fitted, table), grounds));
    }

    /** As many as a group holds: what is left out went least far and kept most of its doubt. */
    private static Posterior mostTold(Posterior all, Fitted fitted, ParameterTable table) {
        int most = Correction.MOST / 2; // the rest of their tables' values comes to them
        if (all.rows().length <= most) {
            return all;
        }
        Map<String, Estimate> byRow = byRow(fitted);
        Comparator<Integer> news =
                Comparator.comparingDouble(
                        i -> {
                            Estimate one = byRow.get(table.rows().get(all.rows()[i]).name());
                            return one == null ? 0 : -Math.abs(one.moved()) - 1 + one.leftOpen();
                        });
        int[] kept =
                IntStream.range(0, all.rows().length)
                        .boxed()
                        .sorted(news)
                        .limit(most)
                        .sorted()
                        .mapToInt(Integer::intValue)
                        .toArray();
        int n = all.rows().length;
        double[] covariance = new double[most * most];
        boolean[] logs = new boolean[most];
        for (int i = 0; i < most; i++) {
            logs[i] = all.inLogarithms()[kept[i]];
            for (int j = 0; j < most; j++) {
                covariance[i * most + j] = all.covariance()[kept[i] * n + kept[j]];
            }
        }
        return new Posterior(
                Arrays.stream(kept).map(i -> all.rows()[i]).toArray(),
                Arrays.stream(kept).mapToDouble(i -> all.values()[i]).toArray(),
                logs,
                covariance);
    }

    private static Map<String, Estimate> byRow(Fitted fitted) {
        var byRow = new HashMap<String, Estimate>();
        fitted.estimates().forEach(one -> byRow.put(one.row(), one));
        return byRow;
    }

    private static List<FitResult.Moved> moved(Correction group, Fitted fitted) {
        Map<String, Estimate> byRow = byRow(fitted);
        List<FitResult.Moved> moved = new ArrayList<>();
        for (Found found : group.found()) {
            Estimate one = byRow.get(found.parameter());
            moved.add(
                    one == null
                            ? new FitResult.Moved(found, 0, 1)
                            : new FitResult.Moved(found, one.moved(), one.leftOpen()));
        }
        moved.sort(Comparator.comparingDouble(one -> -Math.abs(one.by())));
        return moved;
    }

    /** Tests told by what the others find; empty where one cannot be told at all. */
    private OptionalDouble heldOut(List<LeftOneOut.Told> told) {
        double sum = 0;
        int count = 0;
        for (LeftOneOut.Told held : told) {
            if (held.predicted().isEmpty()) {
                return OptionalDouble.empty();
            }
            double[][] predicted = held.predicted().get();
            for (int c = 0; c < predicted.length; c++) {
                sum += missed(models.get(held.test()).channels().get(c), predicted[c]);
                count += predicted[c].length;
            }
        }
        return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(sum / count));
    }

    /**
     * Squares of measured less predicted over what scatter, instrument and what the model leaves
     * out lead to expect. What is left of the doubt of the numbers is not among it, so it errs to
     * the strict side.
     */
    private static double missed(Compared channel, double[] predicted) {
        double sum = 0;
        for (int i = 0; i < predicted.length; i++) {
            double measured = channel.measuredSi()[i];
            double way = measured - channel.startSi();
            double expected =
                    square(channel.noiseSi()[i])
                            + square(channel.errorSi() / 2)
                            + square(channel.errorShare() * measured / 2)
                            + square(channel.leftOutShare() * way / 2)
                            + square(channel.leftOutSi() / 2);
            double off = measured - predicted[i];
            sum += off * off / Math.max(expected, 1e-9 * square(measured) + Double.MIN_NORMAL);
        }
        return sum;
    }

    private static double square(double x) {
        return x * x;
    }
}
