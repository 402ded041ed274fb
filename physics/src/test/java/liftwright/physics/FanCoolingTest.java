package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FanCoolingTest {

    /** Between Re^0.6 of fins and Re^0.8 of plates; half speed by hand, 2^−0.7 = 0.6156. */
    @Test
    void coolingFollowsTheFan() {
        assertThat(FanCooling.share(1)).isEqualTo(1);
        assertThat(FanCooling.share(0.5)).isCloseTo(0.6156, within(1e-4));
        for (double speed = 0.05; speed < 1; speed += 0.05) {
            assertThat(FanCooling.share(speed))
                    .isBetween(Math.pow(speed, 0.8), Math.pow(speed, 0.6))
                    .isGreaterThan(FanCooling.share(speed - 0.05));
        }
        assertThat(FanCooling.share(1.2)).isGreaterThan(1);
    }

    /** Next to nothing at a stop, and no jump on the way there: 0.04 at 1 % of the speed. */
    @Test
    void aStandingFanHardlyCools() {
        assertThat(FanCooling.share(0)).isEqualTo(0.04);
        double seam = Math.pow(0.04, 1 / 0.7);
        assertThat(seam).isBetween(0.009, 0.011);
        assertThat(FanCooling.share(seam * 0.999)).isEqualTo(0.04);
        assertThat(FanCooling.share(seam * 1.001))
                .isCloseTo(0.04, within(1e-4))
                .isGreaterThan(0.04);
    }

    @Test
    void aSpeedBelowNoneIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> FanCooling.share(-0.01));
        assertThatIllegalArgumentException().isThrownBy(() -> FanCooling.share(Double.NaN));
    }
}
