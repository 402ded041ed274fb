package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurfaceExchangeTest {

    private static final double SEA_PA = 101_325;

    /** Çengel and Ghajar, 5th ed., Example 9-1: a pipe of 0.08 m at 70 °C in a room at 20 °C. */
    @Test
    void naturalConvectionAtAPipe() {
        double prandtl = 0.7241;
        double viscosity = 1.750e-5;
        double rayleigh = 9.81 / 318 * 50 * Math.pow(0.08, 3) / (viscosity * viscosity) * prandtl;
        assertThat(rayleigh).isCloseTo(1.867e6, withPercentage(0.1));
        double nusselt = SurfaceExchange.naturalCylinderNusselt(rayleigh, prandtl);
        assertThat(nusselt).isCloseTo(17.39, withPercentage(0.1));
        double film = 0.02699 / 0.08 * nusselt;
        assertThat(film).isCloseTo(5.867, withPercentage(0.1));
        assertThat(film * Math.PI * 0.08 * 6 * 50).isCloseTo(442, within(0.5));
    }

    /** The value that an open heat-transfer library pins for the same correlation. */
    @Test
    void naturalConvectionAtALargeCylinder() {
        assertThat(SurfaceExchange.naturalCylinderNusselt(0.69 * 2.63e9, 0.69))
                .isCloseTo(139.13493970073597, within(1e-6));
    }

    /** Incropera, Example 9.2: Nu = 147. The formula by hand gives 147.17. */
    @Test
    void naturalConvectionAtAPlate() {
        assertThat(SurfaceExchange.naturalPlateNusselt(1.813e9, 0.690)).isCloseTo(147, within(0.5));
        assertThat(SurfaceExchange.naturalPlateNusselt(1e6, 0.7))
                .isCloseTo(plate(1e6, 0.7), withPercentage(1e-9));
    }

    private static double plate(double rayleigh, double prandtl) {
        double root =
                0.825
                        + 0.387
                                * Math.exp(Math.log(rayleigh) / 6)
                                * Math.pow(
                                        1 + Math.pow(0.492 / prandtl, 0.5625), -0.296296296296296);
        return root * root;
    }

    /** Without any lift both laws keep what conduction leaves: 0.36 and 0.68. */
    @Test
    void stillAirConducts() {
        assertThat(SurfaceExchange.naturalCylinderNusselt(0, 0.7)).isCloseTo(0.36, within(1e-12));
        assertThat(SurfaceExchange.naturalPlateNusselt(0, 0.7)).isCloseTo(0.680625, within(1e-12));
        assertThat(SurfaceExchange.crossFlowNusselt(0, 0.7)).isEqualTo(0.3);
    }

    /** Incropera, cylinder in cross-flow (40.6); Çengel and Ghajar (124). */
    @Test
    void forcedConvection() {
        assertThat(SurfaceExchange.crossFlowNusselt(6071, 0.700)).isCloseTo(40.637, within(0.01));
        assertThat(SurfaceExchange.crossFlowNusselt(4.219e4, 0.7202))
                .isCloseTo(124.45, within(0.05));
    }

    /** Typed anew; at Re 1e6 the last factor has doubled what it was at 1e5. */
    @ParameterizedTest
    @CsvSource({"1, 0.7", "300, 0.69", "1e5, 0.71", "1e6, 0.71", "2e4, 5"})
    void forcedConvectionIsTheFormula(double reynolds, double prandtl) {
        double core =
                0.62
                        * Math.pow(reynolds, 0.5)
                        * Math.pow(prandtl, 0.3333333333333333)
                        * Math.pow(1 + Math.pow(0.4 / prandtl, 0.6666666666666666), -0.25);
        double expected = 0.3 + core * Math.pow(1 + Math.pow(reynolds / 282e3, 0.625), 0.8);
        assertThat(SurfaceExchange.crossFlowNusselt(reynolds, prandtl))
                .isCloseTo(expected, withPercentage(1e-9));
    }

    /** Nu⁴ = Nu_f⁴ + Nu_n⁴; without flow nothing is added; far apart the greater rules. */
    @Test
    void twoConvectionsTogether() {
        assertThat(SurfaceExchange.mixedNusselt(3, 3))
                .isCloseTo(3 * Math.pow(2, 0.25), within(2e-4));
        assertThat(SurfaceExchange.mixedNusselt(0.3, 0.77)).isCloseTo(0.77, within(1e-12));
        assertThat(SurfaceExchange.mixedNusselt(40, 2)).isCloseTo(40, within(1e-3));
        Seeded.check(
                300,
                random -> {
                    double forced = random.nextDouble(0.3, 30);
                    double natural = random.nextDouble(1, 20);
                    double plain = Math.pow(Math.pow(forced, 4) + Math.pow(natural, 4), 0.25);
                    assertThat(SurfaceExchange.mixedNusselt(forced, natural))
                            .isBetween(plain * 0.997, plain);
                });
    }

    /** εσ(T⁴ − T_a⁴) over the difference; at equal temperatures 4εσT³. */
    @Test
    void radiation() {
        double sigma = 5.670374419e-8;
        assertThat(SurfaceExchange.radiationWpm2K(0.8, 400, 300))
                .isCloseTo(
                        0.8 * sigma * (Math.pow(400, 4) - Math.pow(300, 4)) / 100,
                        withPercentage(1e-9));
        assertThat(SurfaceExchange.radiationWpm2K(1, 300, 300))
                .isCloseTo(4 * sigma * Math.pow(300, 3), withPercentage(1e-9));
        assertThat(SurfaceExchange.radiationWpm2K(0, 400, 300)).isZero();
    }

    /**
     * Written a second time in another language and run there: a wire in still air and in 5 m/s.
     */
    @ParameterizedTest
    @CsvSource({
        "3.5e-3, 350, 293.15, 0, 0.9, 0.2356134367",
        "3.5e-3, 350, 293.15, 5, 0.9, 1.4643260490",
        "10e-3, 400, 300, 2, 0.5, 1.6364560040",
    })
    void wire(double outer, double surface, double air, double mps, double emissivity, double w) {
        assertThat(SurfaceExchange.wireWpmK(outer, surface, air, SEA_PA, mps, emissivity))
                .isCloseTo(w, withPercentage(1e-6));
    }

    @Test
    void moreOfEverythingGivesMoreHeat() {
        Seeded.check(
                500,
                random -> {
                    double outer = random.nextDouble(0.5e-3, 20e-3);
                    double air = random.nextDouble(250, 320);
                    double surface = air + random.nextDouble(0, 250);
                    double pascal = random.nextDouble(60e3, 105e3);
                    double mps = random.nextInt(2) * random.nextDouble(0, 20);
                    double emissivity = random.nextDouble(0.05, 0.95);
                    double more = 1 + random.nextDouble(0.01, 0.5);
                    double here =
                            SurfaceExchange.wireWpmK(outer, surface, air, pascal, mps, emissivity);
                    assertThat(here).isPositive();
                    assertThat(
                                    SurfaceExchange.wireWpmK(
                                            outer * more, surface, air, pascal, mps, emissivity))
                            .as("a thicker wire")
                            .isGreaterThan(here);
                    assertThat(
                                    SurfaceExchange.wireWpmK(
                                            outer, surface, air, pascal, mps + more, emissivity))
                            .as("more air")
                            .isGreaterThan(here);
                    assertThat(
                                    SurfaceExchange.wireWpmK(
                                            outer, surface, air, pascal, mps, emissivity + 0.05))
                            .as("a blacker wire")
                            .isGreaterThan(here);
                    assertThat(
                                    SurfaceExchange.wireWpmK(
                                            outer, surface, air, pascal * 1.1, mps, emissivity))
                            .as("denser air")
                            .isGreaterThanOrEqualTo(here);
                    double hotter = surface + 20;
                    assertThat(
                                    SurfaceExchange.wireWpmK(
                                                    outer, hotter, air, pascal, mps, emissivity)
                                            * (hotter - air))
                            .as("a hotter wire gives more watts")
                            .isGreaterThan(here * (surface - air));
                });
    }

    @Test
    void noJumpWhereTheAirBeginsToMoveOrTheWireToWarm() {
        Seeded.check(
                200,
                random -> {
                    double outer = random.nextDouble(0.5e-3, 20e-3);
                    double air = random.nextDouble(250, 320);
                    double surface = air + random.nextDouble(1, 200);
                    double still = SurfaceExchange.wireWpmK(outer, surface, air, SEA_PA, 0, 0.9);
                    assertThat(SurfaceExchange.wireWpmK(outer, surface, air, SEA_PA, 1e-9, 0.9))
                            .isCloseTo(still, withPercentage(0.01));
                    double equal = SurfaceExchange.wireWpmK(outer, air, air, SEA_PA, 0, 0.9);
                    assertThat(equal)
                            .as("only conduction and radiation")
                            .isCloseTo(
                                    Math.PI
                                            * (0.36 * Air.conductivityWpmK(air)
                                                    + outer
                                                            * 0.9
                                                            * 4
                                                            * 5.670374419e-8
                                                            * Math.pow(air, 3)),
                                    withPercentage(1e-6));
                    double cold = SurfaceExchange.wireWpmK(outer, air - 1, air + 1, SEA_PA, 0, 0.9);
                    double warm = SurfaceExchange.wireWpmK(outer, air + 1, air - 1, SEA_PA, 0, 0.9);
                    assertThat(cold).as("the same film, the other way").isEqualTo(warm);
                });
    }

    /** n wires in a round bundle of √n times their diameter: girth π √n d for n girths π d. */
    @Test
    void bundlesKeepTheGirthOfTheWhole() {
        assertThat(SurfaceExchange.bundleFactor(1)).isEqualTo(1);
        assertThat(SurfaceExchange.bundleFactor(4)).isEqualTo(0.5);
        assertThat(SurfaceExchange.bundleFactor(9)).isCloseTo(1 / 3.0, within(1e-15));
    }

    @Test
    void whatIsNoSurfaceIsRefused() {
        double nan = Double.NaN;
        double infinite = Double.POSITIVE_INFINITY;
        assertThat(SurfaceExchange.naturalCylinderNusselt(1e12, 0.7)).isPositive();
        for (double bad : new double[] {-1, 1.01e12, nan, infinite}) {
            refused(() -> SurfaceExchange.naturalCylinderNusselt(bad, 0.7));
            refused(() -> SurfaceExchange.naturalPlateNusselt(bad, 0.7));
        }
        for (double bad : new double[] {0, -1, nan}) {
            refused(() -> SurfaceExchange.naturalCylinderNusselt(1e6, bad));
            refused(() -> SurfaceExchange.naturalPlateNusselt(1e6, bad));
            refused(() -> SurfaceExchange.crossFlowNusselt(1e3, bad));
            refused(() -> SurfaceExchange.radiationWpm2K(0.9, bad, 300));
            refused(() -> SurfaceExchange.radiationWpm2K(0.9, 300, bad));
            refused(() -> SurfaceExchange.wireWpmK(bad, 350, 300, SEA_PA, 0, 0.9));
            refused(() -> SurfaceExchange.wireWpmK(1e-3, 350, 300, bad, 0, 0.9));
        }
        for (double bad : new double[] {-1e-9, nan, infinite}) {
            refused(() -> SurfaceExchange.crossFlowNusselt(bad, 0.7));
            refused(() -> SurfaceExchange.wireWpmK(1e-3, 350, 300, SEA_PA, bad, 0.9));
        }
        for (double bad : new double[] {-0.01, 1.01, nan}) {
            refused(() -> SurfaceExchange.radiationWpm2K(bad, 350, 300));
        }
        assertThat(SurfaceExchange.radiationWpm2K(1, 0.5, 0.5)).isPositive();
        refused(() -> SurfaceExchange.mixedNusselt(0.29, 1));
        refused(() -> SurfaceExchange.mixedNusselt(nan, 1));
        refused(() -> SurfaceExchange.mixedNusselt(1, -0.1));
        refused(() -> SurfaceExchange.mixedNusselt(1, nan));
        assertThat(SurfaceExchange.mixedNusselt(1, 0)).isPositive();
        refused(() -> SurfaceExchange.wireWpmK(1e-3, 1000, 300, SEA_PA, 0, 0.9));
        refused(() -> SurfaceExchange.bundleFactor(0));
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable asked) {
        assertThatIllegalArgumentException().isThrownBy(asked);
    }
}
