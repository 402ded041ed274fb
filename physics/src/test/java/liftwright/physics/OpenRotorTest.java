package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OpenRotorTest {

    /** Rankine–Froude: 100 N on a disc of 0.30 m, v_i 24.0298 m/s. */
    @Test
    void hover() {
        double disc = FanLaw.annulusM2(0.30, 0);
        assertThat(OpenRotor.hoverInducedMps(100, 1.225, disc))
                .isCloseTo(24.0298, withPercentage(1e-3));
    }

    /** Momentum theory in axial climb: v_i / v_h, and P / P_h = c + v_i / v_h. */
    @ParameterizedTest
    @CsvSource({
        "0, 1, 1",
        "0.5, 0.78078, 1.28078",
        "1, 0.61803, 1.61803",
        "2, 0.41421, 2.41421",
        "-2.5, 0.5, -2.0",
        "-2, 1, -1",
    })
    void axialFlow(double climb, double induced, double power) {
        assertThat(OpenRotor.axialInducedShare(climb)).isCloseTo(induced, within(1e-5));
        assertThat(climb + OpenRotor.axialInducedShare(climb)).isCloseTo(power, within(1e-5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, -1.99, Double.NaN})
    void hasNoFlowInTheVortexRing(double climb) {
        assertThatIllegalArgumentException().isThrownBy(() -> OpenRotor.axialInducedShare(climb));
    }

    /**
     * The classic exercise of vertical climb: 16 m rotor, 170 N/m², 0.53 × 600 kW useful, 1.2256
     * kg/m³: 9.3035 m/s through the disc, climb 1.849 m/s = 110.9 m/min.
     */
    @Test
    void textbookClimb() {
        double disc = Math.PI * 64;
        double thrust = 170 * disc;
        double hover = OpenRotor.hoverInducedMps(thrust, 1.2256, disc);
        double through = 0.53 * 600e3 / thrust;
        assertThat(through).isCloseTo(9.3035, withPercentage(0.01));
        double climb = 1.849;
        assertThat(climb + hover * OpenRotor.axialInducedShare(climb / hover))
                .isCloseTo(through, withPercentage(0.01));
    }

    /** Glauert, disc level. */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.5, 0.93956", "1, 0.78615", "2, 0.48587"})
    void edgewiseFlow(double edgewise, double induced) {
        assertThat(OpenRotor.edgewiseInducedShare(edgewise)).isCloseTo(induced, within(1e-5));
    }

    /** Cheeseman and Bennett, ARC R&M 3021 (1955). */
    @ParameterizedTest
    @CsvSource({
        "0.5, 1.33333",
        "0.75, 1.12500",
        "1, 1.06667",
        "1.5, 1.02857",
        "2, 1.01587",
        "3, 1.00699",
    })
    void nearTheGround(double heightOverRadius, double thrust) {
        assertThat(OpenRotor.groundThrust(heightOverRadius)).isCloseTo(thrust, within(1e-5));
    }

    /** Prouty's curve (digitised by a third party) as thrust at equal power. */
    @ParameterizedTest
    @CsvSource({
        "0.918, 0.830",
        "1.160, 0.874",
        "1.568, 0.932",
        "2.044, 0.975",
        "2.4, 1.000",
        "9, 1.000",
    })
    void nearTheGroundAsMeasured(double heightOverRadius, double inducedShare) {
        assertThat(OpenRotor.groundThrustMeasured(heightOverRadius))
                .isCloseTo(Math.pow(inducedShare, -2.0 / 3), within(1e-9));
    }

    /** At z/R = 1 the two differ: 1.067 against 1.119. */
    @Test
    void theMeasuredGainIsTheLarger() {
        assertThat(OpenRotor.groundThrust(1)).isCloseTo(1.067, within(5e-4));
        assertThat(OpenRotor.groundThrustMeasured(1)).isCloseTo(1.119, within(5e-4));
        // Between the first two points of the curve: 0.678 + 59/268 · 0.152 at z/D = 0.25.
        assertThat(Math.pow(OpenRotor.groundThrustMeasured(0.5), -1.5))
                .isCloseTo(0.678 + 59.0 / 268 * 0.152, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.49, 0, -1, Double.NaN})
    void refusesToBeTooLow(double heightOverRadius) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OpenRotor.groundThrust(heightOverRadius));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OpenRotor.groundThrustMeasured(heightOverRadius));
    }
}
