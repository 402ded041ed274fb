package liftwright.plant.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.table.CellTest;
import liftwright.rig.table.CellTests;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** Cells drawn at random, measured by an integrator of order 8, and found again. */
class CellFitTest {

    /** A cell whose equations are solved apart from the code under test. */
    private record Truth(
            double capacityAs,
            double ohm,
            double fastOhm,
            double fastS,
            double slowOhm,
            double slowS,
            double growth,
            double empty) {

        static Truth random(RandomGenerator random) {
            double capacity = 3600 * random.nextDouble(2, 10);
            double ohm = 0.1 * 3600 / capacity * random.nextDouble(0.5, 1.5);
            return new Truth(
                    capacity,
                    ohm,
                    ohm * random.nextDouble(0.2, 0.6),
                    random.nextDouble(4, 20),
                    ohm * random.nextDouble(0.3, 0.8),
                    random.nextDouble(100, 400),
                    random.nextDouble(0, 1.0),
                    random.nextDouble(3.0, 3.3));
        }

        /** Growth of every resistance: straight in charge from 1 at half down to empty. */
        double factor(double charge) {
            return 1 + growth * 2 * Math.max(0, 0.5 - charge);
        }

        CellType.Curve curve() {
            return new CellType.Curve(
                    List.of(0.0, 0.1, 0.3, 0.7, 1.0), List.of(empty, 3.5, 3.65, 3.95, 4.2));
        }

        double openV(double charge) {
            double[] at = {0, 0.1, 0.3, 0.7, 1};
            double[] volt = {empty, 3.5, 3.65, 3.95, 4.2};
            int k = 1;
            while (k < at.length - 1 && at[k] < charge) {
                k++;
            }
            return volt[k - 1]
                    + (charge - at[k - 1]) / (at[k] - at[k - 1]) * (volt[k] - volt[k - 1]);
        }

        /** Discharge from rest; rows closer together at the start, until nearly empty. */
        CellTest discharge(String file, double current, double start, double lasts, Noise noise) {
            List<CellTest.Row> rows = new ArrayList<>();
            rows.add(row(1, 0, 0, openV(start), noise));
            var state = new ODEState(0, new double[] {start, 0, 0});
            double time = 0;
            for (int k = 1; k <= 60; k++) {
                double next = lasts * Math.pow(k / 60.0, 1.7);
                state =
                        new DormandPrince853Integrator(1e-9, lasts, 1e-11, 1e-11)
                                .integrate(equations(current), state, next);
                time = next;
                double[] y = state.getPrimaryState();
                double volt = openV(y[0]) - current * ohm * factor(y[0]) - y[1] - y[2];
                // The load comes on within a millisecond of the first row.
                if (k == 1) {
                    rows.add(
                            row(
                                    2,
                                    1e-3,
                                    current,
                                    openV(start) - current * ohm * factor(start),
                                    noise));
                }
                rows.add(row(k + 2, time, current, volt, noise));
            }
            return new CellTest(file, rows);
        }

        private static CellTest.Row row(
                int line, double time, double current, double volt, Noise noise) {
            return new CellTest.Row(
                    line, time, current, volt + noise.volt(), OptionalDouble.of(298.15));
        }

        private OrdinaryDifferentialEquation equations(double current) {
            return new OrdinaryDifferentialEquation() {
                @Override
                public int getDimension() {
                    return 3;
                }

                @Override
                public double[] computeDerivatives(double t, double[] y) {
                    double f = factor(y[0]);
                    return new double[] {
                        -current / capacityAs,
                        current * fastOhm / fastS - y[1] / (fastS * f),
                        current * slowOhm / slowS - y[2] / (slowS * f)
                    };
                }
            };
        }
    }

    private interface Noise {
        double volt();
    }

    private static List<CellTests.Run> tests(Truth truth, RandomGenerator random, double sigma) {
        Noise noise = () -> sigma * random.nextGaussian();
        double oneC = truth.capacityAs / 3600;
        return List.of(
                new CellTests.Run(truth.discharge("1C", oneC, 1, 3500, noise), 1, false),
                new CellTests.Run(truth.discharge("3C", 3 * oneC, 1, 1150, noise), 1, false),
                new CellTests.Run(truth.discharge("half", 2 * oneC, 0.5, 60, noise), 0.5, false),
                new CellTests.Run(truth.discharge("2C", 2 * oneC, 1, 1700, noise), 1, true));
    }

    /** Without noise the cell comes back: the model steps as the integrator does. */
    @Test
    void cellsAreFoundAgain() {
        Seeded.check(
                Seeded.deep() ? 3 : 12,
                random -> {
                    Truth truth = Truth.random(random);
                    CellFit fit =
                            CellFit.of(
                                            CellData.type(
                                                    "drawn",
                                                    Optional.of(truth.curve()),
                                                    tests(truth, random, 0)))
                                    .orElseThrow();
                    assertThat(value(fit, CellUnknown.CAPACITY) / truth.capacityAs)
                            .as("capacity")
                            .isCloseTo(1, within(0.005));
                    assertThat(value(fit, CellUnknown.RESISTANCE) / truth.ohm)
                            .as("resistance")
                            .isCloseTo(1, within(0.02));
                    assertThat(
                                    (value(fit, CellUnknown.FAST_RESISTANCE)
                                                    + value(fit, CellUnknown.SLOW_RESISTANCE))
                                            / (truth.fastOhm + truth.slowOhm))
                            .as("what settles")
                            .isCloseTo(1, within(0.06));
                    assertThat(fit.judged().getLast().rmsV()).as("held out").isLessThan(0.003);
                });
    }

