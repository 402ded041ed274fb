package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.util.List;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator;
import org.junit.jupiter.api.Test;

class DormandPrinceTest {

    private static final double G = 9.80665;

    /** A problem with its end, found with 32 digits. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Problem(
            String name, DormandPrince.Slope slope, double[] from, double until, double[] to) {}

    /**
     * Problems A1, A2, A3, A5, B1, B2, B5, D1, D3 and E2 of Hull, Enright, Fellen and Sedgwick,
     * SIAM J. Numer. Anal. 9 (1972), to t = 20. Their ends were extrapolated with 32 digits, and A1
     * to A3, D1 and D3 agree with closed forms.
     */
    private static final List<Problem> PUBLISHED =
            List.of(
                    new Problem(
                            "A1",
                            (t, y, d) -> d[0] = -y[0],
                            new double[] {1},
                            20,
                            new double[] {2.061153622438558e-9}),
                    new Problem(
                            "A2",
                            (t, y, d) -> d[0] = -y[0] * y[0] * y[0] / 2,
                            new double[] {1},
                            20,
                            new double[] {0.2182178902359924}),
                    new Problem(
                            "A3",
                            (t, y, d) -> d[0] = y[0] * Math.cos(t),
                            new double[] {1},
                            20,
                            new double[] {2.4916502718504145}),
                    new Problem(
                            "A5",
                            (t, y, d) -> d[0] = (y[0] - t) / (y[0] + t),
                            new double[] {4},
                            20,
                            new double[] {-0.7887826688964015}),
                    new Problem(
                            "B1",
                            (t, y, d) -> {
                                d[0] = 2 * (y[0] - y[0] * y[1]);
                                d[1] = -(y[1] - y[0] * y[1]);
                            },
                            new double[] {1, 3},
                            20,
                            new double[] {0.6761876008576606, 0.18608160996400297}),
                    new Problem(
                            "B2",
                            (t, y, d) -> {
                                d[0] = -y[0] + y[1];
                                d[1] = y[0] - 2 * y[1] + y[2];
                                d[2] = y[1] - y[2];
                            },
                            new double[] {2, 0, 1},
                            20,
                            new double[] {1.0000000010305767, 1, 0.9999999989694232}),
                    new Problem(
                            "B5, a rigid body that nothing turns",
                            (t, y, d) -> {
                                d[0] = y[1] * y[2];
                                d[1] = -y[0] * y[2];
                                d[2] = -0.51 * y[0] * y[1];
                            },
                            new double[] {0, 1, 1},
                            20,
                            new double[] {
                                -0.9396570798729204, -0.34211777540007493, 0.7414126596199953
                            }),
                    new Problem(
                            "D1, an orbit of eccentricity 0.1",
                            DormandPrinceTest::orbit,
                            new double[] {0.9, 0, 0, 1.1055415967851332},
                            20,
                            new double[] {
                                0.21988353520083967,
                                0.9427076846341813,
                                -0.9787659841058176,
                                0.3287977990962036
                            }),
                    new Problem(
                            "D3, an orbit of eccentricity 0.5",
                            DormandPrinceTest::orbit,
                            new double[] {0.5, 0, 0, 1.7320508075688772},
                            20,
                            new double[] {
                                -0.5780432953035362,
                                0.8633840009194192,
                                -0.9595083730380727,
                                -0.06504915126712091
                            }),
                    new Problem(
                            "E2, van der Pol",
                            (t, y, d) -> {
                                d[0] = y[1];
                                d[1] = (1 - y[0] * y[0]) * y[1] - y[0];
                            },
                            new double[] {2, 0},
                            20,
                            new double[] {2.0081497621749484, -0.04250887527320215}));

    private static void orbit(double t, double[] y, double[] d) {
        double r = Math.hypot(y[0], y[1]);
        d[0] = y[2];
        d[1] = y[3];
        d[2] = -y[0] / (r * r * r);
        d[3] = -y[1] / (r * r * r);
    }

