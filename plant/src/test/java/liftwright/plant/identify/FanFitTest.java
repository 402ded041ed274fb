package liftwright.plant.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import liftwright.numerics.LeastSquaresFit;
import liftwright.physics.FanUnit;
import liftwright.plant.identify.FanUnknown.Channel;
import liftwright.rig.table.CurrentKind;
import liftwright.testkit.Seeded;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;

/** Fits of fans whose truth is known. */
class FanFitTest {

    private static final Map<FanUnknown, Integer> PLACE =
            Map.of(
                    FanUnknown.SPEED_CONSTANT, FanUnit.KV,
                    FanUnknown.WINDING, FanUnit.RESISTANCE,
                    FanUnknown.NO_LOAD, FanUnit.NO_LOAD,
                    FanUnknown.SWITCHING, FanUnit.SWITCHING,
                    FanUnknown.THRUST_DRIFT, FanUnit.THRUST_DRIFT,
                    FanUnknown.TORQUE_DRIFT, FanUnit.TORQUE_DRIFT);

    private static double truth(RandomStand stand, FanFit fit, FanUnknown unknown) {
        return switch (unknown) {
            case THRUST -> stand.at(fit.referenceRadps(), FanUnit.THRUST, FanUnit.THRUST_DRIFT);
            case TORQUE -> stand.at(fit.referenceRadps(), FanUnit.TORQUE, FanUnit.TORQUE_DRIFT);
            case SPEED_CONSTANT, WINDING, NO_LOAD, SWITCHING, THRUST_DRIFT, TORQUE_DRIFT ->
                    stand.unit[PLACE.getOrDefault(unknown, 0)];
            case THRUST_INFLOW, THRUST_INFLOW_SQUARE, TORQUE_INFLOW, TORQUE_INFLOW_SQUARE -> 0;
        };
    }

    private static FanFit fit(RandomStand stand, List<BenchPoint> rows) {
        return FanFit.of(rows, stand.kind, stand.priors());
    }

    @Test
    void cleanRowsGiveTheFanBack() {
        Seeded.check(
                40,
                random -> {
                    RandomStand stand = new RandomStand(random, random.nextBoolean());
                    stand.thrustScatter = 1e-5;
                    stand.currentScatter = 1e-5;
                    stand.voltScatter = 1e-5;
                    FanFit fit = fit(stand, stand.rows(random, 5));
                    assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
                    assertThat(fit.outliers()).isEmpty();
                    assertThat(fit.value(FanUnknown.THRUST))
                            .isCloseTo(
                                    truth(stand, fit, FanUnknown.THRUST),
                                    within(1e-4 * fit.value(FanUnknown.THRUST)));
                    assertThat(fit.value(FanUnknown.SPEED_CONSTANT))
                            .isCloseTo(
                                    truth(stand, fit, FanUnknown.SPEED_CONSTANT),
                                    within(1e-3 * fit.value(FanUnknown.SPEED_CONSTANT)));
                });
    }

    /** 95 % bands hold the truth 95 times in 100, each coefficient by itself. */
    @Test
    void bandsHoldTheTruth() {
        Map<FanUnknown, int[]> held = new EnumMap<>(FanUnknown.class);
        Seeded.check(
                600,
                random -> {
                    RandomStand stand = new RandomStand(random, random.nextBoolean());
                    FanFit fit = fit(stand, stand.rows(random, 6));
                    assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
                    for (FanFit.Coefficient one : fit.coefficients()) {
                        double truth = truth(stand, fit, one.unknown());
                        int[] count = held.computeIfAbsent(one.unknown(), _ -> new int[2]);
                        count[0] += one.low() <= truth && truth <= one.high() ? 1 : 0;
                        count[1]++;
                    }
                });
        if (System.getProperty("seed") != null) {
            return; // a replay of one case is no count
        }
        assertThat(held).containsKeys(FanUnknown.THRUST, FanUnknown.WINDING);
        double in = 0;
        double all = 0;
        StringBuilder shares = new StringBuilder();
        for (Map.Entry<FanUnknown, int[]> one : held.entrySet()) {
            int[] count = one.getValue();
            shares.append(one.getKey())
                    .append(' ')
                    .append(count[0])
                    .append('/')
                    .append(count[1])
                    .append("; ");
            in += count[0];
            all += count[1];
        }
        for (FanUnknown own :
                List.of(
                        FanUnknown.THRUST,
                        FanUnknown.TORQUE,
                        FanUnknown.SPEED_CONSTANT,
                        FanUnknown.WINDING,
                        FanUnknown.NO_LOAD)) {
            int[] count = held.getOrDefault(own, new int[] {0, 1});
            assertThat((double) count[0] / count[1]).as(shares.toString()).isBetween(0.93, 0.975);
        }
        assertThat(in / all).as(shares.toString()).isBetween(0.93, 0.97);
    }

