package liftwright.flight.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import liftwright.flight.Examples;
import liftwright.flight.loops.Craft;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.profile.Profile;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.motion.RotorInertia;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;
import liftwright.rig.table.StartState;
import org.junit.jupiter.api.Test;

/** Flights of an example, by its own computer and by a crew that has nothing to do with it. */
class FlightRunTest {

    private static final Rig RIG = Examples.rig("curlew");
    private static final Plant PLANT = Plant.assembleHeated(RIG);
    private static final LoopDesign.Granted LOOPS =
            (LoopDesign.Granted) new RigLoops(PLANT.balancing()).design();

    private static final String HELD =
            """
            liftwright profile: 1
            start: {on: held, height: 1.5 m}
            steps:
              - hold: 4 s
            wind: {mean: 3 m/s}
            """;

    private static FlightRun own() {
        return new FlightRun(PLANT, new ComputerCrew(RIG, LOOPS));
    }

    private static FlightOutcome fly(FlightRun run, String text, int number) {
        return run.fly(FlightCase.of(PLANT, Examples.profile(RIG, text), 1, number));
    }

    @Test
    void theRigsOwnComputerDoesSo() {
        String text = Examples.profileText("curlew", "to-the-wearer");
        Profile profile = Examples.profile(RIG, text);
        FlightOutcome flown = fly(own(), text, 0);
        assertThat(flown.converged()).isTrue();
        assertThat(flown.end()).as("%s", flown.events()).isEqualTo(FlightOutcome.End.LANDED);
        assertThat(flown.isWell(profile.limits())).as("%s", flown.figures()).isTrue();
        double[] right = flown.series().of(FlightSeries.Kind.RIGHT);
        assertThat(right[right.length - 1]).isCloseTo(12, within(0.5));
    }

    @Test
    void anotherCrewRisesCrossesHoversAndLandsTheSameRig() {
        Craft craft =
                new RigLoops(PLANT.balancing())
                        .craft(
                                PLANT.parameters().nominal(),
                                RotorInertia.of(RIG).table().nominal())
                        .orElseThrow();
        FlightRun run = new FlightRun(PLANT, new PlainCrew(craft, 9));
        FlightOutcome flown = fly(run, Examples.profileText("curlew", "to-the-wearer"), 0);
        assertThat(flown.converged()).isTrue();
        assertThat(flown.end()).as("%s", flown.events()).isEqualTo(FlightOutcome.End.LANDED);
        assertThat(flown.figures().missM()).isLessThan(2);
    }

    @Test
    void oneSeedIsOneFlightToTheLastBitOnOneThreadAndOnTwo() throws Exception {
        FlightRun alone = own();
        List<FlightOutcome> inTurn = List.of(fly(alone, HELD, 1), fly(alone, HELD, 2));
        try (ExecutorService two = Executors.newFixedThreadPool(2)) {
            Callable<FlightOutcome> second = () -> fly(own(), HELD, 2);
            Callable<FlightOutcome> first = () -> fly(own(), HELD, 1);
            Future<FlightOutcome> later = two.submit(second);
            Future<FlightOutcome> sooner = two.submit(first);
            same(sooner.get(), inTurn.get(0));
            same(later.get(), inTurn.get(1));
        }
        assertThat(inTurn.get(0).figures()).isNotEqualTo(inTurn.get(1).figures());
    }

    private static void same(FlightOutcome one, FlightOutcome other) {
        assertThat(one.figures()).isEqualTo(other.figures());
        assertThat(one.events()).isEqualTo(other.events());
        for (FlightSeries.Kind kind : FlightSeries.Kind.values()) {
            assertThat(one.series().of(kind)).containsExactly(other.series().of(kind));
        }
    }

    /** The flight ends when a run of endurance under the same weight does. */
    @Test
    void aLongFlightEndsWhenEnduranceSays() {
        String text =
                """
                liftwright profile: 1
                start: {on: held, height: 1.5 m, charge: 23 %}
                steps:
                  - hold: 120 s
                """;
        FlightOutcome flown = fly(own(), text, 0);
        Discharge run = PLANT.discharge();
        double[] p = PLANT.parameters().nominal();
        run.load(p, new CellDraw.Expected());
        run.start(
                new StartState(
                        "",
                        RIG.packs().stream()
                                .map(
                                        pack ->
                                                new StartState.Row(
                                                        0,
                                                        pack.id().text(),
                                                        StartState.Place.WHOLE,
                                                        OptionalDouble.empty(),
                                                        OptionalDouble.of(0.23),
                                                        OptionalDouble.empty()))
                                .toList()));
        run.stopAtFirst(true);
        run.follow(new Order.Lift(PLANT.weightN(p)), 120, moment -> {});
        Discharge.End still = run.ended().orElseThrow();
        assertThat(flown.first()).isPresent();
        assertThat(flown.first().get().cause()).isEqualTo(still.cause()).isEqualTo(Cause.RESERVE);
        assertThat(flown.first().get().timeS()).isCloseTo(still.timeS(), within(0.06 * still.timeS()));
        assertThat(flown.end()).as("%s", flown.events()).isEqualTo(FlightOutcome.End.SPENT);
    }

    @Test
    void aKillThatIsPressedDropsIt() {
        String text = HELD + "kill: {at: 2 s, with: remote}\n";
        FlightOutcome flown = fly(own(), text, 0);
        assertThat(flown.end()).isEqualTo(FlightOutcome.End.LOST);
        // 80 ms to the contactor, 20 ms until it is open
        FlightOutcome.Event opened =
                flown.events().stream()
                        .filter(event -> event.part().equals("remote"))
                        .findFirst()
                        .orElseThrow();
        assertThat(opened.timeS()).isCloseTo(2.1, within(0.002));
        // From 1.5 m it cannot take less than a free fall, nor much longer with coasting fans.
        double fall = Math.sqrt(2 * 1.5 / 9.80665);
        assertThat(flown.durationS() - opened.timeS()).isBetween(fall, fall + 0.6);
    }

    @Test
    void anAbortLandsWhereItIs() {
        String text =
                """
                liftwright profile: 1
                start: {on: held, height: 1 m}
                steps:
                  - move to: {right: 5 m, at: 1 m/s}
                  - hold: 3 s
                aborts:
                  - {drift: 0.05 m, then: land}
                """;
        FlightOutcome flown = fly(own(), text, 0);
        assertThat(flown.aborts()).hasSize(1);
        assertThat(flown.end()).as("%s", flown.events()).isEqualTo(FlightOutcome.End.ABORTED);
        double[] height = flown.series().of(FlightSeries.Kind.HEIGHT);
        assertThat(height[height.length - 1]).isLessThan(0.02);
    }

    @Test
    void aFanThatStopsIsFlownThrough() {
        for (String fan : List.of("fan.1", "fan.3", "fan.6")) {
            FlightOutcome flown =
                    fly(own(), HELD + "faults:\n  - {at: 1 s, part: " + fan + "}\n", 0);
            assertThat(flown.end()).as("%s", flown.events()).isEqualTo(FlightOutcome.End.REACHED);
            assertThat(flown.figures().heightLostM()).isLessThan(1);
            assertThat(flown.figures().tiltRad()).isLessThan(Math.PI / 4);
            assertThat(flown.figures().driftM()).isLessThan(3);
        }
    }
}
