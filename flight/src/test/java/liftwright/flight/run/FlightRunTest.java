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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
                        .craft(PLANT.parameters().nominal(), RotorInertia.of(RIG).table().nominal())
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

    @Test
    void aGustStrikesWhenTheProfileSays() {
        String gust = "mean: 3 m/s, gust: 4 m/s, gust at: 2 s, gust length: 2 m";
        FlightPath calm = fly(own(), HELD, 0).path();
        FlightPath struck = fly(own(), HELD.replace("mean: 3 m/s", gust), 0).path();
        int moment = 0;
        while (struck.placeM()[3 * moment] == calm.placeM()[3 * moment]) {
            moment++;
        }
        // Not before it, and within what 2 m of air take to pass at half of the gust's speed.
        assertThat(struck.timesS()[moment]).isBetween(2.0, 3.0);
    }

    private static void same(FlightOutcome one, FlightOutcome other) {
        assertThat(one.figures()).isEqualTo(other.figures());
        assertThat(one.events()).isEqualTo(other.events());
        for (FlightSeries.Kind kind : FlightSeries.Kind.values()) {
            assertThat(one.series().of(kind)).containsExactly(other.series().of(kind));
        }
        assertThat(one.path().placeM()).containsExactly(other.path().placeM());
        assertThat(one.path().turned()).containsExactly(other.path().turned());
    }

    /** What another bit of charge gives in time is what a run of endurance says. */
    @Test
    void aLongFlightEndsWhenEnduranceSays() {
        double[] flownS = new double[2];
        double[] runS = new double[2];
        int[] percent = {22, 25};
        for (int k = 0; k < 2; k++) {
            String text =
                    """
                    liftwright profile: 1
                    start: {on: held, height: 1.5 m, charge: CHARGE %}
                    steps:
                      - hold: 120 s
                    """
                            .replace("CHARGE", Integer.toString(percent[k]));
            FlightOutcome flown = fly(own(), text, 0);
            assertThat(flown.first().orElseThrow().cause()).isEqualTo(Cause.RESERVE);
            assertThat(flown.end()).as("%s", flown.events()).isEqualTo(FlightOutcome.End.SPENT);
            flownS[k] = flown.first().get().timeS();
            Discharge.End still = hover(percent[k] / 100.0);
            assertThat(still.cause()).isEqualTo(Cause.RESERVE);
            runS[k] = still.timeS();
            // Rotors that spool up take what a hover takes in a quarter of a second: 8 of
            // 120 kg·mm² at 2,000 rad/s, 1.9 kJ, of some 8 kW; holding in wind costs a hundredth.
            assertThat(flownS[k]).isBetween(0.99 * runS[k] - 0.25, runS[k] + 0.25);
        }
        assertThat(flownS[1] - flownS[0]).isCloseTo(runS[1] - runS[0], within(0.02 * runS[1]));
    }

    private static Discharge.End hover(double charge) {
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
                                                        OptionalDouble.of(charge),
                                                        OptionalDouble.empty()))
                                .toList()));
        run.stopAtFirst(true);
        run.follow(new Order.Lift(PLANT.weightN(p)), 120, moment -> {});
        return run.ended().orElseThrow();
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

    /**
     * What {@code review failures} says is borne is recovered, what it says is not is not: a fan, a
     * pack, and a fan that stays at full throttle against exchanged channels, no gyro, no power.
     */
    @ParameterizedTest
    @CsvSource({
        "fan.1, fan, true",
        "fan.3, controller, true",
        "fan.6, lost sync, true",
        "p.2, pack, true",
        "fan.6, stuck full, true",
        "fan.4, wrong channel, false",
        "gyro, sensor, false",
        "main, contactor, false"
    })
    void whatReviewCallsBorneIsRecovered(String part, String fault, boolean borne) {
        String text = HELD + "faults:\n  - {at: 1 s, part: " + part + ", fault: " + fault + "}\n";
        FlightOutcome flown = fly(own(), text, 0);
        FlightOutcome.Figures figures = flown.figures();
        boolean recovered =
                flown.end() == FlightOutcome.End.REACHED
                        && figures.heightLostM() < 1
                        && figures.tiltRad() < Math.PI / 4
                        && figures.driftM() < 3;
        assertThat(recovered).as("%s %s", flown.events(), figures).isEqualTo(borne);
    }

    /** Beyond what its record takes, a longer flight allocates nothing. */
    @Test
    void aStepAllocatesNothing() {
        FlightRun run = own();
        String shorter = HELD.replace("4 s", "1 s").replace("wind: {mean: 3 m/s}\n", "");
        String longer = shorter.replace("1 s", "5 s");
        fly(run, longer, 0);
        long few = bytes(run, shorter);
        long many = bytes(run, longer);
        long rows = Math.round(4 / 0.0292) + 2;
        long record = 2L * (FlightSeries.Kind.values().length + 1) * Double.BYTES * (rows + 50);
        int numbers = 1 + 3 + 4 + RIG.fans().size();
        record += 2L * numbers * Double.BYTES * (4 * FlightPath.PER_S + 2);
        assertThat(many - few).isLessThan(record);
    }

    private static long bytes(FlightRun run, String text) {
        var threads =
                (com.sun.management.ThreadMXBean)
                        java.lang.management.ManagementFactory.getThreadMXBean();
        FlightCase flight = FlightCase.of(PLANT, Examples.profile(RIG, text), 1, 0);
        long id = Thread.currentThread().threadId();
        long before = threads.getThreadAllocatedBytes(id);
        run.fly(flight);
        return threads.getThreadAllocatedBytes(id) - before;
    }
}
