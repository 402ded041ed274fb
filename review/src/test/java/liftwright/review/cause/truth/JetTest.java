package liftwright.review.cause.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The referee's jets against closed forms. */
class JetTest {

    private static final double DIAMETER = 0.12;
    private static final double[] ORIGIN = {0, 0, 0};
    private static final int MANY = 4000;

    private static Jet struck(Thing thing) {
        return Jet.strike(ORIGIN, Solid.DOWN, DIAMETER, List.of(thing), MANY);
    }

    private static Thing plate(double x, double y, double away, double wide, double deep) {
        double[] edges = {wide, deep, 0.01};
        return new Thing.Block(new double[] {x, y, away + 0.005}, edges);
    }

    /** Share of a normal within limits, by Simpson's rule. */
    private static double normal(double from, double to, double sigma) {
        int strips = 400;
        double h = (to - from) / strips;
        double sum = 0;
        for (int k = 0; k <= strips; k++) {
            double x = (from + k * h) / sigma;
            double weight = k == 0 || k == strips ? 1 : k % 2 == 0 ? 2 : 4;
            sum += weight * Math.exp(-x * x / 2);
        }
        return sum * h / 3 / sigma / Math.sqrt(2 * Math.PI);
    }

    /** A Gaussian over a rectangle is a product of two; half speed at r½ is 2^(−2 (r/r½)²). */
    @Test
    void aPlateBeyondTheCoreCatchesAProductOfNormals() {
        Seeded.check(
                20,
                random -> {
                    double away = random.nextDouble(0.8, 2.2);
                    double sigma = 0.096 * away / Math.sqrt(4 * Math.log(2));
                    double[] x = ends(random, sigma);
                    double[] y = ends(random, sigma);
                    Jet jet =
                            struck(
                                    plate(
                                            (x[0] + x[1]) / 2,
                                            (y[0] + y[1]) / 2,
                                            away,
                                            x[1] - x[0],
                                            y[1] - y[0]));
                    double share = normal(x[0], x[1], sigma) * normal(y[0], y[1], sigma);
                    // Rays lean by some degrees, and a few strike an edge of 10 mm.
                    assertThat(jet.caught()[1]).isCloseTo(share, within(0.012));
                    assertThat(jet.caught()[0]).isZero();
                    double lever =
                            sigma
                                    * (Math.exp(-Math.pow(x[0] / sigma, 2) / 2)
                                            - Math.exp(-Math.pow(x[1] / sigma, 2) / 2))
                                    / Math.sqrt(2 * Math.PI)
                                    * normal(y[0], y[1], sigma);
                    assertThat(jet.moved()[1][0]).isCloseTo(lever, within(0.012 * away * 0.3));
                });
    }

    private static double[] ends(RandomGenerator random, double sigma) {
        double from = random.nextDouble(-2, 1) * sigma;
        return new double[] {from, from + random.nextDouble(0.5, 3) * sigma};
    }

    /** Just before the exit a straight edge leaves a segment of the disk. */
    @Test
    void anEdgeAtTheExitCutsASegmentOfTheDisk() {
        for (double edge : new double[] {-0.03, 0, 0.02, 0.045}) {
            Jet jet = struck(plate(edge + 0.5, 0, 0.002, 1, 1));
            double r = DIAMETER / 2;
            double area = r * r * Math.acos(edge / r) - edge * Math.sqrt(r * r - edge * edge);
            assertThat(jet.caught()[1]).isCloseTo(area / Math.PI / r / r, within(0.01));
        }
    }

    /** A ball on the axis: 1 − 2^(−2 (a/r½)²), and 0.6 of it pushes. */
    @Test
    void aBallOnTheAxisCatchesItsDisk() {
        for (double radius : new double[] {0.02, 0.05, 0.1}) {
            double[] at = {0, 0, 1.5};
            Jet jet = struck(new Thing.Round("", at, new double[] {0, 0, 1.5001}, radius));
            double seen = radius / Math.sqrt(1 - Math.pow(radius / 1.5, 2));
            double half = 0.096 * 1.5;
            double share = 1 - Math.pow(2, -2 * Math.pow(seen / half, 2));
            assertThat(jet.caught()[0]).isCloseTo(0.6 * share, within(0.01));
        }
    }

    /** What lies in front is struck, nothing behind the exit, nothing that holds it. */
    @Test
    void theNearerOneIsStruck() {
        Thing near = new Thing.Round("", new double[] {-1, 0, 0.6}, new double[] {1, 0, 0.6}, 0.3);
        Thing far = plate(0, 0, 1.2, 3, 3);
        Thing behind = plate(0, 0, -0.6, 3, 3);
        Thing about = new Thing.Block(ORIGIN, new double[] {0.5, 0.5, 0.5});
        List<Thing> all = List.of(far, about, near, behind);
        Jet jet = Jet.strike(ORIGIN, Solid.DOWN, DIAMETER, all, MANY);
        assertThat(jet.caught()[0]).isGreaterThan(0.58);
        assertThat(jet.caught()[1]).isLessThan(0.03);
        assertThat(struck(behind).caught()[1]).isZero();
    }

    /** Force along the jet, moment of it about a point. */
    @Test
    void aStrikePushesAtItsPlace() {
        Jet jet = struck(plate(0.5, 0, 1.0, 1, 4));
        double[] factors = {1, 1};
        double[] force = jet.force(Solid.DOWN, factors);
        assertThat(force[2]).isCloseTo(0.5, within(0.01));
        double[] about = {0.2, 0.3, -1};
        double[] moment = jet.moment(Solid.DOWN, about, factors);
        double x = jet.moved()[1][0] / jet.caught()[1];
        // (r − about) × F with F down: roll = y F, pitch = −x F.
        assertThat(moment[0]).isCloseTo((0 - 0.3) * force[2], within(0.003));
        assertThat(moment[1]).isCloseTo(-(x - 0.2) * force[2], within(1e-9));
        assertThat(moment[2]).isCloseTo(0, within(1e-12));
    }
}
