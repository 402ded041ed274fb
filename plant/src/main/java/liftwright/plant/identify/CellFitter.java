package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.numerics.CentralDifferences;
import liftwright.numerics.LeastSquares;
import liftwright.numerics.LeastSquaresFit;
import liftwright.physics.CellLaw;
import liftwright.plant.identify.CellRun.Warming;
import liftwright.rig.table.CellTests;

/** Finds a cell's numbers from the tests that may be used for it. */
final class CellFitter {

    private static final double FIRST_SCATTER_V = 0.01;
    private static final double LEAST_SCATTER_V = 0.001;
    private static final int ROUNDS = 5;
    private static final double START_DOUBT_V = 0.015;

    /** Share of charge that a discharge goes through to tell rest voltage. */
    private static final double WHOLE = 0.8;

    /** Ratio of currents that tells rest voltage from drop. */
    private static final double APART = 1.8;

    /** A rise that tells how a cell warms, K. */
    private static final double WARMS_K = 3;

    private static final double KELVIN_SCATTER = 0.5;

    /** Rest voltage at the start this far from the declared curve: another charge than declared. */
    private static final double START_AMISS_V = 0.05;

    final CellGiven given;
    final List<String> setAside = new ArrayList<>();
    final List<MeasuredRun> runs = new ArrayList<>();
    final CellUnknowns unknowns;
    final CellModel cell;
    final double largestAs;
    double scatterV = FIRST_SCATTER_V;

    /**
     * @throws NotToldException if the tests cannot tell what was not declared
     */
    CellFitter(CellGiven given) {
        this.given = given;
        List<CellTests.Run> fitted = given.tests().fitted();
        if (fitted.isEmpty()) {
            throw new NotToldException("every test is held out, so that none tells a value");
        }
        largestAs =
                fitted.stream()
                        .mapToDouble(test -> TestRows.of(test).passedInAllAs())
                        .max()
                        .orElse(0);
        double about = given.capacityAs().orElse(largestAs);
        if (!(about > 0)) {
            throw new NotToldException("no test takes charge out of the cell");
        }
        for (CellTests.Run test : fitted) {
            MeasuredRun run = new MeasuredRun(test, about);
            Optional<String> amiss = startAmiss(run);
            amiss.ifPresent(setAside::add);
            if (amiss.isEmpty()) {
                runs.add(run);
            }
        }
        if (runs.isEmpty()) {
            throw new NotToldException(String.join("; ", setAside));
        }
        if (given.capacityAs().isEmpty()
                && runs.stream().noneMatch(run -> run.depth(about) > WHOLE && full(run))) {
            throw new NotToldException(
                    "no discharge goes from full to empty, so that none tells the capacity");
        }
        if (given.openCircuit().isEmpty()) {
            requireTwoCurrents(about);
        }
        unknowns = new CellUnknowns(given, largestAs);
        cell = unknowns.newCell();
    }

    /** Why a test cannot have begun at the charge that was declared for it. */
    private Optional<String> startAmiss(MeasuredRun run) {
        if (given.openCircuit().isEmpty() || !run.rows.startsAtRest()) {
            return Optional.empty();
        }
        double[] charge = CellModel.doubles(given.openCircuit().get().charge());
        double[] volt = CellModel.doubles(given.openCircuit().get().volt());
        double expected = CellLaw.openCircuitV(charge, volt, run.rows.startCharge);
        double rest = run.rows.voltageV[0];
        if (Math.abs(rest - expected) <= START_AMISS_V + 2 * given.openCircuitDoubtV()) {
            return Optional.empty();
        }
        return Optional.of(
                String.format(
                        Locale.ROOT,
                        "%s is set aside: it begins at %.3f V, where its charge of %.0f %% rests at"
                                + " %.3f V",
                        run.rows.file,
                        rest,
                        100 * run.rows.startCharge,
                        expected));
    }

    private static boolean full(MeasuredRun run) {
        return run.rows.startCharge > 0.95;
    }

    private void requireTwoCurrents(double about) {
        var whole = runs.stream().filter(run -> run.depth(about) > WHOLE && full(run));
        var currents = whole.mapToDouble(MeasuredRun::greatestA).summaryStatistics();
        if (currents.getCount() < 2 || currents.getMax() < APART * currents.getMin()) {
            throw new NotToldException(
                    "rest voltage is told by two discharges from full to empty, one at twice the"
                            + " current of the other or more; declare open circuit, or add one");
        }
    }

    LeastSquaresFit fit() {
        double[] x = start();
        LeastSquaresFit fit = once(x);
        for (int round = 1; round < ROUNDS; round++) {
            if (fit.status() != LeastSquaresFit.Status.CONVERGED) {
                break;
            }
            double old = scatterV;
            scatterV = Math.max(LEAST_SCATTER_V, scatterV * scatter(fit));
            fit = once(fit.values());
            if (Math.abs(scatterV - old) < 0.03 * old) {
                break;
            }
        }
        unknowns.into(fit.values(), cell);
        runs.forEach(run -> run.follow(cell));
        return fit;
    }

