package liftwright.flight.pilot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import liftwright.flight.pilot.HoverMotion.Axis;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.junit.jupiter.api.Test;

/** Motions in hover against the cubic of a textbook and a library's eigenvalues of another form. */
class HoverMotionTest {

    private static final double G = 9.80665;

    /**
     * One intake at the height h over the centre: u' = −d u + d h q − g θ … whose roots are those
     * of a cubic without its linear term, worked out here by hand.
     */
    @Test
    void oneIntakeAboveTheCentreGivesTheCubicOfTheHover() {
        Seeded.check(
                200,
                random -> {
                    double m = 5 + 100 * random.nextDouble();
                    double i = 0.1 + 20 * random.nextDouble();
                    double flow = 0.5 + 15 * random.nextDouble();
                    double h = random.nextDouble() - 0.5; // above where it is > 0
                    var motion =
                            new HoverMotion(
                                    m,
                                    new Inertia(i, i, i, 0, 0, 0),
                                    Vec3.ZERO,
                                    List.of(new HoverMotion.Intake(new Vec3(0, 0, -h), flow)));
                    // u' = −(ṁ/m)(u − h q) − gθ, q' = (ṁ h/I)(u − h q):
                    // s³ + (ṁ/m + ṁh²/I) s² + ṁ h g / I = 0
                    double two = flow / m + flow * h * h / i;
                    double zero = flow * h * G / i;
                    for (Axis axis : new Axis[] {Axis.PITCH, Axis.ROLL}) {
                        for (Mode mode : motion.modes(axis)) {
                            Complex s = new Complex(mode.growthPerS(), mode.turningRadps());
                            Complex value =
                                    s.multiply(s)
                                            .multiply(s)
                                            .add(s.multiply(s).multiply(two))
                                            .add(zero);
                            double size =
                                    Math.pow(s.norm(), 3)
                                            + two * s.norm() * s.norm()
                                            + Math.abs(zero);
                            assertThat(value.norm()).isLessThan(1e-9 * (size + 1e-3));
                        }
                        assertThat(motion.modes(axis).getFirst().grows())
                                .as("without damping beside the air's, every hover swings up")
                                .isTrue();
                        assertThat(motion.modes(axis).getFirst().swings()).isEqualTo(h > 0);
                    }
                });
    }

    @Test
    void aLibrarySaysTheSameOfAnyFansAndInertia() {
        Seeded.check(
                300,
                random -> {
                    double m = 5 + 100 * random.nextDouble();
                    Inertia inertia =
                            new Inertia(
                                    2 + 9 * random.nextDouble(),
                                    2 + 9 * random.nextDouble(),
                                    2 + 9 * random.nextDouble(),
                                    random.nextDouble() - 0.5,
                                    random.nextDouble() - 0.5,
                                    random.nextDouble() - 0.5);
                    Vec3 spin =
                            new Vec3(
                                    random.nextDouble() - 0.5,
                                    random.nextDouble() - 0.5,
                                    random.nextDouble() - 0.5);
                    List<HoverMotion.Intake> intakes = new ArrayList<>();
                    for (int k = 0; k < 1 + random.nextInt(12); k++) {
                        intakes.add(
                                new HoverMotion.Intake(
                                        new Vec3(
                                                random.nextDouble() - 0.5,
                                                random.nextDouble() - 0.5,
                                                random.nextDouble() - 0.5),
                                        2 * random.nextDouble()));
                    }
                    var motion = new HoverMotion(m, inertia, spin, intakes);
                    List<Complex> library = library(m, inertia, spin, intakes);
                    List<Mode> ours = motion.modes();
                    assertThat(ours).hasSize(library.size());
                    for (Complex one : library) {
                        assertThat(ours)
                                .anySatisfy(
                                        mode ->
                                                assertThat(
                                                                Math.hypot(
                                                                        mode.growthPerS()
                                                                                - one.getReal(),
                                                                        mode.turningRadps()
                                                                                - one
                                                                                        .getImaginary()))
                                                        .isLessThan(1e-6));
                    }
                });
    }

    /**
     * The equations of motion as vectors, each column by a small push, eigenvalues by a library.
     */
    private static List<Complex> library(
            double m, Inertia i, Vec3 spin, List<HoverMotion.Intake> intakes) {
        double[][] a = new double[8][8];
        var tensor =
                new Array2DRowRealMatrix(
                        new double[][] {
                            {i.xx(), i.xy(), i.xz()},
                            {i.xy(), i.yy(), i.yz()},
                            {i.xz(), i.yz(), i.zz()}
                        });
        var inverse = new org.hipparchus.linear.LUDecomposition(tensor).getSolver().getInverse();
        for (int j = 0; j < 8; j++) {
            double[] x = new double[8];
            x[j] = 1;
            Vec3 v = new Vec3(x[0], x[1], x[2]);
            Vec3 w = new Vec3(x[3], x[4], x[5]);
            Vec3 force = new Vec3(-m * G * x[7], m * G * x[6], 0);
            Vec3 moment = w.cross(spin).times(-1);
            for (var intake : intakes) {
                Vec3 drag = v.plus(w.cross(intake.at())).times(-intake.flowKgps());
                force = force.plus(drag);
                moment = moment.plus(intake.at().cross(drag));
            }
            double[] turn = inverse.operate(new double[] {moment.x(), moment.y(), moment.z()});
            double[] rate = {
                force.x() / m, force.y() / m, force.z() / m, turn[0], turn[1], turn[2], x[3], x[4]
            };
            for (int k = 0; k < 8; k++) {
                a[k][j] = rate[k];
            }
        }
        List<Complex> upper = new ArrayList<>();
        for (Complex one :
                new EigenDecompositionNonSymmetric(new Array2DRowRealMatrix(a)).getEigenvalues()) {
            if (one.getImaginary() >= -1e-6) {
                upper.add(one);
            }
        }
        upper.sort(Comparator.comparingDouble(Complex::getReal));
        return upper;
    }

    @Test
    void aModeTellsItsTimes() {
        Mode swing = new Mode(0.3, 2);
        assertThat(swing.doublesInS()).isCloseTo(Math.log(2) / 0.3, within(1e-12));
        assertThat(swing.periodS()).isCloseTo(Math.PI, within(1e-12));
        assertThat(swing.damping()).isCloseTo(-0.3 / Math.hypot(0.3, 2), within(1e-12));
        assertThat(new Mode(-0.5, 0).halvesInS()).isCloseTo(1.3863, within(1e-4));
        assertThat(new Mode(-0.5, 0).doublesInS()).isInfinite();
        assertThat(new Mode(0, 0).grows()).isFalse();
    }
}
