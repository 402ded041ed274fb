package liftwright.flight.sense;

import static liftwright.flight.motion.BodyState.PX;
import static liftwright.flight.motion.BodyState.PZ;
import static liftwright.flight.motion.BodyState.QW;
import static liftwright.flight.motion.BodyState.VX;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import liftwright.flight.motion.BodyState;
import liftwright.rig.Control;
import liftwright.rig.Control.Measures;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The estimate against the closed forms of its errors, and against another formulation. */
class EstimatorTest {

    private static final double DT_S = 0.001;
    private static final double NONE = Double.POSITIVE_INFINITY;

    @Test
    void whatReadsPerfectlyIsEstimatedAsItIs() {
        var sensors = sensors(Suite.perfect(1000), Biases.NONE);
        BodyState state = Still.at(0.8);
        sensors.begin(state, Still.FELT);
        var estimator = new Estimator(Suite.perfect(1000), DT_S);
        estimator.begin(sensors);
        for (int tick = 1; tick <= 2000; tick++) {
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            estimator.update(sensors);
        }
        for (int k = 0; k < BodyState.OWN; k++) {
            assertThat(estimator.estimate().felt[k]).isCloseTo(state.y[k], within(1e-12));
        }
        assertThat(estimator.estimate().isValid()).isTrue();
    }

    /** e(t) = b (t + ω t²) e^(−ωt): three poles at −ω, worked out by hand. */
    @Test
    void anOffsetOfTheGyroLeansTheEstimateAsTheClosedFormSaysAndFadesAway() {
        double offset = Math.toRadians(0.3);
        for (double hz : new double[] {0.05, 0.1, 0.3}) {
            double omega = 2 * Math.PI * hz;
            Suite suite = Suite.perfect(1000).with(biased(Measures.TURN_RATE)).leavingAt(hz);
            for (int axis = 0; axis < 2; axis++) {
                int which = axis;
                Biases biases = (m, k) -> m == Measures.TURN_RATE && k == which ? offset : 0;
                var sensors = sensors(suite, biases);
                BodyState state = Still.at(1);
                sensors.begin(state, Still.FELT);
                var estimator = new Estimator(suite, DT_S);
                estimator.begin(sensors);
                double worst = 0;
                double most = 0;
                for (int tick = 1; tick * DT_S < 10 / hz; tick++) {
                    sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
                    estimator.update(sensors);
                    double t = tick * DT_S;
                    double closed = offset * (t + omega * t * t) * Math.exp(-omega * t);
                    double lean = 2 * estimator.estimate().felt[QW + 1 + axis];
                    worst = Math.max(worst, Math.abs(lean - closed));
                    most = Math.max(most, closed);
                }
                assertThat(worst / most).as("%s Hz, axis %d", hz, axis).isLessThan(0.004);
                assertThat(estimator.gyroOffsetRadps(axis)).isCloseTo(offset, within(1e-5));
            }
        }
    }

    /** e(t) = e₀ (1 + ωt − ω²t²) e^(−ωt). */
    @Test
    void aWrongLeanIsCorrectedAsTheClosedFormSays() {
        double wrong = Math.toRadians(1.5);
        double hz = 0.1;
        double omega = 2 * Math.PI * hz;
        Suite suite = Suite.perfect(1000).leavingAt(hz);
        for (int axis = 0; axis < 2; axis++) {
            var sensors = sensors(suite, Biases.NONE);
            BodyState state = Still.at(1);
            sensors.begin(state, Still.FELT);
            var estimator = new Estimator(suite, DT_S);
            BodyState thought = Still.at(1);
            thought.y[QW] = Math.cos(wrong / 2);
            thought.y[QW + 1 + axis] = Math.sin(wrong / 2);
            estimator.begin(thought);
            for (int tick = 1; tick <= 60_000; tick++) {
                sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
                estimator.update(sensors);
                double x = omega * tick * DT_S;
                double closed = wrong * (1 + x - x * x) * Math.exp(-x);
                assertThat(2 * estimator.estimate().felt[QW + 1 + axis])
                        .as("axis %d at %d ms", axis, tick)
                        .isCloseTo(closed, within(0.004 * wrong));
            }
        }
    }

