package liftwright.review.cause.truth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
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

    private static final int SAMPLES = 40;
    private static final double NEVER = -1e6;

    /** Nobody who measures knows how much of the arms' doubt is the same in all rows: any part. */
    private static final double[] ALIKE = {1.0 / 6, 0.5, 5.0 / 6};

    private static final double ARM_STEP = Math.toRadians(1);

    private final TrueRig rig;
    private final Plan plan;
    private final List<TurningTable.Row> rows;
    private final double[] read;
    private final Hidden expected;
    private final double[] base;
    private final List<double[][]> fixed = new ArrayList<>();
    private final double yawShare;
    private final Map<Wrong.Kind, Heard> heard = new EnumMap<>(Wrong.Kind.class);
    private final RandomGenerator random;

    public Observer(TrueRig rig) {
        this(rig, rig.rows());
    }

    /**
     * @param rows of this rig; the first is a hop
     */
    public Observer(TrueRig rig, List<TurningTable.Row> rows) {
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
        for (double alike : ALIKE) {
            fixed.add(fixed(alike));
        }
    }

    private double[] at(Hidden hidden) {
        return at(hidden, new double[Body.JOINTS]);
    }

    private double[] at(Hidden hidden, double[] arms) {
        Map<Once, double[]> known = new HashMap<>();
        double[] all = new double[3 * rows.size()];
        for (int row = 0; row < rows.size(); row++) {
            double[] rate =
                    known.computeIfAbsent(
                            new Once(rows.get(row).throttle(), rows.get(row).swap()),
                            once -> rig.mechanics.rates(hidden, once.throttle, once.swap, arms));
            System.arraycopy(rate, 0, all, 3 * row, 3);
        }
        return all;
    }

    private record Once(OptionalDouble throttle, Swap swap) {}

    /**
     * Covariance of the rows, whatever is at fault, but for the inertia.
     *
     * @param alike how much of the arms' variance is the same in all rows
     */
    private double[][] fixed(double alike) {
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
            Gauss.addOuter(sum, slope, alike);
            for (int row = 0; row < rows.size(); row++) {
                double[] own = new double[n];
                System.arraycopy(slope, 3 * row, own, 3 * row, 3);
                Gauss.addOuter(sum, own, 1 - alike);
            }
        }
        return sum;
    }

    /** With the doubt of inertia at what turns the rig, which it divides. */
    private Gauss around(double[] mean, double[][] whatever) {
        double[][] covariance = new double[whatever.length][];
        for (int i = 0; i < whatever.length; i++) {
            covariance[i] = whatever[i].clone();
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

    private Gauss around(double[] mean) {
        return around(mean, fixed.get(1));
    }

    /** Of the rows about a mean, whatever part of the arms' doubt is the same in all of them. */
    private double logDensity(double[] mean) {
        List<Double> logs = new ArrayList<>();
        for (double[][] whatever : fixed) {
            logs.add(around(mean, whatever).logDensity(read) - Math.log(ALIKE.length));
        }
        return Gauss.logSum(logs);
    }

    /**
     * What the rows say of a kind or a place, as logarithms of densities.
     *
     * @param any of a fault of whatever size
     * @param drawn of one that would be drawn, which a hop shows
     */
    private record Heard(double any, double drawn) {

        static Heard over(List<Heard> all) {
            return new Heard(
                    Gauss.logSum(all.stream().map(Heard::any).toList()),
                    Gauss.logSum(all.stream().map(Heard::drawn).toList()));
        }

        Heard times(double factor) {
            return new Heard(any + Math.log(factor), drawn + Math.log(factor));
        }
    }

    /** Logarithm of the density of the rows under each kind of fault, times its prior. */
    public Map<Wrong.Kind, Double> evidence() {
        return heard(Heard::any);
    }

    /** The same by who knows besides that faults are drawn again until a hop shows them. */
    public Map<Wrong.Kind, Double> evidenceOfDrawn() {
        return heard(Heard::drawn);
    }

    private Map<Wrong.Kind, Double> heard(ToDoubleFunction<Heard> of) {
        if (heard.isEmpty()) {
            for (Wrong.Kind kind : Wrong.Kind.values()) {
                List<Heard> places = new ArrayList<>();
                for (Wrong place : Wrong.places(plan, kind)) {
                    places.add(heard(place).times(place.share(plan)));
                }
                Heard all = Heard.over(places).times(kind.prior());
                heard.put(kind, kind.isDrawn() ? all : new Heard(all.any, NEVER));
            }
        }
        Map<Wrong.Kind, Double> logs = new EnumMap<>(Wrong.Kind.class);
        heard.forEach((kind, each) -> logs.put(kind, of.applyAsDouble(each)));
        return logs;
    }

    private Heard heard(double[] mean) {
        double log = logDensity(mean);
        return new Heard(log, rig.isShown(base, mean) ? log : NEVER);
    }

    private Heard heard(Wrong place) {
        int sizes = place.kind().sizes();
        if (sizes == 0) {
            return heard(at(place.in(expected, new double[0])));
        }
        Surface surface = new Surface(place, sizes, size -> at(place.in(expected, size)), base);
        double[] best = surface.best(this::around, read);
        double[][] about = surface.about(around(surface.at(best)), best);
        List<Heard> samples = new ArrayList<>();
        samples.add(new Heard(NEVER, NEVER));
        for (int k = 0; k < SAMPLES; k++) {
            double[] size = k % 2 == 0 ? place.size(random) : surface.near(best, about, random);
            double density = place.density(size);
            if (density > 0) {
                double law = 0.5 * density + 0.5 * surface.density(best, about, size);
                samples.add(heard(surface.at(size)).times(density / law / SAMPLES));
            }
        }
        return Heard.over(samples);
    }
}
