package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against linear programmes and against published indices of a six-rotor vehicle. */
class ZonotopeTest {

    /** λ is least with Σ t_i g_i = point, |t_i| ≤ λ: 1 over the longest way along the point. */
    @Test
    void theFactorIsThatOfALinearProgramme() {
        Seeded.check(
                1000,
                random -> {
                    int count = random.nextInt(4, 12);
                    double[][] g = new double[count][3];
                    for (double[] one : g) {
                        for (int i = 0; i < 3; i++) {
                            one[i] = random.nextGaussian();
                        }
                    }
                    double[] point = {
                        random.nextGaussian(), random.nextGaussian(), random.nextGaussian()
                    };
                    // Columns s_i = (t_i + 1)/2 in [0, 1] and the way w: Σ 2 g_i s_i − w p = Σ g_i.
                    double[][] rows = new double[3][count + 1];
                    double[] right = new double[3];
                    for (int i = 0; i < 3; i++) {
                        for (int k = 0; k < count; k++) {
                            rows[i][k] = 2 * g[k][i];
                            right[i] += g[k][i];
                        }
                        rows[i][count] = -point[i];
                    }
                    double[] c = new double[count + 1];
                    double[] upper = new double[count + 1];
                    java.util.Arrays.fill(upper, 1);
                    c[count] = 1;
                    upper[count] = 1e4;
                    var found =
                            (BoundedProgram.Found) BoundedProgram.greatest(c, rows, right, upper);
                    double factor = Zonotope.factorToHold(g, point);
                    assertThat(factor).isCloseTo(1 / found.value(), within(1e-8 * factor));
                });
    }

    @Test
    void generatorsInOnePlaneHoldNothingOffIt() {
        double[][] flat = {{1, 0, 0}, {0, 1, 0}, {1, 1, 0}};
        assertThat(Zonotope.factorToHold(flat, new double[] {0, 0, 1})).isInfinite();
        double[][] one = {{2, 0, 0}, {1, 0, 0}};
        assertThat(Zonotope.factorToHold(one, new double[] {6, 0, 0})).isCloseTo(2, within(1e-12));
        assertThat(Zonotope.factorToHold(one, new double[] {6, 1, 0})).isInfinite();
        assertThat(Zonotope.factorToHold(new double[][] {{0, 0, 0}}, new double[3])).isZero();
        assertThat(Zonotope.factorToHold(new double[0][], new double[] {1, 0, 0})).isInfinite();
    }

    /** A flat set is the same set wherever its plane lies: two dimensions set down in three. */
    @Test
    void aFlatSetIsThatOfItsPlane() {
        Seeded.check(
                300,
                random -> {
                    double[] u = {random.nextGaussian(), random.nextGaussian(), 1};
                    double[] v = {random.nextGaussian(), -1, random.nextGaussian()};
                    unit(u);
                    double share = u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
                    for (int i = 0; i < 3; i++) {
                        v[i] -= share * u[i];
                    }
                    unit(v);
                    double[][] plane = new double[random.nextInt(2, 8)][];
                    double[][] space = new double[plane.length][];
                    for (int k = 0; k < plane.length; k++) {
                        plane[k] = new double[] {random.nextGaussian(), random.nextGaussian()};
                        space[k] = set(plane[k], u, v);
                    }
                    double[] point = {random.nextGaussian(), random.nextGaussian()};
                    // In a plane every facet is one generator, and its normal that one turned.
                    double most = 0;
                    for (double[] g : plane) {
                        double reach = 0;
                        for (double[] other : plane) {
                            reach += Math.abs(other[0] * g[1] - other[1] * g[0]);
                        }
                        most = Math.max(most, Math.abs(point[0] * g[1] - point[1] * g[0]) / reach);
                    }
                    assertThat(Zonotope.factorToHold(space, set(point, u, v)))
                            .isCloseTo(most, within(1e-9 * most));
                });
    }

    private static double[] set(double[] flat, double[] u, double[] v) {
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            out[i] = flat[0] * u[i] + flat[1] * v[i];
        }
        return out;
    }

    private static void unit(double[] vector) {
        double size = Math.sqrt(java.util.Arrays.stream(vector).map(x -> x * x).sum());
        for (int i = 0; i < vector.length; i++) {
            vector[i] /= size;
        }
    }

    /**
     * Six rotors at 60° with k = 6.125 N each, arm 0.275 m, torque 0.1 m of thrust, 1.535 kg, g
     * 9.80: Du, Quan, Yang and Cai 2015, doi 10.2514/1.G000731; vehicle from memory, and the four
     * published indices come out. −0.2133 is the signed minimum, of the project's own.
     */
    @ParameterizedTest
    @CsvSource({
        "PNPNPN, 0, 1.4861",
        "PPNNPN, 0, 1.1295",
        "PNPNPN, 1, 0",
        "PNPNPN, 4, 0",
        "PPNNPN, 1, 0.7221",
        "PPNNPN, 2, 0.4510",
        "PPNNPN, 3, 0.4510",
        "PPNNPN, 4, 0.7221",
        "PPNNPN, 5, -0.2133",
        "PPNNPN, 6, -0.2133"
    })
    void readsThePublishedIndexOfASixRotorVehicle(String spins, int dead, double index) {
        double[][] half = new double[6][];
        double[] middle = new double[4];
        for (int k = 0; k < 6; k++) {
            double angle = Math.toRadians(60 * k);
            double most = k + 1 == dead ? 0 : 6.125;
            double[] one = {
                1,
                -0.275 * Math.sin(angle),
                0.275 * Math.cos(angle),
                spins.charAt(k) == 'P' ? 0.1 : -0.1
            };
            half[k] = new double[4];
            for (int i = 0; i < 4; i++) {
                half[k][i] = one[i] * most / 2;
                middle[i] += half[k][i];
            }
        }
        double[] hover = {1.535 * 9.80 - middle[0], -middle[1], -middle[2], -middle[3]};
        double[][] working =
                java.util.Arrays.stream(half).filter(g -> g[0] != 0).toArray(double[][]::new);
        assertThat(Zonotope.depth(working, hover)).isCloseTo(index, within(5e-5));
    }
}
