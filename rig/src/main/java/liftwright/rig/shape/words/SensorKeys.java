package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.Control;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Kind;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.NoiseDensity;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Sensed;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** Sensors, estimator and loops of a flight computer. */
public final class SensorKeys {

    private static final List<Measure> MEASURES =
            List.of(
                    Measure.TURN_RATE,
                    Measure.ACCELERATION,
                    Measure.HEIGHT,
                    Measure.SPEED,
                    Measure.ANGLE);

    public static final Key<Control.Measures> MEASURED =
            flight(
                    "measures",
                    Word.of(Control.Measures.values(), ' '),
                    "What it measures.",
                    "turn rate",
                    "as its name says, where that is gyro, accelerometer, height, position,"
                            + " velocity or heading; no flight reads another");
    public static final Key<Quantity> NOISE =
            usual(
                    "noise",
                    new NoiseDensity(MEASURES),
                    "Noise as amplitude density: summed up over a time t it strays by that times √t.",
                    "0.005 deg/s/√Hz");
    public static final Key<Quantity> RATE =
            usual("rate", Amount.positive(Measure.FREQUENCY), "How often it is read.", "2 kHz");
    public static final Key<Quantity> DELAY =
            usual(
                    "delay",
                    Amount.notNegative(Measure.TIME),
                    "How late its value is, its filter left out.",
                    "1 ms");
    public static final Key<Quantity> MISALIGNMENT =
            usual(
                    "misalignment",
                    Amount.notNegative(Measure.ANGLE),
                    "How far its axes are off.",
                    "1°");
    public static final Key<Quantity> DROPOUT =
            usual("dropout", Amount.share(), "Share of readings that are lost.", "0.1 %");
    public static final Key<Quantity> FILTER =
            usual("filter", Amount.positive(Measure.FREQUENCY), "Corner of its filter.", "90 Hz");
    public static final Key<Quantity> BIAS =
            usual(
                    "bias",
                    new Sensed(MEASURES, Sensed.Form.OFFSET),
                    "Offset that is left after rest; its doubt is drawn once a flight.",
                    "± 0.5 deg/s");
    public static final Key<Quantity> RANGE =
            usual(
                    "range",
                    new Sensed(MEASURES, Sensed.Form.LARGEST),
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
                    MEASURED,
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

    public static final Key<Control.EstimatorKind> ESTIMATOR_KIND =
            usual("kind", new Word<>(kinds()), "Kind of the estimator.", "complementary");
    public static final Key<Quantity> BANDWIDTH =
            usual(
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
            usual(
                    "estimator",
                    ESTIMATOR_SECTION,
                    "Estimator.",
                    "{kind: complementary, bandwidth: 0.2 Hz}");

    public static final Key<Quantity> CROSSOVER =
            designed(
                    "crossover",
                    Amount.positive(Measure.FREQUENCY),
                    "Crossover frequency.",
                    "3 Hz");
    public static final Key<Quantity> MARGIN =
            designed(
                    "margin",
                    Amount.positive(Measure.ANGLE),
                    "Phase margin it is designed for.",
                    "50°");
    public static final Key<Boolean> INTEGRAL =
            designed("integral", new YesNo(), "Whether it has an integral part.", "yes");
    public static final Section LOOP = Section.of("loop", "One loop.", CROSSOVER, MARGIN, INTEGRAL);
    public static final Key<Map<String, Stated<Fields>>> LOOPS =
            designed(
                    "loops",
                    new MapOf<>("loops by name", LOOP, MapOf.Names.NEW),
                    "Loops, inner to outer: rate, attitude, velocity, position.",
                    "{rate: {crossover: 6 Hz, margin: 50°}}");

    /** The names of loops. */
    public static final Map<String, Control.LoopName> LOOP_NAMES =
            Word.of(Control.LoopName.values(), ' ').words();

    private SensorKeys() {}

    private static Map<String, Control.EstimatorKind> kinds() {
        var words = new LinkedHashMap<String, Control.EstimatorKind>();
        for (Control.EstimatorKind kind : Control.EstimatorKind.values()) {
            words.put(
                    kind == Control.EstimatorKind.KALMAN
                            ? "Kalman" // a person's name
                            : kind.name().toLowerCase(Locale.ROOT),
                    kind);
        }
        return words;
    }

    private static <T> Key<T> usual(String name, Kind<T> kind, String meaning, String example) {
        return flight(name, kind, meaning, example, "a usual one, which a flight says");
    }

    private static <T> Key<T> designed(String name, Kind<T> kind, String meaning, String example) {
        return flight(name, kind, meaning, example, "the design finds it");
    }

    private static <T> Key<T> flight(
            String name, Kind<T> kind, String meaning, String example, String without) {
        return open(name, kind, meaning, example, without).readBy(Key.Question.FLIGHT);
    }
}
