package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.junit.jupiter.api.Test;

/** Rotors that run down, against the equation of their motion, integrated. */
class SpoolDownTest {

    private record Rotor(
            double startRadps, double inertia, double drag, double shorted, double still) {

        static Rotor random(RandomGenerator random) {
            double start = random.nextDouble(500, 5000);
            double inertia = Math.exp(random.nextDouble(Math.log(1e-6), Math.log(1e-3)));
            double tau = random.nextDouble(0.05, 1);
            double drag = inertia / (tau * start);
            double torque = drag * start * start;
            double shorted =
                    random.nextInt(3) == 0 ? 0 : torque / start * random.nextDouble(0.01, 20);
            double still = random.nextInt(3) == 0 ? 0 : torque * random.nextDouble(0.005, 0.5);
            return new Rotor(start, inertia, drag, shorted, still);
        }

        double[] slope(double[] s) {
            double omega = Math.max(0, s[0]);
            return new double[] {
                -(drag * omega * omega + shorted * omega + still) / inertia, omega * omega
            };
        }
    }

    @Test
    void speedsAndTimesFollowTheEquationOfMotion() {
        Seeded.check(
                300,
                random -> {
                    Rotor r = Rotor.random(random);
                    double share = random.nextDouble(0.05, 0.99);
                    ODEStateAndDerivative there =
                            Marched.until(
                                    s -> s[0] - share * r.startRadps(),
                                    100,
                                    new double[] {r.startRadps(), 0},
                                    r::slope);
                    double time =
                            SpoolDown.timeS(
                                    r.startRadps(),
                                    share * r.startRadps(),
                                    r.inertia(),
                                    r.drag(),
                                    r.shorted(),
                                    r.still());
                    assertThat(time).isCloseTo(there.getTime(), within(1e-7 * there.getTime()));
                    assertThat(
                                    SpoolDown.speedRadps(
                                            time,
                                            r.startRadps(),
                                            r.inertia(),
                                            r.drag(),
                                            r.shorted(),
                                            r.still()))
                            .isCloseTo(share * r.startRadps(), within(1e-8 * r.startRadps()));
                });
    }

    @Test
    void thePushStillToComeIsTheIntegralOfThrust() {
        Seeded.check(
                100,
                random -> {
                    Rotor r = Rotor.random(random);
                    double thrust = random.nextDouble(5, 200);
                    // Down to a thousandth: with blades alone the rest is a thousandth of F₀ τ.
                    double[] end =
                            Marched.until(
                                            s -> s[0] - 1e-3 * r.startRadps(),
                                            5000,
                                            new double[] {r.startRadps(), 0},
                                            r::slope)
                                    .getPrimaryState();
                    double impulse = thrust / (r.startRadps() * r.startRadps()) * end[1];
                    double told =
                            SpoolDown.impulseNs(
                                    thrust,
                                    r.startRadps(),
                                    r.inertia(),
                                    r.drag(),
                                    r.shorted(),
                                    r.still());
                    double rest =
                            thrust
                                    * 1e-3
                                    * SpoolDown.timeConstantS(
                                            r.inertia(), r.drag(), r.startRadps());
                    assertThat(told).isBetween(impulse * (1 - 1e-6), impulse * (1 + 1e-6) + rest);
                });
    }

    /** Blades alone: half the speed after τ, F₀ τ to come, no end. */
    @Test
    void bladesAlone() {
        double tau = SpoolDown.timeConstantS(4e-5, 1e-7, 2000);
        assertThat(tau).isCloseTo(0.2, within(1e-12));
        assertThat(SpoolDown.speedRadps(tau, 2000, 4e-5, 1e-7, 0, 0)).isCloseTo(1000, within(1e-9));
        assertThat(SpoolDown.timeS(2000, 1000, 4e-5, 1e-7, 0, 0)).isCloseTo(tau, within(1e-12));
        assertThat(SpoolDown.impulseNs(50, 2000, 4e-5, 1e-7, 0, 0)).isCloseTo(10, within(1e-9));
        assertThat(SpoolDown.timeS(2000, 0, 4e-5, 1e-7, 0, 0)).isInfinite();
        assertThat(SpoolDown.timeS(2000, 0, 4e-5, 1e-7, 1e-4, 0)).isInfinite();
    }

    /** With still torque it stands after a finite time, and then stays. */
    @Test
    void stillTorqueStopsIt() {
        double stop = SpoolDown.timeS(2000, 0, 4e-5, 1e-7, 0, 0.02);
        // J/√(κ c) atan(Ω₀ √(κ/c))
        double expected = 4e-5 / Math.sqrt(1e-7 * 0.02) * Math.atan(2000 * Math.sqrt(5e-6));
        assertThat(stop).isCloseTo(expected, within(1e-9));
        assertThat(SpoolDown.speedRadps(stop * 1.001, 2000, 4e-5, 1e-7, 0, 0.02)).isZero();
        assertThat(SpoolDown.speedRadps(stop * 0.999, 2000, 4e-5, 1e-7, 0, 0.02)).isPositive();
    }

    /** A bearing that hardly brakes still ends it: F₀/Ω₀² (J/κ) (Ω₀ − √(c/κ) atan(Ω₀ √(κ/c))). */
    @Test
    void aGoodBearingTakesALittleOfThePush() {
        double root = Math.sqrt(5e-5 / 1e-7);
        double expected = 50 / 4e6 * 1e-4 / 1e-7 * (2000 - root * Math.atan(2000 / root));
        assertThat(SpoolDown.impulseNs(50, 2000, 1e-4, 1e-7, 0, 5e-5))
                .isCloseTo(expected, within(1e-9));
    }

    /** Where b² = 4 κ c: −1/(a (Ω + √(c/a))) is straight in time. */
    @Test
    void theCaseBetweenBothForms() {
        double j = 1e-4;
        double drag = 1e-7;
        double still = 0.01;
        double shorted = 2 * Math.sqrt(drag * still);
        double root = Math.sqrt(still / drag);
        double t = j / drag * (1 / (500 + root) - 1 / (2000 + root));
        assertThat(SpoolDown.timeS(2000, 500, j, drag, shorted, still))
                .isCloseTo(t, within(1e-9 * t));
        assertThat(SpoolDown.speedRadps(t, 2000, j, drag, shorted, still))
                .isCloseTo(500, within(1e-6));
    }

    /** K_t = 0.01 N·m/A, 20 mΩ. */
    @Test
    void aShortedWindingBrakes() {
        assertThat(SpoolDown.shortedNms(0.01, 0.02)).isCloseTo(0.005, within(1e-15));
        assertThat(SpoolDown.timeS(2000, 600, 4e-5, 1e-7, 0.005, 0))
                .isLessThan(SpoolDown.timeS(2000, 600, 4e-5, 1e-7, 0, 0));
    }

    @Test
    void brakesThatDriveAreRefused() {
        double[][] wrong = {{0, 1, 0, 0}, {1, 0, 0, 0}, {1, 1, -1, 0}, {1, 1, 0, -1}};
        for (double[] w : wrong) {
            assertThatThrownBy(() -> SpoolDown.timeS(10, 1, w[0], w[1], w[2], w[3]))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> SpoolDown.impulseNs(5, 10, w[0], w[1], w[2], w[3]))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }
}
