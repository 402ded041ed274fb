package liftwright.plant.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.junit.jupiter.api.Test;

/** Falls, catches and climbs against closed forms and another library. */
class TetherRunTest {

    private static final double G = 9.80665;
    private static final Body HUNDRED = new Body(100, 0, 0);

    private static Surroundings line(double fromM, double stiff, double damping) {
        return new Surroundings(
                List.of(new Spring("line", Spring.Way.LIFTS, fromM, stiff, damping)),
                OptionalDouble.empty());
    }

    /** 100 kg with C_d A of 0.7 m² in air of 1.225 kg/m³: tanh and ln cosh. */
    @Test
    void fallsAgainstDragAsTheClosedFormSays() {
        Body dragged = new Body(100, 0.7, 1.225);
        RunawayPath two = TetherRun.fall(dragged, 100, 0, Surroundings.OPEN, 2);
        assertThat(two.last().upMps()).isCloseTo(-18.5830, within(1e-4));
        assertThat(100 - two.last().heightM()).isCloseTo(19.0870, within(1e-4));
        RunawayPath ten = TetherRun.fall(dragged, 10, 0, Surroundings.OPEN, 20);
        assertThat(ten.impact().orElseThrow().upMps()).isCloseTo(-13.7098, within(1e-4));
        assertThat(ten.impact().orElseThrow().heightM()).isCloseTo(0, within(1e-6));
        assertThat(ten.comesDown()).isTrue();
    }

    /** √(2 g h) in vacuum. */
    @Test
    void strikesTheGroundWithThePublishedSpeed() {
        double[] heights = {0.3, 0.5, 1, 1.8, 2, 3, 5, 10};
        double[] speeds = {2.4257, 3.1316, 4.4287, 5.9417, 6.2631, 7.6707, 9.9029, 14.0047};
        for (int k = 0; k < heights.length; k++) {
            RunawayPath path = TetherRun.fall(HUNDRED, heights[k], 0, Surroundings.OPEN, 9);
            assertThat(path.impact().orElseThrow().upMps()).isCloseTo(-speeds[k], within(1e-4));
            assertThat(path.apex().heightM()).isEqualTo(heights[k]);
        }
    }

    /** m g (1 + √(1 + 2 h k/(m g))) for an undamped line on an anchor that does not give. */
    @Test
    void fallsIntoALineAsTheClosedFormSays() {
        double[][] drops = {
            {100, 0.5, 20e3, 5516.63, 0.27583},
            {100, 1.8, 10e3, 7002.76, 0.70028},
            {150, 0.1, 50e3, 5578.77, 0.11158},
            {100, 0, 10e3, 2 * 100 * G, 2 * 100 * G / 10e3},
        };
        for (double[] drop : drops) {
            RunawayPath path =
                    TetherRun.fall(new Body(drop[0], 0, 0), 5 + drop[1], 0, line(5, drop[2], 0), 3);
            Peak peak = path.peaks().getFirst();
            assertThat(peak.forceN()).isCloseTo(drop[3], within(1e-5 * drop[3]));
            assertThat(peak.stretchM()).isCloseTo(drop[4], within(1e-5));
            assertThat(path.closure()).isLessThan(1e-6);
            assertThat(path.impact()).isEmpty();
        }
        // Caught at 2 m/s: m g + √((m g)² + m k v²).
        RunawayPath caught = TetherRun.fall(new Body(150, 0, 0), 5, -2, line(5, 20e3, 0), 3);
        assertThat(caught.peaks().getFirst().forceN()).isCloseTo(5234.5, within(0.5));
    }