    @Test
    void meetsPublishedProblems() {
        for (Problem problem : PUBLISHED) {
            var made = new DormandPrince(problem.from.length, 1e-12, 1e-14);
            made.start(0, problem.from);
            assertThat(made.run(problem.slope, problem.until, 1e-9))
                    .as(problem.name)
                    .isEqualTo(DormandPrince.TIME_UP);
            assertThat(made.t()).isEqualTo(problem.until);
            for (int i = 0; i < problem.to.length; i++) {
                assertThat(made.y()[i]).as(problem.name).isCloseTo(problem.to[i], within(5e-9));
            }
        }
    }

    @Test
    void errorsFallWithWhatIsAllowed() {
        for (Problem problem : PUBLISHED) {
            double coarse = errorAt(problem, 1e-5);
            double fine = errorAt(problem, 1e-9);
            assertThat(fine).as(problem.name).isLessThan(coarse * 1e-2);
            assertThat(coarse).as(problem.name).isLessThan(0.05);
        }
    }

    private static double errorAt(Problem problem, double allowed) {
        var made = new DormandPrince(problem.from.length, allowed, allowed);
        made.start(0, problem.from);
        made.run(problem.slope, problem.until, 1e-9);
        double worst = 0;
        for (int i = 0; i < problem.to.length; i++) {
            worst = Math.max(worst, Math.abs(made.y()[i] - problem.to[i]));
        }
        return worst;
    }

    /**
     * With steps held at one length the error goes by its fifth power, in between by the fourth.
     */
    @Test
    void convergesAtItsOrder() {
        double[] atEnds = new double[2];
        double[] between = new double[2];
        for (int halving = 0; halving < 2; halving++) {
            double length = 0.1 / (1 << halving);
            var made = new DormandPrince(1, 1, 1e9);
            made.longestStep(length);
            made.start(0, new double[] {1});
            double[] mid = new double[1];
            while (made.t() < 2 - 1e-12) {
                assertThat(made.step((t, y, d) -> d[0] = y[0] * Math.cos(t), 2)).isTrue();
                for (double share : new double[] {0.2, 0.5, 0.8}) {
                    double when = made.stepFrom() + share * (made.t() - made.stepFrom());
                    made.at(when, mid);
                    between[halving] =
                            Math.max(between[halving], Math.abs(mid[0] - Math.exp(Math.sin(when))));
                }
            }
            atEnds[halving] = Math.abs(made.y()[0] - Math.exp(Math.sin(2)));
        }
        assertThat(Math.log(atEnds[0] / atEnds[1]) / Math.log(2)).isBetween(4.7, 5.6);
        // Within one step of length h the polynomial errs by h⁵.
        assertThat(Math.log(between[0] / between[1]) / Math.log(2)).isBetween(4.5, 5.6);
    }

    /** Large swings of a pendulum: (2/π) K(sin θ/2) times 2.006409 s at 1 m. */
    @Test
    void swingsAPendulumInItsPublishedTime() {
        double[] degrees = {10, 30, 60, 90, 120, 150, 170};
        double[] ratio = {1.001907, 1.017409, 1.073182, 1.180341, 1.372881, 1.762204, 2.439363};
        for (int k = 0; k < degrees.length; k++) {
            var made = new DormandPrince(2, 1e-11, 1e-12);
            made.start(0, new double[] {Math.toRadians(degrees[k]), 0});
            DormandPrince.Slope swing =
                    (t, y, d) -> {
                        d[0] = y[1];
                        d[1] = -G * Math.sin(y[0]);
                    };
            // From the side back to the side: the speed rises through 0 at the far side, and once
            // more after half a swing back.
            assertThat(made.run(swing, 60, 1e-10, (t, y) -> y[1])).isZero();
            assertThat(made.run(swing, 60, 1e-10, (t, y) -> -y[1])).isZero();
            assertThat(made.t() / 2.006409).isCloseTo(ratio[k], within(2e-6));
        }
    }

