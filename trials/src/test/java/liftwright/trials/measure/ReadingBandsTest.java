package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.CardKind;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Reading;
import org.junit.jupiter.api.Test;

/** Bands of readings, against readings drawn by another sampler from the records. */
class ReadingBandsTest {

    private static final int DRAWS = 2000;

    /** One build of a rig: what is shared is drawn once, what is each’s own every time. */
    private static final class Build {
        private final RandomGenerator random;
        private final Map<Object, Double> shared = new HashMap<>();

        Build(RandomGenerator random) {
            this.random = random;
        }

        /** A value of one part. */
        double of(String name, Quantity value) {
            return Made.isEach(value)
                    ? Made.drawn(value, random)
                    : value.si() + shared.computeIfAbsent(name, _ -> off(value));
        }

        private double off(Quantity value) {
            return Made.deviation(value.tolerance(), random);
        }

        /** Sum of a value over many cells, each its own where it says so. */
        double cells(String name, Quantity value, int count) {
            if (!Made.isEach(value)) {
                return count * of(name, value);
            }
            double sum = 0;
            for (int k = 0; k < count; k++) {
                sum += Made.drawn(value, random);
            }
            return sum;
        }
    }

    private static double scale(double kg, double fixed, double share, RandomGenerator random) {
        return kg + random.nextGaussian() * Math.hypot(fixed, share * kg) / 2;
    }

    @Test
    void bandsHoldReadingsOfAnotherSampler() {
        double[] inside = {0, 0};
        Seeded.check(
                100,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Map<String, Reading> read = Made.readings(rig, CardKind.MASS);
                    Reading whole = Made.of(read, "all parts together, without the wearer");
                    FanType type = rig.fans().getFirst().type();
                    Reading fan =
                            read.entrySet().stream()
                                    .filter(
                                            one ->
                                                    one.getKey()
                                                            .startsWith(
                                                                    "fan "
                                                                            + type.name()
                                                                            + " without"))
                                    .findFirst()
                                    .orElseThrow()
                                    .getValue();
                    var own = new SplittableRandom(random.nextLong());
                    double[] wholes = new double[DRAWS];
                    double[] fans = new double[DRAWS];
                    for (int k = 0; k < DRAWS; k++) {
                        Build build = new Build(own);
                        wholes[k] = scale(kg(rig, build), 0.05, 0.003, own);
                        fans[k] =
                                scale(
                                        build.of("fan " + type.name(), type.mass()),
                                        0.005,
                                        0.002,
                                        own);
                    }
                    count(wholes, whole, inside);
                    count(fans, fan, inside);
                });
        assertThat(inside[0] / inside[1]).isCloseTo(0.95, within(0.003));
    }

    private static double kg(Rig rig, Build build) {
        double sum = 0;
        for (Fan fan : rig.fans()) {
            String type = fan.type().name();
            sum += build.of("fan " + type, fan.type().mass());
            sum += build.of("controller " + type, fan.type().controller().mass());
        }
        for (Pack pack : rig.packs()) {
            if (pack.mass().isPresent()) {
                sum += build.of("pack " + pack.declaredAt(), pack.mass().get());
            } else {
                int count = pack.series() * pack.parallel();
                sum += build.cells("cell " + pack.cell().name(), pack.cell().mass(), count);
                sum += build.of("extra " + pack.declaredAt(), pack.extraMass());
            }
        }
        for (var part : rig.otherParts()) {
            sum += build.of("part " + part.declaredAt(), part.mass());
        }
        return sum;
    }

    /** Share inside, in total and here: each band for itself within what its draws allow. */
    private static void count(double[] drawn, Reading reading, double[] inside) {
        long in =
                Arrays.stream(drawn)
                        .filter(si -> si >= reading.band().low() && si <= reading.band().high())
                        .count();
        assertThat((double) in / drawn.length).isBetween(0.92, 0.975);
        inside[0] += in;
        inside[1] += drawn.length;
    }

    @Test
    void aFanOnItsPackIsReadWithinItsBands() {
        double[] inside = {0, 0};
        Seeded.check(
                100,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Map<String, Reading> read = Made.readings(rig, CardKind.THRUST);
                    Fan fan = rig.fans().getFirst();
                    if (ThrustTest.nearest(rig, fan).size() != 1
                            || fan.type().performance() instanceof FanType.Performance.Measured) {
                        return;
                    }
                    String at = fan.type().name() + " at 60 % throttle, ";
                    var own = new SplittableRandom(random.nextLong());
                    double[][] drawn = new double[4][300];
                    for (int k = 0; k < 300; k++) {
                        double[] found = DrawnBench.read(rig, fan, own);
                        for (int c = 0; c < 4; c++) {
                            drawn[c][k] = found[c];
                        }
                    }
                    String[] names = {
                        "thrust", "current of the supply", "speed", "voltage at the controller"
                    };
                    for (int c = 0; c < 4; c++) {
                        Reading reading = Made.of(read, at + names[c]);
                        for (double si : drawn[c]) {
                            boolean in = si >= reading.band().low() && si <= reading.band().high();
                            inside[0] += in ? 1 : 0;
                            inside[1]++;
                        }
                    }
                });
        assertThat(inside[1]).isGreaterThan(70_000);
        assertThat(inside[0] / inside[1]).isCloseTo(0.95, within(0.01));
    }
}