    @Test
    void dampingNeverRaisesThePeakWhileItIsLight() {
        Seeded.check(
                150,
                random -> {
                    double massKg = random.nextDouble(30, 250);
                    double stiff = Math.exp(random.nextDouble(8, 12));
                    double dropM = random.nextDouble(0.02, 3);
                    // A damper that takes hold at once gives c v there: up to half the critical
                    // damping that stays below what the spring alone would give.
                    double most = Math.sqrt(stiff * massKg);
                    double light = random.nextDouble(0, 0.5) * most;
                    double heavier = light + random.nextDouble(0, 1) * (most - light);
                    double weight = massKg * G;
                    double closed = weight * (1 + Math.sqrt(1 + 2 * dropM * stiff / weight));
                    for (double damping : new double[] {light, heavier}) {
                        RunawayPath path =
                                TetherRun.fall(
                                        new Body(massKg, 0, 0),
                                        20 + dropM,
                                        0,
                                        line(20, stiff, damping),
                                        8);
                        assertThat(path.peaks().getFirst().forceN())
                                .isLessThan(closed * (1 + 1e-6));
                        assertThat(path.closure()).isLessThan(1e-5);
                    }
                });
    }

    /** The damped swing after the catch, while the line is taut. */
    @Test
    void agreesWithTheDampedClosedForm() {
        Seeded.check(
                100,
                random -> {
                    double massKg = random.nextDouble(30, 250);
                    double stiff = Math.exp(random.nextDouble(8, 11));
                    double ratio = random.nextDouble(0.01, 0.4);
                    double rate = Math.sqrt(stiff / massKg);
                    double damping = 2 * ratio * stiff / rate;
                    double v = random.nextDouble(0.5, 5);
                    // Until the lowest point, s = A e^(−ζωt) sin(ω_d t + φ) + m g/k.
                    double damped = rate * Math.sqrt(1 - ratio * ratio);
                    double untilS = random.nextDouble(0.2, 0.5) * Math.PI / damped;
                    double rest = massKg * G / stiff;
                    double sine = (v - ratio * rate * rest) / damped;
                    double decay = Math.exp(-ratio * rate * untilS);
                    double stretch =
                            rest
                                    + decay
                                            * (-rest * Math.cos(damped * untilS)
                                                    + sine * Math.sin(damped * untilS));
                    RunawayPath path =
                            TetherRun.fall(
                                    new Body(massKg, 0, 0),
                                    10,
                                    -v,
                                    line(10, stiff, damping),
                                    untilS);
                    assertThat(10 - path.last().heightM()).isCloseTo(stretch, within(1e-6));
                });
    }

    /** Thrust 1.3 times the weight for 1.3 s, gone at once: 2.5 m up at 3.8 m/s, apex 3.2 m. */
    @Test
    void climbsAsFarAsSteadyThrustTakesIt() {
        double upN = 1.3 * 100 * G;
        RunawayPath path = TetherRun.thrust(HUNDRED, 0, 0, upN, 1.3, Surroundings.OPEN, 20);
        Moment stop = path.atStop().orElseThrow();
        assertThat(stop.heightM()).isCloseTo(0.3 * G * 1.69 / 2, within(1e-6));
        assertThat(stop.heightM()).isCloseTo(2.5, offset(0.05));
        assertThat(stop.upMps()).isCloseTo(3.8, offset(0.05));
        assertThat(path.apex().heightM()).isCloseTo(3.2, offset(0.05));
        assertThat(path.apex().heightM()).isCloseTo(1.3 * stop.heightM(), within(1e-6));
        assertThat(path.impact().orElseThrow().upMps())
                .isCloseTo(-Math.sqrt(2 * G * path.apex().heightM()), within(1e-5));
    }

    /** The same under an overhead line: nothing holds it until a beam does. */
    @Test
    void anOverheadLineDoesNotStopAClimb() {
        double upN = 1.3 * 100 * G;
        Surroundings beam =
                new Surroundings(
                        List.of(new Spring("line", Spring.Way.LIFTS, -0.1, 30e3, 500)),
                        OptionalDouble.of(1.5));
        RunawayPath path = TetherRun.thrust(HUNDRED, 0, 0, upN, 1.3, beam, 20);
        Strike strike = path.strike().orElseThrow();
        assertThat(strike.heightM()).isCloseTo(1.5, within(1e-6));
        assertThat(strike.speedMps()).isCloseTo(Math.sqrt(2 * 0.3 * G * 1.5), within(1e-5));
        assertThat(strike.energyJ()).isCloseTo(0.3 * G * 1.5 * 100, within(1e-2));
        assertThat(path.peaks().getFirst().forceN()).isZero();
        // Pressed on until the thrust goes, and then a fall from there.
        assertThat(path.apex().heightM()).isCloseTo(1.5, within(1e-6));
        Moment impact = path.impact().orElseThrow();
        assertThat(impact.timeS()).isCloseTo(1.3 + Math.sqrt(2 * 1.5 / G), within(1e-5));
        assertThat(path.closure()).isLessThan(1e-6);
    }

