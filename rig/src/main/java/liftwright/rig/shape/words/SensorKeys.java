package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;

import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.NoiseDensity;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** Sensors, estimator and loops of a flight computer. */
public final class SensorKeys {

    public static final Key<Quantity> NOISE =
            later(
                    "noise",
                    new NoiseDensity(
                            List.of(
                                    Measure.TURN_RATE,
                                    Measure.ACCELERATION,
                                    Measure.HEIGHT,
                                    Measure.SPEED)),
                    "Noise as amplitude density.",
                    "0.005 deg/s/√Hz");
    public static final Key<Quantity> RATE =
            later("rate", Amount.positive(Measure.FREQUENCY), "How often it is read.", "2 kHz");
    public static final Key<Quantity> DELAY =
            later("delay", Amount.notNegative(Measure.TIME), "How late its value is.", "1 ms");
    public static final Key<Quantity> MISALIGNMENT =
            later(
                    "misalignment",
                    Amount.notNegative(Measure.ANGLE),
                    "How far its axes are off.",
                    "1°");
    public static final Key<Quantity> DROPOUT =
            later("dropout", Amount.share(), "Share of readings that are lost.", "0.1 %");
    public static final Key<Quantity> FILTER =
            later("filter", Amount.positive(Measure.FREQUENCY), "Corner of its filter.", "90 Hz");
    public static final Key<String> BIAS =
            later("bias", new Text("an offset with its unit"), "Offset that stays.", "± 0.5 deg/s");
    public static final Key<String> RANGE =
            later(
                    "range",
                    new Text("a largest value with its unit"),
                    "Largest value that it can read.",
                    "2000 deg/s");
    public static final Key<Integer> COUNT =
            defaulted(
                            "count",
                            new Whole("equal sensors", 1, 10),
                            "1",
                            "one is declared",
                            "Equal sensors that stand in for each other.",
                            "2")
                    .readBy(Key.Question.FAILURES);
    public static final Section SENSOR =
            Section.of(
                    "sensor",
                    "One sensor.",
                    COUNT,
                    NOISE,
                    RATE,
                    DELAY,
                    MISALIGNMENT,
                    DROPOUT,
                    FILTER,
                    BIAS,
                    RANGE);
    public static final Key<Map<String, Stated<Fields>>> SENSORS =
            open(
                            "sensors",
                            new MapOf<>("sensors by name", SENSOR, MapOf.Names.NEW),
                            "Sensors.",
                            "{gyro: {noise: 0.005 deg/s/√Hz, rate: 2 kHz, delay: 1 ms}}",
                            "none can be lost")
                    .readBy(Key.Question.FAILURES);

    public static final Key<String> ESTIMATOR_KIND =
            later(
                    "kind",
                    Word.of("none", "complementary", "Kalman"),
                    "Kind of the estimator.",
                    "complementary");
    public static final Key<Quantity> BANDWIDTH =
            later(
                    "bandwidth",
                    Amount.positive(Measure.FREQUENCY),
                    "Where it leaves the gyro for the other sensors.",
                    "0.2 Hz");
    public static final Section ESTIMATOR_SECTION =
            Section.of(
                    "estimator",
                    "How attitude and position are estimated.",
                    ESTIMATOR_KIND,
                    BANDWIDTH);
    public static final Key<Fields> ESTIMATOR =
            later(
                    "estimator",
                    ESTIMATOR_SECTION,
                    "Estimator.",
                    "{kind: complementary, bandwidth: 0.2 Hz}");

    public static final Key<Quantity> CROSSOVER =
            later("crossover", Amount.positive(Measure.FREQUENCY), "Crossover frequency.", "3 Hz");
    public static final Key<Quantity> MARGIN =
            later(
                    "margin",
                    Amount.positive(Measure.ANGLE),
                    "Phase margin it is designed for.",
                    "50°");
    public static final Key<Boolean> INTEGRAL =
            later("integral", new YesNo(), "Whether it has an integral part.", "yes");
    public static final Section LOOP = Section.of("loop", "One loop.", CROSSOVER, MARGIN, INTEGRAL);
    public static final Key<Map<String, Stated<Fields>>> LOOPS =
            later(
                    "loops",
                    new MapOf<>("loops by name", LOOP, MapOf.Names.NEW),
                    "Loops, inner to outer: rate, attitude, velocity, position.",
                    "{rate: {crossover: 6 Hz, margin: 50°}}");

    private SensorKeys() {}
}
