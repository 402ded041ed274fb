package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.util.List;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;

/**
 * A free body against closed forms (Euler's equations, elliptic integrals and falls, as in any text
 * on mechanics; values recomputed).
 */
class RigidBodyTest {

    private static final double DT = 0.001;

    private static Motion motion(Airframe body) {
        return new Motion(body, Air.still());
    }

    private static void run(Motion motion, BodyState state, double forS) {
        FanLoads none = new FanLoads(0);
        int steps = Math.toIntExact(Math.round(forS / DT));
        for (int k = 0; k < steps; k++) {
            motion.step(DT, none, state);
        }
    }

    private static BodyState spinning(double x, double y, double z) {
        BodyState state = new BodyState();
        state.y[BodyState.WX] = x;
        state.y[BodyState.WY] = y;
        state.y[BodyState.WZ] = z;
        return state;
    }

    @Test
    void aSymmetricTopPrecessesInTheBodyAtTheRateOfEuler() {
        Motion motion = motion(Bodies.rigid(1, 2, 2, 3));
        BodyState state = spinning(0.1, 0, 10);
        motion.begin(state);
        run(motion, state, 2);
        // (I3 − I1) ω3 / I1 = 5 rad/s
        assertThat(state.y[BodyState.WX]).isCloseTo(0.1 * Math.cos(10), within(1e-9));
        assertThat(state.y[BodyState.WY]).isCloseTo(0.1 * Math.sin(10), within(1e-9));
        assertThat(state.y[BodyState.WZ]).isCloseTo(10, within(1e-12));
    }

    @Test
    void theMiddleAxisGrowsAtFirstAsTheLinearLawSays() {
        Motion motion = motion(Bodies.rigid(1, 1, 2, 3));
        double small = 1e-8;
        double rate = Math.sqrt((3.0 - 2) * (2 - 1) / (1 * 3));
        // Along the growing direction: dω1/dt = (I2 − I3)/I1 ω2 ω3.
        BodyState state = spinning(small, 1, -small * rate);
        motion.begin(state);
        run(motion, state, 1.2006);
        assertThat(rate).isCloseTo(0.577350, within(1e-6));
        assertThat(state.y[BodyState.WX] / small).isCloseTo(2, within(1e-3));
    }

    @Test
    void theMiddleAxisFlipsWhenEllipticFunctionsSayAndKeepsItsInvariants() {
        Motion motion = motion(Bodies.rigid(1, 1, 2, 3));
        BodyState state = spinning(0.01, 1, 0.01);
        motion.begin(state);
        double[] zeros = new double[3];
        int found = 0;
        double before = 1;
        for (int k = 1; found < 3; k++) {
            run(motion, state, DT);
            double now = state.y[BodyState.WY];
            if (before * now < 0) {
                zeros[found++] = DT * (k - now / (now - before));
            }
            before = now;
        }
        assertThat(zeros[0]).isCloseTo(10.917, within(2e-3));
        assertThat(zeros[1] - zeros[0]).isCloseTo(19.5529, within(2e-3));
        assertThat(zeros[2] - zeros[1]).isCloseTo(19.5529, within(2e-3));
        run(motion, state, 50);
        double x = state.y[BodyState.WX];
        double y = state.y[BodyState.WY];
        double z = state.y[BodyState.WZ];
        assertThat(x * x + 2 * y * y + 3 * z * z).isCloseTo(2.0004, within(2e-9));
        assertThat(x * x + 4 * y * y + 9 * z * z).isCloseTo(4.0010, within(4e-9));
    }

    @Test
    void aFallWithDragFollowsTheHyperbolicTangent() {
        Airframe body =
                Bodies.with(
                        Bodies.rigid(100, 10, 10, 10),
                        List.of(),
                        List.of(),
                        List.of(),
                        new Airframe.Drag(new Vec3(0, 0, 0.7), Vec3.ZERO));
        Motion motion = motion(body);
        BodyState state = new BodyState();
        state.rest(0, 0, 100, 0);
        motion.begin(state);
        run(motion, state, 2);
        assertThat(state.y[BodyState.VZ]).isCloseTo(18.5830, within(5e-5));
        assertThat(100 - state.heightM()).isCloseTo(19.0870, within(5e-5));
        run(motion, state, 60);
        assertThat(state.y[BodyState.VZ]).isCloseTo(47.8254, within(5e-5));
    }

    @Test
    void aFallInNoAirEndsAtTheSpeedOfItsHeight() {
        // heights, m, and speeds, m/s: √(2 g h)
        double[][] table = {{0.3, 2.4257}, {1.8, 5.9417}, {10, 14.0047}};
        for (double[] row : table) {
            Motion motion = motion(Bodies.rigid(80, 5, 5, 5));
            BodyState state = new BodyState();
            state.rest(0, 0, row[0], 0);
            motion.begin(state);
            double before = row[0];
            double speed = 0;
            while (state.heightM() > 0) {
                before = state.heightM();
                speed = state.y[BodyState.VZ];
                run(motion, state, DT);
            }
            double share = before / (before - state.heightM());
            assertThat(speed + share * (state.y[BodyState.VZ] - speed))
                    .isCloseTo(row[1], within(1e-4));
        }
    }

