package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.numerics.Dual;
import liftwright.numerics.LeastSquaresFit;
import liftwright.plant.identify.FanUnknown.Channel;
import liftwright.rig.FanType;
import liftwright.rig.table.BenchTable;
import liftwright.rig.table.CurrentKind;

/**
 * What the rows of a stand say about a fan unit: coefficients with their joint covariance, what
 * each row leaves over, which rows follow no law of the others, what cannot be told.
 *
 * <p>Rows are weighted by channel: a reading scatters by a share of itself and of a tenth of the
 * greatest reading, and the share comes out of the rows. Drift over speed and dependence on advance
 * ratio are kept where they differ from 0 at 1 % (Student's t, which for one coefficient is the F
 * test); a drift that differs less is left out if the rows show it to be small, and else carried as
 * a doubt of its own. A row further than 4.5 robust deviations from the others is named and set
 * aside.
 */
public final class FanFit {

    /**
     * One coefficient.
     *
     * @param value SI
     * @param deviation standard deviation for draws: of ln x for positive ones; the few rows it
     *     rests on are in it (Student's t)
     * @param freedom rows beyond what the channel's coefficients took
     * @param assumed whether it is more a default than a measurement: the rows narrowed what was
     *     assumed by less than a third, and nobody declared it
     */
    public record Coefficient(
            FanUnknown unknown, double value, double deviation, double freedom, boolean assumed) {

        /** Lower end of the 95 % band. */
        public double low() {
            return unknown.positive()
                    ? value * Math.exp(-1.96 * deviation)
                    : value - 1.96 * deviation;
        }

        /** Upper end of the 95 % band. */
        public double high() {
            return unknown.positive()
                    ? value * Math.exp(1.96 * deviation)
                    : value + 1.96 * deviation;
        }
    }

    /**
     * What a row leaves over, measured less expected.
     *
     * @param line of the row
     * @param thrust as a share of the expected thrust
     * @param current as a share of the expected current
     * @param torque as a share of the expected torque
     * @param speed as a share, at the voltage and duty told
     * @param outlier whether the row was set aside
     */
    public record RowResidual(
            int line,
            OptionalDouble thrust,
            OptionalDouble current,
            OptionalDouble torque,
            OptionalDouble speed,
            boolean outlier) {}

    /**
     * A single fan of a lot.
     *
     * @param thrustShare its thrust over the lot's at equal speed
     * @param currentShare its current over the lot's at equal speed
     */
    public record Unit(String name, double thrustShare, double currentShare, int rows) {}

    /**
     * Several single fans of one kind.
     *
     * @param thrustScatter standard deviation of one fan's thrust about the lot's mean, as a share
     * @param currentScatter the same of current
     */
    public record Lot(List<Unit> units, double thrustScatter, double currentScatter) {}

    /**
     * A value that was declared, beside what the rows say.
     *
     * @param label what, in words
     * @param declared SI
     * @param found SI
     * @param foundDeviation standard deviation of ln found
     */
    public record Difference(String label, double declared, double found, double foundDeviation) {}

    /** A value with its 95 % band for one more reading of the same stand. */
    public record Prediction(double value, double halfWidth) {}

    final LeastSquaresFit.Status status;
    final List<Coefficient> coefficients;
    final double[] covariance;
    final Map<FanUnknown, Double> values;
    final Map<Channel, Double> scatter;
    final Map<Channel, Double> greatest;
    final BenchModel model;
    final List<RowResidual> rows;
    final List<String> notes;
    final Optional<Lot> lot;
    final double leastRadps;
    final double greatestRadps;
    final FanPriors priors;

    FanFit(Fitted fitted) {
        status = fitted.status;
        coefficients = List.copyOf(fitted.coefficients);
        covariance = fitted.covariance.clone();
        values = Map.copyOf(fitted.values);
        scatter = Map.copyOf(fitted.scatter);
        greatest = Map.copyOf(fitted.greatest);
        model = fitted.model;
        rows = List.copyOf(fitted.rows);
        notes = List.copyOf(fitted.notes);
        lot = fitted.lot;
        leastRadps = fitted.leastRadps;
        greatestRadps = fitted.greatestRadps;
        priors = fitted.priors;
    }