    @Test
    void anOffsetOfTheAccelerometerLeavesHeightAndClimbRight() {
        Suite suite = Suite.perfect(1000).with(biased(Measures.ACCELERATION));
        Biases up = (m, k) -> m == Measures.ACCELERATION && k == 2 ? 0.3 : 0;
        var sensors = sensors(suite, up);
        BodyState state = Still.at(2);
        sensors.begin(state, Still.FELT);
        var estimator = new Estimator(suite, DT_S);
        estimator.begin(sensors);
        double most = 0;
        double omega = Estimator.HEIGHT_FASTER * 2 * Math.PI * 0.2;
        for (int tick = 1; tick <= 20_000; tick++) {
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            estimator.update(sensors);
            most = Math.max(most, Math.abs(estimator.estimate().felt[PZ] - state.y[PZ]));
        }
        assertThat(most)
                .as("a t² / 2 e^(−ωt) is greatest at 2/ω: 2 a / (e ω)²")
                .isCloseTo(2 * 0.3 / Math.pow(Math.E * omega, 2), within(0.004));
        assertThat(estimator.estimate().felt[PZ]).isCloseTo(-2, within(1e-4));
        assertThat(estimator.estimate().felt[VX + 2]).isCloseTo(0, within(1e-4));
    }

    @Test
    void headingIsFollowedTheShortWayRoundAndItsGyroOffsetIsFound() {
        Suite suite = Suite.perfect(1000).with(biased(Measures.TURN_RATE)).leavingAt(0.3);
        Biases yaw = (m, k) -> m == Measures.TURN_RATE && k == 2 ? 0.05 : 0;
        var sensors = sensors(suite, yaw);
        BodyState state = Still.at(2);
        state.rest(0, 0, 2, Math.PI - 1e-3);
        sensors.begin(state, Still.FELT);
        var estimator = new Estimator(suite, DT_S);
        estimator.begin(sensors);
        for (int tick = 1; tick <= 30_000; tick++) {
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            estimator.update(sensors);
        }
        double[] q = estimator.estimate().felt;
        double heading = 2 * Math.atan2(q[QW + 3], q[QW]);
        assertThat(Math.IEEEremainder(heading - Math.PI + 1e-3, 2 * Math.PI))
                .isCloseTo(0, within(1e-4));
        assertThat(estimator.gyroOffsetRadps(2)).isCloseTo(0.05, within(1e-5));
    }

    @Test
    void aLostGyroAndALostHeightAreKnown() {
        var sensors = sensors(Suite.perfect(1000), Biases.NONE);
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        var estimator = new Estimator(Suite.perfect(1000), DT_S);
        estimator.begin(sensors);
        sensors.lose(Measures.HEIGHT);
        for (int tick = 1; tick <= 1500; tick++) {
            if (tick == 1200) {
                sensors.lose(Measures.TURN_RATE);
            }
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            estimator.update(sensors);
            assertThat(estimator.estimate().knowsHeight()).isEqualTo(tick < 1000);
            assertThat(estimator.estimate().knowsLean()).isEqualTo(tick < 1249);
            assertThat(estimator.estimate().knowsPlace()).isTrue();
        }
    }

    /** Without a velocity a still rig is levelled by what it feels. */
    @Test
    void withoutVelocityAStillRigIsLevelled() {
        var sensors = sensors(Suite.perfect(1000), Biases.NONE);
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        sensors.lose(Measures.VELOCITY);
        var estimator = new Estimator(Suite.perfect(1000), DT_S);
        BodyState thought = Still.at(1);
        thought.y[QW + 1] = 0.02;
        estimator.begin(thought);
        for (int tick = 1; tick <= 11_000; tick++) {
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            estimator.update(sensors);
        }
        // 1 s passes until the velocity is taken as lost; e^(−ωt) after that
        double left = 0.02 * Math.exp(-2 * Math.PI * 0.2 * 10);
        assertThat(estimator.estimate().felt[QW + 1]).isCloseTo(left, within(0.05 * left));
        assertThat(estimator.estimate().knowsPlace()).isFalse();
    }

    /** Random motions: the same estimate by rotation matrices that are summed up as series. */
    @Test
    void theTextbookFormByRotationMatricesEstimatesTheSame() {
        Seeded.check(
                12,
                random -> {
                    double hz = 0.05 + 0.2 * random.nextDouble();
                    int delay = random.nextInt(30);
                    Suite suite =
                            Suite.perfect(1000)
                                    .with(noisy(Measures.TURN_RATE, 0.002, 0.01, 1000, 0))
                                    .with(noisy(Measures.ACCELERATION, 0.02, 0.1, 1000, 0))
                                    .with(noisy(Measures.VELOCITY, 0.02, 0, 50, delay * DT_S))
                                    .with(noisy(Measures.HEIGHT, 0.01, 0, 100, 0.005))
                                    .with(noisy(Measures.POSITION, 0.01, 0, 10, 0.04))
                                    .with(noisy(Measures.HEADING, 0.01, 0, 50, 0.01))
                                    .leavingAt(hz);
                    Biases biases = (m, k) -> Math.sin(3 * m.name().length() + k);
                    var sensors =
                            new Sensors(
                                    suite,
                                    Vibration.none(0),
                                    biases,
                                    random.nextInt(1000),
                                    1,
                                    DT_S);
                    var motion = new RandomMotion(random);
                    sensors.begin(motion.state, motion.felt);
                    var estimator = new Estimator(suite, DT_S);
                    estimator.begin(motion.state);
                    var referee = new MatrixEstimator(suite, motion.state, DT_S);
                    for (int tick = 1; tick <= 8000; tick++) {
                        motion.step(DT_S);
                        sensors.read(tick, motion.state, motion.felt, Still.NO_ROTORS);
                        estimator.update(sensors);
                        referee.update(sensors);
                        if (tick % 100 == 0) {
                            referee.isAgreedBy(estimator.estimate().felt, 2e-6);
                        }
                    }
                });
    }

