package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.numerics.LeastSquaresFit;
import liftwright.plant.identify.CellRun.Warming;
import liftwright.rig.CellType;
import liftwright.rig.table.CellTests;

/**
 * What tests say of a cell: its values with their joint doubt, the curves over charge, and what
 * each test leaves over, those held out included.
 *
 * <p>The doubt of a value is that of its fit, with curves and other values free, together with what
 * one run differs from all ({@link RunSpread}): resistance, capacity and rest voltage of a cell in
 * a run that nobody saw. Valid between the currents, temperatures and charges of the tests.
 */
public final class CellFit {

    /**
     * One value.
     *
     * @param value SI
     * @param deviation standard deviation for draws: of ln x for positive ones
     * @param assumed whether it is more what every cell is taken to be than what the tests say:
     *     they narrowed that by less than a third
     */
    public record Value(CellUnknown unknown, double value, double deviation, boolean assumed) {

        /** Lower end of the 95 % band. */
        public double low() {
            return unknown.positive()
                    ? value * Math.exp(-1.96 * deviation)
                    : value - 1.96 * deviation;
        }

        /** Upper end of the 95 % band. */
        public double high() {
            return unknown.positive()
                    ? value * Math.exp(1.96 * deviation)
                    : value + 1.96 * deviation;
        }
    }

    /**
     * A test beside the model at the temperatures measured.
     *
     * @param heldOut whether nothing was found from it
     * @param rows whose voltage counts
     * @param rmsV root of the mean square of measured less computed voltage, V
     * @param meanV mean of the same, V
     * @param outOfStep lines set aside: voltage and current do not belong together
     */
    public record Judged(
            String file,
            boolean heldOut,
            int rows,
            double rmsV,
            double meanV,
            List<Integer> outOfStep) {

        public Judged {
            outOfStep = List.copyOf(outOfStep);
        }
    }

    private final List<Value> values;
    private final double[] covariance;
    private final boolean found;
    private final CellModel cell;
    private final RunSpread spread;
    private final double scatterV;
    private final Optional<Warming> warming;
    private final List<Judged> judged;
    private final List<String> notes = new ArrayList<>();

    /** Declared values beside tests. */
    private CellFit(CellGiven given) {
        found = false;
        cell = new CellUnknowns(given, given.capacityAs().orElseThrow()).newCell();
        spread = new RunSpread(0, 0, 0);
        scatterV = 0;
        warming = Optional.empty();
        values = List.of();
        covariance = new double[0];
        judged = given.tests().runs().stream().map(this::judge).toList();
        notes.add("everything is declared, so that the tests only judge it");
    }

    private CellFit(CellFitter fitter, LeastSquaresFit fit) {
        found = true;
        cell = fitter.cell;
        scatterV = fitter.scatterV;
        spread = RunSpread.of(fitter.runs, cell);
        warming = fitter.warming();
        List<CellUnknown> named = fitter.unknowns.named;
        boolean curveSought = fitter.given.openCircuit().isEmpty();
        boolean capacityMeasured = curveSought && fitter.given.capacityAs().isEmpty();
        int extra = capacityMeasured ? 1 : 0;
        int n = named.size() + extra;
        covariance = new double[n * n];
        List<Value> all = new ArrayList<>();
        for (int i = 0; i < named.size(); i++) {
            for (int j = 0; j < named.size(); j++) {
                covariance[i * n + j] =
                        fit.covariance(i, j) + spread.covariance(named.get(i), named.get(j));
            }
            all.add(
                    new Value(
                            named.get(i),
                            fit.value(i),
                            Math.sqrt(covariance[i * n + i]),
                            fitter.unknowns.isAssumed(i, fit)));
        }
        if (capacityMeasured) {
            int last = n - 1;
            covariance[last * n + last] =
                    spread.covariance(CellUnknown.CAPACITY, CellUnknown.CAPACITY);
            all.add(
                    new Value(
                            CellUnknown.CAPACITY,
                            cell.capacityAs,
                            Math.sqrt(covariance[last * n + last]),
                            false));
        }
        values = List.copyOf(all);
        judged = fitter.given.tests().runs().stream().map(this::judge).toList();
        remark(fitter);
    }

