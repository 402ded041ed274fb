package liftwright.review.cause.truth;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.rig.table.TurningTable;
import liftwright.rig.table.TurningTable.Axis;
import liftwright.rig.table.TurningTable.Swap;

/**
 * A worn rig as it was declared, and as it truly is with one thing at fault, which can be measured.
 * Two to six rows: hops, and once or twice at a throttle of 45 %. Faults are drawn down to where
 * the band of a measured acceleration still shows them. Arms are off by as much as is written in
 * the table: a part of it in all rows alike, the rest anew in each.
 */
public final class TrueRig {

    static final double STAND = 0.45;

    final Plan plan;
    final Mechanics mechanics;
    private final Rig rig;
    private final Hidden without;
    private final Hidden hidden;
    private final Wrong wrong;
    private final double[] size;
    private final double[] armsRad = new double[Body.JOINTS];
    private final double armsShared;
    private final double doubtRadps2;
    private final double doubtShare;
    private final RandomGenerator random;
    private final List<TurningTable.Row> rows = new ArrayList<>();

    public TrueRig(RandomGenerator random) {
        this.random = random;
        plan = Plan.drawn(random);
        rig = read(PlanText.yaml(plan));
        mechanics = new Mechanics(plan);
        without = Spread.drawn(plan, random);
        doubtRadps2 = random.nextDouble(0.02, 0.06);
        doubtShare = random.nextDouble(0.02, 0.06);
        armsShared = random.nextDouble();
        for (int k = 0; k < armsRad.length; k++) {
            armsRad[k] = Math.sqrt(armsShared) * armSigma() * random.nextGaussian();
        }
        List<Wrong.Kind> kinds =
                Arrays.stream(Wrong.Kind.values()).filter(Wrong.Kind::isDrawn).toList();
        Wrong drawn;
        double[] its;
        do {
            drawn = Wrong.drawn(plan, kinds.get(random.nextInt(kinds.size())), random);
            its = drawn.size(random);
        } while (!shows(drawn.in(without, its)));
        wrong = drawn;
        size = its;
        hidden = wrong.in(without, size);
        int hops = random.nextInt(1, 5);
        for (int k = 0; k < hops; k++) {
            rows.add(measure(2 + k, OptionalDouble.empty(), new Swap.None()));
        }
        int stands = random.nextInt(1, 3);
        for (int k = 0; k < stands; k++) {
            rows.add(measure(2 + hops + k, OptionalDouble.of(STAND), new Swap.None()));
        }
    }

    static Rig read(String text) {
        RigReading reading = RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.rig()
                .orElseThrow(() -> new IllegalStateException(reading.problems() + text));
    }

    private double armSigma() {
        return plan.doubt().armsRad() / 2;
    }

    /** Whether a hop with the fault leaves the band of one without it, about some axis. */
    private boolean shows(Hidden with) {
        return isShown(rates(without, OptionalDouble.empty()), rates(with, OptionalDouble.empty()));
    }

    /** The same of two first rows, which are hops. */
    boolean isShown(double[] before, double[] after) {
        for (int k = 0; k < 3; k++) {
            if (Math.abs(after[k] - before[k]) > doubt(after[k])) {
                return true;
            }
        }
        return false;
    }

    private double[] rates(Hidden of, OptionalDouble throttle) {
        return mechanics.rates(of, throttle, new Swap.None(), new double[Body.JOINTS]);
    }

    private double doubt(double rate) {
        return doubtRadps2 + doubtShare * Math.abs(rate);
    }

    /** As it was declared. */
    public Rig rig() {
        return rig;
    }

    /** What is at fault, one of six. */
    public Wrong.Kind fault() {
        return wrong.kind();
    }

    /** The same with its place and size, for a failure's message. */
    public String told() {
        return wrong.kind() + " " + wrong.name() + " " + Arrays.toString(size);
    }

    /** What was measured before anything was swapped. */
    public List<TurningTable.Row> rows() {
        return List.copyOf(rows);
    }

    /** What the fault changes in each number that was measured, row by row. */
    double[] effect() {
        double[] effect = new double[3 * rows.size()];
        for (int row = 0; row < rows.size(); row++) {
            double[] with = rates(hidden, rows.get(row).throttle());
            double[] none = rates(without, rows.get(row).throttle());
            for (int k = 0; k < 3; k++) {
                effect[3 * row + k] = with[k] - none[k];
            }
        }
        return effect;
    }

    /** A row as it would be measured, with noise. */
    public TurningTable.Row measure(int line, OptionalDouble throttle, Swap swap) {
        double[] off = armsRad.clone();
        for (int k = 0; k < off.length; k++) {
            off[k] += Math.sqrt(1 - armsShared) * armSigma() * random.nextGaussian();
        }
        double[] rate = mechanics.rates(hidden, throttle, swap, off);
        List<TurningTable.Rate> rates = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            double doubt = doubt(rate[k]);
            double read = rate[k] + doubt / 2 * random.nextGaussian();
            rates.add(new TurningTable.Rate(List.of(Axis.values()).get(k), read, doubt));
        }
        OptionalDouble arms = OptionalDouble.of(plan.doubt().armsRad());
        return new TurningTable.Row(line, throttle, arms, swap, rates);
    }
}
