package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Random boxes on ground that slopes any way, against closed forms: a box tips where its centre is
 * over its edge, tan s = (reach down the slope)/(height of the centre), and slides where tan s = μ.
 */
class SlopeTest {

    private static final double G = 9.80665;
    private static final double DT = 5e-4;

    /** A box of its own size on stiff feet, and a way down the slope. */
    private record Box(double kg, double longM, double wideM, double highM, double toRad) {

        static Box any(RandomGenerator random) {
            return new Box(
                    random.nextDouble(5, 200),
                    random.nextDouble(0.1, 0.6),
                    random.nextDouble(0.1, 0.6),
                    random.nextDouble(0.3, 1.2),
                    random.nextDouble(-Math.PI, Math.PI));
        }

        /** From under the centre to the edge of the base, down the slope. */
        double reachM() {
            return Math.min(longM / Math.abs(Math.cos(toRad)), wideM / Math.abs(Math.sin(toRad)));
        }

        double tipsRad() {
            return Math.atan(reachM() / highM);
        }

        Airframe on(double slopeRad, double friction) {
            List<Airframe.Foot> feet = new ArrayList<>();
            for (double x : new double[] {-longM, longM}) {
                for (double y : new double[] {-wideM, wideM}) {
                    feet.add(new Airframe.Foot(new Vec3(x, y, highM), Airframe.FRAME));
                }
            }
            double third = kg / 3;
            Airframe body =
                    Bodies.rigid(
                            kg,
                            third * (wideM * wideM + highM * highM),
                            third * (longM * longM + highM * highM),
                            third * (longM * longM + wideM * wideM));
            double stiff = kg * G / (4 * 2e-5);
            var ground =
                    new Airframe.Ground(stiff, 50, stiff, stiff / 700, friction, slopeRad, toRad);
            return Bodies.standing(body, feet, ground);
        }

        /** The same after some time, thrown down the slope at the start. */
        Gone after(double timeS, double slopeRad, double friction, double mps) {
            Airframe frame = on(slopeRad, friction);
            Motion motion = new Motion(frame, Air.still());
            BodyState state = new BodyState();
            motion.stand(state, 0, 0, 0);
            state.y[BodyState.VX] = mps * Math.cos(slopeRad) * Math.cos(toRad);
            state.y[BodyState.VY] = mps * Math.cos(slopeRad) * Math.sin(toRad);
            state.y[BodyState.VZ] = mps * Math.sin(slopeRad);
            motion.begin(state);
            FanLoads none = new FanLoads(0);
            for (int k = 0; k < timeS / DT; k++) {
                motion.step(DT, none, state);
            }
            double level =
                    state.y[BodyState.PX] * Math.cos(toRad)
                            + state.y[BodyState.PY] * Math.sin(toRad);
            return new Gone(
                    level / Math.cos(slopeRad), Math.abs(state.tiltRad() - slopeRad), state);
        }
    }

    private record Gone(double downM, double turnedRad, BodyState state) {}

    @Test
    void aBoxTipsWhereItsCentreIsOverItsEdge() {
        Seeded.check(
                25,
                random -> {
                    Box box = Box.any(random);
                    double tips = box.tipsRad();
                    assertThat(box.after(2, 0.95 * tips, 9, 0).turnedRad)
                            .as("%s", box)
                            .isLessThan(0.02);
                    assertThat(box.after(4, 1.03 * tips, 9, 0).turnedRad)
                            .as("%s", box)
                            .isGreaterThan(0.1);
                });
    }

    @Test
    void aBoxSlidesWhereTheSlopeIsSteeperThanFrictionHolds() {
        Seeded.check(
                25,
                random -> {
                    Box box = Box.any(random);
                    double slope = random.nextDouble(0.2, 0.6) * box.tipsRad();
                    double held = Math.tan(slope);
                    assertThat(box.after(2, slope, 1.02 * held, 0).downM)
                            .as("%s", box)
                            .isCloseTo(0, within(2e-3));
                    double friction = random.nextDouble(0, 0.8) * held;
                    double mps2 = G * (Math.sin(slope) - friction * Math.cos(slope));
                    assertThat(box.after(1.5, slope, friction, 0).downM)
                            .as("%s", box)
                            .isCloseTo(0.5 * mps2 * 1.5 * 1.5, within(2e-3 + 0.01 * mps2));
                });
    }

    /** ½ m v² + m g d sin s = μ m g d cos s: what friction takes is all that was there. */
    @Test
    void whatSlidesToAStopHasGivenItsEnergyToFriction() {
        Seeded.check(
                25,
                random -> {
                    Box box = Box.any(random);
                    double slope = random.nextDouble(0, 0.3) * box.tipsRad();
                    // Friction pushes at the base: more would tip it.
                    double most = box.reachM() / box.highM;
                    double friction =
                            Math.tan(slope)
                                    + random.nextDouble(0.1, 0.6) * (0.95 * most - Math.tan(slope));
                    double mps = random.nextDouble(0.5, 1.5);
                    double slowing = G * (friction * Math.cos(slope) - Math.sin(slope));
                    Gone gone = box.after(mps / slowing + 1, slope, friction, mps);
                    double far = mps * mps / (2 * slowing);
                    assertThat(gone.downM).as("%s", box).isCloseTo(far, within(3e-3 + 0.02 * far));
                    double speed =
                            Math.hypot(
                                    gone.state.y[BodyState.VX],
                                    Math.hypot(
                                            gone.state.y[BodyState.VY],
                                            gone.state.y[BodyState.VZ]));
                    assertThat(speed).isLessThan(0.02);
                });
    }

    /** The plane is where it is: a ball-like body far from the start lands on it, not on z = 0. */
    @Test
    void itComesDownOnThePlaneWhereverItIs() {
        Seeded.check(
                10,
                random -> {
                    Box box = new Box(20, 0.4, 0.4, 0.2, random.nextDouble(-3, 3));
                    double slope = random.nextDouble(0.05, 0.5);
                    Airframe frame = box.on(slope, 9);
                    Motion motion = new Motion(frame, Air.still());
                    BodyState state = new BodyState();
                    double x = random.nextDouble(-20, 20);
                    double y = random.nextDouble(-20, 20);
                    motion.stand(state, x, y, 0);
                    double level = x * Math.cos(box.toRad) + y * Math.sin(box.toRad);
                    double stood = level * Math.tan(slope) - 0.2 / Math.cos(slope);
                    assertThat(state.y[BodyState.PZ]).isCloseTo(stood, within(1e-3));
                    state.y[BodyState.PZ] -= 0.1;
                    motion.begin(state);
                    FanLoads none = new FanLoads(0);
                    motion.step(DT, none, state);
                    assertThat(motion.feetDown()).isZero();
                    for (int k = 0; k < 2000; k++) {
                        motion.step(DT, none, state);
                    }
                    assertThat(motion.feetDown()).isEqualTo(4);
                    assertThat(motion.groundN())
                            .isCloseTo(20 * G * Math.cos(slope), within(0.05 * 20 * G));
                    assertThat(state.y[BodyState.PZ]).isCloseTo(stood, within(0.02));
                });
    }
}
