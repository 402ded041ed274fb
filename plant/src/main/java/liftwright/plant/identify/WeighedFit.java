package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import liftwright.numerics.Dual;
import liftwright.numerics.LeastSquares;
import liftwright.numerics.LeastSquaresFit;
import liftwright.plant.identify.FanUnknown.Channel;

/**
 * One weighted fit of given unknowns to given points: the share that each channel scatters by is
 * found along with them, so that each channel's weighted squares add up to its free rows, Helmert's
 * condition as Förstner (1979) simplified it; from memory, tested by the coverage of the bands.
 */
final class WeighedFit {

    /** No reading of a stand is taken as better than this share of itself. */
    static final double LEAST_SCATTER = 1e-3;

    private static final double FIRST_SCATTER = 0.01;
    private static final int MOST_ROUNDS = 12;
    private static final double HUBER = 1.345;

    /** A reading of one channel at one point. */
    record Reading(int point, Channel channel, double measured) {}

    private final BenchModel model;
    private final List<BenchPoint> points;
    private final List<FanUnknown> unknowns;
    private final FanStart start;
    private final List<Reading> readings = new ArrayList<>();
    private final Map<FanUnknown, Double> values;

    final Map<Channel, Double> greatest = new EnumMap<>(Channel.class);
    final Map<Channel, Double> scatter = new EnumMap<>(Channel.class);
    final Map<Channel, Double> freedom = new EnumMap<>(Channel.class);

    /** Of each reading, in units of its weight. */
    private double[] residual = {};

    private final double[] weight;
    private final double[] trust;
    private LeastSquaresFit fit;

    /**
     * @param counts which points count
     */
    WeighedFit(
            BenchModel model,
            List<BenchPoint> points,
            boolean[] counts,
            List<FanUnknown> unknowns,
            FanStart start,
            Map<FanUnknown, Double> from) {
        this.model = model;
        this.points = points;
        this.unknowns = unknowns;
        this.start = start;
        values = new EnumMap<>(from);
        for (int k = 0; k < points.size(); k++) {
            for (Channel channel : BenchModel.channels()) {
                var measured = model.measured(points.get(k), channel);
                if (counts[k] && measured.isPresent()) {
                    readings.add(new Reading(k, channel, measured.getAsDouble()));
                    greatest.merge(channel, Math.abs(measured.getAsDouble()), Math::max);
                }
            }
        }
        weight = new double[readings.size()];
        trust = new double[readings.size()];
        Arrays.fill(trust, 1);
        for (int i = 0; i < weight.length; i++) {
            weight[i] = ownWeight(readings.get(i), readings.get(i).measured());
            scatter.put(readings.get(i).channel(), FIRST_SCATTER);
        }
        fit = once();
    }

    private double ownWeight(Reading reading, double size) {
        return Fitted.weight(size, greatest.getOrDefault(reading.channel(), 0.0));
    }

    private LeastSquaresFit once() {
        int n = unknowns.size();
        boolean[] positive = new boolean[n];
        double[] from = new double[n];
        for (int k = 0; k < n; k++) {
            positive[k] = unknowns.get(k).positive();
            from[k] = values.getOrDefault(unknowns.get(k), 0.0);
        }
        LeastSquares problem = new LeastSquares(readings.size(), positive, new Misses());
        for (int k = 0; k < n; k++) {
            FanStart.Prior prior = start.priors.get(unknowns.get(k));
            if (prior != null) {
                problem.prior(
                        k,
                        positive[k] ? Math.log(prior.value()) : prior.value(),
                        prior.deviation());
            }
        }
        LeastSquaresFit found = problem.fit(from);
        for (int k = 0; k < n; k++) {
            values.put(unknowns.get(k), found.value(k));
        }
        return found;
    }

    /** What each reading is missed by, in its scatter. */
    private final class Misses implements LeastSquares.Rows {

        @Override
        public void at(Dual[] x, Dual[] rows) {
            BenchModel.Values at = WeighedFit.this.at(x, x.length);
            for (int i = 0; i < rows.length; i++) {
                rows[i] = expected(i, at).minus(readings.get(i).measured()).times(scale(i));
            }
        }

        @Override
        public void valuesAt(double[] x, double[] rows) {
            Dual[] plain = Arrays.stream(x).mapToObj(v -> Dual.constant(v, 0)).toArray(Dual[]::new);
            BenchModel.Values at = WeighedFit.this.at(plain, 0);
            for (int i = 0; i < rows.length; i++) {
                rows[i] = (expected(i, at).value() - readings.get(i).measured()) * scale(i);
            }
        }

        private Dual expected(int row, BenchModel.Values at) {
            Reading reading = readings.get(row);
            return model.expected(points.get(reading.point()), reading.channel(), at);
        }

