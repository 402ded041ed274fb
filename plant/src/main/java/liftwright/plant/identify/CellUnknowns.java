package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.numerics.LeastSquares;
import liftwright.numerics.LeastSquaresFit;
import liftwright.physics.LinearTable;
import liftwright.rig.CellType;

/**
 * Which numbers of a cell are sought and where each stands in the vector of a fit: those of {@link
 * CellUnknown}, then the growth of resistance at knots of charge, then the rest voltage at knots.
 *
 * <p>Growth over charge and the slow resistances are tied weakly to what cells do (common practice:
 * growth changes by no more than a factor of two from knot to knot; one slow part settles within
 * some ten seconds and one within minutes, each within a factor of 2.7; they are 0.3 and 0.5 of R0,
 * within a factor of 1.6: all one standard deviation). Tests that tell more overrule it. The ties
 * are of ratios, so that a total that is well told stays so however little its parts are.
 */
final class CellUnknowns {

    private static final List<Double> SHAPE_KNOTS =
            List.of(0.0, 0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 1.0);
    private static final int HALF = SHAPE_KNOTS.indexOf(0.5);
    private static final List<Double> OPEN_KNOTS =
            List.of(
                    0.0, 0.02, 0.04, 0.06, 0.08, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8,
                    0.9, 0.95, 1.0);

    /** Standard deviation of ln growth from knot to knot. */
    private static final double SHAPE_STEP = 0.7;

    /** Standard deviation of the ln of a slow resistance over R0. */
    private static final double RATIO_STEP = 0.5;

    private static final double FAST_SHARE = 0.3;
    private static final double SLOW_SHARE = 0.5;
    private static final double FAST_S = 10;
    private static final double SLOW_S = 200;

    /** Standard deviation of the ln of a time. */
    private static final double TIME_STEP = 1;

    final List<CellUnknown> named = new ArrayList<>();
    private final CellGiven given;
    private final double capacityAs;
    private final boolean shape;
    private final boolean open;
    final int count;

    /**
     * @param largestAs charge of the largest discharge, which is the capacity where neither
     *     capacity nor rest voltage is declared: charge 0 then is where that discharge ended
     */
    CellUnknowns(CellGiven given, double largestAs) {
        this.given = given;
        open = given.openCircuit().isEmpty();
        capacityAs = given.capacityAs().orElse(largestAs);
        boolean resistance = given.resistanceOhm().isEmpty();
        if (given.capacityAs().isEmpty() && !open) {
            named.add(CellUnknown.CAPACITY);
        }
        if (resistance) {
            named.add(CellUnknown.RESISTANCE);
            named.add(CellUnknown.TEMPERATURE);
            if (given.settling().isEmpty()) {
                named.add(CellUnknown.FAST_RESISTANCE);
                named.add(CellUnknown.FAST_TIME);
                named.add(CellUnknown.SLOW_RESISTANCE);
                named.add(CellUnknown.SLOW_TIME);
            }
        }
        shape = resistance && given.shape().isEmpty();
        count =
                named.size()
                        + (shape ? SHAPE_KNOTS.size() - 1 : 0)
                        + (open ? OPEN_KNOTS.size() : 0);
    }

    /** A cell of the declared values, to be filled with the unknown ones. */
    CellModel newCell() {
        List<Double> openAt = given.openCircuit().map(CellType.Curve::charge).orElse(OPEN_KNOTS);
        List<Double> shapeAt =
                shape
                        ? SHAPE_KNOTS
                        : given.shape().map(CellType.Shape::charge).orElse(List.of(0.5));
        CellModel cell = new CellModel(openAt, shapeAt);
        cell.capacityAs = capacityAs;
        cell.temperatureCoefficientK = given.temperatureCoefficient().si();
        given.resistanceOhm().ifPresent(ohm -> cell.instantOhm = ohm);
        for (int k = 0; k < given.settling().size(); k++) {
            cell.slowOhm[k] = given.settling().get(k).resistance().si();
            cell.slowS[k] = given.settling().get(k).time().si();
        }
        Arrays.fill(cell.shapeFactor, 1);
        given.shape().ifPresent(one -> copy(one.factor(), cell.shapeFactor));
        given.openCircuit().ifPresent(curve -> copy(curve.volt(), cell.openVolt));
        return cell;
    }

    private static void copy(List<Double> from, double[] to) {
        for (int k = 0; k < to.length; k++) {
            to[k] = from.get(k);
        }
    }

    boolean[] positive() {
        boolean[] positive = new boolean[count];
        for (int k = 0; k < count; k++) {
            positive[k] = k < named.size() ? named.get(k).positive() : k < openFrom();
        }
        return positive;
    }

    /** A size that matters, for unknowns that may be below 0. */
    double[] scale() {
        double[] scale = new double[count];
        Arrays.fill(scale, 1);
        for (int k = 0; k < named.size(); k++) {
            scale[k] = named.get(k) == CellUnknown.TEMPERATURE ? 1000 : 1;
        }
        return scale;
    }

