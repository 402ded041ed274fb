package liftwright.flight.sense;

import static liftwright.flight.motion.BodyState.PX;
import static liftwright.flight.motion.BodyState.WX;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.flight.motion.BodyState;
import liftwright.physics.Gravity;
import liftwright.plant.body.Inertia;
import liftwright.rig.Control.Measures;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Rates, delays, ranges, losses, filters and vibration of sensors, each against its closed form.
 */
class SensorsTest {

    private static final double NONE = Double.POSITIVE_INFINITY;
    private static final double DT_S = 0.001;

    private static SensorNumbers gyro(double rateHz, double delayS, double filterHz) {
        return new SensorNumbers(Measures.TURN_RATE, rateHz, delayS, 0, 0, 0, NONE, 0, 0, filterHz);
    }

    private static Sensors with(SensorNumbers one, Vibration vibration) {
        return new Sensors(Suite.perfect(1000).with(one), vibration, Biases.NONE, 1, 0, DT_S);
    }

    @Test
    void aStepArrivesAfterExactlyItsDelay() {
        Seeded.check(
                200,
                random -> {
                    int delay = random.nextInt(40);
                    int at = 50 + random.nextInt(50);
                    Sensors sensors = with(gyro(1000, delay * DT_S, NONE), Vibration.none(0));
                    BodyState state = Still.at(1);
                    sensors.begin(state, Still.FELT);
                    for (int tick = 1; tick < 200; tick++) {
                        state.y[WX] = tick >= at ? 1 : 0;
                        sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
                        assertThat(sensors.value(Measures.TURN_RATE, 0))
                                .as("delay %d, step at %d, tick %d", delay, at, tick)
                                .isCloseTo(tick >= at + delay ? 1 : 0, within(1e-12));
                    }
                });
    }

    @Test
    void aSlowSensorHoldsItsReadingAndTellsWhenOneIsNew() {
        SensorNumbers slow = SensorNumbers.perfect(Measures.POSITION, 10);
        Sensors sensors = with(slow, Vibration.none(0));
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        int fresh = 0;
        for (int tick = 1; tick <= 1000; tick++) {
            state.y[PX] = tick * DT_S;
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            assertThat(sensors.value(Measures.POSITION, 0))
                    .isCloseTo(Math.floor(tick / 100.0) * 0.1, within(1e-9));
            assertThat(sensors.ageS(Measures.POSITION)).isCloseTo(tick % 100 * DT_S, within(1e-9));
            fresh += sensors.isFresh(Measures.POSITION) ? 1 : 0;
        }
        assertThat(fresh).isEqualTo(10);
    }

    /** A ramp tells a delay between ticks: the value is that of the moment, not of the tick. */
    @Test
    void aReadingBetweenTwoTicksSeesTheMomentItIsMadeAt() {
        Sensors sensors = with(gyro(2500, 0, NONE), Vibration.none(0));
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        for (int tick = 1; tick < 300; tick++) {
            state.y[WX] = tick * DT_S;
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            double last = Math.floor(tick * 2.5 + 1e-9) / 2500;
            assertThat(sensors.value(Measures.TURN_RATE, 0)).isCloseTo(last, within(1e-12));
        }
        assertThat(sensors.readings(Measures.TURN_RATE)).isEqualTo(748);
    }

    @Test
    void aFilterOfFirstOrderRisesByItsTimeConstant() {
        double corner = 12;
        Sensors sensors = with(gyro(1000, 0, corner), Vibration.none(0));
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        for (int tick = 1; tick < 200; tick++) {
            state.y[WX] = 1;
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            assertThat(sensors.value(Measures.TURN_RATE, 0))
                    .isCloseTo(-Math.expm1(-2 * Math.PI * corner * tick * DT_S), within(1e-12));
        }
    }

    @Test
    void readingsAreCutAtTheRangeAndThatIsTold() {
        SensorNumbers narrow =
                new SensorNumbers(Measures.TURN_RATE, 1000, 0, 0, 0, 0, 0.5, 0, 0, NONE);
        Sensors sensors = with(narrow, Vibration.none(0));
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        for (int tick = 1; tick <= 100; tick++) {
            state.y[WX] = tick > 60 ? -2 : 0.4;
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            assertThat(sensors.isCut(Measures.TURN_RATE)).isEqualTo(tick > 60);
        }
        assertThat(sensors.value(Measures.TURN_RATE, 0)).isEqualTo(-0.5);
        assertThat(sensors.cuts(Measures.TURN_RATE)).isEqualTo(40);
    }

