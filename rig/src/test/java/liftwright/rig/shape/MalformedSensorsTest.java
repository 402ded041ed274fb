package liftwright.rig.shape;

import static liftwright.rig.Problem.Code.NOT_A_QUANTITY;
import static liftwright.rig.Problem.Code.OUT_OF_RANGE;
import static liftwright.rig.Problem.Code.UNKNOWN_KEY;
import static liftwright.rig.Problem.Code.UNKNOWN_WORD;
import static liftwright.rig.Problem.Code.WRONG_KIND;
import static liftwright.rig.Problem.Code.WRONG_UNIT;
import static liftwright.rig.shape.Mistake.m;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import liftwright.rig.Problem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What can be wrong with sensors, estimator and loops. */
class MalformedSensorsTest {

    private static final String GOOD = Good.resource("/format/v1-flight.yaml");
    private static final String GYRO = "control/sensors/gyro/";
    private static final String DOWN = "control/sensors/beam down/";

    static Stream<Mistake> sensors() {
        return Stream.of(
                m("noise: 0.005 deg/s/√Hz", "noise: ¦0.005 deg/s", WRONG_UNIT, GYRO + "noise"),
                m("noise: 0.005 deg/s/√Hz", "noise: ¦0.005 m/s²/√Hz", WRONG_UNIT, GYRO + "noise"),
                m("rate: 2 kHz", "rate: ¦0 Hz", OUT_OF_RANGE, GYRO + "rate"),
                m("delay: 1 ms", "delay: ¦-1 ms", OUT_OF_RANGE, GYRO + "delay"),
                m("misalignment: 1°", "misalignment: ¦1 mm", WRONG_UNIT, GYRO + "misalignment"),
                m("dropout: 0.1 %", "dropout: ¦101 %", OUT_OF_RANGE, GYRO + "dropout"),
                m("filter: 90 Hz", "filter: ¦90 s", WRONG_UNIT, GYRO + "filter"),
                m("bias: ± 0.5 deg/s", "bias: ¦± 0.5", NOT_A_QUANTITY, GYRO + "bias"),
                m("bias: ± 0.5 deg/s", "bias: ¦± 0.5 m/s²", WRONG_UNIT, GYRO + "bias"),
                m("bias: ± 0.5 deg/s", "bias: ¦some", NOT_A_QUANTITY, GYRO + "bias"),
                m(
                        "bias: 0.02 m/s² ±",
                        "bias: ¦0.02 m/s ±",
                        WRONG_UNIT,
                        sensor("accelerometer/bias")),
                m("range: 2000 deg/s", "range: ¦-2000 deg/s", OUT_OF_RANGE, GYRO + "range"),
                m("range: 2000 deg/s", "range: ¦[2000 deg/s]", WRONG_KIND, GYRO + "range"),
                m("range: 12 m}", "range: ¦12 m/s}", WRONG_UNIT, DOWN + "range"),
                m("measures: height", "measures: ¦hight", UNKNOWN_WORD, DOWN + "measures"),
                m("{count: 2, noise", "{¦measure: 2, noise", UNKNOWN_KEY, GYRO + "measure"),
                m("tape: {}", "tape: ¦{noise: 1 mm/√Hz}", UNKNOWN_WORD, sensor("tape")),
                m("velocity: {range", "velocities: ¦{range", UNKNOWN_WORD, sensor("velocities")));
    }

    static Stream<Mistake> loops() {
        return Stream.of(
                m("kind: Kalman", "kind: ¦kalman", UNKNOWN_WORD, "control/estimator/kind"),
                m(
                        "bandwidth: 0.3 Hz",
                        "bandwidth: ¦0 Hz",
                        OUT_OF_RANGE,
                        "control/estimator/bandwidth"),
                m(
                        "    rate: {crossover",
                        "    rates: ¦{crossover",
                        UNKNOWN_WORD,
                        "control/loops/rates"),
                m("crossover: 6 Hz", "crossover: ¦6 s", WRONG_UNIT, "control/loops/rate/crossover"),
                m("margin: 60°", "margin: ¦0°", OUT_OF_RANGE, "control/loops/velocity/margin"),
                m(
                        "integral: no",
                        "integral: ¦never",
                        UNKNOWN_WORD,
                        "control/loops/position/integral"));
    }

    private static String sensor(String rest) {
        return "control/sensors/" + rest;
    }

    @ParameterizedTest
    @MethodSource({"sensors", "loops"})
    void oneMistakeGivesOneProblemAtItsPlace(Mistake mistake) {
        mistake.isToldAtItsPlace(GOOD);
    }

    @ParameterizedTest
    @CsvSource({"gyros, gyro", "acelerometer, accelerometer", "flux, measures: turn rate"})
    void aSensorThatDoesNotSayWhatItMeasuresIsToldWhatToWrite(String name, String advice) {
        Read read = Texts.read(GOOD.replace("tape: {}", name + ": {delay: 2 ms}"));
        assertThat(Texts.errors(read))
                .extracting(Problem::advice)
                .singleElement()
                .asString()
                .contains(advice);
    }
}
