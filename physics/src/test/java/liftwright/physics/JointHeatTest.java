package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import liftwright.testkit.Seeded;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointHeatTest {

    /** √(k A h P) and √(k A/h P): a long rod of 5 mm, k 398, h 100 in Incropera, Example 3.9. */
    @Test
    void aLongFin() {
        double area = Math.PI / 4 * 25e-6;
        double across = 100 * Math.PI * 5e-3;
        // The example prints 8.3 W for 75 K and names 0.33 m "infinitely" long (m = 14.2 1/m).
        assertThat(75 * JointHeat.finWpK(398, area, across)).isCloseTo(8.3, within(0.05));
        assertThat(1 / JointHeat.finLengthM(398, area, across)).isCloseTo(14.2, within(0.05));
    }

    /** From the definition: I² R = G · 30 K + fins · (30 K − ΔT_w). */
    @Test
    void theRatedTestBalances() {
        double air = JointHeat.airWpK(90, 0.3e-3, 0.05, 24, 1e-3);
        assertThat(air * 30 + 0.05 * (30 - 24)).isCloseTo(90 * 90 * 0.3e-3, withPercentage(1e-9));
        // A wire as warm as the joint takes nothing.
        assertThat(JointHeat.airWpK(90, 0.3e-3, 0.05, 30, 1e-3))
                .isCloseTo(90 * 90 * 0.3e-3 / 30, withPercentage(1e-9));
        // A good joint that its wire cools gives no less than the floor.
        assertThat(JointHeat.airWpK(90, 0.01e-3, 0.5, 10, 7e-3)).isEqualTo(7e-3);
    }

    /** A sphere of 1 cm³ of copper has 4.836 cm²: at 10 W/(m²·K), 4.84 mW/K. */
    @Test
    void theFloorIsASphere() {
        assertThat(JointHeat.floorWpK(3.45)).isCloseTo(4.836e-3, withPercentage(0.01));
        assertThat(JointHeat.floorWpK(8 * 3.45)).isCloseTo(4 * 4.836e-3, withPercentage(0.01));
    }

    @Test
    void constantsOfTheTrade() {
        assertThat(JointHeat.RATED_RISE_K).isEqualTo(30);
        assertThat(JointHeat.RATED_AIR_K).isEqualTo(25 + 273.15);
        assertThat(JointHeat.LEAD_SOLDER_MELTS_K).isEqualTo(183 + 273.15);
        assertThat(JointHeat.TIN_SOLDER_MELTS_K).isEqualTo(217 + 273.15);
    }

    /**
     * Chosen by a second program in another language, walls of 0.8 mm, 0.2 W/(m·K): wire and its
     * own rise. Beyond what 4/0 carries there are two.
     */
    @ParameterizedTest
    @CsvSource({
        "5, AWG_24, 1, 20.1329",
        "15, AWG_16, 1, 24.0262",
        "30, AWG_10, 1, 19.2358",
        "60, AWG_6, 1, 20.2029",
        "90, AWG_4, 1, 24.7602",
        "150, AWG_1, 1, 29.3654",
        "300, AWG_4_0, 2, 9.1790",
        "500, AWG_4_0, 2, 23.5014",
    })
    void theWireOfTheTest(double ampere, AircraftWire wire, int conductors, double rise) {
        RatedWire rated = RatedWire.of(ampere, 0.8e-3, 0.2);
        assertThat(rated.wire()).isEqualTo(wire);
        assertThat(rated.conductors()).isEqualTo(conductors);
        assertThat(rated.riseK()).isCloseTo(rise, within(1e-3));
    }

    /**
     * Referee: a joint with a wire on either side, each in 300 cells with the surface law at every
     * cell and resistance by temperature, brought to rest. At the rated current it is 30 K warm.
     */
    @Test
    void ratedWireAtRatedCurrentGivesThirtyKelvin() {
        Seeded.check(
                25,
                random -> {
                    double rated = Math.exp(random.nextDouble(Math.log(4), Math.log(600)));
                    double wall = random.nextDouble(0.4e-3, 1.5e-3);
                    RatedWire wire = RatedWire.of(rated, wall, 0.2);
                    assertThat(wire.riseK()).isLessThanOrEqualTo(30);
                    double ohm = random.nextDouble(1, 12) / (rated * rated);
                    double air =
                            JointHeat.airWpK(rated, ohm, 2 * wire.finWpK(), wire.riseK(), 1e-4);
                    double found = restK(wire, rated, wall, ohm, air);
                    if (air > 1e-4) {
                        assertThat(found).as("%s", wire).isCloseTo(30, within(0.4));
                    } else {
                        assertThat(found).as("the floor makes it colder").isLessThan(30.05);
                    }
                });
    }

    private static double restK(
            RatedWire rated, double currentA, double wall, double ohm, double airWpK) {
        double copper = rated.wire().areaM2();
        double inner = Math.sqrt(copper * 4 / Math.PI * 25 / 19);
        WireSteady open =
                new WireSteady(
                        rated.wire().ohmpm(),
                        inner + 2 * wall,
                        2 * Math.PI * 0.2 / Math.log((inner + 2 * wall) / inner),
                        298.15,
                        101_325,
                        0,
                        0.9);
        // What the wire gives by its temperature, read once from a table of half kelvins.
        double[] rise = new double[161];
        double[] gives = new double[rise.length];
        for (int k = 0; k < rise.length; k++) {
            rise[k] = k * 0.5;
            gives[k] = open.heatWpm(298.15 + rise[k]);
        }
        double each = currentA / rated.conductors();
        double ohmpm = rated.wire().ohmpm();
        int cells = 300;
        double length = 6 * Math.sqrt(390 * copper / (gives[60] / 30)) / cells;
        double[] warm = new double[cells + 1];
        java.util.Arrays.fill(warm, rated.riseK());
        for (int pass = 0; pass < 20; pass++) {
            // Newton: diagonal and right side of the line, joint first.
            double[] diagonal = new double[cells + 1];
            double[] right = new double[cells + 1];
            double along = 390 * copper / length;
            double ends = 2.0 * rated.conductors();
            for (int cell = 0; cell <= cells; cell++) {
                double value = warm[cell];
                if (cell == 0) {
                    diagonal[0] = airWpK / ends + 2 * along;
                    right[0] = currentA * currentA * ohm / ends;
                    continue;
                }
                int low = Math.min((int) (value / 0.5), rise.length - 2);
                double slope = (gives[low + 1] - gives[low]) / 0.5;
                double given = gives[low] + slope * (value - rise[low]);
                double heat = each * each * ohmpm * (1 + 0.00393 * (298.15 - 293.15));
                double perK = each * each * ohmpm * 0.00393;
                double near = cell == 1 ? 2 * along : along;
                diagonal[cell] = near + (cell < cells ? along : 0) + (slope - perK) * length;
                right[cell] = (heat - given + slope * value) * length;
            }
            for (int cell = 1; cell <= cells; cell++) {
                double couple = cell == 1 ? 2 * along : along;
                double share = couple / diagonal[cell - 1];
                diagonal[cell] -= share * couple;
                right[cell] += share * right[cell - 1];
            }
            warm[cells] = right[cells] / diagonal[cells];
            for (int cell = cells - 1; cell >= 0; cell--) {
                double couple = cell == 0 ? 2 * along : along;
                warm[cell] = (right[cell] + couple * warm[cell + 1]) / diagonal[cell];
            }
        }
        return warm[0];
    }

    /** The next thinner wire would have been warmer than 30 K by itself. */
    @Test
    void theThinnestThatMayBe() {
        Seeded.check(
                60,
                random -> {
                    double rated = Math.exp(random.nextDouble(Math.log(4), Math.log(280)));
                    RatedWire wire = RatedWire.of(rated, 1e-3, 0.25);
                    assertThat(wire.finWpK()).isPositive();
                    for (AircraftWire thinner : AircraftWire.values()) {
                        if (thinner == wire.wire()) {
                            return;
                        }
                        double inner = Math.sqrt(thinner.areaM2() * 4 / Math.PI * 25 / 19);
                        WireSteady open =
                                new WireSteady(
                                        thinner.ohmpm(),
                                        inner + 2e-3,
                                        2 * Math.PI * 0.25 / Math.log((inner + 2e-3) / inner),
                                        298.15,
                                        101_325,
                                        0,
                                        0.9);
                        assertThat(open.conductorK(rated)).isGreaterThan(298.15 + 30);
                    }
                });
    }

    @Test
    void whatIsNoJointIsRefused() {
        for (double bad : new double[] {0, -1, Double.NaN}) {
            refused(() -> JointHeat.airWpK(bad, 1e-3, 0.1, 20, 1e-3));
            refused(() -> RatedWire.of(bad, 1e-3, 0.2));
            refused(() -> RatedWire.of(90, bad, 0.2));
            refused(() -> RatedWire.of(90, 1e-3, bad));
        }
        for (double bad : new double[] {-1e-9, Double.NaN}) {
            refused(() -> JointHeat.airWpK(90, bad, 0.1, 20, 1e-3));
            refused(() -> JointHeat.airWpK(90, 1e-3, bad, 20, 1e-3));
            refused(() -> JointHeat.airWpK(90, 1e-3, 0.1, 20, bad));
        }
        assertThat(JointHeat.airWpK(90, 0, 0.1, 20, 1e-3)).as("a perfect joint").isEqualTo(1e-3);
        assertThat(JointHeat.airWpK(90, 0, 0.1, 20, 0)).isZero();
        assertThat(JointHeat.airWpK(0.5, 1, 0, 20, 1e-6)).isCloseTo(0.25 / 30, within(1e-12));
        assertThat(RatedWire.of(0.5, 0.5e-3, 0.2).wire()).isEqualTo(AircraftWire.AWG_24);
        assertThat(JointHeat.airWpK(90, 1e-3, 0, 20, 1e-3)).isPositive();
        refused(() -> RatedWire.of(Double.POSITIVE_INFINITY, 1e-3, 0.2));
    }

    private static void refused(ThrowingCallable asked) {
        assertThatIllegalArgumentException().isThrownBy(asked);
    }
}