    /** With noise the truth lies in the 95 % bands, and a rate that was not told is met. */
    @Test
    void bandsHoldTheTruth() {
        int[] held = new int[2];
        Seeded.check(
                Seeded.deep() ? 4 : 15,
                random -> {
                    Truth truth = Truth.random(random);
                    CellFit fit =
                            CellFit.of(
                                            CellData.type(
                                                    "drawn",
                                                    Optional.of(truth.curve()),
                                                    tests(truth, random, 0.003)))
                                    .orElseThrow();
                    count(held, fit, CellUnknown.CAPACITY, truth.capacityAs);
                    count(held, fit, CellUnknown.RESISTANCE, truth.ohm);
                    count(held, fit, CellUnknown.FAST_RESISTANCE, truth.fastOhm);
                    count(held, fit, CellUnknown.SLOW_RESISTANCE, truth.slowOhm);
                    CellFit.Judged told = fit.judged().getLast();
                    assertThat(told.heldOut()).isTrue();
                    assertThat(told.rmsV()).isLessThan(0.008);
                });
        // One case replayed says nothing of a share.
        if (held[1] > 40) {
            assertThat(held[0] / (double) held[1]).isGreaterThan(0.9);
        }
    }

    private static double value(CellFit fit, CellUnknown unknown) {
        return fit.value(unknown).orElseThrow().value();
    }

    private static void count(int[] held, CellFit fit, CellUnknown unknown, double truth) {
        CellFit.Value found = fit.value(unknown).orElseThrow();
        held[0] += found.low() <= truth && truth <= found.high() ? 1 : 0;
        held[1]++;
    }

    /**
     * Rest voltage comes back from two rates, and capacity is the charge of the larger discharge.
     */
    @Test
    void restVoltageIsFoundFromTwoRates() {
        Truth truth = new Truth(18_000, 0.02, 0.006, 8, 0.01, 200, 0.5, 3.2);
        Noise none = () -> 0;
        CellFit fit =
                CellFit.of(
                                CellData.type(
                                        "two rates",
                                        Optional.empty(),
                                        List.of(
                                                new CellTests.Run(
                                                        truth.discharge(
                                                                "slow", 0.5, 1, 35_900, none),
                                                        1,
                                                        false),
                                                new CellTests.Run(
                                                        truth.discharge("fast", 10, 1, 1750, none),
                                                        1,
                                                        false))))
                        .orElseThrow();
        // 0.5 A for 35 900 s, less the millisecond before the load.
        assertThat(value(fit, CellUnknown.CAPACITY)).isCloseTo(17_950, within(1.0));
        CellType.Curve open = fit.openCircuit();
        for (int k = 0; k < open.charge().size(); k++) {
            double charge = open.charge().get(k);
            if (charge > 0.05) {
                // Found charge 0 lies at true charge 1 − 17 950/18 000.
                double true_ = 1 - (1 - charge) * 17_950 / 18_000;
                assertThat(open.volt().get(k))
                        .as("at %s", charge)
                        .isCloseTo(truth.openV(true_), within(0.012));
            }
        }
    }

    /** Where everything is declared, tests judge it: a resistance twice the true one shows. */
    @Test
    void declaredValuesAreJudged() {
        Truth truth = new Truth(18_000, 0.02, 1e-9, 8, 1e-9, 200, 0, 3.2);
        Noise none = () -> 0;
        var runs = List.of(new CellTests.Run(truth.discharge("2C", 10, 1, 1700, none), 1, false));
        CellType tests = CellData.type("declared", Optional.of(truth.curve()), runs);
        CellFit right = CellFit.of(declared(tests, 18_000, 0.02)).orElseThrow();
        assertThat(right.isFound()).isFalse();
        assertThat(right.values()).isEmpty();
        assertThat(right.judged().getFirst().rmsV()).isLessThan(0.001);
        CellFit wrong = CellFit.of(declared(tests, 18_000, 0.04)).orElseThrow();
        // 10 A through 20 mΩ too many.
        assertThat(wrong.judged().getFirst().meanV()).isCloseTo(0.2, within(0.005));
    }

    private static CellType declared(CellType of, double capacityAs, double ohm) {
        return new CellType(
                of.name(),
                of.chemistry(),
                Optional.of(Quantity.exact(capacityAs, Dimensions.CHARGE)),
                Optional.of(Quantity.exact(ohm, Dimensions.RESISTANCE)),
                of.settling(),
                of.resistanceOverCharge(),
                of.ageing(),
                of.temperatureCoefficient(),
                of.mass(),
                of.openCircuit(),
                of.openCircuitDoubt(),
                of.continuousCurrent(),
                of.peakCurrent(),
                of.measured());
    }

    /** What tests cannot tell is said in words that name the cell. */
    @Test
    void testsThatDoNotTellAreRefused() {
        Truth truth = new Truth(18_000, 0.02, 0.006, 8, 0.01, 200, 0.5, 3.2);
        Noise none = () -> 0;
        CellTest whole = truth.discharge("whole", 5, 1, 3500, none);
        CellTest part = truth.discharge("part", 5, 1, 600, none);
        Optional<CellType.Curve> curve = Optional.of(truth.curve());
        refused(Optional.empty(), new CellTests.Run(whole, 1, false), "two discharges");
        refused(curve, new CellTests.Run(whole, 1, true), "held out");
        refused(Optional.empty(), new CellTests.Run(part, 1, false), "two discharges");
        refused(curve, new CellTests.Run(whole, 0.6, false), "begins at 4.200 V");
    }

    private static void refused(Optional<CellType.Curve> open, CellTests.Run run, String why) {
        assertThatThrownBy(() -> CellFit.of(CellData.type("mine", open, List.of(run))))
                .isInstanceOf(NotToldException.class)
                .hasMessageContaining("cells/mine")
                .hasMessageContaining(why);
    }
}
