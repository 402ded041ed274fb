package liftwright.flight.loops;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.random.RandomGenerator;
import liftwright.flight.motion.BodyState;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The controller in closed loop round a body that this test moves by itself. */
class ControllerTest {

    private static final double VOLT = 50;
    private static final double GRAVITY = 9.80665;

    /** Granted random craft come back to a place from 1.5 m off, thrown and turned, in ± 30 %. */
    @Test
    void itComesBackToItsPlace() {
        int[] seen = {0};
        Seeded.check(
                16,
                random -> {
                    if (!(LoopDesign.of(RandomCraft.able(random))
                            instanceof LoopDesign.Granted granted)) {
                        return;
                    }
                    seen[0]++;
                    Flown flown =
                            new Flown(
                                    granted,
                                    RandomCraft.between(random, 0.7, 1.3),
                                    RandomCraft.between(random, 0.7, 1.3));
                    flown.thrown(random);
                    Wanted wanted = new Wanted();
                    wanted.position(0, 0, 3, 0);
                    double pace = granted.loop(Axis.ACROSS, Loop.Level.POSITION).crossoverRadps();
                    flown.fly(wanted, Standing.FREE, 15 / pace + 15);
                    assertThat(flown.missM(0, 0, 3)).as("%s", granted.loops()).isLessThan(0.15);
                    assertThat(flown.mostTiltRad).isLessThan(Math.toRadians(45));
                });
        assertThat(seen[0]).isGreaterThan(8);
    }

    /** A push of the wind that stays is taken up by the integral: no drift is left. */
    @Test
    void aSteadyPushIsTakenUp() {
        Seeded.check(
                6,
                random -> {
                    if (LoopDesign.of(RandomCraft.able(random))
                            instanceof LoopDesign.Granted granted) {
                        Flown flown = new Flown(granted, 1, 1);
                        flown.pushMps2 = 0.6;
                        Wanted wanted = new Wanted();
                        wanted.position(0, 0, 2, 0);
                        double pace =
                                granted.loop(Axis.ACROSS, Loop.Level.POSITION).crossoverRadps();
                        flown.fly(wanted, Standing.FREE, 50 / pace);
                        assertThat(flown.missM(0, 0, 2)).isLessThan(0.1);
                        assertThat(flown.controller.acrossIntegralMps2(0)).isBetween(-1.2, -0.1);
                    }
                });
    }

    /** Held, tied, on both feet or one: whatever is felt for a minute, no integral moves. */
    @Test
    void nothingWindsUpWhileHeld() {
        Seeded.check(
                20,
                random -> {
                    if (!(LoopDesign.of(RandomCraft.able(random))
                            instanceof LoopDesign.Granted granted)) {
                        return;
                    }
                    for (Standing standing :
                            new Standing[] {Standing.STANDS, Standing.ONE_FOOT, Standing.TIED}) {
                        Controller controller = new Controller(granted);
                        double[] felt = new double[Controller.FELT];
                        felt[BodyState.QW] = 1;
                        felt[BodyState.VX] = RandomCraft.between(random, -0.5, 0.5);
                        felt[BodyState.VZ] = RandomCraft.between(random, -0.5, 0.5);
                        felt[BodyState.WX] = RandomCraft.between(random, -0.5, 0.5);
                        Wanted wanted = new Wanted();
                        wanted.position(3, 1, 2, 0.4);
                        double[] duty = new double[granted.craft().fans().size()];
                        double[] volt = new double[duty.length];
                        Arrays.fill(volt, VOLT);
                        for (int k = 0; k < 6000; k++) {
                            controller.step(0.01, felt, standing, wanted, volt, duty);
                        }
                        for (int axis = 0; axis < 3; axis++) {
                            assertThat(controller.rateIntegralRadps2(axis)).isZero();
                        }
                        assertThat(controller.acrossIntegralMps2(0)).isZero();
                        assertThat(controller.acrossIntegralMps2(1)).isZero();
                        if (standing != Standing.TIED) {
                            assertThat(controller.climbIntegralMps2()).isZero();
                        }
                        for (double one : duty) {
                            assertThat(one).isBetween(0.0, 1.0);
                        }
                    }
                });
    }