    /** A line down catches a climb: energy at its taut height goes into it. */
    @Test
    void aLineDownCatchesAClimb() {
        double upN = 1.3 * 100 * G;
        Surroundings down =
                new Surroundings(
                        List.of(new Spring("down", Spring.Way.HOLDS, 0.4, 40e3, 0)),
                        OptionalDouble.empty());
        RunawayPath path = TetherRun.thrust(HUNDRED, 0, 0, upN, 3, down, 20);
        double surplus = upN - 100 * G;
        double closed = surplus * (1 + Math.sqrt(1 + 2 * 0.4 * 40e3 / surplus));
        assertThat(path.peaks().getFirst().forceN()).isCloseTo(closed, within(1e-4 * closed));
        assertThat(path.apex().heightM()).isCloseTo(0.4 + closed / 40e3, within(1e-5));
    }

    /** Mats, lines up and down and drag at once, against another library. */
    @Test
    void agreesWithAnotherLibraryOnRandomSurroundings() {
        Seeded.check(
                25,
                random -> {
                    double massKg = random.nextDouble(20, 200);
                    double upN = massKg * G * random.nextDouble(0, 1.8);
                    double[] stiff = {
                        random.nextDouble(2e3, 30e3),
                        random.nextDouble(2e3, 30e3),
                        random.nextDouble(5e3, 60e3)
                    };
                    double[] damping = {
                        random.nextDouble(0, 900),
                        random.nextDouble(0, 900),
                        random.nextDouble(0, 900)
                    };
                    double drag = random.nextDouble(0, 0.8);
                    double from = random.nextDouble(2, 4);
                    Surroundings around =
                            new Surroundings(
                                    List.of(
                                            new Spring(
                                                    "up",
                                                    Spring.Way.LIFTS,
                                                    1.5,
                                                    stiff[0],
                                                    damping[0]),
                                            new Spring(
                                                    "down",
                                                    Spring.Way.HOLDS,
                                                    4.5,
                                                    stiff[1],
                                                    damping[1]),
                                            new Spring(
                                                    "mat",
                                                    Spring.Way.LIFTS,
                                                    1.2,
                                                    stiff[2],
                                                    damping[2])),
                                    OptionalDouble.empty());
                    RunawayPath path =
                            TetherRun.thrust(
                                    new Body(massKg, drag, 1.2), from, 0, upN, 9, around, 1.5);
                    // Steps of one length: where a damper takes hold the force jumps, and a step
                    // that minds its error would not come past it.
                    double[] y =
                            new ClassicalRungeKuttaIntegrator(1e-5)
                                    .integrate(
                                            typedAnew(massKg, upN, drag, stiff, damping),
                                            new ODEState(0, new double[] {from, 0}),
                                            1.5)
                                    .getPrimaryState();
                    assertThat(path.last().heightM()).isCloseTo(y[0], within(2e-4));
                    assertThat(path.last().upMps()).isCloseTo(y[1], within(2e-3));
                });
    }

    private static OrdinaryDifferentialEquation typedAnew(
            double massKg, double upN, double drag, double[] stiff, double[] damping) {
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double force = upN - massKg * G - 0.6 * drag * Math.abs(y[1]) * y[1];
                if (y[0] < 1.5) {
                    force += Math.max(0, stiff[0] * (1.5 - y[0]) - damping[0] * y[1]);
                }
                if (y[0] > 4.5) {
                    force -= Math.max(0, stiff[1] * (y[0] - 4.5) + damping[1] * y[1]);
                }
                if (y[0] < 1.2) {
                    force += Math.max(0, stiff[2] * (1.2 - y[0]) - damping[2] * y[1]);
                }
                return new double[] {y[1], force / massKg};
            }
        };
    }
}
