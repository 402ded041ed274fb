package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Against every choice there is, tried one after the other. */
class SignChoiceTest {

    private static final long PLENTY = 100_000_000L;

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Drawn(double[] b, double[][] q, boolean[] given, double enough) {}

    /** Torques of fans at some throttles: nearly in proportion; often alike, often balanced. */
    private static Drawn drawn(RandomGenerator random, int columns) {
        int cases = random.nextInt(1, 6);
        double[] throttle = new double[cases];
        double[] b = new double[cases];
        boolean pushed = random.nextBoolean();
        for (int l = 0; l < cases; l++) {
            throttle[l] = random.nextDouble(0.2, 1);
            b[l] = pushed ? random.nextDouble(-2, 2) * throttle[l] : 0;
        }
        int kinds = random.nextInt(1, columns + 1);
        double[][] kind = new double[kinds][cases];
        for (double[] each : kind) {
            double torque = random.nextDouble(-0.2, 1);
            for (int l = 0; l < cases; l++) {
                each[l] = torque * throttle[l] * random.nextDouble(0.95, 1.05);
            }
        }
        double[][] q = new double[columns][];
        boolean[] given = new boolean[columns];
        for (int k = 0; k < columns; k++) {
            q[k] = kind[random.nextInt(kinds)];
            given[k] = random.nextBoolean();
        }
        return new Drawn(b, q, given, random.nextBoolean() ? 0 : random.nextDouble(0, 0.2));
    }

    private static double worst(Drawn d, int pluses) {
        double worst = 0;
        for (int l = 0; l < d.b.length; l++) {
            double sum = d.b[l];
            for (int k = 0; k < d.q.length; k++) {
                sum += (pluses >> k & 1) == 1 ? d.q[k][l] : -d.q[k][l];
            }
            worst = Math.max(worst, Math.abs(sum));
        }
        return worst;
    }

    private static int bits(boolean[] signs) {
        int bits = 0;
        for (int k = 0; k < signs.length; k++) {
            bits |= signs[k] ? 1 << k : 0;
        }
        return bits;
    }

    @Test
    void isTheBestOfAllThereAre() {
        int[] seen = new int[2];
        Seeded.check(
                1000,
                random -> {
                    Drawn d = drawn(random, random.nextInt(1, 13));
                    double least = Double.POSITIVE_INFINITY;
                    for (int pluses = 0; pluses < 1 << d.q.length; pluses++) {
                        least = Math.min(least, Math.max(d.enough, worst(d, pluses)));
                    }
                    int given = bits(d.given);
                    int fewest = Integer.MAX_VALUE;
                    double leastOfThese = Double.POSITIVE_INFINITY;
                    for (int pluses = 0; pluses < 1 << d.q.length; pluses++) {
                        double worst = worst(d, pluses);
                        if (worst <= least + 1e-9) {
                            int changes = Integer.bitCount(pluses ^ given);
                            if (changes < fewest) {
                                leastOfThese = Double.POSITIVE_INFINITY;
                                fewest = changes;
                            }
                            if (changes == fewest) {
                                leastOfThese = Math.min(leastOfThese, worst);
                            }
                        }
                    }
                    var found = SignChoice.of(d.b, d.q, d.given, d.enough, PLENTY);
                    assertThat(found.exact()).isTrue();
                    assertThat(found.changes()).isEqualTo(fewest);
                    assertThat(found.worst()).isCloseTo(leastOfThese, within(1e-9));
                    assertThat(worst(d, bits(found.plus()))).isCloseTo(found.worst(), within(1e-9));
                    assertThat(Integer.bitCount(bits(found.plus()) ^ given)).isEqualTo(fewest);
                    assertThat(found.bound()).isLessThanOrEqualTo(least + 1e-9);
                    seen[fewest == 0 ? 0 : 1]++;
                });
        assertThat(seen[0]).isGreaterThan(20);
        assertThat(seen[1]).isGreaterThan(300);
    }

    /** 24 fans of which no two are alike: all 16.8 million choices, by the bound alone. */
    @Test
    void twentyFourUnlikeOnesAreDecided() {
        Seeded.check(
                5,
                random -> {
                    double[][] q = new double[24][3];
                    boolean[] given = new boolean[24];
                    for (int k = 0; k < 24; k++) {
                        double torque = random.nextDouble(0.5, 1);
                        for (int l = 0; l < 3; l++) {
                            q[k][l] = (l + 1) * torque * random.nextDouble(0.98, 1.02);
                        }
                        given[k] = k % 2 == 0;
                    }
                    var found = SignChoice.of(new double[3], q, given, 0.01, PLENTY);
                    assertThat(found.exact()).isTrue();
                    assertThat(found.worst()).isLessThan(0.2);
                });
    }

    /** 96 fans of eight kinds; and 96 unlike ones, where the proof may be given up and said so. */
    @Test
    void ninetySixSayWhatIsProven() {
        Seeded.check(
                5,
                random -> {
                    double[][] q = new double[96][];
                    boolean[] given = new boolean[96];
                    for (int k = 0; k < 96; k++) {
                        q[k] = k < 8 ? new double[] {random.nextDouble(0.5, 1)} : q[k % 8];
                        given[k] = true;
                    }
                    var found = SignChoice.of(new double[1], q, given, 0.05, 3_000_000);
                    assertThat(found.worst()).isLessThanOrEqualTo(0.05);
                    assertThat(found.bound()).isZero();
                    for (int k = 0; k < 96; k++) {
                        q[k] = new double[] {random.nextDouble(0.5, 1)};
                        given[k] = random.nextBoolean();
                    }
                    found = SignChoice.of(new double[] {1}, q, given, 0, 100_000);
                    assertThat(found.bound()).isZero();
                    assertThat(found.worst()).isLessThan(1);
                    assertThat(found.exact()).isFalse();
                });
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(
                        () -> SignChoice.of(new double[1], new double[2][1], new boolean[1], 0, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () -> SignChoice.of(new double[1], new double[1][1], new boolean[1], -1, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
