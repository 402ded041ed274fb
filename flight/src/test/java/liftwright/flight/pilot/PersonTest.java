package liftwright.flight.pilot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import liftwright.testkit.Seeded;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.junit.jupiter.api.Test;

/** The crossover model against closed forms, published numbers and the poles of closed loops. */
class PersonTest {

    private static final double NONE = Double.POSITIVE_INFINITY;

    @Test
    void anIntegratorWithDelayHasThePublishedMargin() {
        // K 5 1/s, delay 0.1 s: 61.35°, and unstable from 15.708 1/s on
        assertThat(Math.toDegrees(Person.phaseLeftRad(5, 0.1, NONE, List.of())))
                .isCloseTo(61.35, within(0.005));
        assertThat(Person.phaseLeftRad(15.70, 0.1, NONE, List.of())).isPositive();
        assertThat(Person.phaseLeftRad(15.71, 0.1, NONE, List.of())).isNegative();
    }

    /**
     * The loop is made rational and closed; a library finds its poles. Stable exactly where phase
     * is left.
     */
    @Test
    void phaseIsLeftExactlyWhereAllPolesOfTheClosedLoopFade() {
        int[] counts = new int[2];
        Seeded.check(
                600,
                random -> {
                    double crossover = 0.5 + 2.5 * random.nextDouble();
                    double delay = 0.05 + 0.5 * random.nextDouble();
                    double inverse = random.nextInt(3) == 0 ? NONE : 0.5 + 12 * random.nextDouble();
                    List<Mode> modes = new ArrayList<>();
                    int kind = random.nextInt(3);
                    if (kind == 1) {
                        modes.add(new Mode(0.05 + random.nextDouble(), 0));
                    } else if (kind == 2) {
                        modes.add(new Mode(0.02 + 0.5 * random.nextDouble(), random.nextDouble()));
                    }
                    modes.add(new Mode(-1, 0)); // what fades counts for nothing
                    double left = Person.phaseLeftRad(crossover, delay, inverse, modes);
                    if (Math.abs(left) < 0.01) {
                        return; // as near as the rational delay is
                    }
                    boolean stable = fastest(crossover, delay, inverse, modes) < 0;
                    assertThat(stable)
                            .as(
                                    "ω %s τ %s z %s %s: left %s",
                                    crossover, delay, inverse, modes, left)
                            .isEqualTo(left > 0);
                    counts[stable ? 1 : 0]++;
                });
        assertThat(counts[0]).isGreaterThan(100);
        assertThat(counts[1]).isGreaterThan(100);
    }

    /** Greatest real part of the closed loop's poles. */
    private static double fastest(
            double crossover, double delay, double inverse, List<Mode> modes) {
        // e^(−x) by Padé's form of fourth order, good to 1e-4 of phase up to x = 2
        double x = delay;
        double x2 = x * x;
        PolynomialFunction above =
                poly(1, -x / 2, 3 * x2 / 28, -x * x2 / 84, x2 * x2 / 1680)
                        .multiply(poly(crossover));
        PolynomialFunction below =
                poly(1, x / 2, 3 * x2 / 28, x * x2 / 84, x2 * x2 / 1680).multiply(poly(0, 1));
        if (inverse < NONE) {
            above = above.multiply(poly(1, -1 / inverse));
            below = below.multiply(poly(1, 1 / inverse));
        }
        for (Mode mode : modes) {
            if (!mode.grows()) {
                continue;
            }
            double a = mode.growthPerS();
            double b = mode.turningRadps();
            if (mode.swings()) {
                above = above.multiply(poly(a * a + b * b, 2 * a, 1));
                below = below.multiply(poly(a * a + b * b, -2 * a, 1));
            } else {
                above = above.multiply(poly(a, 1));
                below = below.multiply(poly(-a, 1));
            }
        }
        double[] c = above.add(below).getCoefficients();
        int n = c.length - 1;
        double[][] companion = new double[n][n];
        for (int k = 0; k < n; k++) {
            companion[0][k] = -c[n - 1 - k] / c[n];
            if (k > 0) {
                companion[k][k - 1] = 1;
            }
        }
        double most = Double.NEGATIVE_INFINITY;
        for (var root :
                new EigenDecompositionNonSymmetric(new Array2DRowRealMatrix(companion))
                        .getEigenvalues()) {
            most = Math.max(most, root.getReal());
        }
        return most;
    }

