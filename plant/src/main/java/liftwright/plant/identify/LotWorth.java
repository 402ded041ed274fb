package liftwright.plant.identify;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.FanType;
import liftwright.rig.table.BenchTable;

/**
 * What a lot of fans is worth of its label, as a plant takes it: the doubt of the lot's mean is
 * shared by all its fans, the scatter about it is each fan's own.
 *
 * <p>From three fans on the scatter is theirs (if none was declared, or theirs is far more than was
 * declared); one or two show none, and the declared or assumed one stands in.
 *
 * @param byFan worth of each measured fan; empty where only the lot's was told
 * @param worth of the lot's mean, shared
 * @param scatter 1 ± that of single fans about the mean, each
 * @param estimate what the fans tell; empty where only the lot's worth was told
 */
public record LotWorth(
        Map<String, Double> byFan,
        Quantity worth,
        Quantity scatter,
        Optional<LotEstimate> estimate) {

    /** Fewer fans show no scatter that one could rely on. */
    private static final int FANS_FOR_SCATTER = 3;

    /**
     * Fans that scatter this much more than was declared belie it: by chance it happens to three in
     * 1.8 % of the lots (χ² of 2 degrees above 8), to more of them less often.
     */
    private static final double CONTRADICTS = 2;

    private static final double K = 2;

    /**
     * Of a type whose lot was measured.
     *
     * @return empty where no lot was told
     */
    public static Optional<LotWorth> of(FanType type) {
        return type.lot()
                .map(
                        lot ->
                                switch (lot.evidence()) {
                                    case FanType.Lot.Worth(var worth) ->
                                            new LotWorth(
                                                    Map.of(),
                                                    worth,
                                                    type.scatter(),
                                                    Optional.empty());
                                    case FanType.Lot.Fans(var byFan, var stand) ->
                                            of(type, byFan, stand, lot.findsScatter());
                                    case FanType.Lot.Rows(var table, var stand) ->
                                            of(type, byFan(type, table), stand, lot.findsScatter());
                                });
    }

    private static LotWorth of(
            FanType type, Map<String, Double> byFan, Quantity stand, boolean findsScatter) {
        double[] ratios = byFan.values().stream().mapToDouble(Double::doubleValue).toArray();
        double shared = deviation(stand);
        double declared = mean(ratios) * deviation(type.scatter());
        boolean found =
                ratios.length >= FANS_FOR_SCATTER
                        && (findsScatter
                                || LotEstimate.of(ratios, shared).scatter()
                                        > CONTRADICTS * declared);
        LotEstimate estimate =
                found
                        ? LotEstimate.of(ratios, shared)
                        : LotEstimate.ofKnownScatter(ratios, declared, shared);
        double own =
                Math.sqrt(
                        estimate.siblingDeviation() * estimate.siblingDeviation()
                                - estimate.meanDeviation() * estimate.meanDeviation());
        return new LotWorth(
                byFan,
                quantity(estimate.mean(), K * estimate.meanDeviation(), Tolerance.Scope.SHARED),
                found
                        ? quantity(1, K * own / estimate.mean(), Tolerance.Scope.EACH)
                        : type.scatter(),
                Optional.of(estimate));
    }

    private static double mean(double[] ratios) {
        double sum = 0;
        for (double ratio : ratios) {
            sum += ratio;
        }
        return sum / ratios.length;
    }

    private static Quantity quantity(double middle, double half, Tolerance.Scope scope) {
        return new Quantity(
                middle,
                Dimension.NONE,
                half == 0
                        ? Tolerance.NONE
                        : new Tolerance(half, half, Tolerance.Form.NORMAL, scope));
    }

    /** Standard deviation of 1 ± x, the mean of both sides. */
    private static double deviation(Quantity one) {
        Tolerance own = one.tolerance();
        double half = (own.plus() + own.minus()) / 2 / one.si();
        return switch (own.form()) {
            case NORMAL -> half / K;
            case BOUND -> half / Math.sqrt(3);
        };
    }

    /** Thrust over the label's at the speeds and in the air of a fan's rows, strong rows most. */
    private static Map<String, Double> byFan(FanType type, BenchTable table) {
        double label =
                switch (type.performance()) {
                    case FanType.Performance.AtSpeed(var speed, var thrust, var _) ->
                            thrust.si() / (speed.si() * speed.si());
                    case FanType.Performance.Coefficients(var thrust, var _) -> thrust.si();
                    case FanType.Performance.Measured _ ->
                            throw new IllegalArgumentException(
                                    "rows of the type itself are its lot");
                };
        Map<String, Double> measured = new LinkedHashMap<>();
        Map<String, Double> promised = new LinkedHashMap<>();
        for (BenchPoint point : BenchPoint.of(table)) {
            String fan = point.fan().orElseThrow();
            double speed = point.speedRadps().orElseThrow();
            measured.merge(fan, point.thrustN().orElseThrow(), Double::sum);
            promised.merge(fan, label * point.densityShare() * speed * speed, Double::sum);
        }
        measured.replaceAll((fan, thrust) -> thrust / promised.getOrDefault(fan, Double.NaN));
        return measured;
    }
}