    private int openFrom() {
        return named.size() + (shape ? SHAPE_KNOTS.size() - 1 : 0);
    }

    /**
     * Where to start.
     *
     * @param ohm R0, about
     * @param openCharge charges of a rest voltage known roughly
     * @param openVolt V at each
     */
    double[] start(double ohm, double[] openCharge, double[] openVolt) {
        double[] x = new double[count];
        Arrays.fill(x, 1);
        for (int k = 0; k < named.size(); k++) {
            x[k] =
                    switch (named.get(k)) {
                        case CAPACITY -> capacityAs;
                        case RESISTANCE -> ohm;
                        case TEMPERATURE -> given.temperatureCoefficient().si();
                        case FAST_RESISTANCE -> FAST_SHARE * ohm;
                        case FAST_TIME -> FAST_S;
                        case SLOW_RESISTANCE -> SLOW_SHARE * ohm;
                        case SLOW_TIME -> SLOW_S;
                    };
        }
        if (open) {
            for (int k = 0; k < OPEN_KNOTS.size(); k++) {
                x[openFrom() + k] = LinearTable.value(openCharge, openVolt, OPEN_KNOTS.get(k));
            }
        }
        return x;
    }

    /** Adds what is known of every cell before any test. */
    void priors(LeastSquares problem, double[] start) {
        for (int k = 0; k < named.size(); k++) {
            switch (named.get(k)) {
                case CAPACITY, RESISTANCE, FAST_RESISTANCE, SLOW_RESISTANCE -> {}
                case TEMPERATURE -> problem.prior(k, start[k], temperatureDeviationK());
                case FAST_TIME, SLOW_TIME -> problem.prior(k, Math.log(start[k]), TIME_STEP);
            }
        }
    }

    private double temperatureDeviationK() {
        return Math.max(1, CellGiven.deviation(given.temperatureCoefficient()));
    }

    /** Whether the tests narrowed by less than a third what every cell is taken to have. */
    boolean isAssumed(int index, LeastSquaresFit fit) {
        double told =
                switch (named.get(index)) {
                    case CAPACITY, RESISTANCE -> 0;
                    case TEMPERATURE -> fit.deviation(index) / temperatureDeviationK();
                    case FAST_TIME, SLOW_TIME -> fit.deviation(index) / TIME_STEP;
                    case FAST_RESISTANCE, SLOW_RESISTANCE -> {
                        int atOnce = named.indexOf(CellUnknown.RESISTANCE);
                        yield Math.sqrt(
                                        fit.covariance(index, index)
                                                + fit.covariance(atOnce, atOnce)
                                                - 2 * fit.covariance(index, atOnce))
                                / RATIO_STEP;
                    }
                };
        return told > 0.7;
    }

    /** Rows that tie the growth of one knot to the next, and the slow resistances to R0. */
    int ties() {
        return (shape ? SHAPE_KNOTS.size() - 1 : 0) + (isSettlingSought() ? 2 : 0);
    }

    private boolean isSettlingSought() {
        return named.contains(CellUnknown.FAST_RESISTANCE);
    }

    void ties(double[] x, double[] rows, int at) {
        int next = at;
        if (shape) {
            for (int k = 1; k < SHAPE_KNOTS.size(); k++) {
                rows[next++] = Math.log(growth(x, k) / growth(x, k - 1)) / SHAPE_STEP;
            }
        }
        if (isSettlingSought()) {
            double atOnce = x[named.indexOf(CellUnknown.RESISTANCE)];
            double fast = x[named.indexOf(CellUnknown.FAST_RESISTANCE)];
            double slow = x[named.indexOf(CellUnknown.SLOW_RESISTANCE)];
            rows[next++] = Math.log(fast / atOnce / FAST_SHARE) / RATIO_STEP;
            rows[next] = Math.log(slow / atOnce / SLOW_SHARE) / RATIO_STEP;
        }
    }

    private double growth(double[] x, int knot) {
        if (knot == HALF) {
            return 1;
        }
        return x[named.size() + (knot < HALF ? knot : knot - 1)];
    }

    /** Writes a vector into a cell. */
    void into(double[] x, CellModel cell) {
        for (int k = 0; k < named.size(); k++) {
            switch (named.get(k)) {
                case CAPACITY -> cell.capacityAs = x[k];
                case RESISTANCE -> cell.instantOhm = x[k];
                case TEMPERATURE -> cell.temperatureCoefficientK = x[k];
                case FAST_RESISTANCE -> cell.slowOhm[0] = x[k];
                case FAST_TIME -> cell.slowS[0] = x[k];
                case SLOW_RESISTANCE -> cell.slowOhm[1] = x[k];
                case SLOW_TIME -> cell.slowS[1] = x[k];
            }
        }
        if (shape) {
            for (int k = 0; k < SHAPE_KNOTS.size(); k++) {
                cell.shapeFactor[k] = growth(x, k);
            }
        }
        if (open) {
            System.arraycopy(x, openFrom(), cell.openVolt, 0, OPEN_KNOTS.size());
        }
    }
}
