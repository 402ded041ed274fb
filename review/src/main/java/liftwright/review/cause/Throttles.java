package liftwright.review.cause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import liftwright.numerics.NormalVector;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.parameters.DeclaredInput;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.table.TurningTable.Axis;
import liftwright.rig.table.TurningTable.Swap;

/**
 * The throttles at which turning is measured, as declared and over the draws of what was declared;
 * from these the distribution of any measurements, given a suspect.
 *
 * <p>All effects are linear in the size of a fault, so that measurements, later measurements and
 * the size are normal together. Added to the declared doubt is what the model leaves out: moments
 * in proportion to thrust that are the same in all rows, others that are not, and a share of each
 * fault's own effect. Their sizes are from memory.
 */
final class Throttles {

    /** Moments left out, over thrust times the arm of the fans: the same in all rows. */
    static final double LEFT_OUT = 0.0010;

    /** The same, anew in each row. */
    static final double LEFT_OUT_ANEW = 0.0004;

    /** Places of parts are declared without doubt; the centre is taken to be right to this, m. */
    static final double CENTRE_M = 0.0010;

    /** What a fault's own effect is in doubt by: inertia, and that it is not quite linear. */
    static final double OF_EFFECT = 0.05;

    private static final int DRAWS = 64;
    private static final Axis[] AXES = Axis.values();

    private final Rig rig;
    private final List<OptionalDouble> throttles;
    private final List<Bench> benches = new ArrayList<>();
    private final double[][] spread;
    private final double armM;
    private final double hopThrottle;
    private final boolean armsCarryFans;

    private Throttles(Rig rig, List<OptionalDouble> asked, long seed) {
        this.rig = rig;
        Balancing balancing = Balancing.of(rig);
        armsCarryFans = balancing.armsSteer();
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        HoverPoint liftOff = worker.liftOff(p);
        double[] liftOffN =
                liftOff.ledger().fans().stream().mapToDouble(FanAtWork::thrustN).toArray();
        hopThrottle = liftOff.throttle();
        armM = arm(liftOff);
        throttles = new ArrayList<>(asked);
        withSteps();
        for (OptionalDouble throttle : throttles) {
            benches.add(Bench.of(worker, rig, p, throttle, liftOffN, true));
        }
        spread = spread(balancing, worker, liftOffN, seed);
        addCentre(new Fault.Centre(CENTRE_M, 0));
        addCentre(new Fault.Centre(0, CENTRE_M));
    }

    /**
     * @param asked throttles of the rows, each once; others worth measuring at are added behind
     */
    static Throttles of(Rig rig, List<OptionalDouble> asked, long seed) {
        return new Throttles(rig, asked, seed);
    }

    /** A hop and a stand at 60 % of its throttle, where no row is near. */
    private void withSteps() {
        double step = 0.6 * hopThrottle;
        if (throttles.stream().noneMatch(t -> near(t, hopThrottle))) {
            throttles.add(OptionalDouble.empty());
        }
        if (throttles.stream().noneMatch(t -> near(t, step))) {
            throttles.add(OptionalDouble.of(step));
        }
    }

    private boolean near(OptionalDouble throttle, double other) {
        return Math.abs(throttle.orElse(hopThrottle) - other) < 0.15 * hopThrottle;
    }

    private static double arm(HoverPoint point) {
        double squares = 0;
        for (FanAtWork fan : point.ledger().fans()) {
            squares += fan.arm().x() * fan.arm().x() + fan.arm().y() * fan.arm().y();
        }
        return Math.sqrt(squares / point.ledger().fans().size());
    }

