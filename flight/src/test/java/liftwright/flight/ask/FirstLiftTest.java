package liftwright.flight.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.flight.Examples;
import liftwright.flight.loops.Craft;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.motion.Air;
import liftwright.flight.motion.Airframe;
import liftwright.flight.motion.Airframes;
import liftwright.flight.motion.BodyState;
import liftwright.flight.motion.FanLoads;
import liftwright.flight.motion.Give;
import liftwright.flight.motion.Motion;
import liftwright.plant.Plant;
import liftwright.plant.motion.RotorInertia;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/**
 * When feet let go while lift grows, against the motion of the same rig under slowly growing lift.
 */
class FirstLiftTest {

    private record Case(Airframe frame, Craft craft, FirstLift told) {

        static Case of(Rig rig) {
            Plant plant = Plant.assemble(rig);
            double[] p = plant.parameters().nominal();
            Airframe frame = new Airframes(plant).of(p, Give.USUAL).withLines(List.of());
            Craft craft =
                    new RigLoops(plant.balancing())
                            .craft(p, RotorInertia.of(rig).table().nominal())
                            .orElseThrow();
            return new Case(frame, craft, FirstLift.of(frame, craft).orElseThrow());
        }

        /** Lift over weight when it has leant by 5° or gone 20 cm: all fans grow over 30 s. */
        double letsGo() {
            Motion motion = new Motion(frame, Air.still());
            BodyState state = new BodyState();
            motion.stand(state, 0, 0, 0);
            FanLoads loads = new FanLoads(craft.fans().size());
            for (int tick = 0; tick < 30_000; tick++) {
                double share = tick / 30_000.0;
                for (int fan = 0; fan < craft.fans().size(); fan++) {
                    loads.steady(fan, share * craft.fans().get(fan).hoverN(), 0, 0, 0);
                }
                motion.air(0.001, state);
                motion.step(0.001, loads, state);
                double gone = Math.hypot(state.y[BodyState.PX], state.y[BodyState.PY]);
                if (state.tiltRad() > Math.toRadians(5) || gone > 0.2) {
                    return share;
                }
            }
            return 1;
        }
    }

    private static Rig mudlark(int flexion) {
        return Examples.rig(
                "mudlark",
                "both shoulders: {flexion: 10°,",
                "both shoulders: {flexion: " + flexion + "°,");
    }

    /** Fans on forearms that lean: the more they push back, the sooner; soft soles sooner still. */
    @Test
    void whatTipsInMotionTipsByStaticsAndNotMuchLater() {
        double before = 1.01;
        for (int flexion : new int[] {0, 5, 10, 20}) {
            Case one = Case.of(mudlark(flexion));
            assertThat(one.told.share()).isLessThan(before);
            before = one.told.share();
            assertThat(one.letsGo())
                    .as("%s° %s", flexion, one.told)
                    .isBetween(0.55 * one.told.share(), 1.02 * one.told.share());
            assertThat(one.told.finding()).isPresent();
        }
    }

    /** By hand: 24 fans, 16 of them on forearms at some 15°, push a sixth of the lift backwards. */
    @Test
    void mudlarkLetsGoAtAThirdOfItsWeight() {
        FirstLift told = Case.of(mudlark(10)).told;
        double weight = 128.76 * 9.80665;
        assertThat(told.pushN() / weight).isBetween(0.12, 0.20);
        double reach = 0.1105;
        double byHand = weight * reach / (told.pushN() * 1.1365 + weight * reach);
        assertThat(told.share()).isCloseTo(byHand, within(0.02));
        assertThat(told.slides()).isFalse();
    }

    @Test
    void whatPushesStraightUpIsHeldToTheLast() {
        FirstLift told = Case.of(Examples.rig("curlew")).told;
        assertThat(told.share()).isGreaterThan(0.95);
        assertThat(told.finding()).isEmpty();
    }
}