    @Test
    void lostReadingsAreAsManyAsDeclaredAndHoldTheLast() {
        SensorNumbers leaky =
                new SensorNumbers(Measures.TURN_RATE, 1000, 0, 0, 0, 0, NONE, 0, 0.2, NONE);
        Sensors sensors = with(leaky, Vibration.none(0));
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        int n = 20_000;
        double last = 0;
        for (int tick = 1; tick <= n; tick++) {
            state.y[WX] = tick;
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            last = sensors.isFresh(Measures.TURN_RATE) ? tick : last;
            assertThat(sensors.value(Measures.TURN_RATE, 0)).isCloseTo(last, within(1e-9));
        }
        double spread = Math.sqrt(0.2 * 0.8 / n);
        assertThat(sensors.losses(Measures.TURN_RATE) / (double) n)
                .isCloseTo(0.2, within(4 * spread));
    }

    @Test
    void aLostSensorSaysNothingMore() {
        Sensors sensors = with(gyro(1000, 0, NONE), Vibration.none(0));
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        sensors.lose(Measures.TURN_RATE);
        state.y[WX] = 1;
        for (int tick = 1; tick <= 100; tick++) {
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
        }
        assertThat(sensors.value(Measures.TURN_RATE, 0)).isZero();
        assertThat(sensors.ageS(Measures.TURN_RATE)).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void axesAreAskewByTheDeclaredAngle() {
        double angle = Math.toRadians(2);
        SensorNumbers askew =
                new SensorNumbers(Measures.TURN_RATE, 1000, 0, 0, 0, 0, NONE, angle, 0, NONE);
        double squares = 0;
        int flights = 2000;
        for (int flight = 1; flight <= flights; flight++) {
            var sensors =
                    new Sensors(
                            Suite.perfect(1000).with(askew),
                            Vibration.none(0),
                            Biases.NONE,
                            4,
                            flight,
                            DT_S);
            BodyState state = Still.at(1);
            state.y[WX] = 3;
            sensors.begin(state, Still.FELT);
            double x = sensors.value(Measures.TURN_RATE, 0);
            double y = sensors.value(Measures.TURN_RATE, 1);
            double z = sensors.value(Measures.TURN_RATE, 2);
            assertThat(Math.sqrt(x * x + y * y + z * z)).isCloseTo(3, within(1e-12));
            squares += (y * y + z * z) / 9;
        }
        assertThat(Math.sqrt(squares / flights) / (angle / 2 * Math.sqrt(2)))
                .as("two axes, each with half the angle as its standard deviation")
                .isCloseTo(1, within(0.05));
    }

    /** One rotor, turning evenly; e1 × push = turning about another axis. */
    private static Vibration oneRotor(double unbalanceKgm) {
        return new Vibration(
                10,
                new Inertia(0.5, 0.4, 0.3, 0, 0, 0),
                List.of(new Vec3(0, 0, 0.2)),
                List.of(new Vec3(0, 0, -1)),
                new double[] {unbalanceKgm});
    }

    @Test
    void vibrationAboveHalfTheRateOfReadingIsReadFolded() {
        double unbalance = 2e-7;
        int checked = 0;
        for (double rateHz : new double[] {500, 1000, 2000}) {
            for (int shakeHz = 67; shakeHz < 1400; shakeHz += 50) {
                double folded = Math.abs(shakeHz - rateHz * Math.rint(shakeHz / rateHz));
                Sensors sensors = with(gyro(rateHz, 0, NONE), oneRotor(unbalance));
                double[] read = readings(sensors, shakeHz, rateHz);
                assertThat(loudestHz(read, rateHz))
                        .as("%d Hz read at %s Hz", shakeHz, rateHz)
                        .isCloseTo(folded, within(1e-9));
                double omega = 2 * Math.PI * shakeHz;
                double expected = unbalance * omega * 0.2 / 0.5;
                assertThat(amplitude(read, folded, rateHz) / expected)
                        .as("as large as it is")
                        .isCloseTo(1, within(1e-6));
                checked++;
            }
        }
        assertThat(checked).isEqualTo(81);
    }

    @Test
    void sixHundredSixtySevenHertzReadThreeHundredThirtyThree() {
        Sensors sensors = with(gyro(1000, 0, NONE), oneRotor(2e-7));
        assertThat(loudestHz(readings(sensors, 667, 1000), 1000)).isEqualTo(333);
        Sensors filtered = with(gyro(1000, 0, 90), oneRotor(2e-7));
        double left = amplitude(readings(filtered, 667, 1000), 333, 1000);
        double whole =
                amplitude(
                        readings(with(gyro(1000, 0, NONE), oneRotor(2e-7)), 667, 1000), 333, 1000);
        double pole = Math.exp(-2 * Math.PI * 0.09);
        double angle = 2 * Math.PI * 0.333;
        double gain = (1 - pole) / Math.sqrt(1 - 2 * pole * Math.cos(angle) + pole * pole);
        assertThat(left / whole)
                .as("the filter sees it at the wrong frequency, where it lets more through")
                .isCloseTo(gain, within(1e-6))
                .isGreaterThan(1.8 / Math.hypot(1, 667 / 90.0));
    }

    /** One second of readings of a rotor that has turned evenly for a while. */
    private static double[] readings(Sensors sensors, double shakeHz, double rateHz) {
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        double[] speed = {2 * Math.PI * shakeHz};
        int every = (int) Math.rint(1000 / rateHz);
        int n = (int) Math.min(rateHz, 1000);
        double[] read = new double[(int) rateHz];
        if (rateHz > 1000) {
            return faster(shakeHz, rateHz);
        }
        for (int tick = 1; tick <= 1000 + n * every; tick++) {
            sensors.read(tick, state, Still.FELT, speed);
            if (tick > 1000 && tick % every == 0) {
                read[(tick - 1000) / every - 1] = sensors.value(Measures.TURN_RATE, 0);
            }
        }
        return read;
    }

    /** The same of one that is read more often than a millisecond's tick: by shorter ticks. */
    private static double[] faster(double shakeHz, double rateHz) {
        double dt = 1 / rateHz;
        var sensors = new Sensors(Suite.perfect(rateHz), oneRotor(2e-7), Biases.NONE, 1, 0, dt);
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        double[] speed = {2 * Math.PI * shakeHz};
        double[] read = new double[(int) rateHz];
        for (int tick = 1; tick <= 2 * rateHz; tick++) {
            sensors.read(tick, state, Still.FELT, speed);
            if (tick > rateHz) {
                read[tick - (int) rateHz - 1] = sensors.value(Measures.TURN_RATE, 0);
            }
        }
        return read;
    }

    /** The loudest whole frequency, by sums of products with sine and cosine. */
    private static double loudestHz(double[] read, double rateHz) {
        double most = -1;
        int best = 0;
        for (int hz = 1; hz < rateHz / 2; hz++) {
            double one = amplitude(read, hz, rateHz);
            if (one > most) {
                most = one;
                best = hz;
            }
        }
        return best;
    }

    private static double amplitude(double[] read, double hz, double rateHz) {
        double a = 0;
        double b = 0;
        for (int k = 0; k < read.length; k++) {
            a += read[k] * Math.cos(2 * Math.PI * hz * k / rateHz);
            b += read[k] * Math.sin(2 * Math.PI * hz * k / rateHz);
        }
        return 2 * Math.hypot(a, b) / read.length;
    }

    @Test
    void anAccelerometerFeelsTheUnbalanceAsForceOverMass() {
        Sensors sensors = with(SensorNumbers.perfect(Measures.ACCELERATION, 1000), oneRotor(3e-6));
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        double omega = 2 * Math.PI * 123;
        double[] speed = {omega};
        double most = 0;
        for (int tick = 1; tick <= 2000; tick++) {
            sensors.read(tick, state, Still.FELT, speed);
            if (tick > 10) {
                double x = sensors.value(Measures.ACCELERATION, 0);
                double y = sensors.value(Measures.ACCELERATION, 1);
                assertThat(Math.hypot(x, y))
                        .as("it runs round in the plane of the rotor")
                        .isCloseTo(3e-6 * omega * omega / 10, within(1e-7));
                most = Math.max(most, x);
            }
            assertThat(sensors.value(Measures.ACCELERATION, 2))
                    .isCloseTo(-Gravity.STANDARD_MPS2, within(1e-12));
        }
        assertThat(most).isCloseTo(3e-6 * omega * omega / 10, within(1e-3));
    }

    @Test
    void theShortSineIsASine() {
        for (double x = -3; x < 3; x += 0.00137) {
            assertThat(Vibration.cosineOfTurns(x))
                    .isCloseTo(Math.cos(2 * Math.PI * x), within(3e-8));
        }
    }

    @Test
    void anotherFlightHasOtherNoiseAndTheSameFlightTheSame() {
        SensorNumbers noisy =
                new SensorNumbers(Measures.TURN_RATE, 1000, 0, 0.01, 0, 0, NONE, 0, 0, NONE);
        double[] first = noise(noisy, 1);
        assertThat(noise(noisy, 1)).isEqualTo(first);
        assertThat(noise(noisy, 2)).isNotEqualTo(first);
    }

    private static double[] noise(SensorNumbers numbers, int flight) {
        var sensors =
                new Sensors(
                        Suite.perfect(1000).with(numbers),
                        Vibration.none(0),
                        Biases.NONE,
                        9,
                        flight,
                        DT_S);
        BodyState state = Still.at(1);
        sensors.begin(state, Still.FELT);
        double[] read = new double[20];
        for (int tick = 1; tick <= read.length; tick++) {
            sensors.read(tick, state, Still.FELT, Still.NO_ROTORS);
            read[tick - 1] = sensors.value(Measures.TURN_RATE, 1);
        }
        return read;
    }
}
