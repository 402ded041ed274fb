package liftwright.review.cause;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import liftwright.numerics.NormalVector;
import liftwright.rig.Vec3;
import liftwright.rig.table.TurningTable.Swap;

/**
 * What some measurements would read, given a suspect.
 *
 * <p>All effects are linear in the size of a fault of one octave, so that measurements, later
 * measurements and the size are normal together. Added to what was declared is how arms were held,
 * and what the model leaves out: moments in proportion to thrust that are the same in all rows,
 * others that are not, and that inertia is not quite what is computed, which makes all of one axis
 * larger or smaller together. Their sizes are from memory.
 */
final class Predicted {

    /** Moments left out, over thrust times the arm of the fans: the same in all rows. */
    static final double LEFT_OUT = 0.0005;

    /** The same, anew in each row. */
    static final double LEFT_OUT_ANEW = 0.0004;

    /** Share by which inertia about an axis is not what is computed. */
    static final double OF_INERTIA = 0.03;

    /** Share by which an effect is not linear. */
    static final double NOT_LINEAR = 0.02;

    /**
     * How arms are held is partly the same in all rows and partly not. Which part nobody knows:
     * these are as likely before anything is measured.
     */
    private static final double[] ARMS_ALIKE = {1.0 / 6, 0.5, 5.0 / 6};

    private record At(int setting, Swap swap) {}

    private final Throttles throttles;
    private final List<Entry> entries;
    private final double armsAlike;

    /** Covariance whatever is at fault. */
    private final double[][] shared;

    /**
     * @param armsAlike how much of the variance of held arms is the same in all rows
     */
    private Predicted(Throttles throttles, List<Entry> entries, double armsAlike) {
        this.throttles = throttles;
        this.entries = List.copyOf(entries);
        this.armsAlike = armsAlike;
        int n = entries.size();
        shared = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                shared[i][j] = shared(entries.get(i), entries.get(j), i == j);
                shared[j][i] = shared[i][j];
            }
        }
    }

    /** For each part of the arms' variance that may be the same in all rows. */
    static List<Predicted> ways(Throttles throttles, List<Entry> entries) {
        return Arrays.stream(ARMS_ALIKE)
                .mapToObj(alike -> new Predicted(throttles, entries, alike))
                .toList();
    }

    /** Of other measurements, arms being held in the same way. */
    Predicted of(List<Entry> others) {
        return new Predicted(throttles, others, armsAlike);
    }

    /** Covariance of two measurements whatever is at fault, rad²/s⁴. */
    private double shared(Entry a, Entry b, boolean same) {
        double sum = throttles.spread(a, b);
        if (a.axis() == b.axis()) {
            double both = throttles.whole(a) * throttles.whole(b);
            sum += LEFT_OUT * LEFT_OUT * both;
            sum += a.row() == b.row() ? LEFT_OUT_ANEW * LEFT_OUT_ANEW * both : 0;
        }
        double alike = a.row() == b.row() ? 1 : armsAlike;
        List<Vec3> ofA = throttles.bench(a.setting()).armSlopes();
        List<Vec3> ofB = throttles.bench(b.setting()).armSlopes();
        for (int joint = 0; joint < ofA.size(); joint++) {
            sum += alike * a.arms() * b.arms() * a.of(ofA.get(joint)) * b.of(ofB.get(joint));
        }
        return same ? sum + a.noise() * a.noise() : sum;
    }

    /** The measurements, and behind them the size of the fault. */
    NormalVector joint(Suspect suspect) {
        int n = entries.size();
        double[] expected = suspect.mean();
        int sizes = expected.length;
        double[] base = rates(new Fault.None());
        double[] with = rates(suspect.fault().apply(expected));
        double[][] wide = new double[sizes][];
        for (int k = 0; k < sizes; k++) {
            wide[k] = slope(suspect, expected, k);
        }
        double[] mean = new double[n + sizes];
        System.arraycopy(expected, 0, mean, n, sizes);
        double[][] covariance = new double[n + sizes][n + sizes];
        for (int i = 0; i < n; i++) {
            Entry a = entries.get(i);
            mean[i] = with[i] + throttles.shift(a);
            for (int j = 0; j < n; j++) {
                Entry b = entries.get(j);
                double fault = 0;
                for (int k = 0; k < sizes; k++) {
                    fault += wide[k][i] * wide[k][j];
                }
                double effect = (with[i] - base[i]) * (with[j] - base[j]) + fault;
                covariance[i][j] =
                        shared[i][j] + fault + throttles.ofInertia(a.axis(), b.axis()) * effect;
                if (a.axis() == b.axis()) {
                    covariance[i][j] += OF_INERTIA * OF_INERTIA * (with[i] * with[j] + fault);
                }
                if (i == j) {
                    covariance[i][j] += NOT_LINEAR * NOT_LINEAR * effect;
                }
            }
            for (int k = 0; k < sizes; k++) {
                covariance[i][n + k] = suspect.doubt().get(k) * wide[k][i];
                covariance[n + k][i] = covariance[i][n + k];
            }
        }
        for (int k = 0; k < sizes; k++) {
            covariance[n + k][n + k] = suspect.doubt().get(k) * suspect.doubt().get(k);
        }
        return NormalVector.of(mean, covariance);
    }

    /** The measurements alone. */
    NormalVector rows(Suspect suspect) {
        return Attribution.measuredOnly(joint(suspect), entries.size());
    }

    private double[] rates(Fault fault) {
        Map<At, Vec3> known = new HashMap<>();
        double[] rates = new double[entries.size()];
        for (int i = 0; i < rates.length; i++) {
            Entry entry = entries.get(i);
            Vec3 rate =
                    known.computeIfAbsent(
                            new At(entry.setting(), entry.swap()),
                            at -> throttles.bench(at.setting).acceleration(at.swap, fault));
            rates[i] = entry.of(rate);
        }
        return rates;
    }

    /** What a standard deviation of one number of a fault changes. */
    private double[] slope(Suspect suspect, double[] at, int k) {
        double step = 0.5 * suspect.doubt().get(k);
        double[] size = at.clone();
        size[k] += step;
        double[] more = rates(suspect.fault().apply(size));
        size[k] = at[k] - step;
        double[] less = rates(suspect.fault().apply(size));
        for (int i = 0; i < more.length; i++) {
            more[i] -= less[i];
        }
        return more;
    }
}
