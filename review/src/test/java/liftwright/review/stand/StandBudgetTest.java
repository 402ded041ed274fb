package liftwright.review.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import liftwright.quantity.Tolerance;
import liftwright.review.stand.Contribution.Distribution;
import liftwright.rig.stand.Stand;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class StandBudgetTest {

    private static final double SINGLE_RECTANGLE = 2 / Math.sqrt(3) / 0.9545;

    /**
     * Sampling (JCGM 101) is the referee: within 5 % where the law of propagation promises it.
     * Where a single rectangle rules the budget is never less, and at most as much more as for a
     * rectangle alone; with two or three runs, whose t has hardly a variance, at most 10 % more.
     */
    @Test
    void agreesWithSampledStands() {
        var kept = new AtomicInteger();
        Seeded.check(
                240,
                random -> {
                    Stand stand = RandomStands.next(random);
                    StandBudget budget = StandBudget.of(stand, stand.thrustN());
                    double sampledN = new SampledStand(stand, random).spread(40_000).halfN();
                    Contribution first = budget.first();
                    if (first.distribution() == Distribution.RECTANGLE
                            && budget.share(first) > 0.55) {
                        assertThat(budget.expandedN() / sampledN)
                                .as("%s", stand)
                                .isBetween(0.95, SINGLE_RECTANGLE * 1.02);
                    } else if (stand.repeats().runs() < 4) {
                        assertThat(budget.expandedN() / sampledN)
                                .as("%s", stand)
                                .isBetween(0.95, 1.1);
                    } else {
                        kept.incrementAndGet();
                        assertThat(budget.expandedN())
                                .as("%s", stand)
                                .isCloseTo(sampledN, within(0.05 * sampledN));
                    }
                });
        if (System.getProperty("seed", "").indexOf('/') < 0) {
            assertThat(kept.get()).as("stands judged by 5 %%").isGreaterThanOrEqualTo(100);
        }
    }

    /** Standard deviations, which know no coverage, agree where there are enough runs for one. */
    @Test
    void standardUncertaintiesAreThoseOfTheSample() {
        Seeded.check(
                60,
                random -> {
                    Stand stand = withRuns(RandomStands.next(random), 400);
                    StandBudget budget = StandBudget.of(stand, stand.thrustN());
                    double deviationN = new SampledStand(stand, random).spread(20_000).deviationN();
                    assertThat(budget.combinedN())
                            .as("%s", stand)
                            .isCloseTo(deviationN, within(0.03 * deviationN));
                });
    }

    private static Stand withRuns(Stand old, int runs) {
        return new Stand(
                old.name(),
                old.thrustN(),
                old.wantedShare(),
                old.cell(),
                old.lever(),
                old.alignment(),
                old.jet(),
                old.clearance(),
                old.air(),
                new Stand.Repeats(runs, old.repeats().scatterShare()),
                old.defaults());
    }

    /**
     * A budget in the manner of JCGM 100, annex H, by hand. 100 N on a cell of 250 N through arms
     * of 200 mm and 100 mm: 200 N on the cell, half a newton of thrust for one at the cell. Class
     * 0.1 % of 250 N: 0.25 N/√3 · ½ = 0.07217 N. Zero 0.3 N: 0.3/√3 · ½ = 0.08660 N. Arms ± 1 mm:
     * 100 · 0.5/200 = 0.25 N and 100 · 0.5/100 = 0.5 N. Walls measured ± 0.4 %: 0.2 N. Four runs of
     * 0.5 %: 0.5/√4 = 0.25 N, times t(95.45 %, 3) = 3.3068 (JCGM 100, table G.2: 3.31) over 2:
     * 0.41335 N. Sum of squares 0.00521 + 0.0075 + 0.0625 + 0.25 + 0.04 + 0.17086 = 0.53607 N², so
     * u = 0.73217 N and U = 1.4643 N; cell arm 0.25/0.53607 = 46.64 %, halved U = 2 √(0.53607 −
     * 0.1875) = 1.1808 N.
     */
    @Test
    void agreesWithABudgetByHand() {
        StandBudget budget = StandBudget.of(byHand(), 100);
        assertThat(budget.loadN()).isCloseTo(200, within(1e-9));
        assertThat(standardN(budget, StandItem.CELL_CLASS)).isCloseTo(0.07217, within(5e-6));
        assertThat(standardN(budget, StandItem.ZERO_DRIFT)).isCloseTo(0.08660, within(5e-6));
        assertThat(standardN(budget, StandItem.FAN_ARM)).isCloseTo(0.25, within(1e-9));
        assertThat(standardN(budget, StandItem.CELL_ARM)).isCloseTo(0.5, within(1e-9));
        assertThat(standardN(budget, StandItem.WALLS)).isCloseTo(0.2, within(1e-9));
        assertThat(standardN(budget, StandItem.REPEATS)).isCloseTo(0.41335, within(5e-4));
        assertThat(budget.expandedN()).isCloseTo(1.4643, within(5e-4));
        assertThat(budget.first().item()).isEqualTo(StandItem.CELL_ARM);
        assertThat(budget.share(budget.first())).isCloseTo(0.4664, within(5e-4));
        assertThat(budget.halvedN(budget.first())).isCloseTo(1.1808, within(5e-4));
    }

    static Stand byHand() {
        return new Stand(
                "by hand",
                100,
                0.02,
                new Stand.Cell(
                        250,
                        0.001,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(0.3),
                        Optional.empty(),
                        Optional.empty()),
                Optional.of(new Stand.Lever(normal(0.2, 0.001), normal(0.1, 0.001))),
                Optional.empty(),
                Optional.empty(),
                new Stand.Clearance.Measured(new Stand.Doubt(0.004, Tolerance.Form.NORMAL)),
                Optional.empty(),
                new Stand.Repeats(4, 0.005),
                List.of());
    }

    private static Stand.Doubted normal(double si, double half) {
        return new Stand.Doubted(si, new Stand.Doubt(half, Tolerance.Form.NORMAL));
    }

    private static double standardN(StandBudget budget, StandItem item) {
        return budget.contributions().stream()
                .filter(one -> one.item() == item)
                .findFirst()
                .orElseThrow()
                .standardN();
    }

    /** Twice the stand and twice the thrust is the same share: nothing depends on the unit. */
    @Test
    void sharesDoNotDependOnTheSizeOfTheStand() {
        StandBudget one = StandBudget.of(byHand(), 100);
        Stand old = byHand();
        Stand twice =
                new Stand(
                        old.name(),
                        200,
                        old.wantedShare(),
                        new Stand.Cell(
                                500,
                                0.001,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(0.6),
                                Optional.empty(),
                                Optional.empty()),
                        old.lever(),
                        old.alignment(),
                        old.jet(),
                        old.clearance(),
                        old.air(),
                        old.repeats(),
                        old.defaults());
        assertThat(StandBudget.of(twice, 200).expandedN())
                .isCloseTo(2 * one.expandedN(), within(1e-9));
    }

    /** The item named first is the one whose halving helps most, whichever way one counts. */
    @Test
    void halvingTheFirstItemHelpsMost() {
        Seeded.check(
                300,
                random -> {
                    Stand stand = RandomStands.next(random);
                    StandBudget budget = StandBudget.of(stand, stand.thrustN());
                    assertThat(budget.contributions()).isNotEmpty();
                    for (Contribution one : budget.contributions()) {
                        assertThat(budget.halvedN(budget.first()))
                                .isLessThanOrEqualTo(budget.halvedN(one));
                        assertThat(budget.halvedN(one)).isLessThanOrEqualTo(budget.expandedN());
                    }
                });
    }
}
