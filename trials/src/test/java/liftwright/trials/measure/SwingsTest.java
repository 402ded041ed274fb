package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import liftwright.trials.CardKind;
import liftwright.trials.Reading;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** Times of swings, against a body on two cords whose motion is integrated. */
class SwingsTest {

    /**
     * A quarter of a swing of a body that hangs from two cords and is let go turned by a small
     * angle: it rises as it turns, h = L − √(L² − D²/2 (1 − cos φ)), and Lagrange gives (I + m h'²)
     * φ̈ + m h' h'' φ̇² + m g h' = 0.
     */
    private static double periodS(double kg, double kgm2, double cords, double apart) {
        double g = 9.80665;
        var equation =
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return 2;
                    }

                    @Override
                    public double[] computeDerivatives(double t, double[] y) {
                        double half = apart * apart / 2;
                        double root = Math.sqrt(cords * cords - half * (1 - Math.cos(y[0])));
                        double slope = half * Math.sin(y[0]) / (2 * root);
                        double bend = half * Math.cos(y[0]) / (2 * root) + slope * slope / root;
                        double turn =
                                -(kg * slope * bend * y[1] * y[1] + kg * g * slope)
                                        / (kgm2 + kg * slope * slope);
                        return new double[] {y[1], turn};
                    }
                };
        double guess = 4 * Math.PI / apart * Math.sqrt(kgm2 * cords / (kg * g));
        // The angle just before and just after a quarter of a swing: straight between.
        double early = 0.9 * guess / 4;
        double late = 1.1 * guess / 4;
        for (int round = 0; round < 40; round++) {
            double middle = (early + late) / 2;
            if (angle(equation, middle) > 0) {
                early = middle;
            } else {
                late = middle;
            }
        }
        return 2 * (early + late);
    }

    private static double angle(OrdinaryDifferentialEquation equation, double untilS) {
        var integrator = new DormandPrince853Integrator(1e-12, untilS, 1e-13, 1e-12);
        return integrator.integrate(equation, new ODEState(0, new double[] {1e-4, 0}), untilS)
                .getPrimaryState()[0];
    }

    @Test
    void timesAreThoseOfABodyTurnedByTwoCords() {
        int[] integrated = {0};
        Seeded.check(
                120,
                random -> {
                    Rig rig = Made.anyRig(random);
                    Measured card = Made.card(rig, CardKind.INERTIA);
                    Map<String, Reading> read = Made.readings(card);
                    Map<String, List<MassAndCentreTest.Part>> bodies =
                            MassAndCentreTest.bodies(rig);
                    Section.Table cords = Made.table(card, "inertia-cords");
                    assertThat(cords.rows()).hasSize(read.size());
                    int k = 0;
                    for (Map.Entry<String, Reading> one : read.entrySet()) {
                        List<Value> row = cords.rows().get(k++);
                        String what = ((Value.Figure.Words) row.get(0).figure()).text();
                        String body = what.substring(0, what.lastIndexOf(','));
                        int axis =
                                List.of("roll", "pitch", "yaw")
                                        .indexOf(what.substring(what.lastIndexOf(' ') + 1));
                        double kg =
                                Objects.requireNonNull(bodies.get(body)).stream()
                                        .mapToDouble(part -> part.kg())
                                        .sum();
                        double inertia = about(Objects.requireNonNull(bodies.get(body)), axis);
                        assertThat(Made.amount(row.get(1)))
                                .isCloseTo(inertia, within(1e-9 * inertia));
                        double apart = Made.amount(row.get(3));
                        double time = one.getValue().expectedSi();
                        double closed =
                                20 * 4 * Math.PI / apart * Math.sqrt(inertia * 2 / (kg * 9.80665));
                        assertThat(time).isCloseTo(closed, within(1e-9 * closed));
                        if (integrated[0]++ % 20 == 0) {
                            assertThat(time)
                                    .isCloseTo(
                                            20 * periodS(kg, inertia, 2, apart),
                                            within(1e-6 * time));
                        }
                        // What the last column says: inertia for a time of one second.
                        assertThat(Made.amount(row.get(5)) * time * time)
                                .isCloseTo(inertia, within(1e-9 * inertia));
                    }
                });
        assertThat(integrated[0]).isGreaterThan(300);
    }

    /** Σ m r² about an axis through the centre, with r² from the vector product. */
    private static double about(List<MassAndCentreTest.Part> parts, int axis) {
        Vec3 n = List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1)).get(axis);
        double kg = parts.stream().mapToDouble(part -> part.kg()).sum();
        Vec3 centre = Vec3.ZERO;
        for (var part : parts) {
            centre = centre.plus(part.at().times(part.kg() / kg));
        }
        double sum = 0;
        for (var part : parts) {
            double far = part.at().minus(centre).cross(n).length();
            sum += part.kg() * far * far + part.ownAbout()[axis];
        }
        return sum;
    }

    @Test
    void theInertiaIsWorthWhatRepeatedTimingsShow() {
        Seeded.check(
                25,
                random -> {
                    double kg = 2 + 50 * random.nextDouble();
                    double apart = 0.15 + 0.6 * random.nextDouble();
                    double inertia = kg * apart * apart / 4 * (0.7 + 0.6 * random.nextDouble());
                    double time =
                            20 * 4 * Math.PI / apart * Math.sqrt(inertia * 2 / (kg * 9.80665));
                    var own = new SplittableRandom(random.nextLong());
                    double[] found = new double[40_000];
                    for (int k = 0; k < found.length; k++) {
                        double t = (time + own.nextGaussian() * 0.15) / 20;
                        double d = apart + own.nextGaussian() * 0.001;
                        double l = 2 + own.nextGaussian() * 0.0025;
                        double m = kg + own.nextGaussian() * Math.hypot(0.05, 0.003 * kg) / 2;
                        found[k] =
                                m
                                        * 9.80665
                                        * d
                                        * d
                                        * t
                                        * t
                                        / (16 * Math.PI * Math.PI * l)
                                        / inertia;
                    }
                    Arrays.sort(found);
                    double half = (found[38_999] - found[999]) / 2;
                    assertThat(InertiaCard.worthShare(time, apart, kg) * 1.96 / 2)
                            .isCloseTo(half, within(0.04 * half));
                });
    }
}
