package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import liftwright.numerics.Dual;
import liftwright.numerics.LeastSquaresFit;
import liftwright.numerics.StudentT;
import liftwright.plant.identify.FanUnknown.Channel;

/** Parts of a {@link FanFit} while it is made. */
final class Fitted {

    /** 95 % of a normal. */
    static final double NORMAL = 1.959963984540054;

    /** Share of the greatest reading that every reading scatters by, beside its own. */
    private static final double FLOOR = 0.1;

    final List<FanFit.Coefficient> coefficients = new ArrayList<>();
    final Map<FanUnknown, Double> values = new EnumMap<>(FanUnknown.class);
    final Map<Channel, Double> scatter = new EnumMap<>(Channel.class);
    final Map<Channel, Double> greatest = new EnumMap<>(Channel.class);
    final List<FanFit.RowResidual> rows = new ArrayList<>();
    final List<String> notes = new ArrayList<>();
    final BenchModel model;
    final FanPriors priors;
    LeastSquaresFit.Status status = LeastSquaresFit.Status.NOT_CONVERGED;
    double[] covariance = {};
    Optional<FanFit.Lot> lot = Optional.empty();
    double leastRadps;
    double greatestRadps;

    Fitted(BenchModel model, FanPriors priors) {
        this.model = model;
        this.priors = priors;
    }

    /** What a reading scatters by, in units of its channel's share. */
    static double weight(double reading, double greatest) {
        return Math.hypot(reading, FLOOR * greatest);
    }

    /** Half-width of 95 % in standard deviations that were estimated from few rows. */
    static double t(double freedom) {
        return freedom < 1 ? StudentT.within(0.95, 1) : StudentT.within(0.95, freedom);
    }

    /**
     * Values with slopes by the coordinates of the fitted ones (logarithms of positive ones).
     *
     * @param fitted in the order of the covariance
     */
    static BenchModel.Values values(Map<FanUnknown, Double> values, List<FanUnknown> fitted) {
        Map<FanUnknown, Dual> duals = new EnumMap<>(FanUnknown.class);
        for (FanUnknown unknown : FanUnknown.values()) {
            double value = values.getOrDefault(unknown, 0.0);
            int index = fitted.indexOf(unknown);
            Dual dual;
            if (index < 0) {
                dual = Dual.constant(value, fitted.size());
            } else if (unknown.positive()) {
                dual = Dual.unknown(Math.log(value), index, fitted.size()).exp();
            } else {
                dual = Dual.unknown(value, index, fitted.size());
            }
            duals.put(unknown, dual);
        }
        return unknown -> Objects.requireNonNull(duals.get(unknown));
    }
}