    /** Fits a table; motor values that the type declares count as measurements beside the rows. */
    public static FanFit of(BenchTable table, FanType type) {
        return of(table, FanPriors.of(type));
    }

    /** Fits a table with what is known beside it. */
    public static FanFit of(BenchTable table, FanPriors priors) {
        List<String> remarks = new ArrayList<>();
        if (table.rows().stream()
                .anyMatch(row -> row.airK().isEmpty() || row.pressurePa().isEmpty())) {
            remarks.add(
                    "rows that do not tell the air's temperature or pressure are taken at 15 °C or"
                            + " 1013.25 hPa, which leaves some 5 % of their coefficients in doubt");
        }
        return new FanFitter(BenchPoint.of(table), table.current(), priors).fit(remarks);
    }

    /** Fits points. */
    public static FanFit of(List<BenchPoint> points, CurrentKind kind, FanPriors priors) {
        return new FanFitter(points, kind, priors).fit(List.of());
    }

    /** Whether the fit is a result at all. */
    public LeastSquaresFit.Status status() {
        return status;
    }

    /** What was fitted, in the order of the covariance. */
    public List<Coefficient> coefficients() {
        return coefficients;
    }

    /** Covariance for draws, row by row: of ln x for positive unknowns, of x for others. */
    public double[] covariance() {
        return covariance.clone();
    }

    /** Value of an unknown: fitted, or what it is held at (0 for a drift that is not supported). */
    public double value(FanUnknown unknown) {
        return values.getOrDefault(unknown, 0.0);
    }

    /** The fitted coefficient; empty where the unknown was held. */
    public Optional<Coefficient> coefficient(FanUnknown unknown) {
        return coefficients.stream().filter(one -> one.unknown() == unknown).findFirst();
    }

    /** Speed at which the coefficients hold, rad/s. */
    public double referenceRadps() {
        return model.referenceRadps();
    }

    /** Slowest row that counted, rad/s. */
    public double leastRadps() {
        return leastRadps;
    }

    /** Fastest row that counted, rad/s. */
    public double greatestRadps() {
        return greatestRadps;
    }

    /** Standard deviation of a channel's readings as a share of the reading; empty if not read. */
    public OptionalDouble scatter(Channel channel) {
        Double share = scatter.get(channel);
        return share == null ? OptionalDouble.empty() : OptionalDouble.of(share);
    }

    /** What each row leaves over, outliers included. */
    public List<RowResidual> rows() {
        return rows;
    }

    /** Lines of the rows that were set aside. */
    public List<Integer> outliers() {
        return rows.stream().filter(RowResidual::outlier).map(RowResidual::line).toList();
    }

    /** What was assumed and what cannot be told, in sentences. */
    public List<String> notes() {
        return notes;
    }

    /** Of several single fans; empty if the table is of one. */
    public Optional<Lot> lot() {
        return lot;
    }

    /**
     * Motor values declared beside the rows, and the claimed thrust and torque, each against them.
     */
    public List<Difference> against(FanType type) {
        return Claims.against(this, type);
    }

    /**
     * One more reading at a point: what was read there does not count, except its speed, voltage,
     * duty and air.
     */
    public Prediction predict(BenchPoint point, Channel channel) {
        int n = coefficients.size();
        Dual expected = model.expected(point, channel, Fitted.values(values, unknowns()));
        double variance = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                variance += expected.slope(i) * expected.slope(j) * covariance[i * n + j];
            }
        }
        double row =
                scatter.getOrDefault(channel, 0.0)
                        * Fitted.weight(expected.value(), greatest.getOrDefault(channel, 0.0));
        double few =
                coefficients.stream()
                        .filter(one -> one.unknown().channel() == channel)
                        .mapToDouble(Coefficient::freedom)
                        .min()
                        .orElse(1e6);
        double t = Fitted.t(few);
        double own = row * t / Fitted.NORMAL;
        return new Prediction(expected.value(), Fitted.NORMAL * Math.sqrt(variance + own * own));
    }

    List<FanUnknown> unknowns() {
        return coefficients.stream().map(Coefficient::unknown).toList();
    }
}
