package liftwright.review.restraint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A standing person with thrust on, against statics and energy by hand. */
class StandingWearerTest {

    private static final StandingWearer WEARER = new StandingWearer(1000, 1300, 1.0);

    /** sin θ = (1 − T/W) d/l (Hof et al. 2005). */
    @Test
    void nearWeightNothingIsLeftToLeanOn() {
        double before = Double.POSITIVE_INFINITY;
        for (double share : new double[] {0, 0.3, 0.6, 0.9, 0.99}) {
            double lean = WEARER.leanRad(share);
            assertThat(Math.sin(lean))
                    .isCloseTo((1 - share) * StandingWearer.TO_EDGE_M, within(1e-12));
            assertThat(lean).isLessThan(before);
            before = lean;
        }
    }

    @Test
    void atTheLeanThatSlidesThePushIsTheFriction() {
        double lean = StandingWearer.slidingLeanRad(0.8).orElseThrow();
        assertThat(0.8 * Math.sin(lean))
                .isCloseTo(StandingWearer.FRICTION * (1 - 0.8 * Math.cos(lean)), within(1e-12));
        assertThat(StandingWearer.slidingLeanRad(0.1)).isEmpty();
    }

    /** Push and flight stepped in time: the same height as by energy. */
    @Test
    void aJumpGoesAsHighAsItsWorkCarriesIt() {
        assertThat(WEARER.jumpM(0)).isCloseTo(StandingWearer.JUMP_M, within(1e-12));
        for (double share : new double[] {0.2, 0.5, 0.8}) {
            double g = 9.80665;
            double legs =
                    g * (StandingWearer.JUMP_M + StandingWearer.PUSH_M) / StandingWearer.PUSH_M;
            double x = 0;
            double v = 0;
            double dt = 1e-5;
            while (x < StandingWearer.PUSH_M || v > 0) {
                double a = (x < StandingWearer.PUSH_M ? legs : 0) - g * (1 - share);
                v += a * dt;
                x += v * dt;
            }
            assertThat(WEARER.jumpM(share)).isCloseTo(x - StandingWearer.PUSH_M, within(2e-3));
        }
    }
}