    @Test
    void aRotorTurnsTheBodyAtRightAnglesToBoth() {
        // J 1e-4 kg·m² at 3000 rad/s on a body that turns at 1 rad/s: 0.300 N·m.
        Airframe.FanLine up = new Airframe.FanLine(Vec3.ZERO, Vec3.ZERO, new Vec3(0, 0, -1));
        double inertia = 1e6;
        Airframe body =
                Bodies.with(
                        Bodies.rigid(1, inertia, inertia, inertia),
                        List.of(up),
                        List.of(),
                        List.of(),
                        Airframe.Drag.NONE);
        Motion motion = motion(body);
        FanLoads loads = new FanLoads(1);
        loads.steady(0, 0, 0, 1e-4 * 3000, 0);
        BodyState state = spinning(1, 0, 0);
        motion.begin(state);
        motion.step(DT, loads, state);
        // −ω × H with H = (0, 0, −0.3): −(1, 0, 0) × (0, 0, −0.3) = (0, −0.3, 0).
        assertThat(state.y[BodyState.WY] / DT * inertia).isCloseTo(-0.300, within(1e-9));
        assertThat(state.y[BodyState.WZ] / DT * inertia).isCloseTo(0, within(1e-9));
        assertThat((state.y[BodyState.WX] - 1) / DT * inertia).isCloseTo(0, within(1e-6));
    }

    @Test
    void anAccelerometerFeelsForcesButNoWeight() {
        Airframe.FanLine up = new Airframe.FanLine(Vec3.ZERO, Vec3.ZERO, new Vec3(0, 0, -1));
        Airframe body =
                Bodies.with(
                        Bodies.rigid(10, 1, 1, 1),
                        List.of(up),
                        List.of(),
                        List.of(),
                        Airframe.Drag.NONE);
        Motion motion = motion(body);
        FanLoads loads = new FanLoads(1);
        BodyState state = new BodyState();
        motion.begin(state);
        double[] felt = new double[3];
        motion.step(DT, loads, state);
        motion.specificForceMps2(felt);
        assertThat(felt).containsExactly(new double[] {0, 0, 0}, within(1e-12));
        loads.steady(0, 150, 0, 0, 0);
        motion.step(DT, loads, state);
        motion.specificForceMps2(felt);
        assertThat(felt).containsExactly(new double[] {0, 0, -15}, within(1e-12));
    }

    @Test
    void headingAndTiltAreThoseOfTurnsAboutAxes() {
        BodyState state = new BodyState();
        state.rest(1, 2, 3, 0.7);
        assertThat(state.headingRad()).isCloseTo(0.7, within(1e-12));
        assertThat(state.tiltRad()).isCloseTo(0, within(1e-12));
        // then rolled to the right by 0.4 about the body's own forward axis
        double w = Math.cos(0.35) * Math.cos(0.2);
        state.y[BodyState.QW] = w;
        state.y[BodyState.QX] = Math.cos(0.35) * Math.sin(0.2);
        state.y[BodyState.QY] = Math.sin(0.35) * Math.sin(0.2);
        state.y[BodyState.QZ] = Math.sin(0.35) * Math.cos(0.2);
        assertThat(state.headingRad()).isCloseTo(0.7, within(1e-12));
        assertThat(state.tiltRad()).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void refusesMassesThatCannotBe() {
        Airframe body = Bodies.rigid(10, 1, 1, 1);
        Airframe.Loose heavy = new Airframe.Loose("all", 10, Vec3.ZERO, -1, Vec3.ZERO, Vec3.ZERO);
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                motion(
                                        Bodies.with(
                                                body,
                                                List.of(),
                                                List.of(heavy),
                                                List.of(),
                                                Airframe.Drag.NONE)));
        Airframe far =
                Bodies.with(
                        body,
                        List.of(),
                        List.of(
                                new Airframe.Loose(
                                        "far", 5, new Vec3(0, 0, 2), -1, Vec3.ZERO, Vec3.ZERO)),
                        List.of(),
                        Airframe.Drag.NONE);
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
                .isThrownBy(() -> motion(far));
    }

    @Test
    void allocatesNothingInAStep() {
        var random = new java.util.SplittableRandom(5);
        Airframe plain = Bodies.random(random, true, 3);
        Airframe body =
                Bodies.standing(
                        plain.withLines(
                                List.of(
                                        new Airframe.Line(
                                                "t", new Vec3(0, 0, -3), Vec3.ZERO, 1, 1e4, 10))),
                        List.of(new Airframe.Foot(new Vec3(0, 0, 1), 0)),
                        Bodies.GROUND);
        Wind wind = Wind.of(5, 1).with(new Wind.Gust(0.5, 4, 10, 2)).withWash(1.5, 2);
        Motion motion = new Motion(body, new Air(wind, 3, 4));
        BodyState state = new BodyState();
        motion.stand(state, 0, 0, 0);
        FanLoads loads = new FanLoads(4);
        for (int k = 0; k < 4; k++) {
            loads.steady(k, body.massKg() * 2.4, 0.1, 0.2, 0.5);
        }
        double[] along = new double[4];
        double[] across = new double[4];
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long bytes = Long.MAX_VALUE;
        for (int round = 0; round < 10 && bytes > 0; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int k = 0; k < 2000; k++) {
                motion.air(DT, state);
                motion.inflow(DT, state, along, across);
                motion.step(DT, loads, state);
                motion.stand(state, 0, 0, 0);
            }
            bytes = threads.getCurrentThreadAllocatedBytes() - before;
        }
        assertThat(bytes).isZero();
    }

    @Test
    void inertiaTimesAFactorTurnsSlowerByIt() {
        Airframe body = Bodies.rigid(10, 1, 2, 2.5);
        Inertia more = body.withInertia(1.3, 0.7, 1).inertia();
        assertThat(more.xx()).isEqualTo(1.3);
        assertThat(more.yy()).isEqualTo(1.4);
        assertThat(more.zz()).isEqualTo(2.5);
    }
}