    private static CellFit of(String name, CellGiven given) {
        if (!given.isAnythingSought()) {
            return new CellFit(given);
        }
        try {
            CellFitter fitter = new CellFitter(given);
            LeastSquaresFit fit = fitter.fit();
            if (fit.status() != LeastSquaresFit.Status.CONVERGED) {
                throw new NotToldException(
                        switch (fit.status()) {
                            case UNDETERMINED -> "they leave open more than one set of values";
                            case NOT_CONVERGED, CONVERGED -> "no set of values comes near them";
                        });
            }
            return new CellFit(fitter, fit);
        } catch (NotToldException e) {
            throw new NotToldException(
                    "the tests of cells/" + name + " give no cell: " + e.getMessage());
        }
    }

    /** Fits made before: a fit depends on nothing but what it is given. */
    private static final Remembered<CellGiven, CellFit> MADE = new Remembered<>();

    /**
     * Finds what was not declared; made once for the same tests. Safe from any thread.
     *
     * @return empty for a cell without tests
     * @throws NotToldException if the tests cannot tell it
     */
    public static Optional<CellFit> of(CellType type) {
        return CellGiven.of(type).map(given -> MADE.get(given, it -> of(type.name(), it)));
    }

    private Judged judge(CellTests.Run test) {
        MeasuredRun run = new MeasuredRun(test, cell.capacityAs);
        run.follow(cell);
        double square = 0;
        double sum = 0;
        for (int k = 0; k < run.rows.size(); k++) {
            if (run.rows.counts[k]) {
                double rest = run.rows.voltageV[k] - run.run.voltageV[k];
                square += rest * rest;
                sum += rest;
            }
        }
        return new Judged(
                test.test().file(),
                test.heldOut(),
                run.counted,
                Math.sqrt(square / run.counted),
                sum / run.counted,
                run.rows.outOfStep);
    }

    private void remark(CellFitter fitter) {
        notes.addAll(fitter.setAside);
        if (fitter.given.resistanceOhm().isEmpty()) {
            if (fitter.runs.stream().anyMatch(run -> !run.rows.warmed)) {
                notes.add("a test without temperatures is taken at 25 °C throughout");
            }
            String hardly =
                    values.stream()
                            .filter(Value::assumed)
                            .map(value -> value.unknown().words())
                            .collect(Collectors.joining(", "));
            if (!hardly.isEmpty()) {
                notes.add(
                        "what the tests hardly tell stays what cells usually have, with a wide"
                                + " doubt: "
                                + hardly);
            }
        }
    }

    /** Whether anything was found; else everything was declared, and the tests only judge. */
    public boolean isFound() {
        return found;
    }

    /** What was found, in the order of the covariance. */
    public List<Value> values() {
        return values;
    }

    /** One value; empty if it was declared. */
    public Optional<Value> value(CellUnknown unknown) {
        return values.stream().filter(value -> value.unknown() == unknown).findFirst();
    }

    /** Row by row, of ln x for positive values and of x for others. */
    public double[] covariance() {
        return covariance.clone();
    }

    /** Rest voltage, found or declared. */
    public CellType.Curve openCircuit() {
        return cell.openCircuit();
    }

    /** Standard deviation of rest voltage, one for the whole curve, V. */
    public double openCircuitDeviationV() {
        return spread.offsetV();
    }

    /** Growth of resistance over charge, found or declared. */
    public CellType.Shape shape() {
        return cell.shape();
    }

    /** What a single row scatters by, V. */
    public double scatterV() {
        return scatterV;
    }

    /** Every test, in the order of the rig file. */
    public List<Judged> judged() {
        return judged;
    }

    /** Sentences for the builder: what was assumed and what cannot be told. */
    public List<String> notes() {
        return List.copyOf(notes);
    }

    CellModel cell() {
        return cell;
    }

    Optional<Warming> warming() {
        return warming;
    }
}