    /** Gauss–Newton by differences and normal equations, written from the equations. */
    @Test
    void aRefereeFindsTheSame() {
        Seeded.check(
                25,
                random -> {
                    RandomStand stand = new RandomStand(random, true);
                    List<BenchPoint> rows = stand.rows(random, 6);
                    FanFit fit = fit(stand, rows);
                    if (!fit.outliers().isEmpty()) {
                        return;
                    }
                    double[] referee = Referee.fit(stand, fit, rows);
                    for (int k = 0; k < referee.length; k++) {
                        FanFit.Coefficient one = fit.coefficients().get(k);
                        double own = one.unknown().positive() ? Math.log(one.value()) : one.value();
                        assertThat(own)
                                .as(one.unknown().words())
                                .isCloseTo(referee[k], within(1e-6 * (1 + Math.abs(own))));
                    }
                });
    }

    private static BenchPoint with(BenchPoint row, double thrustFactor, String fan) {
        return new BenchPoint(
                row.line(),
                row.voltageV(),
                row.duty(),
                row.currentA(),
                row.speedRadps(),
                OptionalDouble.of(row.thrustN().orElseThrow() * thrustFactor),
                row.torqueNm(),
                row.densityShare(),
                row.airspeedMps(),
                Optional.of(fan));
    }

    @Test
    void rowsThatFollowNoLawAreNamedAndDoNotPull() {
        int[] wrong = {0};
        Seeded.check(
                60,
                random -> {
                    RandomStand stand = new RandomStand(random, false);
                    List<BenchPoint> rows = new ArrayList<>(stand.rows(random, 5));
                    int bad = random.nextInt(rows.size());
                    int worse = (bad + 1 + random.nextInt(rows.size() - 1)) % rows.size();
                    rows.set(bad, with(rows.get(bad), 1.25, "A"));
                    rows.set(worse, with(rows.get(worse), 1.3, "A"));
                    FanFit fit = fit(stand, rows);
                    assertThat(fit.outliers()).contains(bad + 1, worse + 1);
                    wrong[0] += fit.outliers().size() - 2;
                    assertThat(fit.value(FanUnknown.THRUST) / truth(stand, fit, FanUnknown.THRUST))
                            .isCloseTo(1, within(0.02));
                });
        if (System.getProperty("seed") == null && !Seeded.deep()) {
            assertThat(wrong[0]).as("good rows set aside, of 780").isLessThan(16);
        }
    }

    @Test
    void driftIsKeptWhereThereIsOneAndElseNot() {
        int[] kept = new int[2];
        int[] cases = new int[2];
        Seeded.check(
                200,
                random -> {
                    boolean drifts = random.nextBoolean();
                    RandomStand stand = new RandomStand(random, drifts);
                    FanFit fit = fit(stand, stand.rows(random, 6));
                    int which = drifts ? 1 : 0;
                    cases[which]++;
                    kept[which] += fit.coefficient(FanUnknown.THRUST_DRIFT).isPresent() ? 1 : 0;
                });
        if (System.getProperty("seed") == null) {
            assertThat((double) kept[0] / cases[0]).isLessThan(0.06);
            assertThat((double) kept[1] / cases[1]).isGreaterThan(0.97);
        }
    }

    @Test
    void withoutDutyTheMotorIsAssumedAndThatIsSaid() {
        Seeded.check(
                30,
                random -> {
                    RandomStand stand = new RandomStand(random, false);
                    stand.tellsDuty = false;
                    FanFit fit = fit(stand, stand.rows(random, 5));
                    assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
                    assertThat(fit.notes()).anyMatch(note -> note.contains("duty and speed"));
                    assertThat(fit.coefficient(FanUnknown.SPEED_CONSTANT).orElseThrow().assumed())
                            .isTrue();
                    assertThat(fit.value(FanUnknown.THRUST) / truth(stand, fit, FanUnknown.THRUST))
                            .isCloseTo(1, within(0.02));
                });
    }