    /** The flip of a body that turns about its middle axis: inertias 1, 2, 3. */
    @Test
    void flipsAboutTheMiddleAxisWhenItShould() {
        var made = new DormandPrince(3, 1e-12, 1e-14);
        made.start(0, new double[] {0.01, 1, 0.01});
        DormandPrince.Slope turn =
                (t, y, d) -> {
                    d[0] = -y[1] * y[2];
                    d[1] = y[2] * y[0];
                    d[2] = -y[0] * y[1] / 3;
                };
        assertThat(made.run(turn, 100, 1e-9, (t, y) -> -y[1])).isZero();
        assertThat(made.t()).isCloseTo(10.917, within(2e-3));
        assertThat(made.run(turn, 100, 1e-9, (t, y) -> y[1])).isZero();
        assertThat(made.t()).isCloseTo(30.470, within(2e-3));
        assertThat(made.run(turn, 100, 1e-9)).isEqualTo(DormandPrince.TIME_UP);
        double[] y = made.y();
        assertThat(y[0] * y[0] + 2 * y[1] * y[1] + 3 * y[2] * y[2]).isCloseTo(2.0004, within(2e-9));
        assertThat(y[0] * y[0] + 4 * y[1] * y[1] + 9 * y[2] * y[2]).isCloseTo(4.0010, within(4e-9));
    }

    @Test
    void findsWhenAThrownStoneTurnsAndLands() {
        Seeded.check(
                300,
                random -> {
                    double height = random.nextDouble(0.01, 30);
                    double speed = random.nextDouble(-3, 20);
                    double tolerance = Math.pow(10, random.nextDouble(-12, -4));
                    double start = random.nextDouble(-5, 5);
                    var made = new DormandPrince(2, 1e-10, 1e-12);
                    made.start(start, new double[] {height, speed});
                    DormandPrince.Slope fall =
                            (t, y, d) -> {
                                d[0] = y[1];
                                d[1] = -G;
                            };
                    DormandPrince.Event top = (t, y) -> -y[1];
                    DormandPrince.Event ground = (t, y) -> -y[0];
                    if (speed > 0) {
                        assertThat(made.run(fall, start + 60, tolerance, ground, top)).isOne();
                        assertThat(made.t() - start).isCloseTo(speed / G, within(tolerance + 1e-9));
                        // Found on the side where it has happened.
                        assertThat(made.y()[1]).isLessThanOrEqualTo(0);
                    }
                    assertThat(made.run(fall, start + 60, tolerance, ground, top)).isZero();
                    double exact = (speed + Math.sqrt(speed * speed + 2 * G * height)) / G;
                    assertThat(made.t() - start).isCloseTo(exact, within(2 * tolerance + 1e-9));
                    assertThat(made.y()[0]).isLessThanOrEqualTo(0);
                });
    }

    @Test
    void theEarlierOfTwoEventsWinsAndTheFirstInTheListATie() {
        var made = new DormandPrince(1, 1e-9, 1e-9);
        DormandPrince.Slope clock = (t, y, d) -> d[0] = 1;
        DormandPrince.Event late = (t, y) -> y[0] - 0.7;
        DormandPrince.Event early = (t, y) -> y[0] - 0.3;
        made.start(0, new double[] {0});
        assertThat(made.run(clock, 1, 1e-9, late, early)).isOne();
        assertThat(made.t()).isCloseTo(0.3, within(1e-9));
        assertThat(made.run(clock, 1, 1e-9, late, early)).isZero();
        made.start(0, new double[] {0});
        assertThat(made.run(clock, 1, 1e-9, early, early)).isZero();
        // One that holds from the start has to end before it can begin.
        made.start(0, new double[] {0});
        assertThat(made.run(clock, 1, 1e-9, (t, y) -> y[0])).isEqualTo(DormandPrince.TIME_UP);
    }

