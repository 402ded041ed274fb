package liftwright.flight.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.flight.Examples;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.profile.Profile;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** Modules of one scene that push each other with their jets, or are too far apart to. */
class CompanyTest {

    private static final Rig RIG = Examples.rig("curlew");
    private static final Plant PLANT = Plant.assembleHeated(RIG);
    private static final LoopDesign.Granted LOOPS =
            (LoopDesign.Granted) new RigLoops(PLANT.balancing()).design();

    private static FlightCase flight(String text) {
        Profile profile = Examples.profile(RIG, "liftwright profile: 1\n" + text);
        return FlightCase.of(PLANT, profile, 3, 1);
    }

    private static List<FlightOutcome> fly(FlightCase flight, boolean blows) {
        return new FlightRun(PLANT, new ComputerCrew(RIG, LOOPS))
                .company(flight, flight.profile().together().orElseThrow(), blows)
                .fly();
    }

    private static final String FAR =
            """
            start: {on: ground}
            steps:
              - make live: 1 s
              - lift: {to: 1 m, at: 0.5 m/s}
              - hold: 1 s
            wind: {mean: 4 m/s, from: 60°}
            """;

    @Test
    void modulesFarApartFlyToTheLastBitAsIfTheyPushedNobody() {
        FlightCase flight =
                flight(
                        FAR
                                + """
                                together:
                                  apart: 1 m
                                  modules:
                                    - {name: left, right: -9 m}
                                    - {name: right, right: 9 m, after: 0.4 s}
                                """);
        List<FlightOutcome> pushing = fly(flight, true);
        List<FlightOutcome> not = fly(flight, false);
        FlightOutcome alone = new FlightRun(PLANT, new ComputerCrew(RIG, LOOPS)).fly(flight(FAR));
        assertThat(pushing).hasSize(3);
        for (int k = 0; k < 3; k++) {
            assertThat(pushing.get(k).path().placeM())
                    .hasSizeGreaterThan(100)
                    .containsExactly(not.get(k).path().placeM());
            assertThat(pushing.get(k).figures()).isEqualTo(not.get(k).figures());
        }
        assertThat(pushing.getFirst().path().placeM()).containsExactly(alone.path().placeM());
        assertThat(pushing.getFirst().figures()).isEqualTo(alone.figures());
        assertThat(pushing.get(1).path().placeM()).isNotEqualTo(pushing.get(2).path().placeM());
    }

    /** The other hovers 2.5 m higher where the first goes below it. */
    private static final String UNDER =
            """
            start: {on: ground}
            steps:
              - make live: 1 s
              - lift: {to: 1 m, at: 0.7 m/s}
              - move to: {forward: 4 m, at: 1 m/s}
              - hold: 4 s
              - land: 0.4 m/s
            together:
              apart: 1 m
              modules:
                - name: above
                  forward: 4 m
                  steps:
                    - make live: 0.5 s
                    - lift: {to: 3.5 m, at: 1 m/s}
                    - hold: 12 s
            """;

    @Test
    void whoGoesBelowAnotherIsPushedDownAndItIsTold() {
        FlightCase flight = flight(UNDER);
        FlightOutcome pushed = new FlightRun(PLANT, new ComputerCrew(RIG, LOOPS)).fly(flight);
        FlightOutcome free = fly(flight, false).getFirst();
        assertThat(pushed.pushed())
                .as("%s %s %s", pushed.events(), pushed.figures(), free.figures())
                .anyMatch(one -> one.name().equals(FlightRun.FIRST) && one.mostN() > 5);
        assertThat(pushed.pushed()).noneMatch(one -> one.name().equals("above"));
        assertThat(pushed.end()).isIn(FlightOutcome.End.CLOSE, FlightOutcome.End.LOST);
        assertThat(pushed.events()).anyMatch(event -> event.words().contains("jets of others"));
        assertThat(pushed.figures().heightLostM() + pushed.figures().driftM())
                .isGreaterThan(2 * (free.figures().heightLostM() + free.figures().driftM()));
    }
}
