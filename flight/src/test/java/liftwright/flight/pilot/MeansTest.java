package liftwright.flight.pilot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import liftwright.flight.pilot.HoverMotion.Axis;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What leaning does, against two bodies in a plane that are stepped by their momenta. */
class MeansTest {

    private static final double G = 9.80665;

    /**
     * A frame with a joint at a height h above its own centre (below where h &lt; 0) and a rod of
     * mass m with its centre at l below the joint (above where l &lt; 0).
     */
    private record Pair(
            double frameKg, double frameKgm2, double rodKg, double rodKgm2, double h, double l) {

        double whole() {
            return frameKg + rodKg;
        }

        /** Down, from the frame's centre, with the rod straight. */
        double centre() {
            return rodKg * (l - h) / whole();
        }

        Means means() {
            double rodAt = l - h;
            double c = centre();
            double inertia =
                    frameKgm2 + frameKg * c * c + rodKgm2 + rodKg * (rodAt - c) * (rodAt - c);
            return BodyMeans.of(
                    "rod",
                    Axis.PITCH,
                    List.of(
                            new BodyMeans.Moved(
                                    rodKg,
                                    new Vec3(0, 0, rodAt),
                                    new Vec3(0, 1, 0).cross(new Vec3(0, 0, l)),
                                    rodKgm2)),
                    new Vec3(0, 0, -whole() * G),
                    whole(),
                    new Vec3(0, 0, c),
                    new Inertia(1, inertia, 1, 0, 0, 0),
                    0.3);
        }

        /**
         * Turn of the frame while the rod turns as φ(t), by what the thrust, fixed to the frame,
         * does to the angular momentum about the common centre. Angular momentum comes from
         * differences of places.
         */
        double[] turned(double[] phi, double dt) {
            double[] theta = new double[phi.length];
            double momentum = 0;
            double rate = 0;
            for (int k = 1; k < phi.length; k++) {
                // moment of the thrust W along the frame's axis through its centre, about c
                double side = sideways(phi[k - 1]);
                momentum += dt * whole() * G * -side;
                double now = momentumAtRest(phi[k], (phi[k] - phi[k - 1]) / dt);
                rate = (momentum - now) / inertia(phi[k]);
                theta[k] = theta[k - 1] + dt * rate;
            }
            return theta;
        }

        /** How far forward of the frame's axis the common centre is. */
        double sideways(double phi) {
            return rodKg * l * Math.sin(phi) / whole();
        }

        double inertia(double phi) {
            double x = sideways(phi);
            double rx = l * Math.sin(phi);
            double rz = -h + l * Math.cos(phi);
            double cz = rodKg * rz / whole();
            return frameKgm2
                    + rodKgm2
                    + frameKg * (x * x + cz * cz)
                    + rodKg * ((rx - x) * (rx - x) + (rz - cz) * (rz - cz));
        }

        /** Angular momentum about the common centre while the frame does not turn. */
        double momentumAtRest(double phi, double phiRate) {
            double step = 1e-6;
            double rx = l * Math.sin(phi);
            double rz = -h + l * Math.cos(phi);
            double vx = l * (Math.sin(phi + step) - Math.sin(phi - step)) / (2 * step) * phiRate;
            double vz = l * (Math.cos(phi + step) - Math.cos(phi - step)) / (2 * step) * phiRate;
            double cx = rodKg * rx / whole();
            double cz = rodKg * rz / whole();
            double cvx = rodKg * vx / whole();
            double cvz = rodKg * vz / whole();
            // y component of r × v is z vx − x vz
            return rodKgm2 * phiRate
                    + rodKg * ((rz - cz) * (vx - cvx) - (rx - cx) * (vz - cvz))
                    + frameKg * (-cz * -cvx - -cx * -cvz);
        }
    }

    private static Pair random(java.util.random.RandomGenerator random, boolean below) {
        double sign = below ? 1 : -1;
        return new Pair(
                20 + 60 * random.nextDouble(),
                1 + 8 * random.nextDouble(),
                5 + 30 * random.nextDouble(),
                0.2 + 2 * random.nextDouble(),
                -sign * (0.05 + 0.5 * random.nextDouble()),
                sign * (0.1 + 0.5 * random.nextDouble()));
    }

    @Test
    void theFrameTurnsAsTheTwoBodiesDo() {
        Seeded.check(
                100,
                random -> {
                    Pair pair = random(random, random.nextBoolean());
                    Means means = pair.means();
                    double dt = 2e-5;
                    int n = 40_000;
                    double size = 1e-3;
                    double[] phi = new double[n];
                    for (int k = 0; k < n; k++) {
                        double x = Math.min(1, k * dt / 0.2);
                        phi[k] = size * x * x * (3 - 2 * x);
                    }
                    double[] theta = pair.turned(phi, dt);
                    double twice = 0;
                    double once = 0;
                    double worst = 0;
                    double most = 0;
                    for (int k = 1; k < n; k++) {
                        once += dt * phi[k - 1];
                        twice += dt * once;
                        double ours =
                                (means.momentNm() * twice - means.reactionKgm2() * phi[k])
                                        / means.inertiaKgm2();
                        worst = Math.max(worst, Math.abs(ours - theta[k]));
                        most = Math.max(most, Math.abs(theta[k]));
                    }
                    assertThat(worst / most).isLessThan(2e-3);
                });
    }

    @Test
    void whatIsMovedAboveItsJointTurnsTheRigTheWrongWayFirst() {
        Seeded.check(
                200,
                random -> {
                    Means above = random(random, false).means();
                    assertThat(above.isInverse()).as("a trunk over the hips").isTrue();
                    // M t²/2 = J: back at nought
                    double t = above.wrongForS();
                    assertThat(above.momentNm() * t * t / 2)
                            .isCloseTo(above.reactionKgm2(), within(1e-9));
                    Means below = random(random, true).means();
                    assertThat(below.isInverse()).as("legs under the hips").isFalse();
                    assertThat(below.wrongShare()).isZero();
                });
    }

    @Test
    void theBestMeansIsThatWhichLeavesMostPhase() {
        Means slow = new Means("slow", 10, 40, 0.3, 12);
        Means right = new Means("right", -300, 4, 0.3, 12);
        Steered.AboutAxis axis = Steered.about(Axis.PITCH, List.of(), List.of(slow, right));
        assertThat(axis.best()).contains(right);
        assertThat(axis.holds()).isEqualTo(Person.Holds.EASILY);
        assertThat(Steered.about(Axis.PITCH, List.of(), List.of(slow)).holds())
                .isEqualTo(Person.Holds.NOT);
        assertThat(Steered.about(Axis.YAW, List.of(), List.of()).best())
                .isEqualTo(Optional.empty());
        assertThat(Steered.about(Axis.YAW, List.of(), List.of()).holds())
                .isEqualTo(Person.Holds.NOT);
        assertThat(axis.toPublishedRateS())
                .isCloseTo(Math.toRadians(13) / (300 * 0.3 / 12), within(1e-12));
    }
}
