package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;

/** Air that fans take in from the side holds a rig back, carries it along and turns it. */
class MomentumDragTest {

    private static final double G = 9.80665;
    private static final double DT = 0.001;

    private static Airframe module(double intakeUpM) {
        List<Airframe.FanLine> fans = new ArrayList<>();
        for (double side : new double[] {-0.3, 0.3}) {
            for (double along : new double[] {-0.2, 0, 0.2}) {
                fans.add(
                        new Airframe.FanLine(
                                new Vec3(along, side, 0),
                                new Vec3(along, side, -intakeUpM),
                                new Vec3(0, 0, -1)));
            }
        }
        return Bodies.with(
                Bodies.rigid(18, 0.6, 0.4, 0.9), fans, List.of(), List.of(), Airframe.Drag.NONE);
    }

    private static FanLoads hover(double flowKgps) {
        FanLoads loads = new FanLoads(6);
        for (int k = 0; k < 6; k++) {
            loads.steady(k, 18 * G / 6, 0, 0, flowKgps);
        }
        return loads;
    }

    @Test
    void sixFansAreCarriedDownwindAsAMassOnADamperIs() {
        // By hand: m dv/dt = Σṁ (W − v), so x = W (t − T (1 − e^(−t/T))) with T = m / Σṁ.
        // 18 kg, six fans of 29.4 N through 0.0128 m²: √(ρ A T) = 0.68 kg/s each; wind 3 m/s.
        double flow = Math.sqrt(1.225 * 0.0128 * 18 * G / 6);
        Motion motion = new Motion(module(0), new Air(Wind.of(3, 0).smooth(), 1, 1));
        BodyState state = new BodyState();
        state.rest(0, 0, 5, 0);
        motion.begin(state);
        FanLoads loads = hover(flow);
        for (int k = 0; k < 8000; k++) {
            motion.air(DT, state);
            motion.step(DT, loads, state);
        }
        double time = 18 / (6 * flow);
        double byHand = 3 * (8 - time * (1 - Math.exp(-8 / time)));
        assertThat(byHand).isGreaterThan(10);
        // A head wind: carried backwards.
        assertThat(state.y[BodyState.PX]).isCloseTo(-byHand, within(1e-9));
        assertThat(state.tiltRad()).isCloseTo(0, within(1e-12));
        assertThat(state.heightM()).isCloseTo(5, within(1e-9));
    }

    @Test
    void intakesAboveTheCentreTurnItAwayFromTheWind() {
        Motion motion = new Motion(module(0.1), new Air(Wind.of(3, 0).smooth(), 1, 1));
        BodyState state = new BodyState();
        state.rest(0, 0, 5, 0);
        motion.begin(state);
        motion.air(DT, state);
        motion.step(DT, hover(0.7), state);
        // Σṁ W = 12.6 N backwards at 0.1 m above: 1.26 N·m nose up over 0.4 kg·m².
        assertThat(state.y[BodyState.WY] / DT).isCloseTo(1.26 / 0.4, within(0.02));
        assertThat(state.y[BodyState.VX] / DT).isCloseTo(-12.6 / 18, within(0.001));
    }

    @Test
    void turningDiesOutWithTheFlowTimesSquaredArms() {
        // c = Σ ṁ r² about the upright axis; ω = ω₀ e^(−c t/I).
        Motion motion = new Motion(module(0), Air.still());
        BodyState state = new BodyState();
        state.rest(0, 0, 5, 0);
        state.y[BodyState.WZ] = 1;
        motion.begin(state);
        for (int k = 0; k < 2000; k++) {
            motion.step(DT, hover(0.7), state);
        }
        double c = 0.7 * (6 * 0.3 * 0.3 + 4 * 0.2 * 0.2);
        assertThat(state.y[BodyState.WZ]).isCloseTo(Math.exp(-c * 2 / 0.9), within(1e-9));
    }

    @Test
    void tellsFansHowAirComesToThemInTheMiddleOfAStep() {
        Motion motion = new Motion(module(0.1), new Air(Wind.of(3, 0).smooth(), 1, 1));
        BodyState state = new BodyState();
        state.rest(0, 0, 5, 0);
        state.y[BodyState.VZ] = -2;
        state.y[BodyState.WX] = 0.5;
        motion.begin(state);
        motion.air(DT, state);
        double[] along = new double[6];
        double[] across = new double[6];
        motion.inflow(DT, state, along, across);
        // Rolling to the right lowers the right: fan 3 is at the right, its intake 0.1 m up.
        assertThat(along[0]).isCloseTo(2 + 0.5 * 0.3, within(1e-3));
        assertThat(along[3]).isCloseTo(2 - 0.5 * 0.3, within(1e-3));
        assertThat(across[3]).isCloseTo(Math.hypot(3, 0.5 * 0.1), within(2e-3));
    }

    @Test
    void isOfSecondOrderWithFansThatGoByTheInflow() {
        // Thrust falls with the inflow and lags: what a drive does, by a law of one line.
        double truth = coupled(1.0 / 32_000);
        double coarse = Math.abs(coupled(1.0 / 500) - truth);
        double fine = Math.abs(coupled(1.0 / 1000) - truth);
        double order = Math.log(coarse / fine) / Math.log(2);
        assertThat(order).isBetween(1.8, 2.4);
        assertThat(fine).isLessThan(1e-4);
    }

    private static double coupled(double dtS) {
        Motion motion = new Motion(module(0.1), new Air(Wind.of(3, 0).smooth(), 1, 1));
        BodyState state = new BodyState();
        state.rest(0, 0, 5, 0);
        state.y[BodyState.VZ] = -3;
        motion.begin(state);
        FanLoads loads = new FanLoads(6);
        double[] along = new double[6];
        double[] across = new double[6];
        double[] spool = new double[6];
        java.util.Arrays.fill(spool, 20);
        int steps = Math.toIntExact(Math.round(1 / dtS));
        for (int step = 0; step < steps; step++) {
            motion.air(dtS, state);
            motion.inflow(dtS, state, along, across);
            for (int k = 0; k < 6; k++) {
                for (int moment = 0; moment < 3; moment++) {
                    double lag = 32 + (spool[k] - 32) * Math.exp(-moment * dtS / 2 / 0.05);
                    loads.thrustN[moment * 6 + k] = lag * (1 - along[k] / 40);
                    loads.flowKgps[moment * 6 + k] = Math.sqrt(1.225 * 0.0128 * lag);
                }
                spool[k] = 32 + (spool[k] - 32) * Math.exp(-dtS / 0.05);
            }
            motion.step(dtS, loads, state);
        }
        return state.y[BodyState.PX] + state.y[BodyState.PZ] + state.y[BodyState.QY];
    }
}
