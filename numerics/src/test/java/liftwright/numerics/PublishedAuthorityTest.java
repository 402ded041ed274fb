package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Vehicles of one rotor size about a ring: how many single failures they survive, and how far hover
 * is from the edge with yaw given up.
 *
 * <p>Vehicle of Du, Quan, Yang and Cai 2015 (1.535 kg, g 9.80, arm 0.275 m, torque 0.1 m of thrust;
 * from memory). Where no paper is named the numbers were recomputed by hand of the project.
 */
class PublishedAuthorityTest {

    private static final double WEIGHT = 1.535 * 9.80;
    private static final double SIX_N = 6.125;

    /** Depth of hover in lift, roll, pitch and, where it is held, yaw. */
    private static double depth(String spins, int dead, double mostN, boolean yaw) {
        int rotors = spins.length();
        int rows = yaw ? 4 : 3;
        double[] toHover = new double[rows];
        toHover[0] = WEIGHT;
        List<double[]> half = new ArrayList<>();
        for (int k = 0; k < rotors; k++) {
            if (k + 1 == dead) {
                continue;
            }
            double angle = 2 * Math.PI * k / rotors;
            double[] all = {
                1,
                -0.275 * Math.sin(angle),
                0.275 * Math.cos(angle),
                spins.charAt(k) == 'P' ? 0.1 : -0.1
            };
            double[] own = new double[rows];
            for (int i = 0; i < rows; i++) {
                own[i] = all[i] * mostN / 2;
                toHover[i] -= own[i];
            }
            half.add(own);
        }
        return Zonotope.depth(half.toArray(double[][]::new), toHover);
    }

    /**
     * Of six single failures four are survived by PPNNPN and none by PNPNPN: arXiv 1403.5986, as
     * told in an open discussion of it.
     */
    @ParameterizedTest
    @CsvSource({"PPNNPN, 4", "PNPNPN, 0"})
    void asManySingleFailuresAreSurvivedAsPublished(String spins, int published) {
        int survived = 0;
        for (int dead = 1; dead <= 6; dead++) {
            survived += depth(spins, dead, SIX_N, true) > 1e-9 ? 1 : 0;
        }
        assertThat(survived).isEqualTo(published);
    }

    /** Recomputed: 2.8835 healthy and 1.2882 with any one dead, of lift, roll and pitch alone. */
    @Test
    void aSixRotorVehicleThatGivesUpYawSurvivesAnyOneFailure() {
        assertThat(depth("PNPNPN", 0, SIX_N, false)).isCloseTo(2.8835, within(5e-5));
        for (int dead = 1; dead <= 6; dead++) {
            assertThat(depth("PNPNPN", dead, SIX_N, false)).isCloseTo(1.2882, within(5e-5));
        }
    }

    /** Recomputed: with one dead and yaw given up, every rotor must give more than m g / 4. */
    @Test
    void aQuarterOfTheWeightIsTheLeastThatARotorMustGive() {
        assertThat(depth("PNPNPN", 1, WEIGHT / 4, false)).isCloseTo(0, within(1e-12));
        assertThat(depth("PNPNPN", 1, WEIGHT / 4 * 1.001, false)).isPositive();
        assertThat(depth("PNPNPN", 1, WEIGHT / 4 * 0.999, false)).isNegative();
    }

    /** Recomputed: four and eight rotors that lift twice their weight; the four has no spare. */
    @ParameterizedTest
    @CsvSource({
        "PNPN, 0, 1.2126",
        "PNPN, 1, -1.2126",
        "PNPN, 4, -1.2126",
        "PNPNPNPN, 0, 1.3838",
        "PNPNPNPN, 1, 0.5732",
        "PNPNPNPN, 6, 0.5732"
    })
    void fourAndEightRotorsOfTwiceTheWeight(String spins, int dead, double index) {
        assertThat(depth(spins, dead, 2 * WEIGHT / spins.length(), true))
                .isCloseTo(index, within(1e-4));
    }
}