    /** Without speed a motor declared exactly gives them: K_v (d V − R I). */
    @Test
    void withoutSpeedTheDeclaredMotorTellsIt() {
        Seeded.check(
                30,
                random -> {
                    RandomStand stand = new RandomStand(random, false);
                    stand.tellsSpeed = false;
                    FanPriors none = stand.priors();
                    FanPriors known =
                            new FanPriors(
                                    Optional.of(exact(stand.unit[FanUnit.KV])),
                                    Optional.of(exact(stand.unit[FanUnit.RESISTANCE])),
                                    Optional.of(exact(stand.unit[FanUnit.NO_LOAD])),
                                    0,
                                    none.switching(),
                                    none.fixedPower(),
                                    0.1);
                    FanFit fit = FanFit.of(stand.rows(random, 5), stand.kind, known);
                    assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
                    assertThat(fit.notes()).anyMatch(note -> note.contains("without ±"));
                    assertThat(fit.value(FanUnknown.THRUST) / truth(stand, fit, FanUnknown.THRUST))
                            .isCloseTo(1, within(0.03));
                });
    }

    private static liftwright.quantity.Quantity exact(double value) {
        return liftwright.quantity.Quantity.exact(value, liftwright.quantity.Dimension.NONE);
    }

    @Test
    void severalFansGiveTheScatterOfTheLot() {
        RandomGenerator random = new java.util.SplittableRandom(8);
        RandomStand stand = new RandomStand(random, false);
        List<BenchPoint> rows = new ArrayList<>();
        double[] factor = {0.97, 1.00, 1.03};
        for (int fan = 0; fan < 3; fan++) {
            for (BenchPoint row : stand.rows(random, 5)) {
                rows.add(with(row, factor[fan], "F" + fan));
            }
        }
        FanFit fit = fit(stand, rows);
        FanFit.Lot lot = fit.lot().orElseThrow();
        assertThat(lot.units()).extracting(FanFit.Unit::name).containsExactly("F0", "F1", "F2");
        assertThat(lot.units().getFirst().thrustShare()).isCloseTo(0.97, within(0.01));
        assertThat(lot.thrustScatter()).isCloseTo(0.03, within(0.01));
        assertThat(fit.coefficient(FanUnknown.THRUST).orElseThrow().deviation())
                .isGreaterThan(0.8 * 0.03 / Math.sqrt(3));
    }

    @Test
    void aReadingMoreLiesInItsBand() {
        int[] in = new int[2];
        Seeded.check(
                150,
                random -> {
                    RandomStand stand = new RandomStand(random, true);
                    FanFit fit = fit(stand, stand.rows(random, 6));
                    for (BenchPoint row : stand.rows(random, 3)) {
                        for (Channel channel : List.of(Channel.THRUST, Channel.CURRENT)) {
                            FanFit.Prediction band = fit.predict(row, channel);
                            double read =
                                    channel == Channel.THRUST
                                            ? row.thrustN().orElseThrow()
                                            : row.currentA().orElseThrow();
                            in[0] += Math.abs(read - band.value()) <= band.halfWidth() ? 1 : 0;
                            in[1]++;
                        }
                    }
                });
        if (System.getProperty("seed") == null) {
            assertThat((double) in[0] / in[1]).isBetween(0.93, 0.97);
        }
    }

    /** The referee: residuals from the equations, slopes by differences, normal equations. */
    private static final class Referee {

        private static double[] coordinates(FanFit fit) {
            return fit.coefficients().stream()
                    .mapToDouble(
                            one ->
                                    // a little off, so that it has to walk
                                    one.unknown().positive()
                                            ? Math.log(one.value()) + 0.01
                                            : one.value() + 0.003)
                    .toArray();
        }

        static double[] fit(RandomStand stand, FanFit fit, List<BenchPoint> rows) {
            double[] x = coordinates(fit);
            Map<Channel, double[]> weights = new EnumMap<>(Channel.class);
            for (Channel channel : List.of(Channel.THRUST, Channel.CURRENT, Channel.VOLTAGE)) {
                double top = 0;
                for (BenchPoint row : rows) {
                    top = Math.max(top, measured(row, channel));
                }
                double[] weight = new double[rows.size()];
                for (int i = 0; i < weight.length; i++) {
                    double expected = fit.predict(rows.get(i), channel).value();
                    weight[i] =
                            fit.scatter(channel).orElseThrow() * Math.hypot(expected, 0.1 * top);
                }
                weights.put(channel, weight);
            }
            for (int round = 0; round < 60; round++) {
                double[] r = residuals(stand, fit, rows, weights, x);
                SimpleMatrix slopes = new SimpleMatrix(r.length, x.length);
                for (int k = 0; k < x.length; k++) {
                    double h = 1e-6;
                    double[] up = x.clone();
                    double[] down = x.clone();
                    up[k] += h;
                    down[k] -= h;
                    double[] above = residuals(stand, fit, rows, weights, up);
                    double[] below = residuals(stand, fit, rows, weights, down);
                    for (int i = 0; i < r.length; i++) {
                        slopes.set(i, k, (above[i] - below[i]) / (2 * h));
                    }
                }
                SimpleMatrix step =
                        slopes.transpose()
                                .mult(slopes)
                                .solve(slopes.transpose().mult(new SimpleMatrix(r)));
                for (int k = 0; k < x.length; k++) {
                    x[k] -= step.get(k, 0);
                }
            }
            return x;
        }

