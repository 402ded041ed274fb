package liftwright.flight.run;

import static org.assertj.core.api.Assertions.assertThat;

import liftwright.flight.Examples;
import liftwright.flight.loops.Craft;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.profile.Profile;
import liftwright.plant.Plant;
import liftwright.plant.motion.RotorInertia;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** A flight of an example, steered by a crew that has nothing to do with the loops. */
class FlightRunTest {

    private static final Rig RIG = Examples.rig("curlew");
    private static final Plant PLANT = Plant.assembleHeated(RIG);

    private static FlightRun run() {
        Craft craft =
                new RigLoops(PLANT.balancing())
                        .craft(PLANT.parameters().nominal(), RotorInertia.of(RIG).table().nominal())
                        .orElseThrow();
        return new FlightRun(PLANT, new PlainCrew(craft, 9));
    }

    private static FlightOutcome fly(String text, int number) {
        Profile profile = Examples.profile(RIG, text);
        return run().fly(FlightCase.of(PLANT, profile, 1, number));
    }

    @Test
    void theRigsOwnComputerDoesSo() {
        Profile profile = Examples.profile(RIG, Examples.profileText("curlew", "to-the-wearer"));
        LoopDesign design = new RigLoops(PLANT.balancing()).design();
        assertThat(design).isInstanceOf(LoopDesign.Granted.class);
        FlightRun own = new FlightRun(PLANT, new ComputerCrew(RIG, (LoopDesign.Granted) design));
        FlightOutcome flown = own.fly(FlightCase.of(PLANT, profile, 1, 0));
        assertThat(flown.converged()).isTrue();
        assertThat(flown.end()).as("%s", flown.events()).isEqualTo(FlightOutcome.End.LANDED);
        assertThat(flown.isWell(profile.limits())).as("%s", flown.figures()).isTrue();
    }

    @Test
    void itRisesCrossesHoversAndLands() {
        FlightOutcome flown = fly(Examples.profileText("curlew", "to-the-wearer"), 0);
        assertThat(flown.converged()).isTrue();
        assertThat(flown.end()).as("%s", flown.events()).isEqualTo(FlightOutcome.End.LANDED);
        assertThat(flown.figures().missM()).isLessThan(2);
    }
}
