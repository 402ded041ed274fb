package liftwright.learning.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import liftwright.learning.explain.Explained.Weighed;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class NextTestsTest {

    /**
     * Held against its meaning: the mean of ln p(y | x) − ln p(y) over drawn unknowns and readings,
     * for two unknowns and two readings, by formulas of this test.
     */
    @Test
    void informationIsWhatReadingsTellOnAverage() {
        Seeded.check(
                12,
                random -> {
                    double a = random.nextDouble(0.3, 2);
                    double b = random.nextDouble(0.3, 2);
                    double r = random.nextDouble(-0.8, 0.8);
                    double[][] c = {{a * a, r * a * b}, {r * a * b, b * b}};
                    double[][] f = new double[2][2];
                    for (double[] row : f) {
                        row[0] = random.nextDouble(-1.5, 1.5);
                        row[1] = random.nextDouble(-1.5, 1.5);
                    }
                    SplittableRandom draws = new SplittableRandom(random.nextLong());
                    double sum = 0;
                    int count = 60_000;
                    // Covariance of the readings: 1 + F C Fᵀ.
                    double[][] s = new double[2][2];
                    for (int i = 0; i < 2; i++) {
                        for (int j = 0; j < 2; j++) {
                            s[i][j] = i == j ? 1 : 0;
                            for (int k = 0; k < 2; k++) {
                                for (int l = 0; l < 2; l++) {
                                    s[i][j] += f[k][i] * c[k][l] * f[l][j];
                                }
                            }
                        }
                    }
                    double det = s[0][0] * s[1][1] - s[0][1] * s[1][0];
                    for (int draw = 0; draw < count; draw++) {
                        double u = draws.nextGaussian();
                        double x0 = a * u;
                        double x1 = b * (r * u + Math.sqrt(1 - r * r) * draws.nextGaussian());
                        double e0 = draws.nextGaussian();
                        double e1 = draws.nextGaussian();
                        double y0 = f[0][0] * x0 + f[1][0] * x1 + e0;
                        double y1 = f[0][1] * x0 + f[1][1] * x1 + e1;
                        double given = -0.5 * (e0 * e0 + e1 * e1);
                        double form =
                                (s[1][1] * y0 * y0 - 2 * s[0][1] * y0 * y1 + s[0][0] * y1 * y1)
                                        / det;
                        sum += given + 0.5 * form + 0.5 * Math.log(det);
                    }
                    assertThat(Information.nats(c, f)).isCloseTo(sum / count, within(0.02));
                });
    }

    private static Weighed of(CauseKind kind, String part, double share) {
        return new Weighed(new Cause(kind, part), share, 10, 5, 15, "", 5);
    }

    /** A weak fan or a bad joint: four wires at the joint tell for little. */
    @Test
    void theCheapTestThatTellsComesFirst() {
        List<NextTest> tests =
                NextTests.of(
                        List.of(
                                of(CauseKind.WEAK_FAN, "left.1", 0.5),
                                of(CauseKind.JOINT, "feed.2", 0.5)));
        assertThat(tests).isNotEmpty();
        assertThat(tests.getFirst().words()).contains("feed.2").contains("four wires");
        assertThat(tests.getFirst().nats()).isGreaterThan(0.5);
        for (int k = 1; k < tests.size(); k++) {
            assertThat(tests.get(k).worth()).isLessThanOrEqualTo(tests.get(k - 1).worth());
        }
    }

    /** What is known for sure needs no test. */
    @Test
    void nothingIsAskedForWhereAllIsTold() {
        assertThat(NextTests.of(List.of(of(CauseKind.WEAK_FAN, "left.1", 1)))).isEmpty();
    }
}
