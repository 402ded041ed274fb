package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScreenTest {

    /** Idelchik, Handbook of Hydraulic Resistance, 3rd ed. 1994, diagram 4-14. */
    @ParameterizedTest
    @CsvSource({
        "0.3, 19.316",
        "0.4, 8.758",
        "0.5, 4.370",
        "0.6, 2.257",
        "0.7, 1.148",
        "0.8, 0.5377",
        "0.9, 0.1957",
        "1, 0",
    })
    void perforatedPlate(double freeShare, double loss) {
        assertThat(Screen.perforatedPlateLoss(freeShare))
                .isCloseTo(loss, within(3e-4 * (1 + loss)));
    }

    /** Idelchik, diagram 8-6 (formula from memory). */
    @ParameterizedTest
    @CsvSource({
        "0.4, 3.030",
        "0.5, 1.650",
        "0.6, 0.9644",
        "0.7, 0.5737",
        "0.8, 0.3225",
        "0.9, 0.1423",
        "1, 0",
    })
    void wireScreen(double freeShare, double loss) {
        assertThat(Screen.wireScreenLoss(freeShare)).isCloseTo(loss, within(1e-4));
    }

    /** Wire screen of f = 0.8 on the fan face, and on a bell mouth 1.5 × as large. */
    @Test
    void aLargerFaceCostsLess() {
        double face = Screen.referredToExit(Screen.wireScreenLoss(0.8), 0.01, 0.01);
        assertThat(face).isCloseTo(0.3225, withPercentage(1e-2));
        assertThat(FanLaw.installedThrustFactor(face)).isCloseTo(0.8300, within(1e-4));
        double mouth = Screen.referredToExit(Screen.wireScreenLoss(0.8), 0.01, 0.015);
        assertThat(mouth).isCloseTo(0.1433, within(1e-4));
        assertThat(FanLaw.installedThrustFactor(mouth)).isCloseTo(0.9146, within(1e-4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
    void refusesWhatIsNoShare(double freeShare) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Screen.perforatedPlateLoss(freeShare));
        assertThatIllegalArgumentException().isThrownBy(() -> Screen.wireScreenLoss(freeShare));
    }
}
