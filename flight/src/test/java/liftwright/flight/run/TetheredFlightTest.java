package liftwright.flight.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import liftwright.flight.Examples;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.profile.ProfileReading;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** Flights in the lines of the declared tether: slack while it flies, and they catch it. */
class TetheredFlightTest {

    private static final Rig RIG = Examples.rig("curlew");
    private static final Plant PLANT = Plant.assembleHeated(RIG);

    private static final String DROPS =
            """
            liftwright profile: 1
            start: {on: held, height: 1.35 m, tethered: yes}
            steps:
              - hold: 12 s
            kill: {at: 3 s, with: remote}
            wind: {mean: 0 m/s, rough: no}
            """;

    private static FlightOutcome flown(String text) {
        var loops = (LoopDesign.Granted) new RigLoops(PLANT.balancing()).design();
        return new FlightRun(PLANT, new ComputerCrew(RIG, loops))
                .fly(FlightCase.of(PLANT, Examples.profile(RIG, text), 1, 0));
    }

    /**
     * Energy of a fall into a line: F = W + √(W² + 2 k W d) without damping and without what
     * coasting fans still give, which both take off it.
     */
    @Test
    void aDeadRigFallsIntoItsLineAndHangs() {
        FlightOutcome flown = flown(DROPS);
        assertThat(flown.events()).anyMatch(event -> event.words().equals("a line pulls"));
        double[] times = flown.series().timesS();
        double[] pull = flown.series().of(FlightSeries.Kind.PULL);
        double[] height = flown.series().of(FlightSeries.Kind.HEIGHT);
        for (int k = 0; k < times.length && times[k] < 3; k++) {
            assertThat(pull[k]).as("slack at %s s", times[k]).isZero();
        }
        double weightN = PLANT.weightN(PLANT.parameters().nominal());
        // Straight with the frame 1.05 m up: 3.5 m less 2.2 m of line less 0.25 m to its ring.
        double fallM = 1.35 - 1.05;
        double hardest = weightN + Math.sqrt(weightN * weightN + 2 * 10_000 * weightN * fallM);
        double most = Arrays.stream(pull).max().orElseThrow();
        assertThat(most).isBetween(0.5 * hardest, hardest);
        // Then it hangs, by its weight over 10 kN/m lower.
        int last = times.length - 1;
        assertThat(height[last]).isCloseTo(1.05 - weightN / 10_000, within(0.03));
        double mean =
                IntStream.range(0, times.length)
                        .filter(k -> times[k] > times[last] - 4)
                        .mapToDouble(k -> pull[k])
                        .average()
                        .orElseThrow();
        assertThat(mean).isCloseTo(weightN, within(0.05 * weightN));
    }

    @Test
    void withoutATetherItFallsToTheGround() {
        FlightOutcome flown = flown(DROPS.replace(", tethered: yes", ""));
        assertThat(flown.path().lines()).isEmpty();
        assertThat(Arrays.stream(flown.series().of(FlightSeries.Kind.HEIGHT)).min().orElseThrow())
                .isLessThan(0.05);
    }

    @Test
    void aTetherThatIsNotDeclaredIsTold() {
        Rig free = Examples.rig("sandpiper");
        ProfileReading read =
                ProfileReading.read(
                        "profile.yaml",
                        DROPS.replace("kill: {at: 3 s, with: remote}\n", "")
                                .getBytes(java.nio.charset.StandardCharsets.UTF_8),
                        free);
        assertThat(read.profile()).isEmpty();
        assertThat(read.problems())
                .anyMatch(problem -> problem.toString().contains("declares none"));
    }
}
