package liftwright.learning.trend;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.learning.explain.CauseKind;
import liftwright.learning.explain.Departures;
import liftwright.learning.replay.InStep;
import liftwright.learning.truth.SimulatedLogbook;
import liftwright.numerics.Gaussian;
import liftwright.numerics.Work;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Logbooks drawn from the simulator that has effects which no fit knows: in half of them a joint
 * gets worse from test to test, in the others nothing does.
 */
class TrendSearchTest {

    private static final int LOGBOOKS = 4;
    private static final int TESTS = 5;
    private static final int DAYS = 7;
    private static final int MOST_FANS = 3;
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);

    /** What came of one logbook. */
    private record Told(SimulatedLogbook logbook, List<PartTrend> claims) {

        boolean isRight() {
            return claims.stream()
                    .findFirst()
                    .filter(
                            one ->
                                    isJoint(one.part())
                                            || one.asWell().stream().anyMatch(this::isJoint))
                    .isPresent();
        }

        private boolean isJoint(WornPart part) {
            return part.cause().kind() == CauseKind.JOINT
                    && logbook.isLikeJoint(part.cause().part());
        }

        int sizesInside() {
            double z = Gaussian.quantile(0.975);
            double declared = claims.getFirst().part().declaredSi(logbook.rig());
            int inside = 0;
            for (int k = 0; k < claims.getFirst().found().size(); k++) {
                PartTrend.OfTest one = claims.getFirst().found().get(k);
                double truth = declared + logbook.ohm().get(k);
                inside += Math.abs(one.si() - truth) <= z * one.deviation() ? 1 : 0;
            }
            return inside;
        }

        boolean isSlopeInside() {
            double truth =
                    (logbook.ohm().getLast() - logbook.ohm().getFirst()) / (DAYS * (TESTS - 1));
            Trend trend = claims.getFirst().trend().orElseThrow();
            return trend.low() <= truth && truth <= trend.high();
        }

        @Override
        public String toString() {
            return logbook.joint()
                    + " of "
                    + logbook.rig().fans().size()
                    + " fans, at most "
                    + logbook.ohm().getLast()
                    + " told "
                    + claims.stream()
                            .map(
                                    one ->
                                            one.part().cause().words()
                                                    + " "
                                                    + one.told()
                                                    + " "
                                                    + one.trend()
                                                    + " as well "
                                                    + one.asWell().size())
                            .toList();
        }
    }

    private static Told told(long seed, boolean rises) {
        var logbook = new SimulatedLogbook(seed, rises, TESTS, MOST_FANS);
        List<DatedTest> tests = new ArrayList<>();
        for (int k = 0; k < TESTS; k++) {
            Departures departures =
                    Departures.of(
                            logbook.rig(),
                            InStep.of(logbook.rig(), logbook.recordings().get(k)),
                            1,
                            Work.quiet());
            tests.add(
                    new DatedTest(
                            "t" + k, FIRST.plusDays((long) DAYS * k), logbook.rig(), departures));
        }
        return new Told(
                logbook,
                TrendSearch.of(tests).stream().filter(one -> one.told().isClaim()).toList());
    }

    @Test
    void namesTheJointThatRisesAndFewOthers() {
        List<Long> seeds = new ArrayList<>();
        Seeded.check(LOGBOOKS, random -> seeds.add(random.nextLong()));
        List<Told> rising = new ArrayList<>();
        List<Told> still = new ArrayList<>();
        IntStream.range(0, 2 * seeds.size())
                .parallel()
                .forEach(
                        k -> {
                            Told one = told(seeds.get(k / 2), k % 2 == 0);
                            synchronized (rising) {
                                (k % 2 == 0 ? rising : still).add(one);
                            }
                        });
        List<Told> right = rising.stream().filter(Told::isRight).toList();
        long alarms = still.stream().filter(one -> !one.claims.isEmpty()).count();
        long slopes = right.stream().filter(Told::isSlopeInside).count();
        int sizes = right.stream().mapToInt(Told::sizesInside).sum();
        String as =
                right.size()
                        + " of "
                        + rising.size()
                        + " found, "
                        + alarms
                        + " of "
                        + still.size()
                        + " accused, slopes inside "
                        + slopes
                        + ", sizes inside "
                        + sizes
                        + " of "
                        + right.size() * TESTS
                        + "\n"
                        + rising
                        + "\n"
                        + still;
        assertThat(right.size()).as(as).isGreaterThanOrEqualTo(rising.size() / 2);
        assertThat(alarms).as(as).isLessThanOrEqualTo(Math.max(1, still.size() / 8));
        assertThat(slopes).as(as).isGreaterThanOrEqualTo(right.size() * 3L / 4);
        assertThat(sizes).as(as).isGreaterThanOrEqualTo(right.size() * TESTS * 3 / 4);
    }
}