    /** With a known lost fan that can be spared the rig still holds its place. */
    @Test
    void aKnownLossIsSharedOut() {
        int[] seen = {0};
        Seeded.check(
                30,
                random -> {
                    Craft craft = RandomCraft.able(random);
                    if (craft.fans().size() < 10
                            || !(LoopDesign.of(craft) instanceof LoopDesign.Granted granted)) {
                        return;
                    }
                    if (granted.authority().liftShare() < 1.8) {
                        return;
                    }
                    seen[0]++;
                    Flown flown = new Flown(granted, 1, 1);
                    flown.lose(0);
                    Wanted wanted = new Wanted();
                    wanted.position(0, 0, 3, 0);
                    flown.fly(wanted, Standing.FREE, 20);
                    assertThat(flown.missM(0, 0, 3)).isLessThan(0.5);
                    assertThat(flown.mostTiltRad).isLessThan(Math.toRadians(45));
                });
        assertThat(seen[0]).isGreaterThan(3);
    }

    /** A thousand steps allocate nothing. */
    @Test
    void stepsAllocateNothing() {
        Seeded.check(
                1,
                random -> {
                    LoopDesign design = LoopDesign.of(RandomCraft.able(random));
                    while (!(design instanceof LoopDesign.Granted)) {
                        design = LoopDesign.of(RandomCraft.able(random));
                    }
                    Flown flown = new Flown((LoopDesign.Granted) design, 1, 1);
                    Wanted wanted = new Wanted();
                    wanted.position(0.5, 0, 2, 0);
                    double[] duty = new double[flown.lifters];
                    double[] volt = new double[flown.lifters];
                    Arrays.fill(volt, VOLT);
                    for (int k = 0; k < 20_000; k++) {
                        flown.controller.step(0.001, flown.y, Standing.FREE, wanted, volt, duty);
                    }
                    var threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
                    long id = Thread.currentThread().threadId();
                    long before = threads.getThreadAllocatedBytes(id);
                    for (int k = 0; k < 1000; k++) {
                        flown.controller.step(0.001, flown.y, Standing.FREE, wanted, volt, duty);
                    }
                    long bytes = threads.getThreadAllocatedBytes(id) - before;
                    assertThat(bytes).isLessThan(1000);
                });
    }

    /** A rigid body under its fans, each behind a delay and a lag; its own equations, Euler. */
    private static final class Flown {

        final Controller controller;
        final double[] y = new double[BodyState.OWN];
        final int lifters;
        double mostTiltRad;
        double pushMps2;

        private final Craft craft;
        private final double inertia;
        private final double lags;
        private final double[] thrustN;
        private int lost = -1;

        Flown(LoopDesign.Granted granted, double inertia, double lags) {
            craft = granted.craft();
            controller = new Controller(granted);
            this.inertia = inertia;
            this.lags = lags;
            lifters = craft.fans().size();
            thrustN = new double[lifters];
            y[BodyState.QW] = 1;
            y[BodyState.PZ] = -2;
            for (int f = 0; f < lifters; f++) {
                thrustN[f] = craft.fans().get(f).hoverN();
            }
            controller.begin();
        }

        void thrown(RandomGenerator random) {
            y[BodyState.PX] = RandomCraft.between(random, -1.5, 1.5);
            y[BodyState.PY] = RandomCraft.between(random, -1.5, 1.5);
            y[BodyState.VX] = RandomCraft.between(random, -0.5, 0.5);
            y[BodyState.VZ] = RandomCraft.between(random, -0.3, 0.3);
            double lean = RandomCraft.between(random, -0.15, 0.15);
            y[BodyState.QX] = Math.sin(lean / 2);
            y[BodyState.QW] = Math.cos(lean / 2);
        }

        void lose(int fan) {
            lost = fan;
            var set = new java.util.BitSet();
            set.set(fan);
            controller.mixer().lost(set);
            thrustN[fan] = 0;
        }

        double missM(double x, double yM, double height) {
            return Math.sqrt(
                    Math.pow(y[BodyState.PX] - x, 2)
                            + Math.pow(y[BodyState.PY] - yM, 2)
                            + Math.pow(y[BodyState.PZ] + height, 2));
        }

