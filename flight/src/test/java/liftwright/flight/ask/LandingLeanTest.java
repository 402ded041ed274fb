package liftwright.flight.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.flight.Examples;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.motion.Air;
import liftwright.flight.motion.Airframe;
import liftwright.flight.motion.Airframes;
import liftwright.flight.motion.BodyState;
import liftwright.flight.motion.FanLoads;
import liftwright.flight.motion.Give;
import liftwright.flight.motion.Motion;
import liftwright.flight.run.ComputerCrew;
import liftwright.flight.run.FlightCase;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightRun;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** Mudlark, were it lifted and set down by a computer of its own, with arms at several angles. */
class LandingLeanTest {

    private static final String HOP =
            """
            liftwright profile: 1
            steps:
              - make live: 0.5 s
              - lift: {to: 0.3 m, at: 0.3 m/s}
              - hold: 4 s
              - land: 0.2 m/s
            """;

    private record Case(Plant plant, LoopDesign.Granted loops, LandingLean told) {

        static Case of(Rig rig) {
            Plant plant = Plant.assembleHeated(rig);
            var loops = (LoopDesign.Granted) new RigLoops(plant.balancing()).design();
            return new Case(
                    plant, loops, LandingLean.of(frame(plant), loops.craft()).orElseThrow());
        }

        static Airframe frame(Plant plant) {
            double[] p = plant.parameters().nominal();
            return new Airframes(plant).of(p, Give.USUAL).withLines(List.of());
        }

        FlightOutcome flown() {
            var crew = new ComputerCrew(plant.rig(), loops);
            var profile = Examples.profile(plant.rig(), HOP);
            return new FlightRun(plant, crew).fly(FlightCase.of(plant, profile, 11, 0));
        }

        /** Whether it goes over that stands on its edge, leaning so far forward, fans at rest. */
        boolean goesOver(double leanRad) {
            Airframe frame = frame(plant);
            Motion motion = new Motion(frame, Air.still());
            BodyState state = new BodyState();
            motion.stand(state, 0, 0, 0);
            state.y[BodyState.QW] = Math.cos(leanRad / 2);
            state.y[BodyState.QY] = -Math.sin(leanRad / 2);
            double toe =
                    frame.feet().stream().mapToDouble(foot -> foot.at().x()).max().orElseThrow();
            state.y[BodyState.PZ] =
                    state.y[BodyState.PZ] * Math.cos(leanRad) - toe * Math.sin(leanRad);
            motion.begin(state);
            FanLoads none = new FanLoads(frame.fans().size());
            for (int tick = 0; tick < 4000; tick++) {
                motion.air(0.001, state);
                motion.step(0.001, none, state);
                if (state.tiltRad() > Math.toRadians(30)) {
                    return true;
                }
            }
            return false;
        }
    }

    private static Rig mudlark(int flexion) {
        return Examples.rig(
                "mudlark",
                "both shoulders: {flexion: 10°,",
                "both shoulders: {flexion: " + flexion + "°,",
                Examples.COMPUTER.getFirst(),
                Examples.COMPUTER.getLast());
    }

    /**
     * Leaning by 10° as it hovers, it rises within a metre and comes down gently; feet that hold
     * 5.5° do not hold that once lift has gone.
     */
    @Test
    void whatLeansFartherThanItsFeetHoldTipsAfterItsLanding() {
        Case one = Case.of(mudlark(10));
        assertThat(Math.toDegrees(one.told.leanRad())).isBetween(8.0, 11.0);
        assertThat(Math.toDegrees(one.told.heldRad())).isBetween(5.0, 6.0);
        assertThat(one.told.finding()).isPresent();
        FlightOutcome flown = one.flown();
        assertThat(flown.end()).isEqualTo(FlightOutcome.End.LOST);
        assertThat(flown.figures().driftM()).isLessThan(1);
        assertThat(flown.figures().landingMps()).isBetween(0.01, 0.5);
        List<String> words = flown.events().stream().map(FlightOutcome.Event::words).toList();
        assertThat(words).containsSubsequence("it touches the ground", "it tips over");
    }

    @Test
    void whatLeansLessStands() {
        Case one = Case.of(mudlark(-5));
        assertThat(one.told.leanRad()).isLessThan(one.told.heldRad());
        assertThat(one.told.finding()).isEmpty();
        assertThat(one.flown().end()).isEqualTo(FlightOutcome.End.LANDED);
    }

    /** Set on its edge by hand: within 5 % of the statics of hard ground. */
    @Test
    void theLeanThatFeetHoldIsThatOfTheMotion() {
        Case one = Case.of(mudlark(10));
        assertThat(one.goesOver(1.05 * one.told.heldRad())).isTrue();
        assertThat(one.goesOver(0.93 * one.told.heldRad())).isFalse();
    }
}