    private LeastSquaresFit once(double[] x) {
        int rows = runs.stream().mapToInt(run -> run.counted).sum() + unknowns.ties();
        runs.forEach(run -> run.scatter(scatterV));
        double startDoubtV = Math.hypot(START_DOUBT_V, given.openCircuitDoubtV());
        boolean[] positive = unknowns.positive();
        var problem =
                new LeastSquares(
                        rows,
                        positive,
                        new CentralDifferences(
                                (at, into) -> {
                                    unknowns.into(at, cell);
                                    int next = 0;
                                    for (MeasuredRun run : runs) {
                                        run.follow(cell);
                                        next = run.whitened(startDoubtV, into, next);
                                    }
                                    unknowns.ties(at, into, next);
                                },
                                positive,
                                unknowns.scale()));
        problem.tolerance(1e-6);
        unknowns.priors(problem, start());
        return problem.fit(x);
    }

    /** What a row scatters by, over what it was taken to. */
    private double scatter(LeastSquaresFit fit) {
        double square = 0;
        double readings = 0;
        int row = 0;
        for (MeasuredRun run : runs) {
            for (int k = 0; k < run.counted; k++) {
                square += fit.residual(row) * fit.residual(row);
                row++;
            }
            readings += run.readings() - 1;
        }
        // Unknowns that are tied cost less than a reading each; half a reading is the middle.
        return Math.sqrt(square / Math.max(readings / 2, readings - unknowns.count / 2.0));
    }

    private double[] start() {
        double ohm = roughOhm();
        MeasuredRun slowest = runs.getFirst();
        for (MeasuredRun run : runs) {
            boolean deeper = run.depth(largestAs) > WHOLE;
            boolean deep = slowest.depth(largestAs) > WHOLE;
            if (deeper && (!deep || run.greatestA() < slowest.greatestA())) {
                slowest = run;
            }
        }
        int n = slowest.rows.size();
        double[] charge = new double[n];
        double[] volt = new double[n];
        for (int k = 0; k < n; k++) {
            int from = n - 1 - k;
            charge[k] = slowest.rows.startCharge - slowest.rows.passedAs[from] / largestAs;
            volt[k] = slowest.rows.voltageV[from] + ohm * slowest.rows.currentA[from];
        }
        return unknowns.start(ohm, charge, volt);
    }

    /** Drop of the first loaded rows over their current; the middle one of all tests, Ω. */
    private double roughOhm() {
        double[] found =
                runs.stream()
                        .filter(run -> run.rows.startsAtRest())
                        .mapToDouble(CellFitter::firstOhm)
                        .filter(ohm -> ohm > 0)
                        .sorted()
                        .toArray();
        // 60 mΩ at 1 Ah: the middle of small cells (from memory); only where the fit starts.
        return found.length > 0 ? found[found.length / 2] : 0.06 * 3600 / largestAs;
    }

    private static double firstOhm(MeasuredRun run) {
        double most = run.greatestA();
        for (int k = 1; k < run.rows.size(); k++) {
            if (run.rows.counts[k] && Math.abs(run.rows.currentA[k]) > 0.5 * most) {
                return (run.rows.voltageV[0] - run.rows.voltageV[k])
                        / (run.rows.currentA[k] - run.rows.currentA[0]);
            }
        }
        return 0;
    }

    /** How the cell warms, from tests whose temperature was logged and rose. */
    Optional<Warming> warming() {
        List<MeasuredRun> warm = new ArrayList<>();
        for (MeasuredRun run : runs) {
            double hottest = Arrays.stream(run.rows.kelvin).max().orElse(0);
            if (run.rows.warmed && hottest - run.rows.kelvin[0] > WARMS_K) {
                warm.add(run);
            }
        }
        if (warm.isEmpty()) {
            return Optional.empty();
        }
        int rows = warm.stream().mapToInt(run -> run.rows.size()).sum();
        boolean[] positive = {true, true};
        var problem =
                new LeastSquares(
                        rows,
                        positive,
                        new CentralDifferences(
                                (at, into) -> {
                                    int next = 0;
                                    for (MeasuredRun run : warm) {
                                        double startK = run.rows.kelvin[0];
                                        run.run.follow(
                                                cell,
                                                run.rows.startCharge,
                                                new Warming(at[0], at[1]),
                                                startK,
                                                startK);
                                        for (int k = 0; k < run.rows.size(); k++) {
                                            into[next++] =
                                                    (run.run.kelvin[k] - run.rows.kelvin[k])
                                                            / KELVIN_SCATTER;
                                        }
                                    }
                                },
                                positive,
                                new double[] {1, 1}));
        // 0.009 J/K of cell for an A·s and 600 s to settle: the size of small cells (from memory).
        double capacity = 0.0055 * largestAs;
        LeastSquaresFit fit = problem.fit(new double[] {capacity, capacity / 600});
        runs.forEach(run -> run.follow(cell));
        return fit.status() == LeastSquaresFit.Status.CONVERGED
                ? Optional.of(new Warming(fit.value(0), fit.value(1)))
                : Optional.empty();
    }
}
