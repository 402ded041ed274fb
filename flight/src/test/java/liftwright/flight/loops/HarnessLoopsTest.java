package liftwright.flight.loops;

import static liftwright.flight.loops.DelayedRoots.pade;
import static liftwright.flight.loops.DelayedRoots.times;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Loops round a body that gives: their frequency response against one of complex matrices, their
 * stability against the roots of their polynomials.
 */
class HarnessLoopsTest {

    private static double between(RandomGenerator random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static org.hipparchus.complex.Complex z(double re, double im) {
        return new org.hipparchus.complex.Complex(re, im);
    }

    /**
     * Rate of the inertia that is pushed by 1 N·m, of two on a spring: the impedance matrix of
     * both, −ω² J + (k + jωc) (1, −1; −1, 1), solved by Cramer's rule.
     */
    private static org.hipparchus.complex.Complex pushed(
            double frame, double hung, double spring, double damper, double w) {
        var link = z(spring, w * damper);
        var own = link.add(-w * w * frame);
        var other = link.add(-w * w * hung);
        var determinant = own.multiply(other).subtract(link.multiply(link));
        return other.divide(determinant).multiply(z(0, w));
    }

    @Test
    void aBodyThatGivesAnswersAsTwoInertiasOnASpringDo() {
        Seeded.check(
                300,
                random -> {
                    double whole = between(random, 1, 40);
                    double share = between(random, 0.05, 0.9);
                    double hz = between(random, 3, 8);
                    double damping = between(random, 0.05, 0.3);
                    double w = 2 * Math.PI * between(random, 0.2, 30);
                    double hung = share * whole;
                    double frame = whole - hung;
                    double reduced = frame * hung / whole;
                    double spring = reduced * Math.pow(2 * Math.PI * hz, 2);
                    double damper = 2 * damping * Math.sqrt(spring * reduced);
                    var referee = pushed(frame, hung, spring, damper, w).multiply(z(0, w * whole));
                    Complex found = new FlexMode(2 * Math.PI * hz, damping, share).at(w);
                    assertThat(found.re()).isCloseTo(referee.getReal(), within(1e-8));
                    assertThat(found.im()).isCloseTo(referee.getImaginary(), within(1e-8));
                });
    }

    /** K/(s (s + 1) (s + 2)). */
    private static Transfer third(double k) {
        return w ->
                new Complex(k, 0)
                        .over(new Complex(0, w).times(new Complex(1, w)).times(new Complex(2, w)));
    }

    /** It is stable below K = 6, by Routh: any text on control. */
    @Test
    void aTextbookLoopIsStableBelowSix() {
        for (double k : new double[] {0.1, 1, 3, 5.9, 6.1, 10, 60}) {
            Nyquist found = Nyquist.of(third(k), 1e-3, 1e3);
            assertThat(found.stable()).as("K = %s", k).isEqualTo(k < 6);
        }
        // Where it swings, at √2 rad/s, it runs through −1.
        Nyquist at = Nyquist.of(third(6), 1e-3, 1e3);
        assertThat(at.distance()).isLessThan(1e-3);
        assertThat(at.radps()).isCloseTo(Math.sqrt(2), within(1e-3));
    }

    /** A rate loop with its integral, lags, delay and mode. */
    private record Random(double gain, double corner, double lagS, double delayS, FlexMode mode) {

        static Random of(RandomGenerator random) {
            return new Random(
                    Math.exp(between(random, Math.log(3), Math.log(80))),
                    between(random, 0.1, 2),
                    between(random, 0.005, 0.08),
                    between(random, 0.004, 0.05),
                    new FlexMode(
                            2 * Math.PI * between(random, 1, 8),
                            between(random, 0.05, 0.3),
                            between(random, 0.1, 0.85)));
        }

        Cascade cascade() {
            return new Cascade(
                            new Actuation(lagS, 0, 0, delayS, 0, 0),
                            List.of(new Cascade.Stage(gain, corner, 0, false)))
                    .giving(mode);
        }

        /** Greatest real part of the roots of 1 + L, the delay as a fraction of sixth order. */
        double rightmost() {
            double w = mode.radps();
            double[] up = {1, 2 * mode.damping() / w, 1 / (w * w * (1 - mode.share()))};
            double[] under = {1, 2 * mode.damping() / w, 1 / (w * w)};
            double[] one = times(times(new double[] {gain * corner, gain}, up), pade(-delayS));
            double[] other = times(times(new double[] {0, 0, 1}, under), pade(delayS));
            other = times(other, new double[] {1, lagS});
            return DelayedRoots.rightmost(one, other, delayS);
        }

        /** Least |1 + L| on a fine grid, the body by complex matrices. */
        double nearest() {
            double hung = mode.share();
            double frame = 1 - hung;
            double spring = frame * hung * mode.radps() * mode.radps();
            double damper = 2 * mode.damping() * Math.sqrt(spring * frame * hung);
            double least = Double.POSITIVE_INFINITY;
            for (double w = 0.3; w < 400; w *= 1.004) {
                var loop =
                        pushed(frame, hung, spring, damper, w)
                                .multiply(z(gain, -gain * corner / w))
                                .divide(z(1, w * lagS))
                                .multiply(z(Math.cos(w * delayS), -Math.sin(w * delayS)));
                least = Math.min(least, loop.add(1).norm());
            }
            return least;
        }
    }

    @Test
    void stableLoopsAreThoseWithoutARootOnTheRight() {
        int[] seen = new int[2];
        Seeded.check(
                150,
                random -> {
                    Random loop = Random.of(random);
                    double rightmost = loop.rightmost();
                    if (Math.abs(rightmost) < 0.02) {
                        return;
                    }
                    Nyquist found = Nyquist.of(loop.cascade().open(0), 0.01, 5000);
                    assertThat(found.stable())
                            .as("%s %s %s", loop, rightmost, found)
                            .isEqualTo(rightmost < 0);
                    seen[found.stable() ? 1 : 0]++;
                });
        assertThat(seen[0]).isGreaterThan(15);
        assertThat(seen[1]).isGreaterThan(15);
    }

    @Test
    void theLeastDistanceIsThatOfAFineGrid() {
        Seeded.check(
                25,
                random -> {
                    Random loop = Random.of(random);
                    Nyquist found = Nyquist.of(loop.cascade().open(0), 0.3, 400);
                    assertThat(found.distance()).isCloseTo(loop.nearest(), within(0.01));
                });
    }

    /**
     * Loops granted to worn craft: at frequencies between those that were looked at too, none has a
     * root on the right, and each keeps its distance but for a twentieth.
     */
    @Test
    void grantedLoopsStayApartWithAnyHarnessOfPractice() {
        int[] seen = {0};
        Seeded.check(
                12,
                random -> {
                    double share = between(random, 0.1, 0.7);
                    Craft craft =
                            RandomCraft.able(random)
                                    .with(
                                            new Flexible(
                                                    3,
                                                    0.1,
                                                    share,
                                                    share,
                                                    Double.POSITIVE_INFINITY));
                    if (!(LoopDesign.of(craft) instanceof LoopDesign.Granted granted)) {
                        return;
                    }
                    Loop rate = granted.loop(Axis.ROLL, Loop.Level.RATE);
                    if (rate.harness().isEmpty()) {
                        return;
                    }
                    seen[0]++;
                    assertThat(rate.harness().get().distance()).isGreaterThanOrEqualTo(0.5);
                    for (int k = 0; k < 6; k++) {
                        FlexMode mode =
                                new FlexMode(
                                        2 * Math.PI * between(random, 3, 8),
                                        between(random, 0.1, 0.3),
                                        share);
                        Nyquist found = Nyquist.of(rate.cascade().giving(mode).open(0), 0.01, 5000);
                        assertThat(found.stable()).isTrue();
                        assertThat(found.distance()).isGreaterThan(0.475);
                    }
                });
        assertThat(seen[0]).isGreaterThan(5);
    }
}
