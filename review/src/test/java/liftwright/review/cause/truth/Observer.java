package liftwright.review.cause.truth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.review.cause.truth.Hidden.Part;
import liftwright.rig.table.TurningTable;
import liftwright.rig.table.TurningTable.Swap;

/**
 * The ideal observer: knows how true rigs and faults are drawn, and what of them nobody can know,
 * and asks what the rows say. No ranking can be right more often. Hidden numbers and wandering arms
 * are marginalised as normals about the true mechanics; the sizes of a fault are integrated by
 * importance sampling, half from their law, half around where the rows put them.
 */
public final class Observer {

    private static final int SAMPLES = 80;
    private static final double NEVER = -1e6;
    private static final double ARM_STEP = Math.toRadians(1);

    private final TrueRig rig;
    private final Plan plan;
    private final List<TurningTable.Row> rows;
    private final double[] read;
    private final Hidden expected;
    private final double[] base;
    private final double[][] fixed;
    private final double yawShare;
    private final RandomGenerator random;

    public Observer(TrueRig rig) {
        this(rig, rig.rows());
    }

    /** Rows of the rig as declared, without swaps. */
    Observer(TrueRig rig, List<TurningTable.Row> rows) {
        this.rig = rig;
        this.rows = rows;
        plan = rig.plan;
        random = new SplittableRandom(11);
        expected = Spread.expected(plan);
        read = new double[3 * rows.size()];
        for (int i = 0; i < read.length; i++) {
            read[i] = rows.get(i / 3).rates().get(i % 3).radps2();
        }
        yawShare = rig.mechanics.personYawShare();
        base = at(expected);
        fixed = fixed();
    }

    private double[] at(Hidden hidden) {
        return at(hidden, new double[Body.JOINTS]);
    }

    private double[] at(Hidden hidden, double[] arms) {
        double[] hop = {};
        double[] stand = {};
        double[] all = new double[3 * rows.size()];
        for (int row = 0; row < rows.size(); row++) {
            OptionalDouble throttle = rows.get(row).throttle();
            double[] known = throttle.isPresent() ? stand : hop;
            double[] rate =
                    known.length > 0
                            ? known
                            : rig.mechanics.rates(hidden, throttle, new Swap.None(), arms);
            stand = throttle.isPresent() ? rate : stand;
            hop = throttle.isPresent() ? hop : rate;
            System.arraycopy(rate, 0, all, 3 * row, 3);
        }
        return all;
    }

    /** Covariance of the rows, whatever is at fault, but for the inertia. */
    private double[][] fixed() {
        int n = read.length;
        double[][] sum = new double[n][n];
        for (int i = 0; i < n; i++) {
            double sigma = rows.get(i / 3).rates().get(i % 3).doubtRadps2() / 2;
            sum[i][i] = sigma * sigma;
        }
        for (Spread.Doubtful each : Spread.of(plan)) {
            if (each.part() != Part.INERTIA) {
                Hidden more = expected.copy().add(each.part(), each.k(), each.sigma());
                Hidden less = expected.copy().add(each.part(), each.k(), -each.sigma());
                Gauss.addOuter(sum, Gauss.difference(at(more), at(less), 0.5), 1);
            }
        }
        double sigma = plan.doubt().armsRad() / 2;
        for (int joint = 0; joint < Body.JOINTS; joint++) {
            double[] turn = new double[Body.JOINTS];
            turn[joint] = ARM_STEP;
            double[] more = at(expected, turn);
            turn[joint] = -ARM_STEP;
            double[] slope = Gauss.difference(more, at(expected, turn), 0.5 * sigma / ARM_STEP);
            Gauss.addOuter(sum, slope, rig.armsShared());
            for (int row = 0; row < rows.size(); row++) {
                double[] own = new double[n];
                System.arraycopy(slope, 3 * row, own, 3 * row, 3);
                Gauss.addOuter(sum, own, 1 - rig.armsShared());
            }
        }
        return sum;
    }

    /** With the doubt of inertia at what turns the rig, which it divides. */
    private Gauss around(double[] mean) {
        double[][] covariance = new double[fixed.length][];
        for (int i = 0; i < fixed.length; i++) {
            covariance[i] = fixed[i].clone();
        }
        for (int axis = 0; axis < 3; axis++) {
            double[] own = new double[mean.length];
            for (int i = axis; i < mean.length; i += 3) {
                own[i] = mean[i];
            }
            double personal = axis == 2 ? yawShare * Spread.yawSigma() : 0;
            Gauss.addOuter(covariance, own, 0.03 * 0.03 + personal * personal);
        }
        return new Gauss(mean, covariance);
    }

    /**
     * What the measurement shows of the fault: the length of its effect on all rows in standard
     * deviations of all that is not known.
     */
    public double signal() {
        return Math.sqrt(around(base).squared(rig.effect()));
    }

    /** Logarithm of the density of the rows under each kind of fault. */
    public Map<Wrong.Kind, Double> evidence() {
        Map<Wrong.Kind, Double> evidence = new EnumMap<>(Wrong.Kind.class);
        for (Wrong.Kind kind : Wrong.Kind.values()) {
            List<Double> logs = new ArrayList<>();
            for (Wrong place : Wrong.places(plan, kind)) {
                logs.add(evidence(place) + Math.log(place.share(plan)));
            }
            evidence.put(kind, Gauss.logSum(logs));
        }
        return evidence;
    }

    private double evidence(Wrong place) {
        int sizes = place.kind().sizes();
        if (sizes == 0) {
            double[] mean = at(place.in(expected, new double[0]));
            return rig.isShown(base, mean) ? around(mean).logDensity(read) : NEVER;
        }
        Surface surface = new Surface(place, sizes, size -> at(place.in(expected, size)), base);
        double[] best = surface.best(this::around, read);
        double[][] about = surface.about(around(surface.at(best)), best);
        List<Double> logs = new ArrayList<>();
        for (int k = 0; k < SAMPLES; k++) {
            double[] size =
                    k % 2 == 0 ? place.size(random) : surface.near(best, about, random);
            double density = place.density(size);
            double[] mean = surface.at(size);
            if (density > 0 && rig.isShown(base, mean)) {
                double drawn = 0.5 * density + 0.5 * surface.density(best, about, size);
                logs.add(
                        around(mean).logDensity(read)
                                + Math.log(density / drawn)
                                - Math.log(SAMPLES));
            }
        }
        return logs.isEmpty() ? NEVER : Gauss.logSum(logs);
    }
}
