package liftwright.review.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Tolerance;
import liftwright.rig.stand.Stand;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class StandBudgetTest {

    /**
     * Sampling (JCGM 101) is the referee. What is left is the sample's own scatter (greatest for
     * two runs, whose tails are Cauchy's), and that the budget takes each error by its slope.
     */
    @Test
    void agreesWithSampledStands() {
        Seeded.check(
                160,
                random -> {
                    Stand stand = RandomStands.next(random);
                    StandBudget budget = StandBudget.of(stand, stand.thrustN());
                    double sampledN = new SampledStand(stand, random).spread(60_000).halfN();
                    // Some 2700 samples lie beyond: 1.9 % of Cauchy's tail, here 4.7 times that.
                    double near = stand.repeats().runs() == 2 ? 0.09 : 0.03;
                    assertThat(budget.expandedN())
                            .as("%s", stand)
                            .isCloseTo(sampledN, within(near * sampledN));
                });
    }

    /** One rectangle alone: 95.45 % of its width, where k = 2 would say 2/√3 of it. */
    @Test
    void aSingleRectangleIsNoNormal() {
        assertThat(ErrorSum.expandedN(List.of(new Distribution.Rectangle(3))))
                .isCloseTo(0.9545 * 3, within(1e-3));
    }

    /**
     * Two like rectangles make a triangle of half-width 2 a: a tail of 2.275 % begins at 2 a − 2 a
     * √(2 · 0.02275) (its area, by hand).
     */
    @Test
    void twoRectanglesAreATriangle() {
        double endN = 2 - 2 * Math.sqrt(2 * 0.02275);
        assertThat(
                        ErrorSum.expandedN(
                                List.of(
                                        new Distribution.Rectangle(1),
                                        new Distribution.Rectangle(1))))
                .isCloseTo(endN, within(1e-3));
        assertThat(ErrorSum.expandedN(List.of(new Distribution.Triangle(2))))
                .isCloseTo(endN, within(1e-3));
    }

    /** Normals add by squares, and t alone is t: 3.31 for 3 degrees (JCGM 100, table G.2). */
    @Test
    void normalsAndStudentsAreThemselves() {
        assertThat(
                        ErrorSum.expandedN(
                                List.of(new Distribution.Normal(3), new Distribution.Normal(4))))
                .isCloseTo(10, within(1e-3));
        assertThat(ErrorSum.expandedN(List.of(new Distribution.Student(1, 3))))
                .isCloseTo(3.31, within(0.005));
        assertThat(ErrorSum.expandedN(List.of(new Distribution.Student(1, 1))))
                .isCloseTo(13.97, within(0.005));
    }

    /**
     * An alignment of 0 ± 6° (k = 2), all else next to nothing: 1/cos − 1 is δ²/2, σ² χ²/2 with one
     * degree of freedom. σ = 3° = 0.052360 rad; standard uncertainty σ²/√2 = 0.19386 % (the
     * variance of χ² is 2), missed σ²/2 = 0.13708 % on average, interval σ²/2 · (5.1889 −
     * 0.00081)/2, the squares of the normal quantiles 2.2779 and 0.0285: 0.35562 %.
     */
    @Test
    void anAngleNearZeroCountsBySquares() {
        StandBudget budget = StandBudget.of(tilted(Tolerance.Form.NORMAL), 100);
        assertThat(standardN(budget, StandItem.ALIGNMENT)).isCloseTo(0.19386, within(0.002));
        assertThat(budget.tiltShare()).isCloseTo(0.0013708, within(1e-5));
        assertThat(budget.expandedN()).isCloseTo(0.35562, within(0.005));
        assertThat(budget.first().one().item()).isEqualTo(StandItem.ALIGNMENT);
    }

    /** The same as a bound: δ² of a rectangle has the mean a²/3 and the variance 4 a⁴/45. */
    @Test
    void aBoundOfAnAngleCountsBySquares() {
        StandBudget budget = StandBudget.of(tilted(Tolerance.Form.BOUND), 100);
        double a = Math.toRadians(6);
        assertThat(standardN(budget, StandItem.ALIGNMENT))
                .isCloseTo(100 * a * a / 2 * Math.sqrt(4 / 45.0), within(0.004));
        assertThat(budget.tiltShare()).isCloseTo(a * a / 6, within(2e-5));
        double low = 0.02275 * 0.02275;
        double high = 0.97725 * 0.97725;
        assertThat(budget.expandedN()).isCloseTo(100 * a * a / 2 * (high - low) / 2, within(0.005));
    }

    private static Stand tilted(Tolerance.Form form) {
        Stand old = byHand();
        return new Stand(
                old.name(),
                100,
                0.02,
                new Stand.Cell(
                        250,
                        1e-7,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                Optional.empty(),
                Optional.of(new Stand.Doubted(0, new Stand.Doubt(Math.toRadians(6), form))),
                Optional.empty(),
                new Stand.Clearance.Measured(new Stand.Doubt(1e-7, Tolerance.Form.NORMAL)),
                Optional.empty(),
                new Stand.Repeats(4, 1e-7),
                List.of());
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
     * u = 0.73217 N; cell arm 0.25/0.53607 = 46.64 %. The expanded uncertainty lies between k = 2
     * with t's own scale (2 √(0.36521 + 0.0625) = 1.308 N) and twice u (1.464 N).
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
        assertThat(budget.combinedN()).isCloseTo(0.73217, within(5e-4));
        assertThat(budget.expandedN()).isBetween(1.308, 1.4643);
        assertThat(budget.first().one().item()).isEqualTo(StandItem.CELL_ARM);
        assertThat(budget.share(budget.first().one())).isCloseTo(0.4664, within(5e-4));
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
                .map(StandBudget.Halved::one)
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
                .isCloseTo(2 * one.expandedN(), within(1e-6));
    }

    /** The item named first is the one whose halving helps most, whichever way one counts. */
    @Test
    void halvingTheFirstItemHelpsMost() {
        Seeded.check(
                60,
                random -> {
                    Stand stand = RandomStands.next(random);
                    StandBudget budget = StandBudget.of(stand, stand.thrustN());
                    assertThat(budget.contributions()).isNotEmpty();
                    for (StandBudget.Halved each : budget.contributions()) {
                        assertThat(budget.first().halvedN()).isLessThanOrEqualTo(each.halvedN());
                        assertThat(each.halvedN())
                                .isLessThanOrEqualTo(budget.expandedN() * (1 + 1e-6));
                    }
                });
    }
}