        private double scale(int row) {
            double share = scatter.getOrDefault(readings.get(row).channel(), 1.0);
            return trust[row] / (share * weight[row]);
        }
    }

    /** Fitted unknowns as they are handed in, the others held. */
    private BenchModel.Values at(Dual[] x, int slopes) {
        Map<FanUnknown, Dual> duals = new EnumMap<>(FanUnknown.class);
        for (FanUnknown unknown : FanUnknown.values()) {
            int index = unknowns.indexOf(unknown);
            duals.put(
                    unknown,
                    index >= 0
                            ? x[index]
                            : Dual.constant(values.getOrDefault(unknown, 0.0), slopes));
        }
        return unknown -> Objects.requireNonNull(duals.get(unknown));
    }

    /** Whether a positive unknown ran down to nothing: the fit has failed and cannot go on. */
    private boolean lost() {
        for (FanUnknown unknown : unknowns) {
            if (unknown.positive() && !(values.getOrDefault(unknown, 0.0) > 0)) {
                return true;
            }
        }
        return false;
    }

    /** Finds scatter and values in turn, all readings counting in full. */
    WeighedFit settle() {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double change = rescale(false);
            if (lost()) {
                break;
            }
            fit = once();
            if (change < 1e-4) {
                break;
            }
        }
        return this;
    }

    /** The same with far readings counting less, so that they do not hide themselves. */
    WeighedFit settleRobustly() {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double change = rescale(true);
            if (lost()) {
                break;
            }
            for (int i = 0; i < trust.length; i++) {
                double far =
                        Math.abs(residual[i])
                                / scatter.getOrDefault(readings.get(i).channel(), 1.0);
                trust[i] = far <= HUBER ? 1 : Math.sqrt(HUBER / far);
            }
            fit = once();
            if (change < 1e-3) {
                break;
            }
        }
        rescale(true);
        return this;
    }

    /** Scatter from what the readings leave; gives the greatest relative change. */
    private double rescale(boolean robust) {
        int n = unknowns.size();
        BenchModel.Values at = Fitted.values(values, unknowns);
        residual = new double[readings.size()];
        Map<Channel, List<Double>> sizes = new EnumMap<>(Channel.class);
        Map<Channel, Double> taken = new EnumMap<>(Channel.class);
        for (int i = 0; i < residual.length; i++) {
            Reading reading = readings.get(i);
            Dual expected = model.expected(points.get(reading.point()), reading.channel(), at);
            double old = scatter.getOrDefault(reading.channel(), 1.0) * weight[i];
            double lever = 0;
            for (int k = 0; k < n; k++) {
                for (int l = 0; l < n; l++) {
                    lever += expected.slope(k) * expected.slope(l) * fit.covariance(k, l);
                }
            }
            taken.merge(reading.channel(), lever * trust[i] * trust[i] / (old * old), Double::sum);
            weight[i] = ownWeight(reading, expected.value());
            residual[i] = (reading.measured() - expected.value()) / weight[i];
            sizes.computeIfAbsent(reading.channel(), _ -> new ArrayList<>())
                    .add(Math.abs(residual[i]));
        }
        double change = 0;
        for (Map.Entry<Channel, List<Double>> channel : sizes.entrySet()) {
            List<Double> own = channel.getValue();
            double free = own.size() - taken.getOrDefault(channel.getKey(), 0.0);
            freedom.put(channel.getKey(), free);
            double before = scatter.getOrDefault(channel.getKey(), FIRST_SCATTER);
            double now = before;
            if (free > 0.5) {
                now = Math.max(LEAST_SCATTER, robust ? median(own, free) : root(own, free));
            }
            change = Math.max(change, Math.abs(now / before - 1));
            scatter.put(channel.getKey(), now);
        }
        return change;
    }

    private static double root(List<Double> sizes, double free) {
        double sum = 0;
        for (double size : sizes) {
            sum += size * size;
        }
        return Math.sqrt(sum / free);
    }

    /**
     * 1.4826 (1 + 5/free) times the median: the start that Rousseeuw and Leroy (1987) give; from
     * memory.
     */
    private static double median(List<Double> sizes, double free) {
        double[] sorted = sizes.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int half = sorted.length / 2;
        double middle =
                sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
        return 1.4826 * (1 + 5 / Math.max(free, 1)) * middle;
    }

    LeastSquaresFit fit() {
        return fit;
    }

    Map<FanUnknown, Double> values() {
        return values;
    }

    /** The point with a reading beyond a number of scatters, for each point. */
    boolean[] beyond(double scatters) {
        boolean[] far = new boolean[points.size()];
        for (int i = 0; i < residual.length; i++) {
            Reading reading = readings.get(i);
            far[reading.point()] |=
                    Math.abs(residual[i]) > scatters * scatter.getOrDefault(reading.channel(), 1.0);
        }
        return far;
    }
}
