package liftwright.learning.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import liftwright.learning.explain.Explained.Finding;
import liftwright.learning.explain.Explained.Weighed;
import org.junit.jupiter.api.Test;

/** Explains drawn linear logs whose causes are known. */
class LinearLogsTest {

    @Test
    void findsCausesAndAccusesFewWithoutOne() {
        int right = 0;
        int listed = 0;
        int told = 0;
        int none = 0;
        int unlisted = 0;
        int accused = 0;
        int healthy = 0;
        int covered = 0;
        int sized = 0;
        for (long seed = 1; seed <= Integer.getInteger("logs", 60); seed++) {
            LinearLog log = new LinearLog(1000 + seed);
            Judged judged = Weighing.of(log.channels, log.predicted, log.doubts, log.hypotheses);
            Finding finding = judged.finding();
            List<Weighed> ranked = judged.ranked();
            List<Weighed> named = judged.named(ranked);
            if (log.unlisted) {
                unlisted++;
                none += finding == Finding.NONE_OF_THESE ? 1 : 0;
            } else if (log.hidden.isEmpty()) {
                healthy++;
                accused +=
                        finding == Finding.NOTHING_BEYOND_DECLARED
                                        || finding == Finding.NONE_OF_THESE
                                ? 0
                                : 1;
            } else {
                listed++;
                boolean first = !named.isEmpty() && isHidden(log, named.getFirst());
                right += first ? 1 : 0;
                told +=
                        first
                                        || (finding == Finding.CANNOT_BE_TOLD_APART
                                                && named.stream()
                                                        .anyMatch(one -> isHidden(log, one)))
                                ? 1
                                : 0;
                for (Weighed one : named) {
                    for (int k = 0; k < log.hidden.size(); k++) {
                        if (one.cause().part().equals("f." + log.hidden.get(k))) {
                            double newtons = 100 * log.sizes.get(k);
                            sized++;
                            covered += newtons >= one.lowN() && newtons <= one.highN() ? 1 : 0;
                        }
                    }
                }
            }
        }
        String tally =
                String.format(
                        Locale.ROOT,
                        "first %d of %d, told %d; none %d of %d; accused %d of %d; covered %d of %d",
                        right,
                        listed,
                        told,
                        none,
                        unlisted,
                        accused,
                        healthy,
                        covered,
                        sized);
        assertThat(listed).as(tally).isGreaterThan(20);
        // Some of the smallest are within what was declared: nothing can tell them. Instruments
        // here
        // are neither late nor drift, which the weighing has to reckon with all the same.
        assertThat(told).as(tally).isGreaterThanOrEqualTo((int) (0.6 * listed));
        assertThat(none).as(tally).isGreaterThanOrEqualTo((int) (0.8 * unlisted));
        assertThat(accused).as(tally).isLessThanOrEqualTo((int) Math.ceil(0.05 * healthy));
        assertThat(covered).as(tally).isBetween((int) (0.8 * sized), (int) (0.97 * sized));
    }

    private static boolean isHidden(LinearLog log, Weighed one) {
        return log.hidden.stream().anyMatch(h -> one.cause().part().equals("f." + h));
    }
}
