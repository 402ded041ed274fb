package liftwright.plant.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import liftwright.numerics.Zonotope;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reserves of vehicles with six rotors about a ring, one of them dead.
 *
 * <p>Vehicle of Du, Quan, Yang and Cai, J. Guid. Control Dyn. 38(5), 2015, 978–984 (1.535 kg, g
 * 9.80, arm 0.275 m, each rotor up to 6.125 N, torque 0.1 m of thrust; from memory). That four of
 * six single failures are survived with PPNNPN and none with PNPNPN is published (arXiv 1403.5986,
 * as told in an open discussion); the reserves were recomputed by going through all vertices.
 */
class PublishedFailuresTest {

    private static final double WEIGHT = 1.535 * 9.80;
    private static final double ARM = 0.275;
    private static final double MOST = 6.125;

    private static LossTrims trims(String spins, int dead) {
        LossTrims trims = new LossTrims(spins.length());
        for (int k = 0; k < spins.length(); k++) {
            double angle = 2 * Math.PI * k / spins.length();
            trims.unit()[0][k] = 1;
            trims.unit()[1][k] = -Math.sin(angle);
            trims.unit()[2][k] = Math.cos(angle);
            trims.unit()[3][k] = (spins.charAt(k) == 'P' ? 0.1 : -0.1) / ARM;
            trims.most()[k] = MOST / WEIGHT;
        }
        trims.whole(1);
        if (dead > 0) {
            trims.most()[dead - 1] = 0;
        }
        return trims;
    }

    private static double nm(LossTrims trims, int axis, int sign, boolean yaw) {
        return trims.reserve(axis, sign, yaw, 1) * WEIGHT * ARM;
    }

    /** Roll, pitch and yaw, right and left, with the others at zero and lift at weight, N·m. */
    @ParameterizedTest
    @CsvSource({
        "PNPNPN, 0, 2.9174, 2.9174, 2.5266, 2.5266, 1.5043, 1.5043",
        "PPNNPN, 0, 2.9174, 2.9174, 2.0684, 2.0684, 1.2250, 1.2250",
        "PPNNPN, 1, 2.2523, 2.2523, 1.3003, 2.0684, 0.9457, 0.9457",
        "PPNNPN, 5, -0.6652, 2.9174, 2.0684, -0.3840, -0.2793, 1.2250",
        "PNPNPN, 1, 2.2523, 2.2523, 0, 2.5266, 0, 1.5043"
    })
    void reservesWithOneRotorDead(
            String spins,
            int dead,
            double roll,
            double rollLeft,
            double pitch,
            double pitchDown,
            double yaw,
            double yawLeft) {
        LossTrims trims = trims(spins, dead);
        assertThat(nm(trims, 1, 1, true)).isCloseTo(roll, within(5e-5));
        assertThat(nm(trims, 1, -1, true)).isCloseTo(rollLeft, within(5e-5));
        assertThat(nm(trims, 2, 1, true)).isCloseTo(pitch, within(5e-5));
        assertThat(nm(trims, 2, -1, true)).isCloseTo(pitchDown, within(5e-5));
        assertThat(nm(trims, 3, 1, true)).isCloseTo(yaw, within(5e-5));
        assertThat(nm(trims, 3, -1, true)).isCloseTo(yawLeft, within(5e-5));
        assertThat(trims.takeGap()).isLessThan(1e-12);
    }

    /** Both spare 21.707 N beyond the weight while all six turn. */
    @ParameterizedTest
    @CsvSource({"PNPNPN", "PPNNPN"})
    void liftBeyondTheWeight(String spins) {
        LossTrims trims = trims(spins, 0);
        assertThat((trims.greatestLift(true) - 1) * WEIGHT).isCloseTo(21.707, within(5e-4));
    }

    /** A failure is survived where every reserve is above zero. */
    @ParameterizedTest
    @CsvSource({"PPNNPN, 4", "PNPNPN, 0"})
    void asManySingleFailuresAreSurvivedAsPublished(String spins, int published) {
        int survived = 0;
        for (int dead = 1; dead <= 6; dead++) {
            LossTrims trims = trims(spins, dead);
            double least = Double.POSITIVE_INFINITY;
            for (int axis = 1; axis <= 3; axis++) {
                least = Math.min(least, trims.reserve(axis, 1, true, 1));
                least = Math.min(least, trims.reserve(axis, -1, true, 1));
            }
            survived += least > 1e-9 ? 1 : 0;
        }
        assertThat(survived).isEqualTo(published);
    }

