package liftwright.review.failures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.review.failures.FaultFigures.ByArms;
import liftwright.review.failures.FaultFigures.ByComputer;
import liftwright.review.failures.FaultFigures.ByNothing;
import liftwright.review.failures.FaultFigures.Held;
import liftwright.review.failures.FaultFigures.Reserves;
import liftwright.review.failures.FaultFigures.Trim;
import org.junit.jupiter.api.Test;

/** What becomes of a rig with figures that are given. */
class FaultFateTest {

    private static final double NONE = Double.NEGATIVE_INFINITY;

    /** Half a metre, 3.2 m/s: a fall from there comes down with √(2 · 9.80665 · 0.5). */
    private static Asked asked(boolean yawHeld) {
        return new Asked(1.05, 2, 2, 0.3, 0.5, 0.1, yawHeld, true, 0.5, 3.2, 0.6);
    }

    private static FaultFate fate(double fullLiftN, Held held) {
        return FaultFate.of(new FaultFigures(1000, fullLiftN, held), asked(true));
    }

    private static Trim trim(double liftN, Reserves atWeight, Reserves coming) {
        return new Trim(liftN, atWeight, coming, 0.9 * Math.min(1000, liftN));
    }

    private static Reserves all(double radps2) {
        return new Reserves(radps2, radps2, radps2);
    }

    @Test
    void whatHoldsEveryAxisFliesOn() {
        Trim trim = trim(1300, all(3), all(3));
        FaultFate fate = fate(1500, new ByComputer(trim, trim));
        assertThat(fate.outcome()).isEqualTo(FaultOutcome.FLIES_ON);
        // Flying on: 1300 / 1000 / 1.05 − 1 = 0.238 and 3 / 2; a landing with 0.9 of the weight
        // carried, 3.2 / √(2 g 0.5 0.1) − 1 = 2.23, held back by the reserve: 1.5.
        assertThat(fate.margin()).isCloseTo(1.5, within(1e-12));
        assertThat(fate.impactMps()).isZero();
    }

    @Test
    void theLeastReserveOfTheBetterWayCounts() {
        Trim trim = trim(1300, new Reserves(3, 0.5, 3), new Reserves(3, 0.8, 3));
        FaultFate fate = fate(1500, new ByComputer(trim, trim));
        assertThat(fate.outcome()).isEqualTo(FaultOutcome.FLIES_ON);
        assertThat(fate.margin()).isCloseTo(0.8 / 2, within(1e-12));
    }

    /** One rotor of a hexarotor with alternating spins: yaw alone is lost. */
    @Test
    void whatKeepsRollAndPitchTurns() {
        Trim held = trim(900, all(NONE), all(-0.1));
        Trim free = trim(1400, new Reserves(3, 3, -1), all(3));
        FaultFate fate = fate(1500, new ByComputer(held, free));
        assertThat(fate.outcome()).isEqualTo(FaultOutcome.TURNS);
        assertThat(fate.margin()).isCloseTo(-0.1 / 0.3, within(1e-4));
        FaultFate let =
                FaultFate.of(
                        new FaultFigures(1000, 1500, new ByComputer(held, free)), asked(false));
        assertThat(let.outcome()).isEqualTo(FaultOutcome.FLIES_ON);
        assertThat(let.margin()).isCloseTo(1.5, within(1e-12));
    }

    @Test
    void whatIsTooWeakButUprightSinks() {
        Trim trim = trim(800, all(NONE), all(4));
        FaultFate fate = fate(900, new ByComputer(trim, trim));
        assertThat(fate.outcome()).isEqualTo(FaultOutcome.SINKS);
        double impact = Math.sqrt(2 * 9.80665 * 0.5 * (1 - 0.72));
        assertThat(fate.impactMps()).isCloseTo(impact, within(1e-12));
        assertThat(fate.margin()).isCloseTo(Math.min(3.2 / impact - 1, 2), within(1e-12));
    }

    @Test
    void whatCannotHoldRollTips() {
        Trim trim = trim(0, all(NONE), all(NONE));
        FaultFate fate = fate(900, new ByComputer(trim, trim));
        assertThat(fate.outcome()).isEqualTo(FaultOutcome.TIPS);
        assertThat(fate.margin()).isCloseTo(-2, within(1e-12));
    }

    @Test
    void whatPushesNoMoreFalls() {
        FaultFate fate = fate(0, new ByArms(1, 1));
        assertThat(fate.outcome()).isEqualTo(FaultOutcome.FALLS);
        assertThat(fate.impactMps()).isCloseTo(3.1315, within(1e-4));
        assertThat(fate.margin()).isCloseTo(3.2 / 3.131557 - 1, within(1e-6));
    }

    @Test
    void armsHoldWhatTheirReachHolds() {
        assertThat(fate(1200, new ByArms(0.8, 0.9)))
                .isEqualTo(new FaultFate(FaultOutcome.FLIES_ON, 0.8 / 0.5, 0));
        assertThat(fate(1200, new ByArms(-0.2, 0.4)).outcome()).isEqualTo(FaultOutcome.TURNS);
        assertThat(fate(1200, new ByArms(-0.2, -0.1)).outcome()).isEqualTo(FaultOutcome.TIPS);
        assertThat(fate(900, new ByArms(0.8, 0.9)).outcome()).isEqualTo(FaultOutcome.SINKS);
        assertThat(fate(400, new ByArms(0.8, 0.9)).outcome()).isEqualTo(FaultOutcome.FALLS);
    }

    @Test
    void whereNothingSteersAllTurningIsTooMuch() {
        assertThat(fate(1200, new ByNothing(0.05, 0.08)))
                .isEqualTo(new FaultFate(FaultOutcome.FLIES_ON, 1 - 0.08 / 0.1, 0));
        assertThat(fate(1200, new ByNothing(0.05, 0.3)).outcome()).isEqualTo(FaultOutcome.TURNS);
        assertThat(fate(1200, new ByNothing(0.3, 0)).outcome()).isEqualTo(FaultOutcome.TIPS);
    }

    /** A margin never rises when any figure falls. */
    @Test
    void lessIsNeverBetter() {
        liftwright.testkit.Seeded.check(
                2000,
                random -> {
                    double lift = random.nextDouble(200, 1600);
                    double[] at = random.doubles(6, -3, 6).toArray();
                    double less = random.nextDouble();
                    Trim more = trim(lift, reserves(at, 0, 0), reserves(at, 3, 0));
                    Trim fewer =
                            new Trim(
                                    lift - less * 100,
                                    reserves(at, 0, less),
                                    reserves(at, 3, less),
                                    more.comingN() - less * 50);
                    assertThat(fate(1, new ByComputer(fewer, fewer)).margin())
                            .isLessThanOrEqualTo(fate(1, new ByComputer(more, more)).margin());
                    double left = random.nextDouble(-2, 1);
                    assertThat(fate(lift - less * 100, new ByArms(left - less, left)).margin())
                            .isLessThanOrEqualTo(fate(lift, new ByArms(left, left)).margin());
                });
    }

    private static Reserves reserves(double[] of, int from, double less) {
        return new Reserves(of[from] - less, of[from + 1] - less, of[from + 2] - less);
    }
}