        private static double measured(BenchPoint row, Channel channel) {
            return switch (channel) {
                case THRUST -> row.thrustN().orElseThrow();
                case CURRENT -> row.currentA().orElseThrow();
                case VOLTAGE -> row.duty().orElseThrow() * row.voltageV();
                case TORQUE -> throw new AssertionError("not read");
            };
        }

        private static double[] residuals(
                RandomStand stand,
                FanFit fit,
                List<BenchPoint> rows,
                Map<Channel, double[]> weights,
                double[] x) {
            Map<FanUnknown, Double> v = new EnumMap<>(FanUnknown.class);
            for (FanUnknown unknown : FanUnknown.values()) {
                v.put(unknown, fit.value(unknown));
            }
            List<Double> out = new ArrayList<>();
            for (int k = 0; k < x.length; k++) {
                FanUnknown unknown = fit.coefficients().get(k).unknown();
                v.put(unknown, unknown.positive() ? Math.exp(x[k]) : x[k]);
            }
            double kv = v.getOrDefault(FanUnknown.SPEED_CONSTANT, 0.0);
            double ohm = v.getOrDefault(FanUnknown.WINDING, 0.0);
            double switching = v.getOrDefault(FanUnknown.SWITCHING, 0.0);
            for (int i = 0; i < rows.size(); i++) {
                BenchPoint row = rows.get(i);
                double w = row.speedRadps().orElseThrow();
                double ratio = w / fit.referenceRadps();
                double thrust =
                        v.getOrDefault(FanUnknown.THRUST, 0.0)
                                * w
                                * w
                                * Math.pow(ratio, v.getOrDefault(FanUnknown.THRUST_DRIFT, 0.0));
                double torque =
                        v.getOrDefault(FanUnknown.TORQUE, 0.0)
                                * w
                                * w
                                * Math.pow(ratio, v.getOrDefault(FanUnknown.TORQUE_DRIFT, 0.0));
                double winding = kv * torque + v.getOrDefault(FanUnknown.NO_LOAD, 0.0);
                double d = row.duty().orElseThrow();
                double amp =
                        stand.kind == CurrentKind.WINDING
                                ? winding
                                : d * winding
                                        + switching * winding * (1 - d)
                                        + stand.unit[FanUnit.FIXED] / row.voltageV();
                double volt = ohm * winding + w / kv;
                add(out, weights, Channel.THRUST, i, thrust - measured(row, Channel.THRUST));
                add(out, weights, Channel.CURRENT, i, amp - measured(row, Channel.CURRENT));
                add(out, weights, Channel.VOLTAGE, i, volt - measured(row, Channel.VOLTAGE));
            }
            priors(fit, rows, v, out);
            return out.stream().mapToDouble(Double::doubleValue).toArray();
        }

        private static void add(
                List<Double> out,
                Map<Channel, double[]> weights,
                Channel channel,
                int row,
                double left) {
            out.add(left / weights.getOrDefault(channel, new double[0])[row]);
        }

        /** What is assumed of a motor that nobody declared, as the documentation has it. */
        private static void priors(
                FanFit fit, List<BenchPoint> rows, Map<FanUnknown, Double> v, List<Double> out) {
            BenchPoint top = rows.getFirst();
            for (BenchPoint row : rows) {
                if (row.voltageV() * row.currentA().orElseThrow()
                        > top.voltageV() * top.currentA().orElseThrow()) {
                    top = row;
                }
            }
            double amp = top.currentA().orElseThrow();
            double ohm = 0.053 * top.duty().orElseThrow() * top.voltageV() / amp;
            out.add(Math.log(v.getOrDefault(FanUnknown.WINDING, 0.0) / ohm) / 0.6);
            out.add(Math.log(v.getOrDefault(FanUnknown.NO_LOAD, 0.0) / (0.03 * amp)) / 0.6);
            for (FanUnknown drift : List.of(FanUnknown.THRUST_DRIFT, FanUnknown.TORQUE_DRIFT)) {
                if (fit.coefficient(drift).isPresent()) {
                    out.add(v.getOrDefault(drift, 0.0) / 0.1);
                }
            }
            if (fit.coefficient(FanUnknown.SWITCHING).isPresent()) {
                double deviation = Math.log(0.09 / 0.01) / 2 / Math.sqrt(3);
                out.add(Math.log(v.getOrDefault(FanUnknown.SWITCHING, 0.0) / 0.05) / deviation);
            }
        }
    }
}
