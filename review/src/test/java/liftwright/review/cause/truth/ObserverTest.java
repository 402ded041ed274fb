package liftwright.review.cause.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import liftwright.rig.table.TurningTable.Swap;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What the ideal observer says against closed forms, the exact mechanics, and its own record. */
class ObserverTest {

    /** Two normal numbers: the formula with their correlation. */
    @Test
    void theDensityIsThatOfTwoNormals() {
        double a = 0.7;
        double b = 1.3;
        double r = -0.6;
        double[] mean = {0.2, -0.1};
        double[] x = {1.1, 0.4};
        Gauss gauss = new Gauss(mean, new double[][] {{a * a, r * a * b}, {r * a * b, b * b}});
        double u = (x[0] - mean[0]) / a;
        double v = (x[1] - mean[1]) / b;
        double square = (u * u - 2 * r * u * v + v * v) / (1 - r * r);
        double density = Math.exp(-square / 2) / (2 * Math.PI * a * b * Math.sqrt(1 - r * r));
        assertThat(gauss.logDensity(x)).isCloseTo(Math.log(density), within(1e-12));
    }

    /** Between its points the surface is the mechanics. */
    @Test
    void theSurfaceIsTheMechanicsBetweenItsPoints() {
        double[] misses = new double[2];
        Seeded.check(
                5,
                random -> {
                    Plan plan = Plan.drawn(random);
                    Mechanics mechanics = new Mechanics(plan);
                    Hidden expected = Spread.expected(plan);
                    double[] still = new double[Body.JOINTS];
                    double[] base =
                            mechanics.rates(
                                    expected, OptionalDouble.empty(), new Swap.None(), still);
                    for (Wrong.Kind kind : Wrong.Kind.values()) {
                        if (kind.sizes() == 0) {
                            continue;
                        }
                        Wrong place = Wrong.drawn(plan, kind, random);
                        Surface surface =
                                new Surface(
                                        place,
                                        kind.sizes(),
                                        size ->
                                                mechanics.rates(
                                                        place.in(expected, size),
                                                        OptionalDouble.empty(),
                                                        new Swap.None(),
                                                        still),
                                        base);
                        double[] size = place.size(random);
                        double[] exact =
                                mechanics.rates(
                                        place.in(expected, size),
                                        OptionalDouble.empty(),
                                        new Swap.None(),
                                        still);
                        double effect = Math.sqrt(square(Solid.minus(exact, base)));
                        double miss = Math.sqrt(square(Solid.minus(exact, surface.at(size))));
                        // Jets come and go as they turn, in steps of a ray.
                        assertThat(miss).isLessThan(0.15 + 0.1 * effect);
                        misses[0] += miss;
                        misses[1] += effect;
                    }
                });
        assertThat(misses[0]).isLessThan(0.06 * misses[1]);
    }

    private static double square(double[] v) {
        return Solid.dot(v, v);
    }

    /** The law of a fault's size sums to one. */
    @Test
    void densitiesOfSizesSumToOne() {
        Plan plan = Plan.drawn(new SplittableRandom(4));
        for (Wrong.Kind kind : Wrong.Kind.values()) {
            Wrong place = Wrong.places(plan, kind).getFirst();
            double sum = 0;
            int n = 1500;
            double reach = 3 * place.most();
            double h = 2 * reach / n;
            for (int i = 0; i < n && kind.sizes() > 0; i++) {
                double x = -reach + (i + 0.5) * h;
                if (kind.sizes() == 1) {
                    sum += h * place.density(new double[] {x});
                }
                for (int j = 0; j < n && kind.sizes() == 2; j++) {
                    double y = -reach + (j + 0.5) * h;
                    sum += h * h * place.density(new double[] {x, y});
                }
            }
            assertThat(kind.sizes() == 0 ? 1 : sum).as("%s", kind).isCloseTo(1, within(0.04));
            double shares =
                    Wrong.places(plan, kind).stream().mapToDouble(each -> each.share(plan)).sum();
            assertThat(shares).isCloseTo(1, within(1e-12));
        }
    }
}
