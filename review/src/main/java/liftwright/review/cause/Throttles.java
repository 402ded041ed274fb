package liftwright.review.cause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
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
 * The throttles at which turning is measured, as declared and over the draws of what was declared.
 *
 * <p>Added to the declared doubt is what nobody declares: where the centre of mass is, and what a
 * jet gives to what it strikes. Their sizes are from memory.
 */
final class Throttles {

    /** Places of parts are declared without doubt; the centre is taken to be right to this, m. */
    static final double CENTRE_M = 0.003;

    /** What is struck catches more or less of a jet by this share. */
    static final double STRUCK = 0.2;

    private static final int DRAWS = 64;
    private static final Axis[] AXES = Axis.values();
    private static final Swap STILL = new Swap.None();

    private final Rig rig;
    private final List<OptionalDouble> throttles;
    private final List<Bench> benches = new ArrayList<>();
    private final double[][] spread;

    /** Mean over the draws less the value as declared. */
    private final double[] shift;

    /** Second moments of what the draws do to one over the inertia about each axis, relative. */
    private final double[][] ofInertia = new double[AXES.length][AXES.length];

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
        shift = new double[AXES.length * throttles.size()];
        spread = spread(balancing, worker, liftOffN, seed);
        Fault none = new Fault.None();
        for (Fault off : List.of(new Fault.Centre(CENTRE_M, 0), new Fault.Centre(0, CENTRE_M))) {
            addShared(
                    bench -> bench.acceleration(STILL, off).minus(bench.acceleration(STILL, none)));
        }
        addShared(bench -> bench.struck(false).times(STRUCK));
        addShared(bench -> bench.struck(true).times(STRUCK));
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
                Vec3 rate = bench.acceleration(STILL, new Fault.None());
                for (Axis axis : AXES) {
                    rates[index(s, axis)] = Entry.of(axis, rate);
                }
                if (s == 0) {
                    addInertia(bench);
                }
            }
            draws.add(rates);
        }
        for (int s = 0; s < throttles.size(); s++) {
            Vec3 declared = benches.get(s).acceleration(STILL, new Fault.None());
            for (Axis axis : AXES) {
                int i = index(s, axis);
                for (double[] rates : draws) {
                    shift[i] += (rates[i] - Entry.of(axis, declared)) / draws.size();
                }
            }
        }
        return covariance(draws, size);
    }

    /** Something else that may be otherwise, the same at all throttles. */
    private void addShared(Function<Bench, Vec3> change) {
        double[] effect = new double[spread.length];
        for (int s = 0; s < throttles.size(); s++) {
            Vec3 own = change.apply(benches.get(s));
            for (Axis axis : AXES) {
                effect[index(s, axis)] = Entry.of(axis, own);
            }
        }
        for (int i = 0; i < effect.length; i++) {
            for (int j = 0; j < effect.length; j++) {
                spread[i][j] += effect[i] * effect[j];
            }
        }
    }

    private void addInertia(Bench drawn) {
        for (Axis one : AXES) {
            for (Axis other : AXES) {
                ofInertia[number(one)][number(other)] +=
                        (inertia(benches.getFirst(), one) / inertia(drawn, one) - 1)
                                * (inertia(benches.getFirst(), other) / inertia(drawn, other) - 1)
                                / DRAWS;
            }
        }
    }

    private static double inertia(Bench bench, Axis axis) {
        var inertia = bench.point().mass().inertia();
        return switch (axis) {
            case ROLL -> inertia.xx();
            case PITCH -> inertia.yy();
            case YAW -> inertia.zz();
        };
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
        return AXES.length * setting + number(axis);
    }

    private static int number(Axis axis) {
        return switch (axis) {
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

    /** What two measurements share by what was declared, rad²/s⁴; arms are held still. */
    double spread(Entry a, Entry b) {
        return spread[index(a.setting(), a.axis())][index(b.setting(), b.axis())];
    }

    /** What the draws do to a measurement on the mean, rad/s². */
    double shift(Entry entry) {
        return shift[index(entry.setting(), entry.axis())];
    }

    /** What the draws do to two effects through the inertia, relative. */
    double ofInertia(Axis one, Axis other) {
        return ofInertia[number(one)][number(other)];
    }

    /** Angular acceleration of all thrust at the arm of the fans, rad/s². */
    double whole(Entry entry) {
        Bench bench = benches.get(entry.setting());
        return bench.load() * bench.point().mass().weightN() * armM / inertia(bench, entry.axis());
    }
}
