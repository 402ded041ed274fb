package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import liftwright.numerics.Dual;
import liftwright.numerics.LeastSquaresFit;
import liftwright.numerics.StudentT;
import liftwright.plant.identify.FanUnknown.Channel;
import liftwright.rig.table.CurrentKind;

/** Makes a {@link FanFit}: outliers first, then the terms that the rows support, then the rest. */
final class FanFitter {

    /** A row beyond this many robust deviations of its channel follows no law of the others. */
    static final double FAR = 4.5;

    /** Set aside at most this share of the rows; beyond it there is no one law. */
    private static final double MOST_SET_ASIDE = 0.25;

    /** So many times less scatter without drift, and what looks like drift is far rows. */
    private static final double STEADIER = 1.5;

    /** Share of certainty at which an optional term is kept. */
    private static final double SUPPORTED = 0.99;

    /** Drift needs speeds this far apart. */
    private static final double SPAN = 1.3;

    private static final int ROWS_FOR_DRIFT = 5;

    private static final double SMALL_DRIFT = 0.02;
    private static final double SMALL_INFLOW = 0.05;

    private final List<BenchPoint> points;
    private final FanStart start;
    private final BenchModel model;
    private final Fitted out;
    private boolean[] counts;

    FanFitter(List<BenchPoint> all, CurrentKind kind, FanPriors priors) {
        points = all.stream().filter(BenchModel::isUsable).toList();
        if (points.isEmpty()) {
            throw new IllegalArgumentException("no row tells a speed or a current");
        }
        start = new FanStart(points, kind, priors);
        model = new BenchModel(kind, priors, start.referenceRadps);
        out = new Fitted(model, priors);
        counts = new boolean[points.size()];
        Arrays.fill(counts, true);
    }

    FanFit fit(List<String> remarks) {
        out.notes.addAll(remarks);
        List<FanUnknown> unknowns = unknowns();
        setOutliersAside(unknowns);
        WeighedFit found = solve(unknowns, start.values);
        while (true) {
            Optional<FanUnknown> weakest = weakest(found, unknowns);
            if (weakest.isEmpty()) {
                break;
            }
            unknowns.remove(weakest.get());
            Map<FanUnknown, Double> from = new EnumMap<>(found.values());
            from.put(weakest.get(), 0.0);
            found = solve(unknowns, from);
        }
        out.status = found.fit().status();
        out.values.putAll(found.values());
        out.scatter.putAll(found.scatter);
        out.greatest.putAll(found.greatest);
        coefficients(found, unknowns);
        residuals(unknowns);
        new FanLot(points, counts, out).add(unknowns);
        new FanNotes(points, start, out).add(unknowns);
        return new FanFit(out);
    }

    private WeighedFit solve(List<FanUnknown> unknowns, Map<FanUnknown, Double> from) {
        return new WeighedFit(model, points, counts, unknowns, start, from).settle();
    }

    private List<FanUnknown> unknowns() {
        List<FanUnknown> all = new ArrayList<>();
        boolean thrust = start.values.containsKey(FanUnknown.THRUST);
        boolean torque = start.values.containsKey(FanUnknown.TORQUE);
        if (thrust) {
            all.add(FanUnknown.THRUST);
        }
        if (torque) {
            all.add(FanUnknown.TORQUE);
        }
        if (start.isElectric()) {
            for (FanUnknown unknown :
                    List.of(
                            FanUnknown.SPEED_CONSTANT,
                            FanUnknown.WINDING,
                            FanUnknown.NO_LOAD,
                            FanUnknown.SWITCHING)) {
                FanStart.Prior prior = start.priors.get(unknown);
                boolean free = prior == null && unknown == FanUnknown.SPEED_CONSTANT;
                if (free || (prior != null && prior.deviation() > 0)) {
                    all.add(unknown);
                }
            }
        }
        range();
        boolean room =
                points.size() >= ROWS_FOR_DRIFT && out.greatestRadps >= SPAN * out.leastRadps;
        boolean wind = points.stream().anyMatch(point -> point.airspeedMps() > 0);
        boolean drift = room;
        optional(all, drift && thrust, FanUnknown.THRUST_DRIFT);
        optional(all, drift && torque, FanUnknown.TORQUE_DRIFT);
        boolean enough = points.size() >= ROWS_FOR_DRIFT + 2;
        optional(all, wind && thrust, FanUnknown.THRUST_INFLOW);
        optional(all, wind && thrust && enough, FanUnknown.THRUST_INFLOW_SQUARE);
        optional(all, wind && torque, FanUnknown.TORQUE_INFLOW);
        optional(all, wind && torque && enough, FanUnknown.TORQUE_INFLOW_SQUARE);
        return all;
    }