    /** Covariance over the draws, arms held still: three axes per throttle. */
    private double[][] spread(
            Balancing balancing, Balancing.Worker worker, double[] liftOffN, long seed) {
        List<DeclaredInput> inputs = balancing.parameters().inputs();
        double[] width = new double[inputs.size()];
        Arrays.fill(width, 1);
        for (int k = 0; k < width.length; k++) {
            if (inputs.get(k).at().equals(RigPath.of("wearer", "arm steadiness"))) {
                width[k] = 0;
            }
        }
        int size = AXES.length * throttles.size();
        List<double[]> draws = new ArrayList<>();
        double[] p = balancing.parameters().nominal();
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] rates = new double[size];
            try {
                balancing.parameters().draw(seed, draw, width, p);
            } catch (ImpossibleValueException beyond) {
                continue;
            }
            for (int s = 0; s < throttles.size(); s++) {
                Bench bench = Bench.of(worker, rig, p, throttles.get(s), liftOffN, false);
                Vec3 rate = bench.acceleration(new Swap.None(), new Fault.None());
                for (Axis axis : AXES) {
                    rates[index(s, axis)] = Entry.of(axis, rate);
                }
            }
            draws.add(rates);
        }
        return covariance(draws, size);
    }

    /** The centre of mass may be off by so much besides, the same at all throttles. */
    private void addCentre(Fault off) {
        double[] effect = new double[spread.length];
        for (int s = 0; s < throttles.size(); s++) {
            Bench bench = benches.get(s);
            Vec3 change =
                    bench.acceleration(new Swap.None(), off)
                            .minus(bench.acceleration(new Swap.None(), new Fault.None()));
            for (Axis axis : AXES) {
                effect[index(s, axis)] = Entry.of(axis, change);
            }
        }
        for (int i = 0; i < effect.length; i++) {
            for (int j = 0; j < effect.length; j++) {
                spread[i][j] += effect[i] * effect[j];
            }
        }
    }

    private static double[][] covariance(List<double[]> draws, int size) {
        double[] mean = new double[size];
        double[][] sum = new double[size][size];
        for (double[] draw : draws) {
            for (int i = 0; i < size; i++) {
                mean[i] += draw[i] / draws.size();
            }
        }
        for (double[] draw : draws) {
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    sum[i][j] +=
                            (draw[i] - mean[i])
                                    * (draw[j] - mean[j])
                                    / Math.max(1, draws.size() - 1);
                }
            }
        }
        return sum;
    }

    private static int index(int setting, Axis axis) {
        return AXES.length * setting
                + switch (axis) {
                    case ROLL -> 0;
                    case PITCH -> 1;
                    case YAW -> 2;
                };
    }

    int count() {
        return throttles.size();
    }

    OptionalDouble throttle(int setting) {
        return throttles.get(setting);
    }

    Bench bench(int setting) {
        return benches.get(setting);
    }

    boolean armsCarryFans() {
        return armsCarryFans;
    }

    /** Root mean square distance of the fans from the upright axis through the centre, m. */
    double armM() {
        return armM;
    }

    /** Measurements, as {@code entries} order them, and behind them the size of the fault. */
    NormalVector joint(List<Entry> entries, Suspect suspect) {
        int n = entries.size();
        double[] expected = suspect.mean();
        int sizes = expected.length;
        double[] mean = new double[n + sizes];
        double[][] slope = new double[sizes][n];
        double[] effect = new double[n];
        for (int i = 0; i < n; i++) {
            Entry entry = entries.get(i);
            double base = rate(entry, new Fault.None());
            mean[i] = rate(entry, suspect.fault().apply(expected));
            effect[i] = (mean[i] - base) * (mean[i] - base);
            for (int k = 0; k < sizes; k++) {
                slope[k][i] = slope(entry, suspect, expected, k);
                double wide = suspect.doubt().get(k) * slope[k][i];
                effect[i] += wide * wide;
            }
        }
        System.arraycopy(expected, 0, mean, n, sizes);
        double[][] covariance = new double[n + sizes][n + sizes];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i][j] = shared(entries.get(i), entries.get(j), i == j);
                for (int k = 0; k < sizes; k++) {
                    double variance = suspect.doubt().get(k) * suspect.doubt().get(k);
                    covariance[i][j] += variance * slope[k][i] * slope[k][j];
                }
            }
            covariance[i][i] += OF_EFFECT * OF_EFFECT * effect[i];
            for (int k = 0; k < sizes; k++) {
                double variance = suspect.doubt().get(k) * suspect.doubt().get(k);
                covariance[i][n + k] = variance * slope[k][i];
                covariance[n + k][i] = covariance[i][n + k];
            }
        }
        for (int k = 0; k < sizes; k++) {
            covariance[n + k][n + k] = suspect.doubt().get(k) * suspect.doubt().get(k);
        }
        return NormalVector.of(mean, covariance);
    }

    private double rate(Entry entry, Fault fault) {
        return entry.of(benches.get(entry.setting()).acceleration(entry.swap(), fault));
    }

    /** Change of a measurement with one number of a fault, over a standard deviation either way. */
    private double slope(Entry entry, Suspect suspect, double[] at, int k) {
        double step = 0.5 * suspect.doubt().get(k);
        double[] more = at.clone();
        more[k] += step;
        double[] less = at.clone();
        less[k] -= step;
        return (rate(entry, suspect.fault().apply(more)) - rate(entry, suspect.fault().apply(less)))
                / (2 * step);
    }

    /** What two measurements share whatever is at fault, rad²/s⁴. */
    private double shared(Entry a, Entry b, boolean same) {
        double sum = spread[index(a.setting(), a.axis())][index(b.setting(), b.axis())];
        if (a.axis() == b.axis()) {
            double both = leftOut(a) * leftOut(b);
            sum += LEFT_OUT * LEFT_OUT * both;
            sum += a.row() == b.row() ? LEFT_OUT_ANEW * LEFT_OUT_ANEW * both : 0;
        }
        if (a.row() == b.row()) {
            for (Vec3 joint : benches.get(a.setting()).armSlopes()) {
                sum += a.arms() * a.arms() * a.of(joint) * b.of(joint);
            }
        }
        return same ? sum + a.noise() * a.noise() : sum;
    }

    /** Angular acceleration of all thrust at the arm of the fans, rad/s². */
    private double leftOut(Entry entry) {
        Bench bench = benches.get(entry.setting());
        double momentNm = bench.load() * bench.point().mass().weightN() * armM;
        var inertia = bench.point().mass().inertia();
        return momentNm
                / switch (entry.axis()) {
                    case ROLL -> inertia.xx();
                    case PITCH -> inertia.yy();
                    case YAW -> inertia.zz();
                };
    }
}
