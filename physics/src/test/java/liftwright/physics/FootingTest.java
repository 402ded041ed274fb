package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Standing bodies against worked numbers and against every pressure a foot can make. */
class FootingTest {

    /** Moments, worked by hand: 500 N, base 0.6 m, push 1 m up: 150 N; slides first below 0.30. */
    @Test
    void aStandSlidesOrTips() {
        assertThat(Footing.tipsAtN(500, 0.3, 1)).isCloseTo(150, within(1e-12));
        assertThat(Footing.slidesFirstBelow(0.3, 1)).isCloseTo(0.3, within(1e-15));
        assertThat(Footing.slidesAtN(500, 0.29)).isLessThan(150);
        assertThat(Footing.slidesAtN(500, 0.31)).isGreaterThan(150);
    }

    /**
     * Brute force: the ground can push at any point under the body and up to μ N sideways. The
     * greatest push for which some point keeps both balances is the lesser of the two.
     */
    @Test
    void theLesserOfBothIsWhatTheGroundCanHold() {
        Seeded.check(
                100,
                random -> {
                    double load = random.nextDouble(50, 2000);
                    double toEdge = random.nextDouble(0.05, 0.8);
                    double height = random.nextDouble(0.1, 2);
                    double friction = random.nextDouble(0.05, 1);
                    double most = 0;
                    int n = 20_000;
                    double limit = 3 * load;
                    for (int k = 0; k <= n; k++) {
                        double push = limit * k / n;
                        // Where the ground must push so that moments balance.
                        double point = push * height / load;
                        if (point <= toEdge && push <= friction * load) {
                            most = push;
                        }
                    }
                    double told =
                            Math.min(
                                    Footing.tipsAtN(load, toEdge, height),
                                    Footing.slidesAtN(load, friction));
                    assertThat(Math.min(told, limit)).isCloseTo(most, within(1.01 * limit / n));
                    assertThat(
                                    Footing.slidesAtN(load, friction)
                                            < Footing.tipsAtN(load, toEdge, height))
                            .isEqualTo(friction < Footing.slidesFirstBelow(toEdge, height));
                });
    }

    @Test
    void whatIsLiftedIsNotHeld() {
        assertThat(Footing.tipsAtN(-5, 0.3, 1)).isZero();
        assertThat(Footing.tipsAtN(5, -0.3, 1)).isZero();
        assertThat(Footing.slidesAtN(-5, 0.5)).isZero();
        assertThat(Footing.tipsAtN(5, 0.3, 0)).isInfinite();
        assertThat(Footing.tipsAtN(0, 0.3, 0)).isZero();
    }

    /**
     * A stiff person on a foot, thrust along the body, integrated from rest at a lean: comes back
     * while the ground pushes at the edge of the foot, or does not.
     */
    @Test
    void aLeaningPersonComesBackOrDoesNot() {
        Seeded.check(
                60,
                random -> {
                    double share = random.nextDouble(0, 0.95);
                    double toEdge = random.nextDouble(0.08, 0.2);
                    double centre = random.nextDouble(0.7, 1.1);
                    double lean = Footing.greatestLeanRad(share, toEdge, centre);
                    assertThat(rateAfter(lean * 0.98, 0, share, toEdge, centre)).isNegative();
                    assertThat(rateAfter(lean * 1.02, 0, share, toEdge, centre)).isPositive();
                });
        assertThat(Footing.greatestLeanRad(1, 0.15, 1)).isZero();
        assertThat(Footing.greatestLeanRad(1.2, 0.15, 1)).isZero();
        assertThat(Footing.greatestLeanRad(0, 2, 1)).isEqualTo(Math.PI / 2);
    }

    /** l θ̈ = g sin θ − g (1 − s) d/l; small leans for the sway, as in the source. */
    private static double rateAfter(
            double lean, double rate, double share, double toEdge, double centre) {
        double g = 9.80665;
        return Marched.after(
                0.5,
                new double[] {lean, rate},
                s ->
                        new double[] {
                            s[1], g / centre * (Math.sin(s[0]) - (1 - share) * toEdge / centre)
                        })[1];
    }

    /** Upright with a speed: comes to rest before falling over, or does not. */
    @Test
    void aSwayingPersonComesBackOrDoesNot() {
        Seeded.check(
                60,
                random -> {
                    double share = random.nextDouble(0, 0.95);
                    double toEdge = random.nextDouble(0.05, 0.15);
                    double centre = random.nextDouble(0.7, 1.1);
                    double sway = Footing.greatestSwayMps(share, toEdge, centre) / centre;
                    assertThat(endOfSway(0.98 * sway, share, toEdge, centre)).isNegative();
                    assertThat(endOfSway(1.02 * sway, share, toEdge, centre)).isPositive();
                });
        assertThat(Footing.greatestSwayMps(1.1, 0.1, 1)).isZero();
    }

    private static double endOfSway(double rate, double share, double toEdge, double centre) {
        double g = 9.80665;
        // The pendulum of the source is for small leans.
        return Marched.after(
                4,
                new double[] {0, rate},
                s -> new double[] {s[1], g / centre * (s[0] - (1 - share) * toEdge / centre)})[1];
    }
}
