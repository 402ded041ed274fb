package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuseCurveTest {

    /** MAXI size, 40 A: the middles of ISO 8820-3's windows at 135, 200, 350 and 600 %. */
    private static final double[] MAXI_A = {54, 80, 140, 240};

    private static final double[] MAXI_S = {
        Math.sqrt(60.0 * 1800), Math.sqrt(2.0 * 50), Math.sqrt(0.2 * 7), Math.sqrt(0.04 * 1)
    };

    private static final double TAU_S = 60;

    private static FuseCurve maxi() {
        return new FuseCurve(MAXI_A, MAXI_S, TAU_S);
    }

    /**
     * ISO 8820-3 as data sheets cite it: least and greatest time at shares of 40 A; at 100 % never
     * within 360,000 s.
     */
    @ParameterizedTest
    @CsvSource({"1.35, 60, 1800", "2, 2, 50", "3.5, 0.2, 7", "6, 0.04, 1"})
    void theMiddleOfTheWindows(double share, double least, double greatest) {
        double time = maxi().timeS(40 * share);
        assertThat(time)
                .isBetween(least, greatest)
                .isCloseTo(Math.sqrt(least * greatest), withPercentage(1e-6));
        assertThat(maxi().timeS(-40 * share)).as("either direction").isEqualTo(time);
        assertThat(maxi().timeS(40)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(maxi().timeS(44)).as("110 %%").isEqualTo(Double.POSITIVE_INFINITY);
    }

    /**
     * Windows of the blade size (110, 160, 200, 350, 600 %; ISO 8820-3, SAE J1284, partly from
     * memory) and of IEC 60127-2 fast cartridges (275, 400, 1000 %): curves through their middles
     * stay within them, also between, where the window is the straight line of its ends.
     */
    @Test
    void curvesStayWithinTheWindowsOfTheirForm() {
        inWindows(
                new double[] {1.35, 1.6, 2, 3.5, 6},
                new double[] {0.75, 0.25, 0.15, 0.08, 0.02},
                new double[] {600, 50, 5, 0.5, 0.1},
                10);
        inWindows(
                new double[] {2.75, 4, 10},
                new double[] {0.05, 0.01, 0.001},
                new double[] {2, 0.3, 0.02},
                0.5);
        // Carried for an hour at 150 %; at 210 % open within half an hour.
        FuseCurve cartridge = new FuseCurve(new double[] {2.75}, new double[] {0.316}, 0.5);
        assertThat(cartridge.timeS(1.5)).isGreaterThan(3600);
        assertThat(cartridge.timeS(2.1)).isLessThan(1800);
    }

    private static void inWindows(double[] share, double[] least, double[] greatest, double tauS) {
        double[] middle = new double[share.length];
        for (int point = 0; point < share.length; point++) {
            middle[point] = Math.sqrt(least[point] * greatest[point]);
        }
        FuseCurve curve = new FuseCurve(share, middle, tauS);
        for (int point = 0; point < share.length; point++) {
            assertThat(curve.timeS(share[point])).isBetween(least[point], greatest[point]);
        }
        for (int point = 1; point < share.length; point++) {
            double between = Math.sqrt(share[point] * share[point - 1]);
            assertThat(curve.timeS(between))
                    .as("half way in logarithms")
                    .isCloseTo(Math.sqrt(middle[point] * middle[point - 1]), withPercentage(1e-6));
        }
        assertThat(curve.timeS(1.1)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    /**
     * MAXI 40 A melts at 8500 A²s (data sheet): 0.148 s at 240 A, within the window 0.04–1 s; ten
     * gauge wire of the 143 class stands 5.66e5 A²s, far more.
     */
    @Test
    void meltingEnergyOfADataSheet() {
        double melts = 8500.0 / (240 * 240);
        assertThat(melts).isCloseTo(0.148, within(5e-4)).isBetween(0.04, 1.0);
        double wire = Math.pow(143 * 5.261, 2);
        assertThat(wire).isCloseTo(5.66e5, withPercentage(0.1));
        assertThat(Conductor.adiabaticTimeS(143, 5.261e-6, 240)).isGreaterThan(60 * melts);
        FuseCurve curve = new FuseCurve(new double[] {54, 240}, new double[] {328.6, melts}, TAU_S);
        for (double current : new double[] {240, 500, 3000}) {
            assertThat(current * current * curve.timeS(current))
                    .as("I² t at %.0f A", current)
                    .isCloseTo(8500, withPercentage(0.01));
        }
    }

    /** Derating of the same data sheet: 40 A at 20 °C, 34 at 65, 30 at 85, 22 at 125. */
    @ParameterizedTest
    @CsvSource({
        "20, 40",
        "65, 34",
        "85, 30",
        "125, 22",
        "-40, 40",
        "75, 32",
        "42.5, 37",
        "105, 26"
    })
    void warmAirTakesFromARating(double celsius, double ampere) {
        assertThat(40 * FuseAmbient.share(celsius + 273.15)).isCloseTo(ampere, within(1e-9));
    }

    @Test
    void airHotterThanTheDataIsRefused() {
        assertThat(FuseAmbient.WARMEST_K).isEqualTo(125 + 273.15);
        refused(() -> FuseAmbient.share(398.16));
        refused(() -> FuseAmbient.share(0));
        assertThat(FuseAmbient.share(0.5)).isEqualTo(1);
        refused(() -> FuseAmbient.share(Double.NaN));
    }

    /** Referee: the state equation run in small steps, with its own g from the same points. */
    @Test
    void aFuseOpensWhenTheStateEquationSays() {
        Seeded.check(
                100,
                random -> {
                    Drawn drawn = new Drawn(random);
                    double current = drawn.currentA[0] * Math.pow(10, random.nextDouble(0, 1.5));
                    double theta = random.nextInt(2) * random.nextDouble(0, 0.95);
                    double gain = drawn.gain(current);
                    assertThat(drawn.curve().gain(current)).isCloseTo(gain, withPercentage(1e-6));
                    double told = drawn.curve().prospectiveS(theta, current);
                    double run = runS(theta, drawn.tauS, told * 1.5, time -> gain);
                    assertThat(told).isCloseTo(run, withPercentage(0.1));
                    if (theta == 0) {
                        assertThat(told)
                                .isCloseTo(drawn.curve().timeS(current), withPercentage(1e-6));
                    }
                });
    }

    /** Time at which θ = 1, by classical Runge–Kutta in 20,000 steps. */
    private static double runS(double theta, double tauS, double endS, DoubleUnaryOperator gain) {
        int steps = 20_000;
        double step = endS / steps;
        double state = theta;
        for (int k = 0; k < steps; k++) {
            double now = k * step;
            double before = state;
            double a = (gain.applyAsDouble(now) - state) / tauS;
            double middle = gain.applyAsDouble(now + step / 2);
            double b = (middle - state - step / 2 * a) / tauS;
            double c = (middle - state - step / 2 * b) / tauS;
            double d = (gain.applyAsDouble(now + step) - state - step * c) / tauS;
            state += step / 6 * (a + 2 * b + 2 * c + d);
            if (state >= 1) {
                return now + step * (1 - before) / (state - before);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Exact for a gain that stays and for one that runs straight, however long the step. */
    @Test
    void oneStepIsManySmallOnes() {
        Seeded.check(
                200,
                random -> {
                    double theta = random.nextDouble(0, 1);
                    double near = random.nextDouble(0, 3);
                    double far = random.nextDouble(0, 3);
                    double tau = Math.pow(10, random.nextDouble(-2, 2));
                    double step = tau * Math.pow(10, random.nextDouble(-4, 1.3));
                    int parts = 5000;
                    double state = theta;
                    for (int k = 0; k < parts; k++) {
                        double gain = near + (far - near) * (k + 0.5) / parts;
                        state += (gain - state) * (1 - Math.exp(-step / parts / tau));
                    }
                    assertThat(FuseCurve.after(theta, near, far, step, tau))
                            .isCloseTo(state, within(1e-5));
                    assertThat(FuseCurve.after(theta, near, step, tau))
                            .isCloseTo(
                                    near + (theta - near) * Math.exp(-step / tau), within(1e-12));
                    double halves =
                            FuseCurve.after(
                                    FuseCurve.after(theta, near, (near + far) / 2, step / 2, tau),
                                    (near + far) / 2,
                                    far,
                                    step / 2,
                                    tau);
                    assertThat(FuseCurve.after(theta, near, far, step, tau))
                            .as("splitting changes nothing")
                            .isCloseTo(halves, within(1e-9));
                });
    }

    /** An hour at 30 % or 50 % and then a burst: near the cold time, and never after it. */
    @Test
    void aHalfLoadedHourTakesLittleOfABurst() {
        FuseCurve curve = maxi();
        for (double burst : new double[] {80, 100, 140, 240}) {
            double cold = curve.timeS(burst);
            double third = FuseCurve.after(0, curve.gain(12), 3600, TAU_S);
            double half = FuseCurve.after(0, curve.gain(20), 3600, TAU_S);
            assertThat(third).isCloseTo(Math.pow(12 / curve.leastFusingA(), 2), within(1e-9));
            assertThat(curve.prospectiveS(third, burst)).isBetween(0.93 * cold, cold);
            assertThat(curve.prospectiveS(half, burst)).isBetween(0.84 * cold, 0.93 * cold);
        }
        // Carried heat: bursts of which one alone is held open it together.
        double burst = 0.7 * curve.timeS(100);
        double after = FuseCurve.after(0, curve.gain(100), burst, TAU_S);
        assertThat(after).isLessThan(1);
        double rested = FuseCurve.after(after, curve.gain(20), burst, TAU_S);
        assertThat(curve.prospectiveS(rested, 100)).isLessThan(burst);
    }

    /** Least fusing current: g = 1 there; below nothing opens; no jump there or at any point. */
    @Test
    void theGainHasNoJump() {
        Seeded.check(
                200,
                random -> {
                    Drawn drawn = new Drawn(random);
                    FuseCurve curve = drawn.curve();
                    double least = curve.leastFusingA();
                    assertThat(least).isLessThanOrEqualTo(drawn.currentA[0]);
                    assertThat(curve.gain(least)).isCloseTo(1, within(1e-9));
                    assertThat(curve.gain(least / 2)).isCloseTo(0.25, within(1e-9));
                    assertThat(curve.gain(0)).isZero();
                    assertThat(curve.timeS(least)).isEqualTo(Double.POSITIVE_INFINITY);
                    assertThat(curve.timeS(0.999 * least)).isEqualTo(Double.POSITIVE_INFINITY);
                    assertThat(curve.prospectiveS(0.9, 0.999 * least))
                            .isEqualTo(Double.POSITIVE_INFINITY);
                    for (int point = 0; point < drawn.currentA.length; point++) {
                        double at = drawn.currentA[point];
                        assertThat(curve.timeS(at))
                                .isCloseTo(drawn.timeS[point], withPercentage(1e-6));
                        assertThat(curve.gain(at * (1 - 1e-9)))
                                .isCloseTo(curve.gain(at), withPercentage(1e-4));
                        assertThat(curve.gain(at * (1 + 1e-9)))
                                .isCloseTo(curve.gain(at), withPercentage(1e-4));
                        if (drawn.timeS[0] < 5 * drawn.tauS) {
                            assertThat(curve.timeS(at * (1 - 1e-9)))
                                    .isCloseTo(drawn.timeS[point], withPercentage(1e-3));
                        }
                    }
                    double low = least * random.nextDouble(0.1, 20);
                    double high = low * random.nextDouble(1.001, 2);
                    assertThat(curve.gain(high)).isGreaterThan(curve.gain(low));
                    assertThat(curve.timeS(high)).isLessThanOrEqualTo(curve.timeS(low));
                    assertThat(curve.timeConstantS()).isEqualTo(drawn.tauS);
                });
    }

    /**
     * A first point that opens soon behind a long time constant would let even the rating open the
     * fuse; a held current forbids it. Every point is met all the same.
     */
    @Test
    void aFuseHoldsItsRating() {
        double[] ampere = {80, 140};
        double[] second = {10, 1.2};
        assertThat(new FuseCurve(ampere, second, 60).timeS(40)).isLessThan(200);
        FuseCurve curve = new FuseCurve(ampere, second, 60, 40);
        assertThat(curve.leastFusingA()).isEqualTo(40);
        assertThat(curve.timeS(40)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(curve.gain(40)).isCloseTo(1, within(1e-12));
        assertThat(curve.gain(20)).isCloseTo(0.25, within(1e-12));
        assertThat(curve.timeS(80)).isCloseTo(10, within(1e-9));
        assertThat(curve.timeS(140)).isCloseTo(1.2, within(1e-9));
        double first = 1 / (1 - Math.exp(-10.0 / 60));
        assertThat(curve.gain(80 * (1 - 1e-12))).isCloseTo(first, within(1e-9));
        assertThat(curve.gain(Math.sqrt(40.0 * 80)))
                .as("straight in logarithms")
                .isCloseTo(Math.sqrt(first), within(1e-9));
        assertThat(curve.gain(40 * (1 + 1e-9))).isCloseTo(1, within(1e-7));
        // Where the curve holds more by itself, nothing changes; nor where a point says less.
        assertThat(new FuseCurve(MAXI_A, MAXI_S, TAU_S, 40).leastFusingA())
                .isEqualTo(maxi().leastFusingA());
        assertThat(new FuseCurve(ampere, second, 60, 80).leastFusingA())
                .isEqualTo(new FuseCurve(ampere, second, 60).leastFusingA());
        assertThat(new FuseCurve(new double[] {2.75}, new double[] {0.316}, 60).leastFusingA())
                .isLessThan(0.5);
        refused(() -> new FuseCurve(ampere, second, 60, -1));
        refused(() -> new FuseCurve(ampere, second, 60, Double.NaN));
    }

    @Test
    void statesAtTheirEnds() {
        assertThat(FuseCurve.opensAfterS(1, 0, 5)).isZero();
        assertThat(FuseCurve.opensAfterS(1.2, 3, 5)).isZero();
        assertThat(FuseCurve.opensAfterS(0.99, 1, 5)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(FuseCurve.opensAfterS(0, 2, 5)).isCloseTo(5 * Math.log(2), within(1e-12));
    }

    /** With that time constant the least fusing current is the one held. */
    @Test
    void theLongestTimeConstantThatHoldsARating() {
        double longest = FuseCurve.longestTimeConstantS(40, MAXI_A[0], MAXI_S[0]);
        assertThat(new FuseCurve(MAXI_A, MAXI_S, longest).leastFusingA())
                .isCloseTo(40, withPercentage(1e-6));
        assertThat(longest).isBetween(400.0, 420.0);
        assertThat(FuseCurve.longestTimeConstantS(0.5, 54, 300)).isGreaterThan(longest);
        for (double bad : new double[] {0, -1, 54, Double.NaN}) {
            refused(() -> FuseCurve.longestTimeConstantS(bad, 54, 300));
        }
        refused(() -> FuseCurve.longestTimeConstantS(40, 54, 0));
        refused(() -> FuseCurve.longestTimeConstantS(40, 54, Double.POSITIVE_INFINITY));
    }

    @Test
    void whatIsNoCurveIsRefused() {
        refused(() -> new FuseCurve(new double[0], new double[0], 1));
        refused(() -> new FuseCurve(new double[] {1}, new double[] {1, 2}, 1));
        refused(() -> new FuseCurve(new double[] {2, 2}, new double[] {2, 1}, 1));
        refused(() -> new FuseCurve(new double[] {1, 2}, new double[] {2, 2}, 1));
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            refused(() -> new FuseCurve(new double[] {bad}, new double[] {1}, 1));
            refused(() -> new FuseCurve(new double[] {1}, new double[] {bad}, 1));
            refused(() -> new FuseCurve(new double[] {1}, new double[] {1}, bad));
        }
    }

    private static void refused(ThrowingCallable asked) {
        assertThatIllegalArgumentException().isThrownBy(asked);
    }

    /** Points that fall, and a time constant from far shorter to far longer than the first. */
    private static final class Drawn {
        final double[] currentA;
        final double[] timeS;
        final double tauS;

        Drawn(RandomGenerator random) {
            int points = random.nextInt(1, 6);
            currentA = new double[points];
            timeS = new double[points];
            double current = random.nextDouble(5, 200);
            double time = Math.pow(10, random.nextDouble(0, 3));
            tauS = time * Math.pow(10, random.nextDouble(-1.2, 1));
            for (int point = 0; point < points; point++) {
                currentA[point] = current;
                timeS[point] = time;
                current *= random.nextDouble(1.1, 2.5);
                time *= random.nextDouble(0.02, 0.8);
            }
        }

        FuseCurve curve() {
            return new FuseCurve(currentA, timeS, tauS);
        }

        /** g by powers, at the first point's current and above. */
        double gain(double current) {
            int last = currentA.length - 1;
            double time = timeS[last] * Math.pow(currentA[last] / current, 2);
            for (int point = 1; point <= last; point++) {
                if (current >= currentA[point - 1] && current < currentA[point]) {
                    double slope =
                            Math.log(timeS[point] / timeS[point - 1])
                                    / Math.log(currentA[point] / currentA[point - 1]);
                    time = timeS[point - 1] * Math.pow(current / currentA[point - 1], slope);
                }
            }
            return 1 / (1 - Math.exp(-time / tauS));
        }
    }

    /** Above 1 by 1/(e^(t/τ) − 1), however many time constants a point has; below it the square. */
    @Test
    void whatIsLeftToOpeningIsToldHoweverLittle() {
        FuseCurve curve = new FuseCurve(new double[] {10, 20}, new double[] {150, 0.5}, 2);
        assertThat(curve.excess(10)).isCloseTo(Math.exp(-75), withPercentage(1e-9));
        assertThat(curve.excess(20)).isCloseTo(curve.gain(20) - 1, withPercentage(1e-9));
        assertThat(curve.excess(5)).isCloseTo(curve.gain(5) - 1, withPercentage(1e-9));
        double room = 1;
        double timeS = 0;
        while (room > 0) {
            room = FuseCurve.roomAfter(room, curve.excess(10), curve.excess(10), 0.5, 2);
            timeS += 0.5;
        }
        assertThat(timeS).isBetween(150.0, 151.0);
        double theta = 1 - FuseCurve.roomAfter(0.7, 0.2, 0.5, 1.3, 2);
        assertThat(theta).isCloseTo(FuseCurve.after(0.3, 1.2, 1.5, 1.3, 2), withPercentage(1e-9));
        double never = 1;
        for (int k = 0; k < 100; k++) {
            never = FuseCurve.roomAfter(never, 0, 0, 60, 2);
        }
        assertThat(never).isPositive();
    }
}
