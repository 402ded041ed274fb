package liftwright.flight.disperse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import liftwright.numerics.Work;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RangeFlyingTest {

    private static final FlightsOf OF = RandomFlights.of(3);

    /** Stops after so many flights. */
    private static final class Patience implements Work {
        private final AtomicInteger left;
        private final AtomicInteger told = new AtomicInteger();

        Patience(int flights) {
            left = new AtomicInteger(flights);
        }

        @Override
        public void stage(String name, long total) {
            assertThat(total).isPositive();
        }

        @Override
        public void done(long units) {
            left.addAndGet((int) -units);
            told.addAndGet((int) units);
        }

        @Override
        public boolean stopped() {
            return left.get() <= 0;
        }
    }

    private static RangeFlying flying(int from, int to, int threads) {
        return new RangeFlying(
                new FlightRange(OF, from, to), StandIn.LIMITS, () -> new StandIn(3), threads);
    }

    private static FlightSet flown(int from, int to, int threads) {
        return flying(from, to, threads).fly(FlightSet.none(OF), Work.quiet(), kept -> {}).set();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 8})
    void threadsChangeNoBit(int threads) {
        assertThat(FlightText.of(flown(0, 700, threads)))
                .isEqualTo(FlightText.of(flown(0, 700, 1)));
    }

    /** By hand, one after the other, without anything of what is judged. */
    @Test
    void everyFlightIsTheOneOfItsNumber() {
        FlightSet set = flown(0, 300, 2);
        assertThat(set.flights()).hasSize(301);
        for (Flown each : set.flights()) {
            double wind = 3 + StandIn.deviate(3, "wind", each.number());
            double stiffness = 10 * Math.exp(0.2 * StandIn.deviate(3, "stiffness", each.number()));
            if (each instanceof Flown.Made made) {
                assertThat(made.figures().missM()).isEqualTo(wind * wind / stiffness);
            }
        }
        assertThat(set.flights().stream().filter(Flown.NotMade.class::isInstance)).isNotEmpty();
    }

    /** Stopped anywhere and taken up again, on other threads: byte for byte the whole run. */
    @Test
    void stoppedAndTakenUpAgainIsTheWholeRun() {
        String whole = FlightText.of(flown(1, 200, 1));
        Seeded.check(
                40,
                random -> {
                    FlightSet set = FlightSet.none(OF);
                    int runs = 0;
                    boolean done = false;
                    while (!done) {
                        var work = new Patience(1 + random.nextInt(120));
                        RangeFlying.Result result =
                                flying(1, 200, 1 + random.nextInt(3)).fly(set, work, kept -> {});
                        assertThat(result.set().flights())
                                .as("nothing that was told is lost")
                                .hasSize(set.flights().size() + work.told.get());
                        // Through its file, as a second run finds it.
                        set =
                                FlightReading.of(
                                                FlightText.of(result.set())
                                                        .getBytes(
                                                                java.nio.charset.StandardCharsets
                                                                        .UTF_8))
                                        .found()
                                        .orElseThrow();
                        done = result.whole();
                        assertThat(runs++).isLessThan(500);
                    }
                    assertThat(FlightText.of(set)).isEqualTo(whole);
                });
    }

    @Test
    void whatIsKeptOnTheWayIsAPartOfTheWhole() {
        List<FlightSet> kept = new ArrayList<>();
        RangeFlying.Result result =
                flying(5, 104, 2).fly(FlightSet.none(OF), Work.quiet(), s -> kept.add(s.get()));
        assertThat(kept).hasSizeGreaterThan(3);
        assertThat(kept.getLast()).isEqualTo(result.set());
        for (FlightSet part : kept) {
            assertThat(FlightSet.merge(List.of(result.set(), part)))
                    .isEqualTo(new FlightSet.Merged.Whole(result.set()));
        }
    }

    @Test
    void whatIsThereIsNotFlownAgain() {
        FlightSet whole = flown(1, 50, 1);
        var flown = new AtomicInteger();
        RangeFlying.Result result =
                new RangeFlying(
                                new FlightRange(OF, 10, 60),
                                StandIn.LIMITS,
                                () ->
                                        number -> {
                                            flown.incrementAndGet();
                                            assertThat(number).isBetween(51, 60);
                                            return new StandIn(3).fly(number);
                                        },
                                2)
                        .fly(whole, Work.quiet(), kept -> {});
        assertThat(flown).hasValue(10);
        assertThat(result.set()).isEqualTo(flown(1, 60, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                flying(1, 2, 1)
                                        .fly(
                                                FlightSet.none(RandomFlights.of(4)),
                                                Work.quiet(),
                                                kept -> {}));
    }

    /** What flies is made once for a thread, however many blocks there are. */
    @Test
    void whatFliesIsMadeOnceAThread() {
        var made = new AtomicInteger();
        new RangeFlying(
                        new FlightRange(OF, 1, 300),
                        StandIn.LIMITS,
                        () -> {
                            made.incrementAndGet();
                            return new StandIn(3);
                        },
                        3)
                .fly(FlightSet.none(OF), Work.quiet(), kept -> {});
        assertThat(made.get()).isBetween(1, 3);
    }
}
