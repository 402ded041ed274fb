package liftwright.flight.loops;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Margins and bandwidths of loops whose values are published or follow in closed form. */
class MarginsTest {

    private static Margins margins(Transfer open) {
        return Margins.of(open, 1e-3, 1e3);
    }

    private static Complex s(double w) {
        return new Complex(0, w);
    }

    /** Textbook: 1/(s (s + 1)) crosses over at 0.78615 rad/s with 51.83°; no gain is too much. */
    @Test
    void aTextbookLoopHasItsMargin() {
        Margins found = margins(w -> Complex.ONE.over(s(w).times(s(w).plus(Complex.ONE))));
        assertThat(found.crossoverRadps()).isCloseTo(0.78615, within(5e-6));
        assertThat(Math.toDegrees(found.phaseMarginRad())).isCloseTo(51.83, within(5e-3));
        assertThat(found.gainMargin()).isInfinite();
        assertThat(found.stable()).isTrue();
    }

    /** ω_n²/(s (s + 2ζω_n)): atan(2ζ/√(√(1 + 4ζ⁴) − 2ζ²)), the closed form, as printed. */
    @Test
    void dampingTellsTheMargin() {
        double[] damping = {0.2, 0.4, 0.5, 0.6, 0.7};
        double[] degrees = {22.60, 43.12, 51.83, 59.19, 65.16};
        for (int k = 0; k < damping.length; k++) {
            double zeta = damping[k];
            Margins found =
                    margins(
                            w ->
                                    new Complex(9, 0)
                                            .over(s(w).times(s(w).plus(new Complex(6 * zeta, 0)))));
            assertThat(Math.toDegrees(found.phaseMarginRad())).isCloseTo(degrees[k], within(5e-3));
        }
    }

    /** An integrator and a delay: 90° − Kτ and π/(2Kτ), closed form. */
    @Test
    void aDelayTakesMargin() {
        Margins found = margins(w -> Complex.delay(w, 0.1).times(5).over(s(w)));
        assertThat(found.crossoverRadps()).isCloseTo(5, within(1e-9));
        assertThat(Math.toDegrees(found.phaseMarginRad())).isCloseTo(61.35, within(5e-3));
        assertThat(found.gainMargin()).isCloseTo(Math.PI, within(1e-9));
        assertThat(margins(w -> Complex.delay(w, 0.1).times(15.8).over(s(w))).stable()).isFalse();
        assertThat(margins(w -> Complex.delay(w, 0.1).times(15.6).over(s(w))).stable()).isTrue();
    }

    /** A conditionally stable loop, (s + 1)²/s³, swings when its gain falls to a half: Routh. */
    @Test
    void aFallOfGainCanBeTooMuch() {
        Margins found =
                margins(
                        w -> {
                            Complex lead = s(w).plus(Complex.ONE);
                            return lead.times(lead).over(s(w).times(s(w)).times(s(w)));
                        });
        // s³ + K (s + 1)²: 2K · K > K, so K > 1/2.
        assertThat(found.lowGainMargin()).isCloseTo(0.5, within(1e-9));
        assertThat(found.gainMargin()).isInfinite();
    }

    /** ADS-33 by closed form: e^(−0.1 s)/s. */
    @Test
    void bandwidthOfAnIntegratorWithDelay() {
        Loop.Bandwidth found = Bandwidths.of(w -> Complex.delay(w, 0.1).over(s(w)), 1e-2, 1e3);
        assertThat(found.phaseRadps()).isCloseTo(7.85398, within(5e-6));
        assertThat(found.gainRadps()).isCloseTo(7.87263, within(5e-6));
        assertThat(found.phaseDelayS()).isCloseTo(0.05, within(5e-6));
    }

    /** The same with a lag, e^(−0.05 s)/(s (0.1 s + 1)), recomputed numerically elsewhere. */
    @Test
    void bandwidthWithALag() {
        Loop.Bandwidth found =
                Bandwidths.of(
                        w -> Complex.delay(w, 0.05).over(s(w).times(Complex.onePlus(w, 0.1))),
                        1e-2,
                        1e3);
        assertThat(found.phaseRadps()).isCloseTo(5.55968, within(5e-6));
        assertThat(found.gainRadps()).isCloseTo(8.29310, within(5e-6));
        assertThat(found.phaseDelayS()).isCloseTo(0.036013, within(5e-7));
    }

    /**
     * Overshoot of the second order, closed form e^(−πζ/√(1 − ζ²)): a velocity loop of gain K round
     * an integrator behind a lag τ is one, ω_n² = K/τ, 2ζω_n = 1/τ.
     */
    @Test
    void overshootOfTheSecondOrder() {
        double[] damping = {0.2, 0.4, 0.5, 0.6, 0.7};
        double[] percent = {52.66, 25.38, 16.30, 9.48, 4.60};
        double lagS = 0.3;
        for (int k = 0; k < damping.length; k++) {
            double natural = 1 / (2 * damping[k] * lagS);
            double gain = natural * natural * lagS;
            Cascade loop =
                    new Cascade(
                            new Actuation(lagS, 0, 0, 0, 0, 0),
                            List.of(new Cascade.Stage(gain, 0, 0, false)));
            Loop.Step step = new StepAnswer(loop, gain, 1, 1).figures();
            assertThat(100 * step.overshoot()).isCloseTo(percent[k], within(0.3));
        }
    }

    /** The phase that the design equates is that of the loop it then sweeps. */
    @Test
    void whatIsEquatedIsWhatIsSwept() {
        Actuation act = new Actuation(0.05, 0, 0, 0.01, 0.004, 0.003);
        Transfer open = new Cascade(act, List.of(new Cascade.Stage(1, 0, 0, false))).open(0);
        double w = 8;
        double gain = 1 / open.at(w).gain();
        Margins found = margins(radps -> open.at(radps).times(gain));
        assertThat(found.phaseMarginRad())
                .isCloseTo(
                        Math.PI / 2 - Math.atan(0.05 * w) - Math.atan(0.004 * w) - 0.013 * w,
                        within(1e-9));
    }
}
