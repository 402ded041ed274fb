package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.BiConsumer;
import java.util.random.RandomGenerator;
import liftwright.answer.Outcome;
import liftwright.testkit.Seeded;

/** What verdicts on many rigs come to, beside the referee's band and a truth drawn at random. */
final class Tally {

    /** Of fewer rigs, chance alone would break the shares of wrong verdicts now and then. */
    private static final int ENOUGH = 150;

    private int rigs;
    private int certain;
    private int met;
    private int metWrongly;
    private int nominallyMet;
    private int nominallyMetWrongly;
    private int decided;
    private int decidable;

    /**
     * Judges so many drawn rigs and holds what they come to.
     *
     * @param leastCertain share of the rigs on which the referee must have been certain
     */
    static void check(int cases, double leastCertain, BiConsumer<RandomGenerator, Tally> judge) {
        Tally tally = new Tally();
        int[] drawn = {0};
        Seeded.check(
                cases,
                random -> {
                    drawn[0]++;
                    judge.accept(random, tally);
                });
        if (drawn[0] >= cases) { // one case replayed counts for nothing
            tally.hold(leastCertain);
        }
    }

    void certain() {
        certain++;
    }

    /**
     * @param nominal the judged number at the declared values
     * @param truth the number at values drawn from the declared tolerances
     */
    void add(RefereeBand band, double demand, double nominal, double truth, Outcome outcome) {
        rigs++;
        decidable += band.decides(demand) == RefereeBand.Says.OPEN ? 0 : 1;
        decided += outcome == Outcome.CANNOT_BE_TOLD ? 0 : 1;
        if (outcome == Outcome.HOLDS) {
            met++;
            metWrongly += truth < demand ? 1 : 0;
        }
        if (nominal >= demand) {
            nominallyMet++;
            nominallyMetWrongly += truth < demand ? 1 : 0;
        }
    }

    private void hold(double leastCertain) {
        assertThat(rigs).as("rigs judged").isPositive();
        assertThat(certain)
                .as("rigs on which the referee is certain")
                .isGreaterThan((int) (leastCertain * rigs));
        assertThat((double) decided / decidable).as("decided").isGreaterThanOrEqualTo(0.90);
        if (rigs < ENOUGH) {
            return;
        }
        // JCGM 106: a two-sided 95 % band that clears the limit leaves at most 2.5 % behind it.
        assertThat((double) metWrongly / met).as("met wrongly").isLessThanOrEqualTo(0.025);
        // The test has teeth: who judges without a band fails it.
        assertThat((double) nominallyMetWrongly / nominallyMet)
                .as("met wrongly without a band")
                .isGreaterThan(0.025);
    }
}
