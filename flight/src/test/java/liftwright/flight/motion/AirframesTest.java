package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.flight.Examples;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.plant.balance.FanAtWork;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;

/** A rig as a body moves at first as balance says. */
class AirframesTest {

    @Test
    void curlewStartsToTurnAsItsLedgerOfMomentsSays() {
        Plant plant = Plant.assemble(Examples.rig("curlew"));
        double[] p = plant.parameters().nominal();
        plant.parameters().draw(5, 3, p);
        HoverPoint hover = plant.balancing().worker().liftOff(p);
        Airframe body = new Airframes(plant).of(p, Give.USUAL).withLines(List.of());
        FanLoads loads = new FanLoads(body.fans().size());
        for (int k = 0; k < loads.fans; k++) {
            FanAtWork fan = hover.ledger().fans().get(k);
            loads.steady(k, fan.thrustN(), fan.swirlNm(), 0, 0);
        }
        Motion motion = new Motion(body, Air.still());
        BodyState state = new BodyState();
        state.rest(0, 0, 20, 0);
        motion.begin(state);
        motion.step(1e-6, loads, state);
        Vec3 turn = hover.ledger().acceleration();
        assertThat(turn.length()).isGreaterThan(0.002);
        assertThat(state.y[BodyState.WX] / 1e-6).isCloseTo(turn.x(), within(1e-6));
        assertThat(state.y[BodyState.WY] / 1e-6).isCloseTo(turn.y(), within(1e-6));
        assertThat(state.y[BodyState.WZ] / 1e-6).isCloseTo(turn.z(), within(1e-6));
        assertThat(state.y[BodyState.VZ] / 1e-6).isCloseTo(0, within(1e-4));
    }

    @Test
    void curlewStandsOnFourFeetAndHangsFromItsDeclaredLines() {
        Plant plant = Plant.assemble(Examples.rig("curlew"));
        Airframe body = new Airframes(plant).of(plant.parameters().nominal(), Give.USUAL);
        assertThat(body.loose()).isEmpty();
        assertThat(body.feet()).hasSize(4);
        assertThat(body.lines()).hasSize(5);
        Airframe.Line tether = body.lines().get(0);
        assertThat(tether.anchor()).isEqualTo(new Vec3(0, 0, -3.5));
        // Tight with the frame 1.05 m up: 3.5 m less 2.2 m less 0.25 m from the soles to the ring.
        Motion motion = new Motion(body, Air.still());
        BodyState state = new BodyState();
        state.rest(0, 0, 1.05 + body.soleDepthM().orElseThrow() - 0.002, 0);
        motion.begin(state);
        FanLoads loads = new FanLoads(body.fans().size());
        motion.step(1e-6, loads, state);
        assertThat(motion.lineN(0)).isCloseTo(10e3 * 0.002, within(0.1));
        state.rest(0, 0, 1.05 + body.soleDepthM().orElseThrow() + 0.002, 0);
        motion.begin(state);
        motion.step(1e-6, loads, state);
        assertThat(motion.lineN(0)).isZero();
        // Down-lines of 2.1 m from 1 m aside: straight with the ring 1.847 m up.
        double ring = Math.sqrt(2.1 * 2.1 - 1) - 0.25 + body.soleDepthM().orElseThrow();
        state.rest(0, 0, ring - 0.002, 0);
        motion.begin(state);
        motion.step(1e-6, loads, state);
        assertThat(motion.lineN(1)).isZero();
        state.rest(0, 0, ring + 0.002, 0);
        motion.begin(state);
        motion.step(1e-6, loads, state);
        assertThat(motion.lineN(1)).isPositive();
        assertThat(motion.lineN(4)).isCloseTo(motion.lineN(1), within(1e-6));
    }

    @Test
    void everyExampleCanBeFlown() {
        for (String name : List.of("mudlark", "curlew", "sandpiper")) {
            Plant plant = Plant.assemble(Examples.rig(name));
            Airframes airframes = new Airframes(plant);
            double[] p = plant.parameters().nominal();
            for (int draw = 0; draw < 4; draw++) {
                if (draw > 0) {
                    plant.parameters().draw(1, draw, p);
                }
                Airframe body = airframes.of(p, Give.USUAL);
                for (double factor : new double[] {0.7, 1, 1.3}) {
                    Motion motion =
                            new Motion(body.withInertia(factor, 1, 2 - factor), Air.still());
                    BodyState state = new BodyState();
                    motion.stand(state, 0, 0, 0);
                    FanLoads loads = new FanLoads(body.fans().size());
                    for (int k = 0; k < 100; k++) {
                        motion.step(0.001, loads, state);
                    }
                    assertThat(state.heightM()).isBetween(0.0, 2.0);
                }
            }
        }
    }
}
