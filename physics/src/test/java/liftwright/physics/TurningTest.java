package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The closed form against a march in small steps, and against the free body. */
class TurningTest {

    /** ω̇ = α − k ω and θ̇ = ω by the classical fourth-order rule. */
    private static double marchedRad(double alpha, double k, double forS) {
        int steps = 4000;
        double h = forS / steps;
        double rate = 0;
        double angle = 0;
        for (int i = 0; i < steps; i++) {
            double k1 = alpha - k * rate;
            double k2 = alpha - k * (rate + h / 2 * k1);
            double k3 = alpha - k * (rate + h / 2 * k2);
            double k4 = alpha - k * (rate + h * k3);
            angle += h * rate + h * h / 6 * (k1 + k2 + k3);
            rate += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
        return angle;
    }

    @Test
    void theAngleIsThatOfTheEquationOfMotion() {
        Seeded.check(
                200,
                random -> {
                    double alpha = random.nextDouble(0.01, 20);
                    double k = Math.exp(random.nextDouble(-9, 2));
                    double t = random.nextDouble(0.05, 8);
                    double expected = marchedRad(alpha, k, t);
                    assertThat(Turning.angleRad(alpha, k, t))
                            .isCloseTo(expected, within(1e-9 * expected));
                });
    }

    @Test
    void theTimeLeadsBackToTheAngle() {
        Seeded.check(
                500,
                random -> {
                    double alpha = random.nextDouble(-20, 20);
                    double k = random.nextBoolean() ? 0 : Math.exp(random.nextDouble(-9, 3));
                    double angle = random.nextDouble(0.1, 3);
                    double t = Turning.timeS(alpha, k, angle);
                    assertThat(Turning.angleRad(Math.abs(alpha), k, t))
                            .isCloseTo(angle, within(1e-10));
                });
    }

    /** Damping that hardly counts: ½ α t² (1 − x/3 + x²/12 − x³/60), x = k t. */
    @Test
    void hardlyDampedAnglesKeepTheirDigits() {
        for (double x : new double[] {1e-9, 1e-5, 9e-4}) {
            double series = 0.5 * (1 - x / 3 + x * x / 12 - x * x * x / 60);
            assertThat(Turning.angleRad(1, x, 1)).isCloseTo(series, within(1e-14));
        }
    }

    /** Heavily damped, the body turns at α/k: angle/(α/k) + 1/k, and never sooner. */
    @Test
    void heavilyDampedItTurnsSteadily() {
        for (double k : new double[] {50, 500}) {
            assertThat(Turning.timeS(2, k, 3)).isCloseTo(3 / (2 / k) + 1 / k, within(1e-9 * k));
        }
    }

    /** A quarter turn at 1 rad/s²: √π s. */
    @Test
    void aFreeBodyTurnsAsFallingBodiesFall() {
        assertThat(Turning.timeS(1, 0, Math.PI / 2)).isCloseTo(Math.sqrt(Math.PI), within(1e-12));
        assertThat(Turning.timeS(0, 0.3, 1)).isInfinite();
        assertThat(Turning.timeS(0, 0, 1)).isInfinite();
    }

    /** H × Ω, worked by hand: 1e-4 kg·m² at 3000 rad/s in a body that turns at 1 rad/s. */
    @Test
    void aSpinningRotorResistsTurning() {
        assertThat(Turning.gyroscopicNm(1e-4, 3000, 1)).isCloseTo(0.3, within(1e-12));
    }
}