    private static PolynomialFunction poly(double... c) {
        return new PolynomialFunction(c);
    }

    @Test
    void aSteadyRigIsHeldEasilyAndAFastOneByNobody() {
        assertThat(Person.holds(NONE, List.of())).isEqualTo(Person.Holds.EASILY);
        assertThat(Person.holds(NONE, List.of(new Mode(0.5, 0)))).isEqualTo(Person.Holds.HARDLY);
        // a rod of 1 m on its end: doubles in 0.22134 s
        Mode rod = new Mode(Math.sqrt(9.80665), 0);
        assertThat(rod.doublesInS()).isCloseTo(0.22134, within(5e-6));
        assertThat(Person.holds(NONE, List.of(rod))).isEqualTo(Person.Holds.NOT);
        assertThat(Person.holds(1, List.of())).isEqualTo(Person.Holds.NOT);
    }

    /** Worse in every way never leaves more phase. */
    @Test
    void delayInverseAndGrowthOnlyTake() {
        Seeded.check(
                500,
                random -> {
                    double delay = 0.2 + 0.3 * random.nextDouble();
                    double inverse = 1 + 10 * random.nextDouble();
                    double growth = random.nextDouble();
                    List<Mode> modes = List.of(new Mode(growth + 0.01, 0));
                    double left = Person.bestPhaseRad(delay, inverse, modes);
                    assertThat(Person.bestPhaseRad(delay + 0.05, inverse, modes)).isLessThan(left);
                    assertThat(Person.bestPhaseRad(delay, inverse * 0.9, modes)).isLessThan(left);
                    assertThat(
                                    Person.bestPhaseRad(
                                            delay, inverse, List.of(new Mode(growth + 0.1, 0))))
                            .isLessThan(left);
                });
    }

    @Test
    void levelsAreThePublishedOnes() {
        // MIL-F-8785C table VIII and §3.2.1.2; time to double against root, ln 2 / λ
        assertThat(Level.ofDivergence(new Mode(0.057762 - 1e-6, 0))).isEqualTo(Level.ONE);
        assertThat(Level.ofDivergence(new Mode(0.057763, 0))).isEqualTo(Level.TWO);
        assertThat(Level.ofDivergence(new Mode(0.086643 + 1e-6, 0))).isEqualTo(Level.THREE);
        assertThat(Level.ofDivergence(new Mode(0.173288, 0))).isEqualTo(Level.WORSE);
        assertThat(Level.ofDivergence(new Mode(-0.2, 0))).isEqualTo(Level.ONE);
        for (double[] row :
                new double[][] {{4, 0.173287}, {8, 0.086643}, {12, 0.057762}, {20, 0.034657}}) {
            assertThat(new Mode(row[1], 0).doublesInS()).isCloseTo(row[0], within(3e-4));
        }
        assertThat(Level.ofOscillation(swing(0.0401))).isEqualTo(Level.ONE);
        assertThat(Level.ofOscillation(swing(0.0399))).isEqualTo(Level.TWO);
        assertThat(Level.ofOscillation(new Mode(Math.log(2) / 56, 0.5))).isEqualTo(Level.THREE);
        assertThat(Level.ofOscillation(new Mode(Math.log(2) / 54, 0.5))).isEqualTo(Level.WORSE);
    }

    private static Mode swing(double damping) {
        return new Mode(-damping, Math.sqrt(1 - damping * damping));
    }
}
