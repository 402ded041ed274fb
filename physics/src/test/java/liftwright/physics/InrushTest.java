package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InrushTest {

    /** Referee: the loop run in time, current (V − v)/R into C. */
    @Test
    void capacitorsFillThroughAResistance() {
        Seeded.check(
                50,
                random -> {
                    double volt = random.nextDouble(10, 120);
                    double ohm = random.nextDouble(5e-3, 50);
                    double farad = random.nextDouble(1e-4, 2e-2);
                    double share = random.nextDouble(0.1, 0.999);
                    int steps = 100_000;
                    double step = 20 * ohm * farad / steps;
                    double filled = 0;
                    double reached = -1;
                    double squared = 0;
                    double lost = 0;
                    double peak = 0;
                    for (int k = 0; k < steps; k++) {
                        double half = filled + step / 2 * (volt - filled) / (ohm * farad);
                        double current = (volt - half) / ohm;
                        peak = Math.max(peak, (volt - filled) / ohm);
                        squared += current * current * step;
                        lost += current * current * ohm * step;
                        filled += current * step / farad;
                        if (reached < 0 && filled >= share * volt) {
                            reached = (k + 1) * step;
                        }
                    }
                    assertThat(Inrush.energyJ(farad, volt))
                            .as("as much is lost as stays")
                            .isCloseTo(lost, withPercentage(0.01))
                            .isCloseTo(farad * filled * filled / 2, withPercentage(0.01));
                    assertThat(Inrush.meltingA2s(farad, volt, ohm))
                            .isCloseTo(squared, withPercentage(0.01));
                    assertThat(Inrush.peakA(volt, ohm)).isCloseTo(peak, withPercentage(0.01));
                    assertThat(Inrush.fillS(ohm, farad, share))
                            .isCloseTo(reached, within(2 * step));
                    assertThat(Inrush.preChargeOhm(Inrush.fillS(ohm, farad, share), farad, share))
                            .isCloseTo(ohm, withPercentage(1e-9));
                });
    }

    /** 10 mF filled to 95 % through 33 Ω on 50 V: three time constants, 0.99 s; 12.5 J, 1.5 A. */
    @Test
    void aPreChargeByHand() {
        assertThat(Inrush.fillS(33, 10e-3, 0.95)).isCloseTo(0.9886, within(1e-4));
        assertThat(Inrush.energyJ(10e-3, 50)).isCloseTo(12.5, within(1e-12));
        assertThat(Inrush.peakA(50, 33)).isCloseTo(1.515, within(1e-3));
        assertThat(Inrush.fillS(33, 10e-3, 0)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1, 1.5, Double.NaN})
    void aShareThatIsNeverFilledIsRefused(double share) {
        assertThatIllegalArgumentException().isThrownBy(() -> Inrush.fillS(1, 1, share));
        assertThatIllegalArgumentException().isThrownBy(() -> Inrush.preChargeOhm(1, 1, share));
        assertThatIllegalArgumentException().isThrownBy(() -> Inrush.preChargeOhm(1, 1, 0));
    }

    /** All rotors of a bus: Σ ½ J Ω² into its capacitance, as for one rotor of their sum. */
    @Test
    void rotorsOnABusLiftItsCapacitorsTogether() {
        double energy = 4 * 0.5 * 2e-4 * 3000 * 3000;
        double peak = FastEffects.absorbedPeakV(50, energy, 0.5);
        assertThat(peak * peak - 50 * 50).isCloseTo(2 * energy / 0.5, within(1e-6));
        assertThat(peak).isCloseTo(FastEffects.brakePeakV(50, 8e-4, 3000, 0, 0.5), within(1e-9));
    }
}