    /** With yaw given up, any one may fail: every reserve of roll and pitch is above zero. */
    @Test
    void withYawGivenUpAnyOneMayFail() {
        for (int dead = 1; dead <= 6; dead++) {
            LossTrims trims = trims("PNPNPN", dead);
            for (int axis = 1; axis <= 2; axis++) {
                assertThat(nm(trims, axis, 1, false)).isPositive();
                assertThat(nm(trims, axis, -1, false)).isPositive();
            }
        }
    }

    private static LossTrims drawn(RandomGenerator random, int fans) {
        LossTrims trims = new LossTrims(fans);
        for (int k = 0; k < fans; k++) {
            double angle = 2 * Math.PI * (k + random.nextDouble(-0.3, 0.3)) / fans;
            trims.unit()[0][k] = random.nextDouble(0.9, 1);
            trims.unit()[1][k] = Math.sin(angle);
            trims.unit()[2][k] = Math.cos(angle);
            trims.unit()[3][k] = (k % 2 == 0 ? 0.1 : -0.1) * random.nextDouble(0.8, 1.2);
            trims.most()[k] = random.nextDouble(1, 3) / fans;
        }
        trims.whole(1);
        return trims;
    }

    /** A stiff supply: what is left of a fan never helps more than the whole of it. */
    @Test
    void losingMoreNeverRaisesLiftOrReserves() {
        Seeded.check(
                300,
                random -> {
                    int fans = random.nextInt(5, 25);
                    LossTrims trims = drawn(random, fans);
                    double[] before = values(trims);
                    for (int loss = 0; loss < 4; loss++) {
                        trims.most()[random.nextInt(fans)] *= random.nextInt(2) * 0.5;
                        double[] after = values(trims);
                        for (int i = 0; i < after.length; i++) {
                            assertThat(after[i]).isLessThanOrEqualTo(before[i] + 1e-10);
                        }
                        before = after;
                    }
                });
    }

    private static double[] values(LossTrims trims) {
        double[] values = new double[14];
        int at = 0;
        for (boolean yaw : new boolean[] {true, false}) {
            values[at++] = trims.greatestLift(yaw);
            for (int axis = 1; axis <= 3; axis++) {
                values[at++] = trims.reserve(axis, 1, yaw, 1);
                values[at++] = trims.reserve(axis, -1, yaw, 1);
            }
        }
        return values;
    }

    /**
     * The moment of a reserve lies on the edge of what can be given, and is parallel to what was
     * asked (Durham, J. Guid. Control Dyn. 16(4), 1993, 717–725: attainable moments).
     */
    @Test
    void aReserveLiesOnTheEdgeOfWhatCanBeGiven() {
        Seeded.check(
                100,
                random -> {
                    int fans = random.nextInt(5, 11);
                    LossTrims trims = drawn(random, fans);
                    trims.most()[random.nextInt(fans)] = 0;
                    int axis = random.nextInt(1, 4);
                    double most = trims.reserve(axis, 1, true, 1);
                    if (most == LossTrims.NONE) {
                        return;
                    }
                    double[][] half = new double[fans][4];
                    double[] to = {1, 0, 0, 0};
                    to[axis] = most;
                    for (int k = 0; k < fans; k++) {
                        for (int row = 0; row < 4; row++) {
                            half[k][row] = trims.unit()[row][k] * trims.most()[k] / 2;
                            to[row] -= half[k][row];
                        }
                    }
                    assertThat(Zonotope.depth(half, to)).isCloseTo(0, within(1e-9));
                });
    }

    /** What is asked first decides nothing: each loss starts from the whole rig. */
    @Test
    void theOrderOfLossesDecidesNothing() {
        Seeded.check(
                50,
                random -> {
                    int fans = random.nextInt(6, 25);
                    LossTrims trims = drawn(random, fans);
                    double[] most = trims.most().clone();
                    int one = random.nextInt(fans);
                    trims.most()[one] = 0;
                    double[] first = values(trims);
                    for (int other = 0; other < fans; other++) {
                        System.arraycopy(most, 0, trims.most(), 0, fans);
                        trims.most()[other] = 0;
                        values(trims);
                    }
                    System.arraycopy(most, 0, trims.most(), 0, fans);
                    trims.most()[one] = 0;
                    assertThat(values(trims)).isEqualTo(first);
                });
    }
}