    private static void optional(List<FanUnknown> all, boolean add, FanUnknown unknown) {
        if (add) {
            all.add(unknown);
        }
    }

    private void range() {
        double[] speeds =
                IntStream.range(0, points.size())
                        .filter(k -> counts[k])
                        .mapToDouble(k -> points.get(k).speedRadps().orElse(start.referenceRadps))
                        .toArray();
        out.leastRadps = Arrays.stream(speeds).min().orElse(0);
        out.greatestRadps = Arrays.stream(speeds).max().orElse(0);
    }

    private void setOutliersAside(List<FanUnknown> unknowns) {
        if (points.size() < unknowns.size() + 3) {
            return;
        }
        List<FanUnknown> law = law(unknowns);
        boolean[] far = far(law, FAR);
        if (tooMany(far)) {
            // Few readings may agree so well by chance that some good ones look far too; what is
            // twice as far does not come of that.
            far = far(law, 2 * FAR);
        }
        if (tooMany(far)) {
            out.notes.add(
                    count(far)
                            + " of "
                            + points.size()
                            + " rows lie far from what the others say: the rows follow no one law,"
                            + " and none was set aside");
            return;
        }
        for (int k = 0; k < far.length; k++) {
            counts[k] = !far[k];
        }
        range();
    }

    /**
     * The unknowns from which far rows are told. Two bad rows at one end of the speeds can pass for
     * drift; they do not where the others agree far better without any.
     */
    private List<FanUnknown> law(List<FanUnknown> unknowns) {
        List<FanUnknown> steady = new ArrayList<>(unknowns);
        steady.removeAll(List.of(FanUnknown.THRUST_DRIFT, FanUnknown.TORQUE_DRIFT));
        return STEADIER * scatter(steady) < scatter(unknowns) ? steady : unknowns;
    }

    /** How far the middle reading of each channel lies, all channels multiplied. */
    private double scatter(List<FanUnknown> unknowns) {
        boolean[] all = new boolean[points.size()];
        Arrays.fill(all, true);
        double product = 1;
        for (double each : robust(unknowns, all).scatter.values()) {
            product *= each;
        }
        return product;
    }

    private WeighedFit robust(List<FanUnknown> unknowns, boolean[] stays) {
        return new WeighedFit(model, points, stays, unknowns, start, start.values).settleRobustly();
    }

    /**
     * Rows that lie so many scatters from what the others say. One far row can hide another: they
     * are looked for again without those found, until none is new.
     */
    private boolean[] far(List<FanUnknown> unknowns, double scatters) {
        boolean[] far = new boolean[points.size()];
        int before = -1;
        while (count(far) > before && !tooMany(far)) {
            before = count(far);
            boolean[] stays = new boolean[far.length];
            for (int k = 0; k < far.length; k++) {
                stays[k] = !far[k];
            }
            boolean[] more = robust(unknowns, stays).beyond(scatters);
            for (int k = 0; k < far.length; k++) {
                far[k] |= more[k];
            }
        }
        return far;
    }

    private static boolean tooMany(boolean[] far) {
        return count(far) > MOST_SET_ASIDE * far.length;
    }

    private static int count(boolean[] flags) {
        int many = 0;
        for (boolean flag : flags) {
            many += flag ? 1 : 0;
        }
        return many;
    }

    /** The optional term that the rows support least, if they do not support it. */
    private static Optional<FanUnknown> weakest(WeighedFit found, List<FanUnknown> unknowns) {
        Optional<FanUnknown> weakest = Optional.empty();
        double least = 1;
        for (int k = 0; k < unknowns.size(); k++) {
            FanUnknown unknown = unknowns.get(k);
            boolean held = square(unknown).map(unknowns::contains).orElse(false);
            // What the rows cannot bound stays, as a doubt.
            boolean open = found.fit().deviation(k) > small(unknown);
            if (unknown.positive() || held || open) {
                continue;
            }
            double free = freedom(found, unknown);
            double needed = StudentT.within(SUPPORTED, Math.max(free, 1));
            double ratio = Math.abs(found.fit().value(k)) / found.fit().deviation(k) / needed;
            if (!(ratio >= least)) {
                least = ratio;
                weakest = Optional.of(unknown);
            }
        }
        return weakest;
    }

