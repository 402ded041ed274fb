package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Swings against motions integrated in small steps, and plain bodies whose inertia is known. */
class SwingTest {

    private static final double G = 9.80665;

    /** Time of a whole swing from rest at a small angle, by steps until the angle passes zero. */
    private interface Pull {
        double accelerationRadps2(double angleRad);
    }

    private static double integratedS(Pull pull) {
        double h = 2e-4;
        double angle = 1e-3;
        double rate = 0;
        double time = 0;
        while (true) {
            // Classical fourth-order rule for angle'' = pull(angle).
            double k1 = pull.accelerationRadps2(angle);
            double k2 = pull.accelerationRadps2(angle + h / 2 * rate + h * h / 8 * k1);
            double k3 = pull.accelerationRadps2(angle + h * rate + h * h / 2 * k2);
            double next = angle + h * rate + h * h / 6 * (k1 + 2 * k2);
            rate += h / 6 * (k1 + 4 * k2 + k3);
            if (next <= 0) {
                return 4 * (time + h * angle / (angle - next));
            }
            angle = next;
            time += h;
        }
    }

    @Test
    void aSwungBodyGivesItsInertia() {
        Seeded.check(
                30,
                random -> {
                    double m = random.nextDouble(40, 120);
                    double inertia = random.nextDouble(0.5, 20);
                    double d = random.nextDouble(0.2, 2);
                    double swing =
                            integratedS(
                                    angle -> -m * G * d * Math.sin(angle) / (inertia + m * d * d));
                    assertThat(Swing.pendulumKgm2(m, d, swing))
                            .isCloseTo(inertia, within(1e-4 * (inertia + m * d * d)));
                    assertThat(Swing.pendulumSwingS(m, d, inertia))
                            .isCloseTo(swing, within(1e-5 * swing));
                });
    }

    /** Cords that lean by r θ/L pull back with m g r/L each way round. */
    @Test
    void aTwistedBodyOnTwoCordsGivesItsInertia() {
        Seeded.check(
                30,
                random -> {
                    double m = random.nextDouble(40, 120);
                    double inertia = random.nextDouble(0.5, 20);
                    double cord = random.nextDouble(1, 4);
                    double apart = random.nextDouble(0.3, 1.5);
                    double swing =
                            integratedS(
                                    angle -> {
                                        double chord = apart * Math.sin(angle / 2);
                                        double height = Math.sqrt(cord * cord - chord * chord);
                                        // −dV/dθ of V = −m g height, over the inertia.
                                        return -m
                                                * G
                                                * apart
                                                * apart
                                                * Math.sin(angle)
                                                / (4 * height * inertia);
                                    });
                    assertThat(Swing.twoCordsKgm2(m, cord, apart, swing))
                            .isCloseTo(inertia, within(1e-4 * inertia));
                    assertThat(Swing.twoCordsSwingS(m, cord, apart, inertia))
                            .isCloseTo(swing, within(1e-5 * swing));
                });
    }

    /** A rod of 1.2 m hung at its end swings like a cord of 0.8 m; its inertia is m l²/12. */
    @Test
    void aRodHungAtItsEnd() {
        double swing = 2 * Math.PI * Math.sqrt(0.8 / G);
        assertThat(Swing.pendulumKgm2(3, 0.6, swing)).isCloseTo(3 * 1.44 / 12, within(1e-12));
    }

    @Test
    void aPlankOnTwoScalesBalancesWhereTheLoadsSay() {
        assertThat(Swing.betweenScalesM(30, 10, 2)).isCloseTo(0.5, within(1e-15));
    }

    /**
     * (2/π) K(sin θ/2), from tables of elliptic integrals; the small swing of 1 m is 2.006409 s.
     */
    @Test
    void largeSwingsTakeLonger() {
        double[] degrees = {0, 10, 30, 60, 90, 120, 150, 170};
        double[] longer = {1, 1.001907, 1.017409, 1.073182, 1.180341, 1.372881, 1.762204, 2.439363};
        for (int k = 0; k < degrees.length; k++) {
            assertThat(Swing.largeSwing(Math.toRadians(degrees[k])))
                    .isCloseTo(longer[k], within(5.1e-7));
        }
        assertThat(Swing.pendulumSwingS(1, 1, 0)).isCloseTo(2.006409, within(5e-7));
    }
}
