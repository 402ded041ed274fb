package liftwright.flight.disperse;

import static org.assertj.core.api.Assertions.assertThat;

import liftwright.flight.Examples;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.ComputerCrew;
import liftwright.flight.run.FlightCase;
import liftwright.flight.run.FlightRun;
import liftwright.numerics.ProportionInterval;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** The example that flies itself, with every tolerance drawn and ± 30 % on inertia and lag. */
class DispersedFlightsTest {

    private static final FlightsOf OF = RandomFlights.of(7);
    private static final Rig RIG = Examples.rig("curlew");
    private static final Profile PROFILE =
            Examples.profile(RIG, Examples.profileText("curlew", "hold"));
    private static final Plant PLANT = Plant.assembleHeated(RIG);
    private static final LoopDesign DESIGN = new RigLoops(PLANT.balancing()).design();
    private static final int FLIGHTS = 12;

    private static Flights flights() {
        var run = new FlightRun(PLANT, new ComputerCrew(RIG, (LoopDesign.Granted) DESIGN));
        return number -> run.fly(FlightCase.of(PLANT, PROFILE, 7, number));
    }

    private static FlightSet flown(int from, int to, int threads) {
        return new RangeFlying(
                        new FlightRange(OF, from, to),
                        PROFILE.limits(),
                        DispersedFlightsTest::flights,
                        threads)
                .fly(FlightSet.none(OF), Work.quiet(), kept -> {})
                .set();
    }

    /**
     * Height lost under 1 m, tilt under 45°, drift under 3 m in 95 % of them: as few flights cannot
     * show that, but they could refute it. And each differs from the others: something was drawn.
     */
    @Test
    void drawnFlightsHoldAndTheirNumberDecidesEveryBit() {
        FlightSet two = flown(1, FLIGHTS, 2);
        int recovered = 0;
        for (Flown each : two.flights()) {
            assertThat(each).isInstanceOf(Flown.Made.class);
            var figures = ((Flown.Made) each).figures();
            recovered +=
                    figures.heightLostM() < 1
                                    && figures.tiltRad() < Math.PI / 4
                                    && figures.driftM() < 3
                            ? 1
                            : 0;
        }
        assertThat(ProportionInterval.clopperPearson(recovered, FLIGHTS, 0.95).upper())
                .isGreaterThanOrEqualTo(0.95);
        assertThat(
                        two.flights().stream()
                                .map(each -> ((Flown.Made) each).figures().missM())
                                .distinct())
                .hasSize(FLIGHTS);
        // Two of them alone, the later first, by one thread and by three: the same bits.
        for (int threads : new int[] {1, 3}) {
            FlightSet one = flown(5, 5, threads);
            FlightSet other = flown(3, 4, threads);
            assertThat(one.flights().getFirst()).isEqualTo(two.flight(5).orElseThrow());
            assertThat(other.flights()).isEqualTo(two.flights().subList(2, 4));
        }
    }
}
