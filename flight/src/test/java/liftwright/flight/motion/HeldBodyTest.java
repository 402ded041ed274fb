package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;

/** Lines, feet and friction against closed forms. */
class HeldBodyTest {

    private static final double G = 9.80665;

    private static final FanLoads NONE = new FanLoads(0);

    private static Airframe.Line line(Vec3 anchor, Vec3 ring, double lengthM, double k) {
        return new Airframe.Line("line", anchor, ring, lengthM, k, 0);
    }

    /** Greatest pull of a line in a time. */
    private static double peakN(Airframe body, BodyState state, double dtS, double forS) {
        Motion motion = new Motion(body, Air.still());
        motion.begin(state);
        double most = 0;
        for (int k = 0; k < forS / dtS; k++) {
            motion.step(dtS, NONE, state);
            most = Math.max(most, motion.lineN(0));
        }
        return most;
    }

    @Test
    void aLineCatchesAFallAsEnergySays() {
        // mass, fall before it is straight, stiffness; peak m g (1 + √(1 + 2 h k / m g))
        double[][] table = {
            {100, 0.5, 20e3, 5516.63}, {100, 1.8, 10e3, 7002.76}, {150, 0.1, 50e3, 5578.77}
        };
        for (double[] row : table) {
            Airframe body =
                    Bodies.rigid(row[0], 10, 10, 10)
                            .withLines(List.of(line(new Vec3(0, 0, -10), Vec3.ZERO, 2, row[2])));
            BodyState state = new BodyState();
            state.rest(0, 0, 8 + row[1], 0);
            assertThat(peakN(body, state, 2e-4, 1.5)).isCloseTo(row[3], within(1e-3 * row[3]));
        }
        Airframe body =
                Bodies.rigid(100, 10, 10, 10)
                        .withLines(List.of(line(new Vec3(0, 0, -10), Vec3.ZERO, 2, 10e3)));
        BodyState state = new BodyState();
        state.rest(0, 0, 8, 0);
        assertThat(peakN(body, state, 2e-4, 1)).isCloseTo(2 * 100 * G, within(0.5));
        Airframe heavy =
                Bodies.rigid(150, 10, 10, 10)
                        .withLines(List.of(line(new Vec3(0, 0, -10), Vec3.ZERO, 2, 20e3)));
        state.rest(0, 0, 8, 0);
        state.y[BodyState.VZ] = 2;
        assertThat(peakN(heavy, state, 2e-4, 1)).isCloseTo(5234.5, within(1.0));
    }

    @Test
    void aSlackLineDoesNothingAndNeverPushes() {
        Airframe body =
                Bodies.rigid(100, 10, 10, 10)
                        .withLines(List.of(line(new Vec3(0, 0, -10), Vec3.ZERO, 2, 1e4)));
        BodyState state = new BodyState();
        state.rest(0, 0, 9.5, 0);
        Motion motion = new Motion(body, Air.still());
        motion.begin(state);
        for (int k = 0; k < 700; k++) {
            motion.step(1e-3, NONE, state);
            double apart = 10 - state.heightM();
            if (apart < 1.99) {
                assertThat(motion.lineN(0)).isZero();
            }
            assertThat(motion.lineN(0)).isNotNegative();
        }
        assertThat(motion.lineN(0)).isPositive();
    }

    @Test
    void swingsOnALineAsLargeAPendulumDoes() {
        // T/T₀ of amplitudes, degrees: (2/π) K(sin θ/2); T₀ of 1 m is 2.006409 s.
        double[][] table = {{10, 1.001907}, {30, 1.017409}, {60, 1.073182}};
        for (double[] row : table) {
            double k = 2e6;
            Airframe body =
                    Bodies.rigid(1, 1e-3, 1e-3, 1e-3)
                            .withLines(List.of(line(new Vec3(0, 0, -10), Vec3.ZERO, 1, k)));
            double angle = Math.toRadians(row[0]);
            BodyState state = new BodyState();
            double length = 1 + G * Math.cos(angle) / k;
            state.rest(length * Math.sin(angle), 0, 10 - length * Math.cos(angle), 0);
            Motion motion = new Motion(body, Air.still());
            motion.begin(state);
            double dt = 2e-4;
            double before = state.y[0];
            int step = 0;
            while (state.y[0] > 0) {
                before = state.y[0];
                motion.step(dt, NONE, state);
                step++;
            }
            double quarter = dt * (step - state.y[0] / (state.y[0] - before));
            assertThat(4 * quarter / 2.006409).isCloseTo(row[1], within(2e-5));
        }
    }

