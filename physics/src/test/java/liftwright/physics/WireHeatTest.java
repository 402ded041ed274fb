package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class WireHeatTest {

    /** One centre strand, six and twelve around it: 19 in a circle of five strand diameters. */
    @Test
    void aStrandBundleIsThickerThanItsCopper() {
        double strand = 0.2e-3;
        double copper = 19 * Math.PI / 4 * strand * strand;
        assertThat(WireHeat.strandDiameterM(copper)).isCloseTo(1e-3, withPercentage(1e-9));
    }

    /**
     * IEC 60949: K² = Q_c (β + 20 °C)/ρ₂₀ ties the heat capacity to the adiabatic constant, 226
     * A·√s/mm² with β = 234.5.
     */
    @Test
    void copperHoldsTheHeatThatTheAdiabaticLawSays() {
        double constant = Math.sqrt(Conductor.COPPER_JPM3K * 254.5 / Conductor.COPPER_OHMM) * 1e-6;
        assertThat(constant).isCloseTo(226, within(0.5));
        assertThat(WireHeat.of(1e-6, 1e-3, 0.2, 2e6, 3).conductorJpmK())
                .isCloseTo(3.45, within(1e-12));
        // Between pure copper (401 at 300 K) and what conductor copper has when warm.
        assertThat(Conductor.COPPER_WPMK).isEqualTo(390);
    }

    @Test
    void shellsHoldTheWholeWall() {
        Seeded.check(
                300,
                random -> {
                    Drawn wire = new Drawn(random);
                    int shells = random.nextInt(1, 20);
                    WireHeat heat = wire.heat(shells);
                    double inner = wire.conductorM / 2;
                    double outer = inner + wire.wallM;
                    double capacity = 0;
                    double resistance = 1 / heat.toSurfaceWpmK();
                    for (int shell = 0; shell < shells; shell++) {
                        assertThat(heat.shellJpmK(shell)).isPositive();
                        capacity += heat.shellJpmK(shell);
                        resistance += 1 / heat.inwardWpmK(shell);
                    }
                    assertThat(heat.shells()).isEqualTo(shells);
                    assertThat(heat.conductorM()).isEqualTo(wire.conductorM);
                    assertThat(heat.outerM()).isCloseTo(2 * outer, withPercentage(1e-9));
                    assertThat(capacity)
                            .isCloseTo(
                                    wire.wallJpm3K * Math.PI * (outer * outer - inner * inner),
                                    withPercentage(1e-9));
                    assertThat(1 / resistance)
                            .isCloseTo(heat.wallWpmK(), withPercentage(1e-9))
                            .isCloseTo(
                                    2 * Math.PI * wire.wallWpmK / Math.log(outer / inner),
                                    withPercentage(1e-9));
                });
    }

    /**
     * Placement by hand, on a wall so thin that it is flat: edges of three shells at (1/3)^2.4 =
     * 0.0716 and (2/3)^2.4 = 0.3779, nodes at (0.55/3)^2.4 = 0.01705, (1.55/3)^2.4 = 0.2050 and
     * (2.55/3)^2.4 = 0.6770.
     */
    @Test
    void shellsAreThinAtTheConductor() {
        WireHeat heat = WireHeat.round(1e-4, 12e-3, 1e-7, 0.2, 2e6, 3);
        double capacity = 2e6 * Math.PI * 12e-3 * 1e-7;
        double whole = heat.wallWpmK();
        assertThat(heat.shellJpmK(0) / capacity).isCloseTo(0.0716, within(1e-4));
        assertThat(heat.shellJpmK(1) / capacity).isCloseTo(0.3779 - 0.0716, within(1e-4));
        assertThat(whole / heat.inwardWpmK(0)).isCloseTo(0.01705, within(1e-5));
        assertThat(whole / heat.inwardWpmK(1)).isCloseTo(0.2050 - 0.0171, within(1e-4));
        assertThat(whole / heat.inwardWpmK(2)).isCloseTo(0.6770 - 0.2050, within(1e-4));
        assertThat(whole / heat.toSurfaceWpmK()).isCloseTo(1 - 0.6770, within(1e-4));
    }

    /** Referee: 100 rings on a grid of their own, the same surface; wires of 26 to 4/0 AWG. */
    @Test
    void threeShellsTellTheTimeToALimitLikeAHundred() {
        Seeded.check(
                150,
                random -> {
                    Drawn wire = new Drawn(random);
                    double air = random.nextDouble(260, 315);
                    double limit = air + random.nextDouble(40, 120);
                    double before = random.nextInt(2) * random.nextDouble(0.2, 0.7);
                    double holds = wire.holdsA(limit, air);
                    double current =
                            holds * Math.sqrt(1 + Math.pow(10, random.nextDouble(-1.2, 4)));
                    double ratio = wire.wallM / (wire.conductorM / 2);
                    double bound = ratio < 1 ? 2 : ratio < 2 ? 3 : 5.5;
                    double fine = timeS(wire.fine(100, air), before * holds, limit, current, wire);
                    double three =
                            timeS(
                                    RadialWire.of(wire.heat(3), wire.ohmpm(), air),
                                    before * holds,
                                    limit,
                                    current,
                                    wire);
                    assertThat(three)
                            .as("%s, limit in %.3g s", wire, fine)
                            .isCloseTo(fine, withPercentage(bound));
                });
    }

    private static double timeS(
            RadialWire model, double beforeA, double limitK, double currentA, Drawn wire) {
        if (beforeA > 0) {
            model.carry(beforeA, 1e5);
        }
        double rise = Math.max(1, limitK - model.conductorK());
        double guess = 3.45e6 * wire.copperM2 * rise / (currentA * currentA * wire.ohmpm());
        return model.timeToS(limitK, currentA, guess);
    }

    /** More shells draw nearer to a hundred rings: the placement is one for any number. */
    @Test
    void moreShellsAreNearer() {
        Drawn wire = new Drawn(1e-6, 1.3e-3, 1.2e-3, 0.2, 2e6);
        double fine = wire.fine(200, 293.15).timeToS(363.15, 60, 1);
        double last = 1;
        for (int shells : new int[] {1, 3, 6, 20}) {
            double time =
                    RadialWire.of(wire.heat(shells), wire.ohmpm(), 293.15).timeToS(363.15, 60, 1);
            double off = Math.abs(time / fine - 1);
            assertThat(off).as("%d shells", shells).isLessThan(last);
            last = off;
        }
        assertThat(last).isLessThan(0.003);
    }

    /** Fast enough, nothing leaves the copper: t = (k S/I)² [IEC 60949]. */
    @Test
    void aFastOverloadMeetsTheAdiabaticLaw() {
        Drawn wire = new Drawn(21.15e-6, 6e-3, 1e-3, 0.2, 2e6);
        double current = 20_000;
        double withstand =
                Conductor.adiabaticWithstand(Conductor.Metal.COPPER, 293.15, 293.15 + 140);
        double adiabatic = Conductor.adiabaticTimeS(withstand, wire.copperM2, current);
        assertThat(adiabatic).isBetween(0.005, 0.03);
        double bare = 1.7241e-8 / wire.copperM2;
        for (int shells : new int[] {1, 3, 10}) {
            double time =
                    RadialWire.of(wire.heat(shells), bare, 293.15)
                            .timeToS(293.15 + 140, current, adiabatic);
            assertThat(time).as("%d shells", shells).isBetween(adiabatic * 0.995, adiabatic * 1.02);
        }
    }

    @Test
    void whatIsNoWireIsRefused() {
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            refused(() -> WireHeat.of(bad, 1e-3, 0.2, 2e6, 3));
            refused(() -> WireHeat.of(1e-6, bad, 0.2, 2e6, 3));
            refused(() -> WireHeat.of(1e-6, 1e-3, bad, 2e6, 3));
            refused(() -> WireHeat.of(1e-6, 1e-3, 0.2, bad, 3));
            refused(() -> WireHeat.round(1e-6, bad, 1e-3, 0.2, 2e6, 3));
        }
        refused(() -> WireHeat.of(1e-6, 1e-3, 0.2, 2e6, 0));
        refused(() -> WireHeat.round(1e-6, 1.12e-3, 1e-3, 0.2, 2e6, 3)); // more copper than room
        assertThat(WireHeat.round(1e-6, 1.1284e-3, 1e-3, 0.2, 2e6, 1).shells()).isEqualTo(1);
    }

    private static void refused(ThrowingCallable asked) {
        assertThatIllegalArgumentException().isThrownBy(asked);
    }

    /** A wire with thin or thick insulation. */
    private record Drawn(
            double copperM2, double conductorM, double wallM, double wallWpmK, double wallJpm3K) {

        Drawn(RandomGenerator random) {
            this(
                    random.nextDouble(-3, 26),
                    random.nextBoolean()
                            ? Math.exp(random.nextDouble(Math.log(0.15e-3), Math.log(0.5e-3)))
                            : random.nextDouble(0.5e-3, 2e-3),
                    random.nextDouble(0.13, 0.35),
                    random.nextDouble(1.4e6, 2.6e6));
        }

        private Drawn(double gauge, double wallM, double wallWpmK, double wallJpm3K) {
            this(
                    Math.PI / 4 * Math.pow(0.127e-3 * Math.pow(92, (36 - gauge) / 39), 2),
                    0.127e-3 * Math.pow(92, (36 - gauge) / 39) / Math.sqrt(0.76),
                    gauge > 15 ? 0.6 * wallM : wallM,
                    wallWpmK,
                    wallJpm3K);
        }

        double ohmpm() {
            return 1.15 * 1.7241e-8 / copperM2;
        }

        WireHeat heat(int shells) {
            return WireHeat.round(copperM2, conductorM, wallM, wallWpmK, wallJpm3K, shells);
        }

        RadialWire fine(int rings, double airK) {
            return RadialWire.fine(
                    rings, copperM2, conductorM, wallM, wallWpmK, wallJpm3K, ohmpm(), airK);
        }

        /** Current whose steady conductor is at a limit. */
        double holdsA(double limitK, double airK) {
            WireSteady steady =
                    new WireSteady(
                            ohmpm(),
                            conductorM + 2 * wallM,
                            heat(1).wallWpmK(),
                            airK,
                            101_325,
                            0,
                            0.9);
            return Math.sqrt(
                    steady.heatWpm(limitK) / (ohmpm() * (1 + 0.00393 * (limitK - 293.15))));
        }
    }
}
