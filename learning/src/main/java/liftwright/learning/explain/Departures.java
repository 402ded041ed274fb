package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.learning.fit.Scatter;
import liftwright.numerics.Work;
import liftwright.plant.recording.Recording;
import liftwright.rig.Rig;

/**
 * What one test says of how far each part of the rig is from what was declared. Readings less what
 * the rig as declared would show, what each departure would do to them, and what the doubt of each
 * declared number would, as inner products in the metric of all that is of this test alone: noise,
 * instruments, what the model leaves out, how full the packs were. Tests of one rig share the doubt
 * of declared numbers, so that stays open, by name.
 */
public final class Departures {

    /** What a part wears by; other causes are of one day. */
    private static final Set<CauseKind> WEARS =
            EnumSet.of(
                    CauseKind.JOINT,
                    CauseKind.CELL_RESISTANCE,
                    CauseKind.WEAK_FAN,
                    CauseKind.HUNGRY_FAN,
                    CauseKind.MOTOR);

    /** Packs may be a tenth less full than taken for, standard deviation; from memory. */
    private static final double CHARGE_DOUBT = 0.1;

    /** A departure that moves the readings by less than this, in deviations, is not seen. */
    private static final double SEEN = 1;

    private final List<Part> parts;
    private final List<Hypothesis> hypotheses;
    private final int[] firsts;
    private final List<String> shared;
    private final int firstShared;
    private final double[][] products;

    /**
     * A part and what may have changed of it.
     *
     * @param cause which
     * @param least a departure that declared tolerance covers, in amount: Ω of a joint, else a
     *     share
     */
    public record Part(Cause cause, double least) {}

    private Departures(
            List<Hypothesis> hypotheses,
            List<String> shared,
            int[] firsts,
            int firstShared,
            double[][] products) {
        this.hypotheses = hypotheses;
        this.shared = List.copyOf(shared);
        this.firsts = firsts;
        this.firstShared = firstShared;
        this.products = products;
        parts = hypotheses.stream().map(one -> new Part(one.cause(), one.least())).toList();
    }

    /**
     * Computes them by full runs.
     *
     * @param rig as declared on that day
     * @param recording of which nothing comes later than its throttle
     * @param threads ≥ 1
     * @throws liftwright.learning.replay.NotDrivenException where no throttle was recorded
     * @throws IllegalArgumentException where the rig as declared would not have run to its end, or
     *     no channel can be compared
     */
    public static Departures of(Rig rig, Recording recording, int threads, Work work) {
        Bench bench = new Bench(rig, recording);
        if (bench.channels().isEmpty()) {
            throw new IllegalArgumentException("no channel can be compared with the plant");
        }
        Scatter usual =
                Scatter.of(
                        bench.channels(),
                        bench.base().channels(),
                        Scatter.Assumed.usual(bench.channels()));
        List<String> names = new ArrayList<>();
        List<double[]> columns = new ArrayList<>();
        List<double[]> ofTest = new ArrayList<>();
        for (Doubts.Doubt doubt : new Doubts(bench, usual, threads).of(work)) {
            if (doubt.open().isEmpty()) {
                names.add(doubt.name());
                columns.add(doubt.column());
            } else {
                double scale = CHARGE_DOUBT / Math.abs(doubt.open().get().step());
                ofTest.add(scaled(doubt.column(), scale));
            }
        }
        List<Hypothesis> all =
                new Computed(bench, usual, threads)
                                .made(
                                        Suspects.of(bench).stream()
                                                .filter(one -> WEARS.contains(one.cause().kind()))
                                                .toList(),
                                        work)
                                .stream()
                                .flatMap(Optional::stream)
                                .toList();
        return of(all, readings(bench, usual), names, columns, new Reduced(usual, ofTest));
    }

    private static double[] scaled(double[] of, double by) {
        double[] scaled = of.clone();
        for (int k = 0; k < scaled.length; k++) {
            scaled[k] *= by;
        }
        return scaled;
    }

    /** Measured less expected. */
    private static double[] readings(Bench bench, Scatter scatter) {
        double[] left = new double[scatter.size()];
        for (int c = 0; c < bench.channels().size(); c++) {
            double[] measured = bench.channels().get(c).measuredSi();
            for (int k = 0; k < measured.length; k++) {
                left[scatter.at(c) + k] = measured[k] - bench.base().channels()[c][k];
            }
        }
        return left;
    }

    private static Departures of(
            List<Hypothesis> all,
            double[] readings,
            List<String> names,
            List<double[]> columns,
            Reduced metric) {
        List<Reduced.Vector> vectors = new ArrayList<>();
        vectors.add(metric.of(readings));
        List<Hypothesis> seen = new ArrayList<>();
        List<Integer> firsts = new ArrayList<>();
        for (Hypothesis one : all) {
            Reduced.Vector most = metric.of(one.effects()[one.effects().length - 1]);
            if (metric.product(most, most) > SEEN * SEEN) {
                seen.add(one);
                firsts.add(vectors.size());
                for (double[] effect : one.effects()) {
                    vectors.add(metric.of(effect));
                }
            }
        }
        int firstShared = vectors.size();
        columns.forEach(column -> vectors.add(metric.of(column)));
        double[][] products = new double[vectors.size()][vectors.size()];
        for (int i = 0; i < products.length; i++) {
            for (int j = 0; j <= i; j++) {
                products[i][j] = metric.product(vectors.get(i), vectors.get(j));
                products[j][i] = products[i][j];
            }
        }
        return new Departures(
                seen,
                names,
                firsts.stream().mapToInt(Integer::intValue).toArray(),
                firstShared,
                products);
    }

    /** Parts of which this test tells anything. */
    public List<Part> parts() {
        return parts;
    }

    /** Names of declared numbers whose doubt moves the readings. */
    public List<String> shared() {
        return shared;
    }

    /** Inner product of two vectors by their places; the readings stand at 0. */
    public double product(int one, int other) {
        return products[one][other];
    }

    /** Place of what a standard deviation of a declared number does. */
    public int placeOfShared(int number) {
        return firstShared + number;
    }

    /** Place of the first vector of a part. */
    public int placeOf(int part) {
        return firsts[part];
    }

    /** How many vectors a part has. */
    public int sizesOf(int part) {
        return hypotheses.get(part).sizes().length;
    }

    /** Weights of a part's vectors that give what a departure of this size does. */
    public void weights(int part, double size, double[] out) {
        hypotheses.get(part).weights(size, out);
    }

    /** A size from which an estimate may begin, and a step in which it changes. */
    public double stepOf(int part) {
        return hypotheses.get(part).sizes()[0];
    }
}