    /** A box on four stiff feet, its centre half a push height up. */
    private static Airframe box(double friction) {
        double kg = 500 / G;
        Airframe body = Bodies.rigid(kg, 8, 8, 4);
        List<Airframe.Foot> feet =
                List.of(
                        new Airframe.Foot(new Vec3(0.3, 0.3, 0.5), Airframe.FRAME),
                        new Airframe.Foot(new Vec3(0.3, -0.3, 0.5), Airframe.FRAME),
                        new Airframe.Foot(new Vec3(-0.3, 0.3, 0.5), Airframe.FRAME),
                        new Airframe.Foot(new Vec3(-0.3, -0.3, 0.5), Airframe.FRAME));
        return Bodies.standing(
                Bodies.with(
                        body,
                        List.of(
                                new Airframe.FanLine(
                                        new Vec3(0, 0, -0.5), Vec3.ZERO, new Vec3(1, 0, 0))),
                        List.of(),
                        List.of(),
                        Airframe.Drag.NONE),
                feet,
                new Airframe.Ground(4e5, 15, 4e5, 2e3, friction));
    }

    private record Pushed(double tiltRad, double wentM) {}

    /** Pushes so slowly that nothing swings, 1 m above the ground, and waits. */
    private static Pushed pushed(Airframe box, double pushN) {
        Motion motion = new Motion(box, Air.still());
        BodyState state = new BodyState();
        motion.stand(state, 0, 0, 0);
        FanLoads loads = new FanLoads(1);
        double dt = 2e-4;
        for (int k = 0; k < 30_000; k++) {
            loads.steady(0, pushN * Math.min(1, k / 15_000.0), 0, 0, 0);
            motion.step(dt, loads, state);
            if (state.tiltRad() > 0.5) {
                break;
            }
        }
        return new Pushed(state.tiltRad(), state.y[0]);
    }

    @Test
    void aBoxTipsAtWeightTimesHalfItsBaseOverTheHeightOfThePush() {
        // 500 N on a base of 0.6 m, pushed 1.0 m up: 150 N (moments).
        assertThat(pushed(box(0.6), 148).tiltRad).isLessThan(0.02);
        assertThat(pushed(box(0.6), 152).tiltRad).isGreaterThan(0.5);
    }

    @Test
    void slidesBeforeItTipsBelowTheFrictionOfItsShape() {
        // d/h = 0.30: below it slides, and tips no more.
        Pushed slips = pushed(box(0.28), 145);
        assertThat(slips.wentM).isGreaterThan(0.05);
        assertThat(slips.tiltRad).isLessThan(0.02);
        Pushed holds = pushed(box(0.28), 137);
        assertThat(holds.wentM).isLessThan(0.01);
    }

    @Test
    void staysWhereItSlidTo() {
        Motion motion = new Motion(box(0.28), Air.still());
        BodyState state = new BodyState();
        motion.stand(state, 0, 0, 0);
        FanLoads loads = new FanLoads(1);
        loads.steady(0, 145, 0, 0, 0);
        for (int k = 0; k < 10_000; k++) {
            motion.step(2e-4, loads, state);
        }
        double slid = state.y[0];
        double speed = state.y[BodyState.VX];
        assertThat(slid).isGreaterThan(0.02);
        loads.steady(0, 0, 0, 0, 0);
        for (int k = 0; k < 10_000; k++) {
            motion.step(2e-4, loads, state);
        }
        // It runs out by v²/(2 μ g), and what a foot gives to the side is μ W/k at the most.
        double runsOut = speed * speed / (2 * 0.28 * G);
        assertThat(state.y[0]).isCloseTo(slid + runsOut, within(0.02 * runsOut + 1e-3));
        assertThat(state.y[BodyState.VX]).isCloseTo(0, within(1e-3));
    }

