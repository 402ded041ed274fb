package liftwright.flight.loops;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.BitSet;
import java.util.random.RandomGenerator;
import liftwright.numerics.BoundedProgram;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The mixer against linear programmes and the wrench summed up anew. */
class MixerTest {

    private static final double VOLT = 50;

    /** What the duties really give, from the law of a fan alone. */
    private static double[] given(Craft craft, double[] duty, double[] volt) {
        double[] sum = new double[4];
        for (int f = 0; f < duty.length; f++) {
            Lifter fan = craft.fans().get(f);
            double thrustN = thrustN(fan, duty[f] * volt[f]);
            sum[0] -= fan.force().z() * thrustN;
            sum[1] += fan.moment().x() * thrustN;
            sum[2] += fan.moment().y() * thrustN;
            sum[3] += fan.moment().z() * thrustN;
        }
        return sum;
    }

    /** d V = a + b √T + c T by bisection. */
    private static double thrustN(Lifter fan, double volt) {
        if (volt <= fan.volts().stillV()) {
            return 0;
        }
        double low = 0;
        double high = 10 * fan.mostN();
        for (int k = 0; k < 200; k++) {
            double middle = 0.5 * (low + high);
            double v =
                    fan.volts().stillV()
                            + fan.volts().rootVpRootN() * Math.sqrt(middle)
                            + fan.volts().perNewtonVpN() * middle;
            if (v < volt) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double[] volts(Craft craft, RandomGenerator random, double least) {
        double[] volt = new double[craft.fans().size()];
        Arrays.setAll(volt, f -> RandomCraft.between(random, least, 1.1) * VOLT);
        return volt;
    }

    private static double[] wrench(Craft craft, RandomGenerator random, double size) {
        double weight = craft.weightN();
        return new double[] {
            weight * RandomCraft.between(random, 0.8, 1.2),
            size * weight * 0.3 * RandomCraft.between(random, -1, 1),
            size * weight * 0.3 * RandomCraft.between(random, -1, 1),
            size * weight * 0.01 * RandomCraft.between(random, -1, 1)
        };
    }

    /** Within what the fans can give, all four are given to rounding, at any voltage. */
    @Test
    void exactWhereNothingIsAtItsBound() {
        int[] exact = {0};
        Seeded.check(
                300,
                random -> {
                    Craft craft = RandomCraft.able(random);
                    Mixer mixer = new Mixer(craft);
                    double[] volt = volts(craft, random, 0.85);
                    double[] wanted = wrench(craft, random, 0.3);
                    double[] duty = new double[volt.length];
                    mixer.share(wanted, volt, duty);
                    for (double one : duty) {
                        assertThat(one).isBetween(0.0, 1.0);
                    }
                    if (!mixer.saturated()) {
                        exact[0]++;
                        double[] found = given(craft, duty, volt);
                        for (int row = 0; row < 4; row++) {
                            assertThat(found[row])
                                    .isCloseTo(wanted[row], within(1e-9 * craft.weightN()));
                        }
                    }
                });
        assertThat(exact[0]).isGreaterThan(100);
    }

    /**
     * At bounds: where a linear programme finds that lift and tilt can be given with yaw left free,
     * they are, to a thousandth; and yaw then comes as near as the programme's best, to a hundredth
     * of its range. Fans that are known lost take no part.
     */
    @Test
    void liftAndTiltComeBeforeYaw() {
        int[] seen = new int[2];
        Seeded.check(
                400,
                random -> {
                    Craft craft = RandomCraft.able(random);
                    Mixer mixer = new Mixer(craft);
                    double[] volt = volts(craft, random, 0.85);
                    BitSet lost = new BitSet();
                    if (random.nextInt(3) == 0) {
                        lost.set(random.nextInt(volt.length));
                    }
                    mixer.lost(lost);
                    double[] wanted = wrench(craft, random, 1.5);
                    wanted[3] *= 6;
                    double[] duty = new double[volt.length];
                    mixer.share(wanted, volt, duty);
                    lost.stream().forEach(f -> assertThat(duty[f]).isZero());
                    double[] found = given(craft, duty, volt);
                    Programme programme = new Programme(craft, volt, lost);
                    double weight = craft.weightN();
                    if (!mixer.saturated() || !programme.holds(wanted)) {
                        return;
                    }
                    seen[0]++;
                    for (int row = 0; row < 3; row++) {
                        assertThat(found[row]).isCloseTo(wanted[row], within(1e-3 * weight));
                    }
                    double most = programme.yaw(wanted, 1);
                    double least = -programme.yaw(wanted, -1);
                    double best = Math.clamp(wanted[3], least, most);
                    if (best != wanted[3]) {
                        seen[1]++;
                    }
                    assertThat(found[3])
                            .isCloseTo(best, within(0.01 * (most - least) + 1e-4 * weight));
                });
        assertThat(seen[0]).as("lift and tilt held at bounds").isGreaterThan(60);
        assertThat(seen[1]).as("with yaw beyond reach").isGreaterThan(20);
    }

    /** Beyond all reach tilt is still given to nine tenths of what a programme gives its way. */
    @Test
    void tiltBeyondReachIsGivenItsWay() {
        int[] seen = {0};
        double[] least = {1};
        Seeded.check(
                300,
                random -> {
                    Craft craft = RandomCraft.able(random);
                    Mixer mixer = new Mixer(craft);
                    double[] volt = volts(craft, random, 0.95);
                    double[] wanted = wrench(craft, random, 5);
                    wanted[3] = 0;
                    double[] duty = new double[volt.length];
                    mixer.share(wanted, volt, duty);
                    Programme programme = new Programme(craft, volt, new BitSet());
                    if (programme.holds(wanted)) {
                        return;
                    }
                    double best = programme.along(wanted);
                    double[] found = given(craft, duty, volt);
                    double size = Math.hypot(wanted[1], wanted[2]);
                    double got = (found[1] * wanted[1] + found[2] * wanted[2]) / (size * size);
                    seen[0]++;
                    least[0] = Math.min(least[0], got / best);
                    assertThat(got).isGreaterThan(0.9 * best);
                });
        assertThat(seen[0]).isGreaterThan(50);
    }

    /** No fan that gives anything, no voltage, wild wishes: duties stay between 0 and 1. */
    @Test
    void neverAsksOutsideItsBounds() {
        Seeded.check(
                200,
                random -> {
                    Craft craft = RandomCraft.able(random);
                    Mixer mixer = new Mixer(craft);
                    double[] volt = volts(craft, random, 0);
                    volt[0] = 0;
                    double[] duty = new double[volt.length];
                    for (int k = 0; k < 20; k++) {
                        double[] wanted = wrench(craft, random, Math.pow(10, k % 4));
                        wanted[0] *= RandomCraft.between(random, -1, 4);
                        mixer.share(wanted, volt, duty);
                        for (double one : duty) {
                            assertThat(one).isBetween(0.0, 1.0);
                        }
                    }
                });
    }

    /** Linear programmes over thrusts between idle and what duty one gives. */
    private static final class Programme {

        private final double[][] rows;
        private final double[] low;
        private final double[] span;
        private final double scale;

        Programme(Craft craft, double[] volt, BitSet lost) {
            int fans = volt.length;
            rows = new double[4][fans];
            low = new double[fans];
            span = new double[fans];
            scale = craft.weightN();
            for (int f = 0; f < fans; f++) {
                Lifter fan = craft.fans().get(f);
                double top = lost.get(f) ? 0 : MixerTest.thrustN(fan, volt[f]);
                low[f] = lost.get(f) ? 0 : Math.min(fan.idleN(), top);
                span[f] = top - low[f];
                rows[0][f] = -fan.force().z() / scale;
                rows[1][f] = fan.moment().x() / scale;
                rows[2][f] = fan.moment().y() / scale;
                rows[3][f] = fan.moment().z() / scale;
            }
        }

        private double[] right(double[] wanted, int count) {
            double[] b = new double[count];
            for (int row = 0; row < count; row++) {
                b[row] = wanted[row] / scale;
                for (int f = 0; f < low.length; f++) {
                    b[row] -= rows[row][f] * low[f];
                }
            }
            return b;
        }

        boolean holds(double[] wanted) {
            return BoundedProgram.greatest(
                            rows[3],
                            new double[][] {rows[0], rows[1], rows[2]},
                            right(wanted, 3),
                            span)
                    instanceof BoundedProgram.Found;
        }

        /** Greatest yaw one way with lift and tilt held, N·m. */
        double yaw(double[] wanted, int sign) {
            double[] c = new double[low.length];
            double base = 0;
            for (int f = 0; f < low.length; f++) {
                c[f] = sign * rows[3][f];
                base += c[f] * low[f];
            }
            return switch (BoundedProgram.greatest(
                    c, new double[][] {rows[0], rows[1], rows[2]}, right(wanted, 3), span)) {
                case BoundedProgram.Found found -> (found.value() + base) * scale;
                default -> throw new AssertionError("held before");
            };
        }

        /** Greatest share of the wanted tilt, along it, at any lift. */
        double along(double[] wanted) {
            // One more unknown, the share s: roll and pitch of the fans less s times those wanted.
            int fans = low.length;
            double[][] a = new double[2][fans + 1];
            double[] b = new double[2];
            for (int row = 0; row < 2; row++) {
                System.arraycopy(rows[row + 1], 0, a[row], 0, fans);
                a[row][fans] = -wanted[row + 1] / scale;
                for (int f = 0; f < fans; f++) {
                    b[row] -= rows[row + 1][f] * low[f];
                }
            }
            double[] c = new double[fans + 1];
            c[fans] = 1;
            double[] upper = Arrays.copyOf(span, fans + 1);
            upper[fans] = 1;
            return switch (BoundedProgram.greatest(c, a, b, upper)) {
                case BoundedProgram.Found found -> found.value();
                default -> throw new AssertionError("no trim at all");
            };
        }
    }
}
