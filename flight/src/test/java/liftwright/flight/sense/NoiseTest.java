package liftwright.flight.sense;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import liftwright.flight.motion.BodyState;
import liftwright.rig.Control.Measures;
import org.junit.jupiter.api.Test;

/**
 * White noise against the published conversions of its density: random walk of the sum over time
 * and the slope of the Allan deviation (IEEE Std 952-1997).
 */
class NoiseTest {

    private static final double DEGREE = Math.toRadians(1);
    private static final double DT_S = 0.01;

    @Test
    void angleSummedUpWalksByTheDensityTimesTheRootOfTime() {
        // 0.005 °/s/√Hz is 0.300 °/√h: ×60, and 0.03873° after a minute
        double density = 0.005 * DEGREE;
        double spread = spread(Measures.TURN_RATE, density, 60, 600);
        assertThat(60 * 0.005).as("°/√h").isCloseTo(0.300, within(1e-12));
        assertThat(spread / DEGREE).isCloseTo(0.03873, within(0.03873 * 3 / Math.sqrt(2 * 1800)));
    }

    @Test
    void velocitySummedUpWalksLikewise() {
        // 100 µg/√Hz is 0.05884 m/s/√h, and 7.596 mm/s after a minute
        double density = 100e-6 * 9.80665;
        assertThat(60 * density).isCloseTo(0.05884, within(5e-6));
        double spread = spread(Measures.ACCELERATION, density, 60, 600);
        assertThat(1000 * spread).isCloseTo(7.596, within(7.596 * 3 / Math.sqrt(2 * 1800)));
    }

    /** Standard deviation of the sum of readings over a time, three axes of many flights. */
    private static double spread(Measures measures, double density, double timeS, int flights) {
        double squares = 0;
        for (int flight = 0; flight < flights; flight++) {
            double[][] series = series(measures, density, (int) Math.rint(timeS / DT_S), flight, 7);
            for (double[] axis : series) {
                double sum = 0;
                for (double one : axis) {
                    sum += DT_S * one;
                }
                squares += sum * sum;
            }
        }
        return Math.sqrt(squares / (3 * flights));
    }

    @Test
    void allanDeviationOfNoiseIsTheDensityAtOneSecondAndFallsByTheRoot() {
        double density = 0.005 * DEGREE;
        double[] rate = series(Measures.TURN_RATE, density, 2_000_000, 0, 11)[0];
        for (double tau : new double[] {0.1, 1, 10}) {
            double sigma = AllanDeviation.of(rate, DT_S, tau);
            double doubt = 3 / Math.sqrt(2 * (rate.length * DT_S / tau - 1) / 1.5);
            assertThat(sigma / (density / Math.sqrt(tau)))
                    .as("τ %s s", tau)
                    .isCloseTo(1, within(doubt));
        }
    }

    @Test
    void theRefereeReadsWhatTheStandardSays() {
        // the points of reading of IEEE 952: quantisation at √3, random walk of rate at 3
        int n = 400_000;
        double[] ramp = new double[n];
        double[] walk = new double[n];
        var random = new java.util.Random(5);
        double k = 0.02;
        for (int i = 1; i < n; i++) {
            ramp[i] = 0.3 * i * DT_S;
            walk[i] = walk[i - 1] + k * Math.sqrt(DT_S) * random.nextGaussian();
        }
        assertThat(AllanDeviation.of(ramp, DT_S, 2))
                .isCloseTo(0.3 * 2 / Math.sqrt(2), within(1e-9));
        assertThat(AllanDeviation.of(walk, DT_S, 3) / k).isCloseTo(1, within(0.08));
        assertThat(0.6643).isCloseTo(Math.sqrt(2 * Math.log(2) / Math.PI), within(5e-5));
    }

    @Test
    void anOffsetIsNoNoise() {
        SensorNumbers biased = numbers(Measures.TURN_RATE, 0, 0.1);
        DoubleUnaryOperator none = _ -> 0;
        var sensors =
                new Sensors(
                        Suite.perfect(1 / DT_S).with(biased),
                        Vibration.none(0),
                        (measures, axis) -> measures == Measures.TURN_RATE ? axis - 1 : 0,
                        3,
                        1,
                        DT_S);
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        for (int tick = 1; tick < 50; tick++) {
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            for (int axis = 0; axis < 3; axis++) {
                assertThat(sensors.value(Measures.TURN_RATE, axis))
                        .isCloseTo(0.1 * (axis - 1) + none.applyAsDouble(tick), within(1e-15));
            }
        }
    }

    private static SensorNumbers numbers(Measures measures, double density, double biasDoubt) {
        double none = Double.POSITIVE_INFINITY;
        return new SensorNumbers(measures, 1 / DT_S, 0, density, 0, biasDoubt, none, 0, 0, none);
    }

    /** Readings of a rig that does not move, less what a still rig feels. */
    private static double[][] series(
            Measures measures, double density, int length, int flight, long seed) {
        var sensors =
                new Sensors(
                        Suite.perfect(1 / DT_S).with(numbers(measures, density, 0)),
                        Vibration.none(0),
                        Biases.NONE,
                        seed,
                        flight,
                        DT_S);
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        double[][] series = new double[3][length];
        for (int tick = 1; tick <= length; tick++) {
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            for (int axis = 0; axis < 3; axis++) {
                double still = measures == Measures.ACCELERATION ? Still.FELT[axis] : 0;
                series[axis][tick - 1] = sensors.value(measures, axis) - still;
            }
        }
        return series;
    }
}