    @Test
    void theEstimateStaysNearWhatARigReallyDoes() {
        Suite suite = Suite.of(usual());
        Seeded.check(
                20,
                random -> {
                    var sensors =
                            new Sensors(
                                    suite,
                                    Vibration.none(0),
                                    (m, k) ->
                                            m == Measures.HEADING
                                                    ? 0
                                                    : Math.cos(5 * m.name().length() + k),
                                    random.nextInt(1000),
                                    3,
                                    DT_S);
                    var motion = new RandomMotion(random);
                    sensors.begin(motion.state, motion.felt);
                    var estimator = new Estimator(suite, DT_S);
                    estimator.begin(sensors);
                    for (int tick = 1; tick <= 30_000; tick++) {
                        motion.step(DT_S);
                        sensors.read(tick, motion.state, motion.felt, Still.NO_ROTORS);
                        estimator.update(sensors);
                    }
                    assertThat(angleBetween(estimator.estimate().felt, motion.state.y))
                            .isLessThan(Math.toRadians(6));
                    for (int k = 0; k < 3; k++) {
                        assertThat(estimator.estimate().felt[VX + k] - motion.state.y[VX + k])
                                .isCloseTo(0, within(0.6));
                        assertThat(estimator.estimate().felt[PX + k] - motion.state.y[PX + k])
                                .isCloseTo(0, within(0.6));
                    }
                });
    }

    @Test
    void nothingIsAllocatedByASecondOfReadingAndEstimating() {
        var bean =
                (com.sun.management.ThreadMXBean)
                        java.lang.management.ManagementFactory.getThreadMXBean();
        Suite suite = Suite.of(usual());
        var sensors = sensors(suite, Biases.NONE);
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        var estimator = new Estimator(suite, DT_S);
        estimator.begin(sensors);
        long least = Long.MAX_VALUE;
        int tick = 0;
        for (int run = 0; run < 40; run++) {
            long before = bean.getCurrentThreadAllocatedBytes();
            for (int k = 0; k < 1000; k++) {
                sensors.read(++tick, state, Still.FELT, Still.NO_ROTORS);
                estimator.update(sensors);
            }
            least = Math.min(least, bean.getCurrentThreadAllocatedBytes() - before);
        }
        assertThat(least).isLessThanOrEqualTo(64); // the meter's own
    }

    @Test
    void noEstimatorAndATooFastOneAreRefusedWithTheReason() {
        Suite none =
                new Suite(
                        Suite.perfect(1000).sensors(),
                        Control.EstimatorKind.NONE,
                        0.2,
                        java.util.List.of());
        assertThat(none.refusal().orElseThrow()).contains("leans");
        assertThatThrownBy(() -> new Estimator(none, DT_S))
                .isInstanceOf(IllegalArgumentException.class);
        Suite usual = Suite.of(usual());
        assertThat(usual.refusal()).isEmpty();
        assertThat(usual.leavingAt(2).refusal().orElseThrow()).contains("Hz would do");
    }

    static Control usual() {
        return new Control(Control.Kind.FLIGHT_COMPUTER, java.util.List.of());
    }

    private static double angleBetween(double[] one, double[] other) {
        double dot = 0;
        for (int k = 0; k < 4; k++) {
            dot += one[QW + k] * other[QW + k];
        }
        return 2 * Math.acos(Math.min(1, Math.abs(dot)));
    }

    private static SensorNumbers biased(Measures measures) {
        return new SensorNumbers(measures, 1000, 0, 0, 0, 1, NONE, 0, 0, NONE);
    }

    private static SensorNumbers noisy(
            Measures measures, double noise, double bias, double rateHz, double delayS) {
        return new SensorNumbers(measures, rateHz, delayS, noise, 0, bias, NONE, 0.01, 0.01, NONE);
    }

    private static Sensors sensors(Suite suite, Biases biases) {
        return new Sensors(suite, Vibration.none(0), biases, 1, 0, DT_S);
    }
}
