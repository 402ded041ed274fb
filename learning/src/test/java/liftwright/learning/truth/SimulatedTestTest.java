package liftwright.learning.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What the simulated tests are worth. */
class SimulatedTestTest {

    @Test
    void oneSeedIsOneTest() {
        Seeded.check(
                5,
                random -> {
                    long seed = random.nextLong();
                    SimulatedTest one = SimulatedTest.draw(seed);
                    SimulatedTest again = SimulatedTest.draw(seed);
                    assertThat(again.hidden()).isEqualTo(one.hidden());
                    assertThat(again.recording().tracks().getLast().samples().si(3))
                            .isEqualTo(one.recording().tracks().getLast().samples().si(3));
                });
    }

    @Test
    void theyDifferAsTheyShould() {
        Map<Hidden.Kind, Integer> kinds = new EnumMap<>(Hidden.Kind.class);
        Set<String> signals = new HashSet<>();
        int[] healthy = new int[1];
        int[] cut = new int[1];
        Seeded.check(
                80,
                random -> {
                    SimulatedTest test = SimulatedTest.draw(random.nextLong());
                    test.hidden().forEach(one -> kinds.merge(one.kind(), 1, Integer::sum));
                    test.recording().tracks().forEach(one -> signals.add(one.signal().name()));
                    healthy[0] += test.hidden().isEmpty() ? 1 : 0;
                    double end = test.recording().tracks().getFirst().samples().lastS();
                    cut[0] += end < test.profile().lengthS() - 1 ? 1 : 0;
                });
        // Of 80 the rarest two may be lacking.
        assertThat(kinds.size())
                .as("%s", kinds)
                .isGreaterThanOrEqualTo(Hidden.Kind.values().length - (Seeded.deep() ? 0 : 2));
        assertThat(healthy[0]).isPositive();
        assertThat(cut[0]).isPositive();
        assertThat(signals).contains("SPEED", "THRUST", "TEMPERATURE", "CHARGE_USED");
    }

    @Test
    void whatIsHiddenTakesLift() {
        Seeded.check(
                25,
                random -> {
                    SimulatedTest test =
                            SimulatedTest.draw(random.nextLong(), SimulatedTest.Sort.TWO, 4);
                    double sum = 0;
                    for (Hidden one : test.hidden()) {
                        double n = test.shareN(one);
                        sum += one.kind().ofInstrument() ? 0 : n;
                        if (one.kind() != Hidden.Kind.LOST_MAGNETS) {
                            assertThat(n).as(test + " " + one).isGreaterThan(-1);
                        }
                    }
                    assertThat(sum).as(test.toString()).isCloseTo(test.lostN(), within(1e-6));
                });
    }
}