    @Test
    void standsWithoutCreeping() {
        Motion motion = new Motion(box(0.6), Air.still());
        BodyState state = new BodyState();
        motion.stand(state, 0, 0, 0.3);
        FanLoads loads = new FanLoads(1);
        loads.steady(0, 100, 0, 0, 0);
        double settled = 0;
        for (int k = 0; k < 20_000; k++) {
            motion.step(1e-3, loads, state);
            settled = k == 5_000 ? state.y[0] : settled;
        }
        assertThat(state.y[0] - settled).isCloseTo(0, within(1e-7));
        assertThat(motion.feetDown()).isEqualTo(4);
        assertThat(motion.groundN()).isCloseTo(500, within(0.2));
        double[] felt = new double[3];
        motion.specificForceMps2(felt);
        double size = Math.sqrt(felt[0] * felt[0] + felt[1] * felt[1] + felt[2] * felt[2]);
        assertThat(size).isCloseTo(G, within(1e-6));
    }

    @Test
    void aFootGivesBackWhatTheLawOfHuntAndCrossleySays() {
        // e ≈ 1 − 2 a v / 3 for small a v, gravity all but gone beside the springs.
        for (double aV : new double[] {0.02, 0.05, 0.1}) {
            double speed = 1;
            Airframe ball =
                    Bodies.standing(
                            Bodies.rigid(10, 1, 1, 1),
                            List.of(new Airframe.Foot(Vec3.ZERO, Airframe.FRAME)),
                            new Airframe.Ground(1e7, aV / speed, 1e7, 0, 0));
            Motion motion = new Motion(ball, Air.still());
            BodyState state = new BodyState();
            state.rest(0, 0, 1e-5, 0);
            state.y[BodyState.VZ] = speed;
            motion.begin(state);
            do {
                motion.step(1e-5, NONE, state);
            } while (motion.footN(0) == 0);
            do {
                motion.step(1e-5, NONE, state);
            } while (motion.footN(0) > 0);
            double back = -state.y[BodyState.VZ] / speed;
            assertThat(back).isCloseTo(1 - 2 * aV / 3, within(0.5 * aV * aV + 2e-3));
        }
    }

    @Test
    void leavesTheGroundWhenThrustIsMoreThanWeight() {
        Airframe box = box(0.6);
        Airframe up =
                Bodies.with(
                        box,
                        List.of(new Airframe.FanLine(Vec3.ZERO, Vec3.ZERO, new Vec3(0, 0, -1))),
                        List.of(),
                        List.of(),
                        Airframe.Drag.NONE);
        Motion motion = new Motion(up, Air.still());
        BodyState state = new BodyState();
        motion.stand(state, 2, 3, 0);
        FanLoads loads = new FanLoads(1);
        loads.steady(0, 400, 0, 0, 0);
        for (int k = 0; k < 5000; k++) {
            motion.step(2e-4, loads, state);
        }
        assertThat(motion.groundN()).isCloseTo(100, within(0.1));
        loads.steady(0, 600, 0, 0, 0);
        for (int k = 0; k < 5000; k++) {
            motion.step(2e-4, loads, state);
        }
        // 100 N over 50.99 kg for a second: 0.98 m.
        assertThat(state.heightM() - 0.5).isCloseTo(100 / (500 / G) / 2, within(0.01));
        assertThat(motion.feetDown()).isZero();
        assertThat(state.y[0]).isCloseTo(2, within(1e-9));
    }
}
