package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FirstOrderIndicesTest {

    /** Shares of the Ishigami function, a 7, b 0.1: closed form, 32 digits. */
    private static final double[] ISHIGAMI = {0.313905191147811, 0.442411144790041, 0, 0, 0};

    /** Shares of Sobol's g-function, a 0, 1, 4.5, 9, 99 × 4: closed form, 32 digits. */
    private static final double[] G_FUNCTION = {
        0.716192168879033,
        0.179048042219758,
        0.0236757741778193,
        0.00716192168879033,
        7.16192168879033e-5,
        7.16192168879033e-5,
        7.16192168879033e-5,
        7.16192168879033e-5
    };

    private static final double[] G_WEIGHTS = {0, 1, 4.5, 9, 99, 99, 99, 99};

    private static final class Sample {
        private final double[][] drivers;
        private final double[] outcome;

        Sample(double[][] drivers, double[] outcome) {
            this.drivers = drivers;
            this.outcome = outcome;
        }
    }

    /** The mean over many samples tells the bias, which has to be small at every size. */
    @ParameterizedTest
    @CsvSource({
        "ishigami, 200, 0.02", "ishigami, 1000, 0.01", "ishigami, 4000, 0.005",
        "g, 200, 0.02", "g, 1000, 0.01", "g, 4000, 0.005",
    })
    void meetsTheClosedForms(String function, int draws, double bias) {
        double[] exact = function.equals("g") ? G_FUNCTION : ISHIGAMI;
        int samples = 60;
        double[] mean = new double[exact.length];
        for (int s = 0; s < samples; s++) {
            for (FirstOrderIndices.Index each : found(sample(function, draws, s), 19)) {
                mean[each.driver()] += each.share() / samples;
            }
        }
        for (int d = 0; d < exact.length; d++) {
            assertThat(mean[d]).as("driver " + d).isCloseTo(exact[d], within(bias));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"ishigami", "g"})
    void tellsOneLargeSampleClosely(String function) {
        double[] exact = function.equals("g") ? G_FUNCTION : ISHIGAMI;
        for (FirstOrderIndices.Index each : found(sample(function, 65_536, 5), 19)) {
            assertThat(each.share()).isCloseTo(exact[each.driver()], within(0.006));
        }
    }

    /** Two standard errors hold about 95 % of the misses of the estimate. */
    @ParameterizedTest
    @ValueSource(strings = {"ishigami", "g"})
    void itsErrorIsTheErrorItMakes(String function) {
        double[] exact = function.equals("g") ? G_FUNCTION : ISHIGAMI;
        int held = 0;
        int of = 0;
        for (int s = 0; s < 150; s++) {
            for (FirstOrderIndices.Index each : found(sample(function, 1000, 1000 + s), 19)) {
                if (each.driver() < 2) {
                    of++;
                    held +=
                            Math.abs(each.share() - exact[each.driver()])
                                            <= 2 * each.standardError()
                                    ? 1
                                    : 0;
                }
            }
        }
        assertThat((double) held / of).isBetween(0.90, 0.99);
    }

    /**
     * Where nothing drives, any driver at all is accused no more often than the level says: of 600
     * random sets at 5 %, with the exact interval of what was counted.
     */
    @Test
    void accusesNoMoreOftenThanItsLevel() {
        int accused = 0;
        int sets = 600;
        for (int s = 0; s < sets; s++) {
            var random = new SplittableRandom(77_000 + s);
            int drivers = 1 + random.nextInt(30);
            int draws = 40 + random.nextInt(200);
            double[][] values = new double[drivers][draws];
            double[] outcome = new double[draws];
            for (int i = 0; i < draws; i++) {
                // Long tails: a few flights miss by far.
                outcome[i] = Math.exp(2 * random.nextGaussian());
                for (double[] driver : values) {
                    driver[i] = random.nextGaussian();
                }
            }
            boolean any =
                    FirstOrderIndices.of(drivers, d -> values[d], outcome, 99, s).stream()
                            .anyMatch(each -> each.chance() <= 0.05);
            accused += any ? 1 : 0;
        }
        ProportionInterval share = ProportionInterval.clopperPearson(accused, sets, 0.99);
        assertThat(share.lower()).isLessThanOrEqualTo(0.05);
        // And the null is no wall: it lets through about as many as it may.
        assertThat(share.upper()).isGreaterThan(0.03);
    }

    /** Others that do much do not get one that does nothing accused. */
    @Test
    void aDriverThatDoesNothingIsNotAccusedBesideOneThatDoesMuch() {
        int accused = 0;
        for (int s = 0; s < 300; s++) {
            accused +=
                    found(sample("ishigami", 300, 5000 + s), 99).stream()
                                    .anyMatch(each -> each.driver() > 2 && each.chance() <= 0.05)
                            ? 1
                            : 0;
        }
        assertThat(ProportionInterval.clopperPearson(accused, 300, 0.99).lower())
                .isLessThanOrEqualTo(0.05);
    }

    @Test
    void findsThoseThatDrive() {
        List<FirstOrderIndices.Index> found = found(sample("ishigami", 1000, 3), 499);
        assertThat(found.get(0).chance()).isLessThanOrEqualTo(0.002);
        assertThat(found.get(1).chance()).isLessThanOrEqualTo(0.002);
        assertThat(found.get(4).chance()).isGreaterThan(0.05);
    }

    /** Units, and the direction of a driver, change nothing. */
    @Test
    void caresForNoUnits() {
        Sample sample = sample("g", 500, 9);
        List<FirstOrderIndices.Index> before = found(sample, 99);
        double[][] other = new double[sample.drivers.length][500];
        double[] outcome = new double[500];
        for (int i = 0; i < 500; i++) {
            outcome[i] = 1000 * sample.outcome[i] - 3;
            for (int d = 0; d < other.length; d++) {
                other[d][i] = 1e-3 * sample.drivers[d][i] + 273.15;
            }
        }
        List<FirstOrderIndices.Index> after =
                FirstOrderIndices.of(other.length, d -> other[d], outcome, 99, 1);
        for (int d = 0; d < other.length; d++) {
            assertThat(after.get(d).share()).isCloseTo(before.get(d).share(), within(1e-9));
            assertThat(after.get(d).chance()).isEqualTo(before.get(d).chance());
        }
    }

    @Test
    void whatDoesNotVaryHasNoDriver() {
        double[] still = new double[50];
        Arrays.fill(still, 0.1);
        assertThat(FirstOrderIndices.of(1, d -> new double[50], still, 19, 1)).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> FirstOrderIndices.of(1, d -> new double[10], new double[10], 19, 1));
        double[] broken = new double[50];
        broken[3] = Double.NaN;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FirstOrderIndices.of(1, d -> new double[50], broken, 19, 1));
    }

    private static List<FirstOrderIndices.Index> found(Sample sample, int shuffles) {
        return FirstOrderIndices.of(
                sample.drivers.length, d -> sample.drivers[d], sample.outcome, shuffles, 1);
    }

    private static Sample sample(String function, int draws, int seed) {
        var random = new SplittableRandom(seed * 7919L + draws);
        int count = function.equals("g") ? G_FUNCTION.length : ISHIGAMI.length;
        ToDoubleFunction<double[]> of =
                function.equals("g") ? FirstOrderIndicesTest::g : FirstOrderIndicesTest::ishigami;
        double[][] drivers = new double[count][draws];
        double[] outcome = new double[draws];
        double[] x = new double[count];
        for (int i = 0; i < draws; i++) {
            for (int d = 0; d < count; d++) {
                x[d] = random.nextDouble();
                drivers[d][i] = x[d];
            }
            outcome[i] = of.applyAsDouble(x);
        }
        return new Sample(drivers, outcome);
    }

    private static double ishigami(double[] unit) {
        double a = Math.PI * (2 * unit[0] - 1);
        double b = Math.PI * (2 * unit[1] - 1);
        double c = Math.PI * (2 * unit[2] - 1);
        return Math.sin(a) + 7 * Math.sin(b) * Math.sin(b) + 0.1 * Math.pow(c, 4) * Math.sin(a);
    }

    private static double g(double[] unit) {
        double product = 1;
        for (int i = 0; i < unit.length; i++) {
            product *= (Math.abs(4 * unit[i] - 2) + G_WEIGHTS[i]) / (1 + G_WEIGHTS[i]);
        }
        return product;
    }
}
