package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;

/** Modules in one air: each with turbulence of the declared strength, near ones much alike. */
class SharedAirTest {

    private static final int FLIGHTS = 6000;

    /** Wind from the right (along y); starts 4 m apart across it, 10 m along it, and far away. */
    private static final List<Vec3> STARTS =
            List.of(Vec3.ZERO, new Vec3(4, 0, 0), new Vec3(0, 10, 0), new Vec3(2000, 0, 0));

    /** Of 6,000 first gusts: e^(−r/L) along the distance, e^(−r/L) (1 − r/2L) across, L = 23 m. */
    @Test
    void gustsAreAsAlikeAsTheirDistanceMakesThem() {
        long[] seeds = {11, 22, 33, 44};
        Wind wind = Wind.of(6, Math.PI / 2);
        List<GustShare> shares = GustShare.among(seeds, STARTS, Math.PI / 2);
        double[][][] sums = new double[3][4][4];
        BodyState state = new BodyState();
        state.rest(0, 0, 2, 0);
        double[] blows = new double[3];
        for (int flight = 0; flight < FLIGHTS; flight++) {
            double[][] at = new double[4][3];
            for (int k = 0; k < 4; k++) {
                Air air = new Air(wind, seeds[k], flight, shares.get(k));
                for (int step = 0; step < 5; step++) {
                    air.advance(0.001, state, 0);
                }
                air.wind(blows);
                // Comes from +y: along it is −y, across it x.
                at[k] = new double[] {-blows[1] - 6, blows[0], blows[2]};
            }
            for (int axis = 0; axis < 3; axis++) {
                for (int i = 0; i < 4; i++) {
                    for (int j = 0; j < 4; j++) {
                        sums[axis][i][j] += at[i][axis] * at[j][axis] / FLIGHTS;
                    }
                }
            }
        }
        double levelM = 0.3048 * 10 / Math.pow(0.177 + 0.00823, 1.2);
        double uprightM = 3.048;
        double[] strength = {0.6 / Math.pow(0.177 + 0.00823, 0.4), 0, 0.6};
        strength[1] = strength[0];
        for (int axis = 0; axis < 3; axis++) {
            for (int k = 0; k < 4; k++) {
                double spread = Math.sqrt(sums[axis][k][k]);
                assertThat(spread / strength[axis]).isCloseTo(1, within(0.04));
            }
        }
        close(sums[0], 1, across(4, levelM));
        close(sums[1], 1, Math.exp(-4 / levelM));
        close(sums[0], 2, Math.exp(-10 / levelM));
        close(sums[1], 2, across(10, levelM));
        close(sums[2], 1, across(4, uprightM));
        close(sums[0], 3, 0);
        close(sums[1], 3, 0);
        double apart = Math.hypot(4, 10);
        double along = Math.exp(-apart / levelM);
        double side = across(apart, levelM);
        double cos = 10 / apart;
        double found = sums[0][1][2] / Math.sqrt(sums[0][1][1] * sums[0][2][2]);
        assertThat(found).isCloseTo(side + (along - side) * cos * cos, within(0.04));
    }

    private static double across(double apartM, double scaleM) {
        return Math.exp(-apartM / scaleM) * (1 - apartM / 2 / scaleM);
    }

    private static void close(double[][] sums, int other, double alike) {
        double found = sums[0][other] / Math.sqrt(sums[0][0] * sums[other][other]);
        assertThat(found).isCloseTo(alike, within(0.04));
    }

    @Test
    void theFirstMeetsWhatItMeetsAlone() {
        GustShare first = GustShare.among(new long[] {5, 6}, STARTS.subList(0, 2), 0.4).getFirst();
        Air shared = new Air(Wind.of(5, 0.4), 5, 3, first);
        Air alone = new Air(Wind.of(5, 0.4), 5, 3);
        BodyState state = new BodyState();
        state.rest(0, 0, 2, 0);
        double[] one = new double[3];
        double[] other = new double[3];
        for (int k = 0; k < 500; k++) {
            shared.advance(0.001, state, 1);
            alone.advance(0.001, state, 1);
            shared.wind(one);
            alone.wind(other);
            assertThat(one).containsExactly(other);
        }
    }
}
