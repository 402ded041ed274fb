package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import liftwright.plant.body.MassProperties;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Rig;
import liftwright.rig.Wearer;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Readings of scales and swings of a body whose values are known give that body back. */
class MeasuredBodyTest {

    private static final double G = 9.80665;

    private static Wearer.Arm arm(double flexion) {
        return new Wearer.Arm(
                RigSketch.si(flexion), RigSketch.si(0), RigSketch.si(0), RigSketch.si(0));
    }

    private static Rig rig(
            double massKg, double statureM, double flexion, Wearer.Measured measured) {
        RigSketch sketch = new RigSketch();
        sketch.wearer =
                Optional.of(
                        new Wearer(
                                RigSketch.si(massKg),
                                RigSketch.si(statureM),
                                Wearer.Body.FEMALE,
                                arm(flexion),
                                arm(flexion),
                                RigSketch.si(0),
                                measured));
        return sketch.rig();
    }

    private static MassProperties mass(Rig rig) {
        return Plant.assemble(rig).mass();
    }

    private static Quantity si(double value) {
        return RigSketch.si(value);
    }

    private static Quantity about(double value, double half) {
        return new Quantity(
                value,
                Dimension.NONE,
                new Tolerance(half, half, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED));
    }

    @Test
    void readingsGiveTheBodyBack() {
        Seeded.check(
                100,
                random -> {
                    double m = random.nextDouble(45, 100);
                    double h = random.nextDouble(1.5, 1.95);
                    // The body that is: centre moved along it, inertias of its own.
                    double movedM = random.nextDouble(-0.04, 0.04);
                    double level =
                            mass(rig(m, h, Math.PI / 2, Wearer.Measured.NOTHING)).centre().z()
                                    + movedM;
                    MassProperties stacked = mass(rig(m, h, 0, Wearer.Measured.NOTHING));
                    double standing = stacked.centre().z() + movedM;
                    double roll = stacked.inertia().xx() * random.nextDouble(0.9, 1.2);
                    double pitch = stacked.inertia().yy() * random.nextDouble(0.9, 1.2);
                    double yaw = stacked.inertia().zz() * random.nextDouble(0.95, 1.4);
                    // What scales and stopwatch then read.
                    double hands = random.nextDouble(-0.05, 0.1);
                    double apart = 1.4;
                    double feet = m * (level - hands) / apart;
                    double bar = random.nextDouble(0.1, 0.8);
                    double d = standing + bar;
                    double rollS = 2 * Math.PI * Math.sqrt((roll + m * d * d) / (m * G * d));
                    double pitchS = 2 * Math.PI * Math.sqrt((pitch + m * d * d) / (m * G * d));
                    double platformKg = 3;
                    double platform = 0.15;
                    double yawS =
                            4
                                    * Math.PI
                                    / 0.6
                                    * Math.sqrt((yaw + platform) * 2.4 / ((m + platformKg) * G));
                    Wearer.Measured measured =
                            new Wearer.Measured(
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.of(
                                            new Wearer.Scales(
                                                    si(feet), si(m - feet), si(apart), si(hands))),
                                    Optional.of(new Wearer.PivotSwing(si(bar), si(30 * rollS), 30)),
                                    Optional.of(
                                            new Wearer.PivotSwing(si(bar), si(20 * pitchS), 20)),
                                    Optional.of(
                                            new Wearer.CordSwing(
                                                    si(2.4),
                                                    si(0.6),
                                                    si(25 * yawS),
                                                    25,
                                                    si(platformKg),
                                                    si(platform))));
                    MassProperties found = mass(rig(m, h, 0, measured));
                    assertThat(found.massKg()).isCloseTo(m, within(1e-9));
                    assertThat(found.centre().z()).isCloseTo(standing, within(1e-9));
                    assertThat(found.inertia().xx()).isCloseTo(roll, within(1e-8));
                    assertThat(found.inertia().yy()).isCloseTo(pitch, within(1e-8));
                    assertThat(found.inertia().zz()).isCloseTo(yaw, within(1e-8));
                    assertThat(mass(rig(m, h, Math.PI / 2, measured)).centre().z())
                            .isCloseTo(level, within(1e-9));
                });
    }

    /** What is said directly holds for hanging arms and goes along into another posture. */
    @Test
    void saidInertiasGoAlongIntoThePosture() {
        Wearer.Measured measured =
                new Wearer.Measured(
                        Optional.of(si(14)),
                        Optional.empty(),
                        Optional.of(si(1.6)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        MassProperties hanging = mass(rig(70, 1.75, 0, measured));
        assertThat(hanging.inertia().xx()).isCloseTo(14, within(1e-12));
        assertThat(hanging.inertia().zz()).isCloseTo(1.6, within(1e-12));
        MassProperties stacked = mass(rig(70, 1.75, 0, Wearer.Measured.NOTHING));
        assertThat(hanging.inertia().yy()).isCloseTo(stacked.inertia().yy(), within(1e-12));
        double more = 1.6 - stacked.inertia().zz();
        MassProperties raised = mass(rig(70, 1.75, 1, measured));
        MassProperties raisedStack = mass(rig(70, 1.75, 1, Wearer.Measured.NOTHING));
        assertThat(raised.inertia().zz() - raisedStack.inertia().zz())
                .isCloseTo(more, within(1e-12));
    }

    /**
     * The ± that stopwatch and tape allow, to first order (JCGM 100, 5.1.2): the squares of m, D
     * twice, T twice and L add up.
     */
    @Test
    void theDoubtOfASwingIsThatOfItsReadings() {
        Wearer.Measured measured =
                new Wearer.Measured(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(
                                new Wearer.CordSwing(
                                        about(2.4, 0.012),
                                        about(0.6, 0.003),
                                        about(78, 0.3),
                                        30,
                                        si(0),
                                        si(0))));
        Balancing balancing = Balancing.of(rig(70, 1.75, 0, measured));
        double[] p = new double[balancing.parameters().size()];
        int draws = 4000;
        double sum = 0;
        double squares = 0;
        for (int draw = 0; draw < draws; draw++) {
            balancing.parameters().draw(5, draw, p);
            double yaw = balancing.standingWearer(p).orElseThrow().inertia().zz();
            sum += yaw;
            squares += yaw * yaw;
        }
        double mean = sum / draws;
        double twoSigma = 2 * Math.sqrt(squares / draws - mean * mean) / mean;
        double expected =
                Math.sqrt(
                        Math.pow(0.012 / 2.4, 2)
                                + Math.pow(2 * 0.003 / 0.6, 2)
                                + Math.pow(2 * 0.3 / 78, 2));
        assertThat(twoSigma).isCloseTo(expected, within(0.05 * expected));
    }

    @Test
    void aSwingTooQuickForItsBarIsRefused() {
        Wearer.Measured measured =
                new Wearer.Measured(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Wearer.PivotSwing(si(0.5), si(30), 30)),
                        Optional.empty(),
                        Optional.empty());
        Rig rig = rig(70, 1.75, 0, measured);
        assertThatThrownBy(() -> mass(rig))
                .isInstanceOf(ImpossibleValueException.class)
                .hasMessageContaining("roll inertia");
    }
}
