package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Turbulence as a rig meets it, against the spectral densities as MIL-F-8785C prints them, written
 * again here with heights in feet.
 */
class AirTest {

    private static final double FOOT_M = 0.3048;
    private static final double NODE_S = 0.005;

    /** Standard normal bound of a test that fails once in some ten million. */
    private static final double BOUND = 5.3;

    /** What a rig that hangs still at a height meets: along the wind, across it, upright. */
    private static double[][] series(double windMps, double heightM, int count, int every) {
        Air air = new Air(Wind.of(windMps, 0.9), 42, 1);
        BodyState state = new BodyState();
        state.rest(0, 0, heightM, 0);
        double[][] out = new double[3][count];
        double[] w = new double[3];
        for (int k = 0; k < count; k++) {
            for (int j = 0; j < every; j++) {
                air.advance(NODE_S, state, 1);
            }
            air.wind(w);
            double x = -Math.cos(0.9);
            double y = -Math.sin(0.9);
            out[0][k] = w[0] * x + w[1] * y - windMps;
            out[1][k] = -w[0] * y + w[1] * x;
            out[2][k] = w[2];
        }
        return out;
    }

    private static double variance(double[] series) {
        double sum = 0;
        for (double each : series) {
            sum += each * each;
        }
        return sum / series.length;
    }

    @Test
    void variancesAreThoseOfTheStandard() {
        double wind = 8;
        double h = 60;
        int count = 150_000;
        double dt = 0.05;
        double[][] met = series(wind, h * FOOT_M, count, 10);
        double up = 0.1 * wind;
        double level = up / Math.pow(0.177 + 0.000823 * h, 0.4);
        double scale = h / Math.pow(0.177 + 0.000823 * h, 1.2) * FOOT_M;
        double[] sigma = {level, level, up};
        double[] lengths = {scale, scale, h * FOOT_M};
        for (int axis = 0; axis < 3; axis++) {
            // ∫ of the squared correlation e^(−|t|/τ) is τ: so many independent values there are.
            double free = count * dt / (lengths[axis] / wind) / (axis == 0 ? 1 : 0.7);
            double error = Math.sqrt(2 / free);
            assertThat(variance(met[axis]) / (sigma[axis] * sigma[axis]))
                    .isCloseTo(1, within(BOUND * error));
            assertThat(BOUND * error).isLessThan(0.4);
        }
    }

    @Test
    void spectraAreThoseOfTheStandard() {
        double wind = 8;
        double h = 30;
        int every = 4;
        double dt = NODE_S * every;
        int length = 4096;
        int segments = 400;
        double[][] met = series(wind, h * FOOT_M, length * segments, every);
        double up = 0.1 * wind;
        double level = up / Math.pow(0.177 + 0.000823 * h, 0.4);
        double tau = h / Math.pow(0.177 + 0.000823 * h, 1.2) * FOOT_M / wind;
        double tauUp = h * FOOT_M / wind;
        holds(met[0], length, segments, dt, w -> along(w, level, tau));
        holds(met[1], length, segments, dt, w -> across(w, level, tau));
        holds(met[2], length, segments, dt, w -> across(w, up, tauUp));
    }

    private static double along(double w, double sigma, double tau) {
        return sigma * sigma * 2 * tau / Math.PI / (1 + tau * w * tau * w);
    }

    private static double across(double w, double sigma, double tau) {
        double x = tau * w * tau * w;
        return sigma * sigma * tau / Math.PI * (1 + 3 * x) / ((1 + x) * (1 + x));
    }

    /**
     * Welch: Hann windows side by side, so that periodograms are independent; bands of lines. A
     * mean of n periodograms over its truth times 2 n is chi-squared with 2 n degrees of freedom.
     */
    private static void holds(
            double[] series, int length, int segments, double dt, DoubleUnaryOperator truth) {
        double[] density = new double[length / 2];
        double[] window = new double[length];
        double power = 0;
        for (int k = 0; k < length; k++) {
            window[k] = 0.5 - 0.5 * Math.cos(2 * Math.PI * k / length);
            power += window[k] * window[k];
        }
        for (int s = 0; s < segments; s++) {
            double[] re = new double[length];
            double[] im = new double[length];
            for (int k = 0; k < length; k++) {
                re[k] = window[k] * series[s * length + k];
            }
            transform(re, im);
            for (int k = 0; k < length / 2; k++) {
                // One-sided, per rad/s.
                density[k] +=
                        2 * (re[k] * re[k] + im[k] * im[k]) * dt / power / segments / 2 / Math.PI;
            }
        }
        int checked = 0;
        for (int from = 4; from < length / 2; from = from * 5 / 4 + 1) {
            int to = Math.min(length / 2, from * 5 / 4 + 1);
            double nyquist = Math.PI / dt;
            if (2 * Math.PI * to / (length * dt) > nyquist / 4) {
                break;
            }
            double measured = 0;
            double wanted = 0;
            for (int k = from; k < to; k++) {
                double w = 2 * Math.PI * k / (length * dt);
                measured += density[k];
                wanted += folded(truth, w, 2 * nyquist);
            }
            // Neighbouring lines of a Hann window share: worth about half of them.
            double n = segments * Math.max(1, (to - from) / 2.0);
            assertThat(measured / wanted)
                    .describedAs("around line " + from)
                    .isCloseTo(1, within(BOUND / Math.sqrt(n) + 0.01));
            checked++;
        }
        assertThat(checked).isGreaterThan(15);
    }