    /** Random stiffening oscillators, against extrapolation by another library. */
    @Test
    void agreesWithExtrapolation() {
        Seeded.check(
                60,
                random -> {
                    double k = Math.exp(random.nextDouble(-1, 4));
                    double cube = random.nextDouble(0, 3);
                    double damping = random.nextDouble(0, 2);
                    double push = random.nextDouble(-3, 3);
                    double[] from = {random.nextDouble(-2, 2), random.nextDouble(-2, 2)};
                    var made = new DormandPrince(2, 1e-11, 1e-13);
                    made.start(0, from);
                    made.run(
                            (t, y, d) -> {
                                d[0] = y[1];
                                d[1] =
                                        push * Math.sin(t)
                                                - damping * y[1]
                                                - k * y[0]
                                                - cube * y[0] * y[0] * y[0];
                            },
                            5,
                            1e-9);
                    double[] other =
                            new GraggBulirschStoerIntegrator(1e-9, 1, 1e-13, 1e-12)
                                    .integrate(
                                            new OrdinaryDifferentialEquation() {
                                                @Override
                                                public int getDimension() {
                                                    return 2;
                                                }

                                                @Override
                                                public double[] computeDerivatives(
                                                        double t, double[] y) {
                                                    return new double[] {
                                                        y[1],
                                                        push * Math.sin(t)
                                                                - damping * y[1]
                                                                - k * y[0]
                                                                - cube * Math.pow(y[0], 3)
                                                    };
                                                }
                                            },
                                            new ODEState(0, from),
                                            5)
                                    .getPrimaryState();
                    for (int i = 0; i < 2; i++) {
                        assertThat(made.y()[i]).isCloseTo(other[i], within(2e-8));
                    }
                });
    }

    @Test
    void saysWhereItIsStuck() {
        var made = new DormandPrince(1, 1e-9, 1e-9);
        made.start(0, new double[] {1});
        // y′ = y² leaves every bound at t = 1.
        assertThat(made.run((t, y, d) -> d[0] = y[0] * y[0], 2, 1e-9))
                .isEqualTo(DormandPrince.STUCK);
        assertThat(made.t()).isCloseTo(1, within(1e-6));
        made.start(0, new double[] {1});
        assertThat(made.run((t, y, d) -> d[0] = Math.sqrt(-1), 2, 1e-9))
                .isEqualTo(DormandPrince.STUCK);
        assertThat(made.t()).isZero();
        assertThat(made.y()[0]).isOne();
    }

    @Test
    void takesAnotherRightHandSideFromWhereItStands() {
        var made = new DormandPrince(1, 1e-9, 1e-9);
        made.start(0, new double[] {0});
        made.run((t, y, d) -> d[0] = 1, 1, 1e-9);
        made.changed();
        made.run((t, y, d) -> d[0] = -3, 2, 1e-9);
        assertThat(made.y()[0]).isCloseTo(-2, within(1e-12));
    }

    @Test
    void refusesErrorsThatCannotBeMet() {
        assertThatIllegalArgumentException().isThrownBy(() -> new DormandPrince(1, 0, 1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> new DormandPrince(1, 1e-9, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new DormandPrince(3, 1e-9, 1, 1));
    }

    @Test
    void doesTheSameOnEveryRunAndAllocatesNothing() {
        var made = new DormandPrince(4, 1e-10, 1e-12);
        double[] from = {0.5, 0, 0, Math.sqrt(3)};
        DormandPrince.Slope slope = DormandPrinceTest::orbit;
        DormandPrince.Event[] events = {(t, y) -> y[1]};
        double[] first = end(made, slope, from, events);
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long self = Thread.currentThread().threadId();
        for (int warm = 0; warm < 20; warm++) {
            turns(made, slope, from, events);
        }
        long before = threads.getThreadAllocatedBytes(self);
        for (int count = 0; count < 20; count++) {
            turns(made, slope, from, events);
        }
        // What asking itself allocates.
        assertThat(threads.getThreadAllocatedBytes(self) - before).isLessThan(2000);
        assertThat(end(made, slope, from, events)).containsExactly(first);
    }

    private static double[] end(
            DormandPrince made,
            DormandPrince.Slope slope,
            double[] from,
            DormandPrince.Event[] events) {
        turns(made, slope, from, events);
        return made.y().clone();
    }

    private static void turns(
            DormandPrince made,
            DormandPrince.Slope slope,
            double[] from,
            DormandPrince.Event[] events) {
        made.start(0, from);
        while (made.t() < 20) {
            made.run(slope, 20, 1e-9, events);
        }
    }
}
