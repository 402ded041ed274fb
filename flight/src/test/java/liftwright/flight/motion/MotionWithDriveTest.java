package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import liftwright.flight.Examples;
import liftwright.plant.Drive;
import liftwright.plant.Plant;
import liftwright.plant.supply.CellDraw;
import org.junit.jupiter.api.Test;

/** A rig of the examples, its own rotors on its own packs, and nobody at the controls. */
class MotionWithDriveTest {

    private static final double DUTY = 0.75;

    private record Flown(double heightM, double upMps, double turnRadps, double forwardM) {}

    private static Motion motion(Plant plant, Air air) {
        double[] p = plant.parameters().nominal();
        return new Motion(
                new Airframes(plant).of(p, Give.USUAL).withLines(java.util.List.of()), air);
    }

    /** Rotors at 2000 rad/s on full packs, told to turn faster. */
    private static Drive turning(Plant plant) {
        Drive drive = plant.drive();
        drive.load(plant.parameters().nominal(), new CellDraw.Expected());
        drive.start();
        double[] spin = new double[plant.rig().fans().size()];
        java.util.Arrays.fill(spin, 2000);
        drive.spin(spin);
        for (int fan = 0; fan < spin.length; fan++) {
            drive.duty(fan, DUTY);
        }
        return drive;
    }

    private static Flown flown(Plant plant, double dtS, double forS, Wind wind) {
        Motion motion = motion(plant, new Air(wind, 1, 1));
        Drive drive = turning(plant);
        BodyState state = new BodyState();
        state.rest(0, 0, 50, 0);
        motion.begin(state);
        int steps = Math.toIntExact(Math.round(forS / dtS));
        for (int k = 0; k < steps; k++) {
            assertThat(motion.step(dtS, drive, state)).isTrue();
        }
        return new Flown(
                state.heightM(), state.upMps(), state.y[BodyState.WY], state.y[BodyState.PX]);
    }

    @Test
    void isOfSecondOrderTogetherWithTheDrive() {
        Plant plant = Plant.assemble(Examples.rig("curlew"));
        Wind wind = Wind.of(3, 0).smooth();
        Flown truth = flown(plant, 1.0 / 16_000, 0.5, wind);
        Flown coarse = flown(plant, 1.0 / 500, 0.5, wind);
        Flown fine = flown(plant, 1.0 / 1000, 0.5, wind);
        // Halving the step quarters what is wrong, or better; the law's own error is beside it.
        double most = Math.abs(coarse.upMps - truth.upMps);
        double least = Math.abs(fine.upMps - truth.upMps);
        assertThat(least).isLessThan(1e-4);
        assertThat(least).isLessThan(most / 3.5);
        assertThat(fine.forwardM).isCloseTo(truth.forwardM, within(1e-6));
        assertThat(fine.turnRadps).isCloseTo(truth.turnRadps, within(1e-5));
        // It was flown at all: up, and carried backwards by the head wind.
        assertThat(truth.upMps).isGreaterThan(3);
        assertThat(truth.forwardM).isLessThan(-0.1);
    }

    /**
     * Galilei: what hangs still in a jet wider than itself is pushed, slowed and turned as what
     * flies through still air the other way, rotors, momentum drag and body together.
     */
    @Test
    void aWideJetIsTheAirThatFlyingTheOtherWayMeets() {
        Plant plant = Plant.assemble(Examples.rig("curlew"));
        double[][] winds = {{4, 0, 0}, {0, -3, 0}, {2, 2, -3}, {-3, 1, 1}};
        for (double[] wind : winds) {
            double[] blown = changed(plant, wind, true);
            double[] flying = changed(plant, wind, false);
            double[] calm = changed(plant, new double[3], false);
            double pushed = 0;
            for (int k = 0; k < 6; k++) {
                // The jet is that at the start of each step, so that one step is between them.
                assertThat(blown[k]).as("%d", k).isCloseTo(flying[k], within(3e-3));
                pushed = Math.max(pushed, Math.abs(flying[k] - calm[k]));
            }
            assertThat(pushed).isGreaterThan(0.05);
        }
    }

    /** Change of velocity and of turning in a tenth of a second, m/s and rad/s. */
    private static double[] changed(Plant plant, double[] wind, boolean jet) {
        Motion motion = motion(plant, Air.still());
        Drive drive = turning(plant);
        BodyState state = new BodyState();
        state.rest(0, 0, 50, 0);
        for (int k = 0; k < 3 && !jet; k++) {
            state.y[BodyState.VX + k] = -wind[k];
        }
        motion.begin(state);
        double speed = Math.sqrt(wind[0] * wind[0] + wind[1] * wind[1] + wind[2] * wind[2]);
        JetAir jets = new JetAir();
        double[] before = state.y.clone();
        for (int step = 0; step < 200; step++) {
            jets.clear();
            if (jet) {
                double[] way = new double[3];
                double[] at = new double[3];
                for (int k = 0; k < 3; k++) {
                    way[k] = wind[k] / speed;
                    at[k] = state.y[BodyState.PX + k] - 20 * way[k];
                }
                motion.meet(jets, state, at, way, 1e4, speed);
            }
            motion.blow(jets, state);
            assertThat(motion.step(0.0005, drive, state)).isTrue();
        }
        double[] change = new double[6];
        for (int k = 0; k < 3; k++) {
            change[k] = state.y[BodyState.VX + k] - before[BodyState.VX + k];
            change[3 + k] = state.y[BodyState.WX + k] - before[BodyState.WX + k];
        }
        return change;
    }

    @Test
    void allocatesNothingInAStep() {
        Plant plant = Plant.assemble(Examples.rig("mudlark"));
        double[] p = plant.parameters().nominal();
        Airframe body = new Airframes(plant).of(p, Give.USUAL).withLines(java.util.List.of());
        Motion motion = new Motion(body, new Air(Wind.of(4, 1).withWash(1.5, 3), 1, 1));
        Drive drive = plant.drive();
        drive.load(p, new CellDraw.Expected());
        drive.start();
        BodyState state = new BodyState();
        state.rest(0, 0, 1e5, 0);
        motion.begin(state);
        for (int fan = 0; fan < body.fans().size(); fan++) {
            drive.duty(fan, 0.7);
        }
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long bytes = Long.MAX_VALUE;
        for (int round = 0; round < 20 && bytes > 0; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int k = 0; k < 1000; k++) {
                motion.step(0.001, drive, state);
            }
            bytes = threads.getCurrentThreadAllocatedBytes() - before;
        }
        assertThat(state.heightM()).isGreaterThan(0);
        assertThat(bytes).isZero();
    }
}