    /** A term known this well is small enough to leave out where it is not supported. */
    private static double small(FanUnknown unknown) {
        return switch (unknown) {
            case THRUST, TORQUE, SPEED_CONSTANT, WINDING, NO_LOAD, SWITCHING -> 0;
            case THRUST_DRIFT, TORQUE_DRIFT -> SMALL_DRIFT;
            case THRUST_INFLOW, TORQUE_INFLOW -> SMALL_INFLOW;
            case THRUST_INFLOW_SQUARE, TORQUE_INFLOW_SQUARE -> 2 * SMALL_INFLOW;
        };
    }

    /** The higher term that needs this one. */
    private static Optional<FanUnknown> square(FanUnknown unknown) {
        return switch (unknown) {
            case THRUST_INFLOW -> Optional.of(FanUnknown.THRUST_INFLOW_SQUARE);
            case TORQUE_INFLOW -> Optional.of(FanUnknown.TORQUE_INFLOW_SQUARE);
            case THRUST,
                    TORQUE,
                    SPEED_CONSTANT,
                    WINDING,
                    NO_LOAD,
                    SWITCHING,
                    THRUST_DRIFT,
                    TORQUE_DRIFT,
                    THRUST_INFLOW_SQUARE,
                    TORQUE_INFLOW_SQUARE ->
                    Optional.empty();
        };
    }

    /** Free rows of the channel that tells most about an unknown. */
    private static double freedom(WeighedFit found, FanUnknown unknown) {
        Channel channel = unknown.channel();
        if (channel == Channel.CURRENT && found.freedom.containsKey(Channel.TORQUE)) {
            channel = Channel.TORQUE;
        }
        return found.freedom.getOrDefault(channel, 1e6);
    }

    private void coefficients(WeighedFit found, List<FanUnknown> unknowns) {
        int n = unknowns.size();
        LeastSquaresFit fit = found.fit();
        double[] wider = new double[n];
        for (int k = 0; k < n; k++) {
            FanUnknown unknown = unknowns.get(k);
            double free = freedom(found, unknown);
            FanStart.Prior prior = start.priors.get(unknown);
            boolean narrowed = prior == null || fit.deviation(k) < 0.67 * prior.deviation();
            // What is mostly assumed rests on no rows whose number could matter.
            wider[k] = narrowed ? Fitted.t(free) / Fitted.NORMAL : 1;
            out.coefficients.add(
                    new FanFit.Coefficient(
                            unknown,
                            fit.value(k),
                            fit.deviation(k) * wider[k],
                            free,
                            prior != null && !narrowed && !prior.declared()));
        }
        out.covariance = new double[n * n];
        for (int k = 0; k < n; k++) {
            for (int l = 0; l < n; l++) {
                out.covariance[k * n + l] = fit.covariance(k, l) * wider[k] * wider[l];
            }
        }
    }

    private void residuals(List<FanUnknown> unknowns) {
        BenchModel.Values at = Fitted.values(out.values, unknowns);
        for (int k = 0; k < points.size(); k++) {
            BenchPoint point = points.get(k);
            out.rows.add(
                    new FanFit.RowResidual(
                            point.line(),
                            left(point, Channel.THRUST, at),
                            left(point, Channel.CURRENT, at),
                            left(point, Channel.TORQUE, at),
                            speedLeft(point, at),
                            !counts[k]));
        }
    }

    private OptionalDouble left(BenchPoint point, Channel channel, BenchModel.Values at) {
        OptionalDouble measured = model.measured(point, channel);
        if (measured.isEmpty() || !out.greatest.containsKey(channel)) {
            return OptionalDouble.empty();
        }
        Dual expected = model.expected(point, channel, at);
        return expected.value() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(measured.getAsDouble() / expected.value() - 1);
    }

    /** A share of driving voltage as the share of speed that it moves under the rotor's load. */
    private OptionalDouble speedLeft(BenchPoint point, BenchModel.Values at) {
        OptionalDouble volt = left(point, Channel.VOLTAGE, at);
        if (volt.isEmpty()) {
            return OptionalDouble.empty();
        }
        double whole = model.expected(point, Channel.VOLTAGE, at).value();
        double turning =
                point.speedRadps().orElseThrow() / at.of(FanUnknown.SPEED_CONSTANT).value();
        double load = 2 + out.values.getOrDefault(FanUnknown.TORQUE_DRIFT, 0.0);
        return OptionalDouble.of(
                -volt.getAsDouble() * whole / (turning + load * (whole - turning)));
    }
}