    /** What sampling folds down upon a frequency. */
    private static double folded(DoubleUnaryOperator truth, double w, double sampling) {
        double sum = truth.applyAsDouble(w);
        for (int k = 1; k < 50; k++) {
            sum += truth.applyAsDouble(k * sampling - w) + truth.applyAsDouble(k * sampling + w);
        }
        return sum;
    }

    private static void transform(double[] re, double[] im) {
        int n = re.length;
        for (int i = 1, j = 0; i < n; i++) {
            int bit = n >> 1;
            for (; (j & bit) != 0; bit >>= 1) {
                j ^= bit;
            }
            j ^= bit;
            if (i < j) {
                double t = re[i];
                re[i] = re[j];
                re[j] = t;
            }
        }
        for (int half = 1; half < n; half *= 2) {
            for (int k = 0; k < half; k++) {
                double c = Math.cos(Math.PI * k / half);
                double s = -Math.sin(Math.PI * k / half);
                for (int at = k; at < n; at += 2 * half) {
                    double r = re[at + half] * c - im[at + half] * s;
                    double q = re[at + half] * s + im[at + half] * c;
                    re[at + half] = re[at] - r;
                    im[at + half] = im[at] - q;
                    re[at] += r;
                    im[at] += q;
                }
            }
        }
    }

    @Test
    void aHoverMeetsTheAirThatTheDeclaredWindCarriesBy() {
        // One rig hovers in 8 m/s, another flies at 8 m/s through air of 8 m/s from the side, √2
        // times as fast: its turbulence forgets √2 times as soon.
        double still = remembers(0, 0);
        double moving = remembers(8, Math.PI / 2);
        double tau = 30 * FOOT_M / 8;
        assertThat(still).isCloseTo(tau, within(0.1 * tau));
        assertThat(moving).isCloseTo(tau / Math.sqrt(2), within(0.1 * tau));
    }

    /** Time in which w forgets, from its correlation over 0.1 s: 1 − ½ t/τ + … for w. */
    private static double remembers(double speedMps, double windFrom) {
        Air air = new Air(Wind.of(8, windFrom), 17, 2);
        BodyState state = new BodyState();
        state.rest(0, 0, 30 * FOOT_M, 0);
        state.y[BodyState.VX] = speedMps;
        int count = 150_000;
        double[] w = new double[3];
        double before = 0;
        double square = 0;
        double with = 0;
        for (int k = 0; k < count; k++) {
            for (int j = 0; j < 10; j++) {
                air.advance(NODE_S, state, 1);
            }
            air.wind(w);
            square += w[2] * w[2];
            with += w[2] * before;
            before = w[2];
        }
        // Correlation of w: e^(−x) (1 − x/2) with x = t/τ; solved by bisection.
        double correlation = with / square;
        double low = 0;
        double high = 1;
        for (int k = 0; k < 60; k++) {
            double x = (low + high) / 2;
            if (Math.exp(-x) * (1 - x / 2) > correlation) {
                low = x;
            } else {
                high = x;
            }
        }
        return 0.05 / low;
    }

    @Test
    void inCalmAirNothingMovesButTheOwnWashNearTheFloor() {
        Air air = new Air(Wind.NONE.withWash(1.5, 2), 3, 9);
        BodyState state = new BodyState();
        double[] w = new double[3];
        double[] low = new double[100_000];
        state.rest(0, 0, 1, 0);
        for (int k = 0; k < low.length; k++) {
            for (int j = 0; j < 20; j++) {
                air.advance(NODE_S, state, 1);
            }
            air.wind(w);
            low[k] = w[k % 3];
        }
        // Half of it half way up; samples 0.1 s apart remember e^(−1).
        double error = Math.sqrt(2.0 / low.length * 1.3);
        assertThat(variance(low) / (0.75 * 0.75)).isCloseTo(1, within(BOUND * error));
        state.rest(0, 0, 2.5, 0);
        air.advance(0.05, state, 1);
        air.wind(w);
        assertThat(w).containsExactly(0, 0, 0);
        state.rest(0, 0, 1, 0);
        air.advance(0.05, state, 0);
        air.wind(w);
        assertThat(w).containsExactly(0, 0, 0);
    }

    @Test
    void aGustIsMetAfterItsLengthOfDeclaredWindAndStays() {
        Wind wind = Wind.of(5, 0).smooth().with(new Wind.Gust(1, 4, 10, Math.PI / 2));
        Air air = new Air(wind, 1, 1);
        BodyState state = new BodyState();
        state.rest(0, 0, 3, 0);
        double[] w = new double[3];
        for (int k = 0; k < 2000; k++) {
            air.advance(0.001, state, 1);
        }
        // 1 s in it at 5 m/s: 5 m of 10 m, so half of it. From the right, so to the left.
        air.wind(w);
        assertThat(w[0]).isCloseTo(-5, within(1e-9));
        assertThat(w[1]).isCloseTo(-2, within(0.01));
        for (int k = 0; k < 20_000; k++) {
            air.advance(0.001, state, 1);
        }
        air.wind(w);
        assertThat(w[1]).isCloseTo(-4, within(1e-12));
    }

    @Test
    void isTheSameForTheSameNumberAndAnotherForAnother() {
        double[] one = wind(5, 1);
        assertThat(wind(5, 1)).containsExactly(one);
        assertThat(wind(5, 2)).isNotEqualTo(one);
        assertThat(wind(6, 1)).isNotEqualTo(one);
    }

    private static double[] wind(long seed, int number) {
        Air air = new Air(Wind.of(6, 0), seed, number);
        BodyState state = new BodyState();
        state.rest(0, 0, 3, 0);
        double[] w = new double[3];
        for (int k = 0; k < 300; k++) {
            air.advance(0.001, state, 1);
        }
        air.wind(w);
        return w;
    }
}