        /** Starts on a lift-off ramp that has reached its weight, then flies free. */
        void fly(Wanted wanted, Standing standing, double seconds) {
            double dt = 0.001;
            int every = Math.max(1, (int) Math.round(1 / craft.lags().controlHz() / dt));
            int late =
                    (int)
                            Math.round(
                                    lags
                                            * (craft.lags().computerS()
                                                    + craft.lags().escS()
                                                    + craft.lags().gyroS())
                                            / dt);
            double[][] under = new double[late + 1][lifters];
            double[] duty = new double[lifters];
            double[] volt = new double[lifters];
            Arrays.fill(volt, VOLT);
            for (int f = 0; f < lifters; f++) {
                duty[f] = craft.fans().get(f).volts().at(thrustN[f]) / VOLT;
            }
            for (double[] one : under) {
                System.arraycopy(duty, 0, one, 0, lifters);
            }
            double[] still = new double[Controller.FELT];
            still[BodyState.QW] = 1;
            Wanted up = new Wanted();
            up.climb(0.3, 0);
            double[] unused = new double[lifters];
            for (int k = 0; k < 2000; k++) {
                controller.step(0.001, still, Standing.STANDS, up, volt, unused);
            }
            int steps = (int) (seconds / dt);
            for (int k = 0; k < steps; k++) {
                if (k % every == 0) {
                    controller.step(every * dt, y, standing, wanted, volt, duty);
                }
                double[] old = under[k % under.length];
                double[] now = under[(k + 1) % under.length];
                System.arraycopy(duty, 0, old, 0, lifters);
                move(dt, now);
            }
        }

        private void move(double dt, double[] duty) {
            double fx = 0;
            double fy = 0;
            double fz = 0;
            double mx = 0;
            double my = 0;
            double mz = 0;
            for (int f = 0; f < lifters; f++) {
                Lifter fan = craft.fans().get(f);
                double to = f == lost ? 0 : fan.volts().thrustN(duty[f] * VOLT);
                double was = thrustN[f];
                thrustN[f] += dt / (lags * fan.rotor().lagS()) * (to - thrustN[f]);
                double spun = (thrustN[f] - was) / dt / fan.rotor().newtonSpRad();
                double back = -fan.spin() * fan.rotor().inertiaKgm2() * spun;
                fx += fan.force().x() * thrustN[f];
                fy += fan.force().y() * thrustN[f];
                fz += fan.force().z() * thrustN[f];
                mx += fan.moment().x() * thrustN[f] + back * fan.axis().x();
                my += fan.moment().y() * thrustN[f] + back * fan.axis().y();
                mz += fan.moment().z() * thrustN[f] + back * fan.axis().z();
            }
            double w = y[BodyState.QW];
            double a = y[BodyState.QX];
            double b = y[BodyState.QY];
            double c = y[BodyState.QZ];
            double ax =
                    (1 - 2 * (b * b + c * c)) * fx
                            + 2 * (a * b - w * c) * fy
                            + 2 * (a * c + w * b) * fz;
            double ay =
                    2 * (a * b + w * c) * fx
                            + (1 - 2 * (a * a + c * c)) * fy
                            + 2 * (b * c - w * a) * fz;
            double az =
                    2 * (a * c - w * b) * fx
                            + 2 * (b * c + w * a) * fy
                            + (1 - 2 * (a * a + b * b)) * fz;
            double m = craft.massKg();
            y[BodyState.VX] += dt * (ax / m + pushMps2);
            y[BodyState.VY] += dt * ay / m;
            y[BodyState.VZ] += dt * (az / m + GRAVITY);
            for (int k = 0; k < 3; k++) {
                y[BodyState.PX + k] += dt * y[BodyState.VX + k];
            }
            double ix = inertia * craft.inertia().xx();
            double iy = inertia * craft.inertia().yy();
            double iz = inertia * craft.inertia().zz();
            double p = y[BodyState.WX];
            double q = y[BodyState.WY];
            double r = y[BodyState.WZ];
            y[BodyState.WX] += dt * (mx - (iz - iy) * q * r) / ix;
            y[BodyState.WY] += dt * (my - (ix - iz) * r * p) / iy;
            y[BodyState.WZ] += dt * (mz - (iy - ix) * p * q) / iz;
            double qw = w - 0.5 * dt * (a * p + b * q + c * r);
            double qx = a + 0.5 * dt * (w * p + b * r - c * q);
            double qy = b + 0.5 * dt * (w * q + c * p - a * r);
            double qz = c + 0.5 * dt * (w * r + a * q - b * p);
            double size = Math.sqrt(qw * qw + qx * qx + qy * qy + qz * qz);
            y[BodyState.QW] = qw / size;
            y[BodyState.QX] = qx / size;
            y[BodyState.QY] = qy / size;
            y[BodyState.QZ] = qz / size;
            double up = 1 - 2 * (qx * qx + qy * qy) / (size * size);
            mostTiltRad = Math.max(mostTiltRad, Math.acos(Math.clamp(up, -1, 1)));
        }
    }
}
