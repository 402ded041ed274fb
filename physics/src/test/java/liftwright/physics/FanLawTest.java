package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import liftwright.physics.FanLaw.Plausibility;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FanLawTest {

    private static final double RHO = 1.225;
    private static final double DISC = FanLaw.annulusM2(0.30, 0);

    /** Rankine–Froude, 100 N on a disc of 0.30 m: v_i 24.0298 m/s, 2402.98 W, wake 48.0597 m/s. */
    @Test
    void openDiscIsTheDuctOfHalfTheArea() {
        assertThat(DISC).isCloseTo(0.0706858, withPercentage(1e-3));
        assertThat(FanLaw.idealPowerW(100, RHO, DISC / 2)).isCloseTo(2402.98, withPercentage(1e-3));
        assertThat(FanLaw.exitSpeedMps(100, RHO, DISC / 2))
                .isCloseTo(48.0597, withPercentage(1e-3));
        assertThat(FanLaw.rotorShare(0.5)).isEqualTo(1);
        // P = T v_i with v_i = √(T / 2ρA), written out.
        assertThat(FanLaw.idealPowerW(100, RHO, DISC / 2))
                .isCloseTo(100 * Math.sqrt(100 / (2 * RHO * DISC)), withPercentage(1e-10));
    }

    /** Duct momentum theory, the same thrust: Leishman, ducted rotors; σ = 0.5 equals open. */
    @ParameterizedTest
    @CsvSource({
        "1.0, 1699.17, 0.5",
        "0.8, 1899.73, 0.6250",
        "1.2, 1551.12, 0.4166667",
        "1.5, 1387.36, 0.3333333",
        "0.5, 2402.98, 1.0",
    })
    void ductedPowerAtEqualThrust(double sigma, double powerW, double share) {
        assertThat(FanLaw.idealPowerW(100, RHO, sigma * DISC))
                .isCloseTo(powerW, withPercentage(1e-3));
        assertThat(FanLaw.rotorShare(sigma)).isCloseTo(share, withPercentage(1e-4));
    }

    /** V_e 33.9833 m/s and 2.94262 kg/s for σ = 1. */
    @Test
    void ductedFlow() {
        assertThat(FanLaw.exitSpeedMps(100, RHO, DISC)).isCloseTo(33.9833, withPercentage(1e-3));
        assertThat(FanLaw.massFlowKgps(100, RHO, DISC)).isCloseTo(2.94262, withPercentage(1e-3));
    }

    /** 50 N, tip 120 mm, hub 45 mm: 0.00971930 m², 64.8036 m/s, 1620.09 W, 0.771562 kg/s. */
    @Test
    void annularSmallFan() {
        double area = FanLaw.annulusM2(0.120, 0.045);
        assertThat(area).isCloseTo(0.00971930, withPercentage(1e-4));
        assertThat(FanLaw.exitSpeedMps(50, RHO, area)).isCloseTo(64.8036, withPercentage(1e-4));
        assertThat(FanLaw.idealPowerW(50, RHO, area)).isCloseTo(1620.09, withPercentage(1e-3));
        assertThat(FanLaw.massFlowKgps(50, RHO, area)).isCloseTo(0.771562, withPercentage(1e-4));
        // Crosswind of 10 m/s on it: 7.7156 N, resultant 8.77° from the axis.
        double drag = FanLaw.momentumDragN(RHO, area, FanLaw.exitSpeedMps(50, RHO, area), 10);
        assertThat(drag).isCloseTo(7.7156, withPercentage(1e-2));
        assertThat(Math.toDegrees(Math.atan2(drag, 50))).isCloseTo(8.77, within(0.005));
    }

    /**
     * Abrego and Bulaga 2002, figure of merit of a ducted fan from coefficients: FM = 0.5 (d/√A_e)
     * C_T^1.5 / C_P, which is ideal over shaft power.
     */
    @Test
    void figureOfMeritOfCoefficientsIsIdealOverShaftPower() {
        Seeded.check(
                200,
                random -> {
                    double thrust = random.nextDouble(1, 500);
                    double power = random.nextDouble(100, 9000);
                    double turns = random.nextDouble(30, 900);
                    double d = random.nextDouble(0.05, 1);
                    double exit = random.nextDouble(0.001, 0.5);
                    double ct = thrust / (RHO * turns * turns * Math.pow(d, 4));
                    double cp = power / (RHO * Math.pow(turns, 3) * Math.pow(d, 5));
                    double merit = 0.5 * d / Math.sqrt(exit) * Math.pow(ct, 1.5) / cp;
                    assertThat(FanLaw.idealPowerW(thrust, RHO, exit) / power)
                            .isCloseTo(merit, withPercentage(1e-9));
                });
    }

    /**
     * Leishman, hover example of a tilt-rotor: 45,000 lb on two rotors of 38 ft, 0.002378 slug/ft³
     * (inputs from memory): v_i 64.59 ft/s, ideal 2642 hp per rotor, 3523 hp at FM 0.75.
     */
    @Test
    void textbookHover() {
        double thrust = 22_500 * 4.4482216152605;
        double density = 0.002378 * 515.378818;
        double disc = FanLaw.annulusM2(38 * 0.3048, 0);
        double ideal = FanLaw.idealPowerW(thrust, density, disc / 2);
        assertThat(ideal / 745.69987).isCloseTo(2642, withPercentage(0.05));
        assertThat(ideal / 0.75 / 745.69987).isCloseTo(3523, withPercentage(0.05));
        assertThat(FanLaw.exitSpeedMps(thrust, density, disc / 2) / 2 / 0.3048)
                .isCloseTo(64.59, withPercentage(0.05));
    }

    /** (1 + K)^(−2/3) at equal shaft power. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.93844", "0.25, 0.86177", "0.5, 0.76314", "1, 0.62996", "2, 0.48075"})
    void installedThrust(double loss, double factor) {
        assertThat(FanLaw.installedThrustFactor(loss)).isCloseTo(factor, within(1e-5));
        // Exit speed falls as the square root of thrust.
        assertThat(FanLaw.installedExitSpeedFactor(loss))
                .isCloseTo(Math.sqrt(factor), within(1e-5));
    }

    @Test
    void theIntakeLawSaysWhereItEnds() {
        assertThat(FanLaw.intakeLossInRange(0)).isTrue();
        assertThat(FanLaw.intakeLossInRange(0.3)).isTrue();
        assertThat(FanLaw.intakeLossInRange(0.3001)).isFalse();
        assertThat(FanLaw.intakeLossInRange(-0.01)).isFalse();
    }

    /** At ρ = 1.1117: 0.9075 at the same speed, 0.9682 at the same shaft power. */
    @Test
    void thrustInThinAir() {
        assertThat(FanLaw.densityFactor(1.1117)).isCloseTo(0.9075, within(1e-4));
        assertThat(FanLaw.densityFactorAtEqualPower(1.1117)).isCloseTo(0.9682, within(1e-4));
    }

    @Test
    void plausibilityOfAClaim() {
        assertThat(FanLaw.plausibility(1.001, true)).isEqualTo(Plausibility.IMPOSSIBLE);
        assertThat(FanLaw.plausibility(1.001, false)).isEqualTo(Plausibility.IMPOSSIBLE);
        assertThat(FanLaw.plausibility(1, true)).isEqualTo(Plausibility.BEYOND_THIS_SIZE);
        assertThat(FanLaw.plausibility(0.81, true)).isEqualTo(Plausibility.BEYOND_THIS_SIZE);
        assertThat(FanLaw.plausibility(0.81, false)).isEqualTo(Plausibility.CREDIBLE);
        assertThat(FanLaw.plausibility(0.80, true)).isEqualTo(Plausibility.CREDIBLE);
        assertThat(FanLaw.plausibility(0.86, false)).isEqualTo(Plausibility.BEYOND_THIS_SIZE);
        assertThat(FanLaw.plausibility(0.85, false)).isEqualTo(Plausibility.CREDIBLE);
    }

    /** 40,000 rpm on 120 mm is 251.3 m/s at the tip; 340.29 m/s of sound. */
    @Test
    void speedsOfTheRotor() {
        double omega = 40_000 * Math.PI / 30;
        assertThat(FanLaw.tipMach(omega, 0.120, 340.29)).isCloseTo(0.73856, within(1e-4));
        assertThat(FanLaw.electricalSpeedRadps(100, 7)).isEqualTo(700);
        assertThat(FanLaw.GREATEST_TIP_MACH).isEqualTo(0.6);
    }

    @Test
    void inflowRelationHoldsAndIsTheLargestRoot() {
        Seeded.check(
                1000,
                random -> {
                    double still = random.nextDouble(0, 100);
                    double inflow = random.nextDouble(-20, 80);
                    double loss = random.nextDouble(0, 0.5);
                    double exit = FanLaw.exitSpeedWithInflowMps(still, inflow, loss);
                    double referee = bisect(still, inflow, loss);
                    assertThat(exit).isCloseTo(referee, within(1e-9 * (1 + referee)));
                });
    }

    /** For loops by a series: as near to the root as doubles are, on both sides of each bend. */
    @Test
    void inflowInLoopsIsTheSameRoot() {
        Seeded.check(
                2000,
                random -> {
                    double share = random.nextDouble(-0.9, 1.5) * random.nextDouble();
                    double loss = random.nextDouble(0, 0.5);
                    double exit = FanLaw.exitShareWithInflow(share, loss);
                    assertThat(exit).isCloseTo(bisect(1, share, loss), within(1e-15 * 4));
                    assertThat(FanLaw.exitShare(share * share / (1 + loss)))
                            .isCloseTo(exit, within(1e-15));
                });
        for (double bend : new double[] {0, 0.1, 0.5}) {
            double below = FanLaw.exitShare(bend);
            double above = FanLaw.exitShare(Math.nextUp(bend));
            assertThat(above).isCloseTo(below, within(1e-15));
        }
        assertThat(FanLaw.exitShare(0)).isEqualTo(1);
    }

    /** Bisection from a bound above which the cubic only rises. */
    private static double bisect(double still, double inflow, double loss) {
        double low = Math.abs(inflow) / Math.sqrt(3 * (1 + loss));
        double high = still + Math.abs(inflow) + 1;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            double f =
                    (1 + loss) * middle * middle * middle
                            - inflow * inflow * middle
                            - (1 + loss) * still * still * still;
            if (f > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    @Test
    void inflowCostsThrustAndStillAirCostsNone() {
        double still = FanLaw.exitSpeedWithInflowMps(60, 0, 0.1);
        assertThat(still).isCloseTo(60, within(1e-12));
        assertThat(FanLaw.thrustWithInflowN(RHO, 0.01, still, 0))
                .isCloseTo(RHO * 0.01 * 3600, withPercentage(1e-10));
        double climbing = FanLaw.exitSpeedWithInflowMps(60, 20, 0.1);
        assertThat(FanLaw.thrustWithInflowN(RHO, 0.01, climbing, 20)).isLessThan(RHO * 0.01 * 3600);
        // Energy: shaft power ½ ρ A V (V²(1 + K) − V_a²) is that of still air.
        assertThat(climbing * (climbing * climbing * 1.1 - 400))
                .isCloseTo(60 * 60 * 60 * 1.1, withPercentage(1e-9));
        assertThat(FanLaw.exitSpeedWithInflowMps(0, 0, 0)).isZero();
        // A dead fan passes what flows through it: V_e² (1 + K) = V_a².
        assertThat(FanLaw.exitSpeedWithInflowMps(0, 12, 0.44)).isCloseTo(10, within(1e-12));
    }

    @Test
    void descentHasItsLimit() {
        assertThat(FanLaw.inflowInRange(60, -11.9)).isTrue();
        assertThat(FanLaw.inflowInRange(60, -12.1)).isFalse();
        assertThat(FanLaw.inflowInRange(60, 50)).isTrue();
    }

    /**
     * By hand: 0.01 m² in 1.2 kg/m³, 10 m/s in and 60 m/s out. Mass flow 0.72 kg/s, thrust 0.72 ·
     * 50 = 36 N; power is what the kinetic energy of the flow gains, 0.72 · (3600 − 100)/2 = 1260
     * W.
     */
    @Test
    void leastPowerInAStreamIsTheGainOfKineticEnergy() {
        assertThat(FanLaw.idealPowerWithInflowW(36, 1.2, 0.01, 10)).isCloseTo(1260, within(1e-9));
        assertThat(FanLaw.idealPowerWithInflowW(36, 1.2, 0.01, 0))
                .isCloseTo(FanLaw.idealPowerW(36, 1.2, 0.01), within(1e-9));
    }
}
