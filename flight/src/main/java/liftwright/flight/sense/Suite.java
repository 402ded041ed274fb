package liftwright.flight.sense;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Control;
import liftwright.rig.Control.Measures;
import liftwright.rig.DefaultUsed;
import liftwright.rig.RigPath;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.words.SensorKeys;

/**
 * What a flight computer reads and how it makes an estimate of it, every value declared or told.
 *
 * @param sensors one for each thing that is measured
 * @param kind by which method it estimates
 * @param bandwidthHz where it leaves the gyro for the other sensors, &gt; 0
 * @param usual what was not declared: where it would stand, what stands in, where that comes from
 */
public record Suite(
        Map<Measures, SensorNumbers> sensors,
        Control.EstimatorKind kind,
        double bandwidthHz,
        List<DefaultUsed> usual) {

    private static final RigPath CONTROL = RigPath.of("control");
    private static final double NONE = Double.POSITIVE_INFINITY;
    private static final String USUAL_KIND = "complementary";
    private static final String USUAL_BANDWIDTH = "0.1 Hz";

    public Suite {
        sensors = Collections.unmodifiableMap(new EnumMap<>(sensors));
        usual = List.copyOf(usual);
        if (sensors.size() != Measures.values().length || !(bandwidthHz > 0)) {
            throw new IllegalArgumentException("a suite has every sensor and a bandwidth above 0");
        }
    }

    /** That of a rig; what is not declared is taken as usual. */
    public static Suite of(Control control) {
        var usual = new ArrayList<DefaultUsed>();
        var sensors = new EnumMap<Measures, SensorNumbers>(Measures.class);
        for (Measures measures : Measures.values()) {
            sensors.put(measures, numbers(control, measures, usual));
        }
        RigPath estimator = CONTROL.child("estimator");
        Control.EstimatorKind kind =
                control.estimator()
                        .kind()
                        .orElseGet(
                                () -> {
                                    usual.add(told(estimator.child("kind"), USUAL_KIND));
                                    return Control.EstimatorKind.COMPLEMENTARY;
                                });
        double bandwidthHz =
                control.estimator()
                        .bandwidth()
                        .map(Quantity::si)
                        .orElseGet(
                                () -> {
                                    usual.add(told(estimator.child("bandwidth"), USUAL_BANDWIDTH));
                                    return UsualSensors.parse(USUAL_BANDWIDTH).si();
                                });
        return new Suite(sensors, kind, bandwidthHz, usual);
    }

    /** One that reads everything as it is, at this rate: for tests of what stands behind it. */
    public static Suite perfect(double rateHz) {
        var sensors = new EnumMap<Measures, SensorNumbers>(Measures.class);
        for (Measures measures : Measures.values()) {
            sensors.put(measures, SensorNumbers.perfect(measures, rateHz));
        }
        return new Suite(sensors, Control.EstimatorKind.COMPLEMENTARY, 0.2, List.of());
    }

    /** The same with another sensor in place of the one that measures this. */
    public Suite with(SensorNumbers other) {
        var changed = new EnumMap<Measures, SensorNumbers>(sensors);
        changed.put(other.measures(), other);
        return new Suite(changed, kind, bandwidthHz, usual);
    }

    /** The same with an estimator that leaves the gyro at another frequency. */
    public Suite leavingAt(double hz) {
        return new Suite(sensors, kind, hz, usual);
    }

    public SensorNumbers of(Measures measures) {
        SensorNumbers numbers = sensors.get(measures);
        if (numbers == null) {
            throw new IllegalStateException("a suite has every sensor");
        }
        return numbers;
    }

    /** Why nothing can be estimated with it, and what would do; empty where it can. */
    public Optional<String> refusal() {
        return switch (kind) {
            case NONE ->
                    Optional.of(
                            "the estimator is declared as “none”: nothing tells the computer how"
                                    + " the rig leans");
            case KALMAN ->
                    Optional.of(
                            "the estimator is declared as “Kalman”, whose gains depend on how fast"
                                    + " the offset of the gyro wanders, which the file cannot say;"
                                    + " “complementary” with a bandwidth is estimated");
            case COMPLEMENTARY -> tooLate();
        };
    }

    /** A measurement that is late for its bandwidth makes the estimate swing. */
    private Optional<String> tooLate() {
        double mostHz =
                Math.min(
                        highestHz(Measures.VELOCITY, 1),
                        highestHz(Measures.HEIGHT, Estimator.HEIGHT_FASTER));
        return bandwidthHz <= mostHz
                ? Optional.empty()
                : Optional.of(
                        String.format(
                                Locale.ROOT,
                                "the estimator leaves the gyro at %.3g Hz, and what it leaves it"
                                        + " for comes so late that it would swing; at most %.2g Hz"
                                        + " would do",
                                bandwidthHz,
                                mostHz));
    }

    private double highestHz(Measures measures, double faster) {
        SensorNumbers late = of(measures);
        return Blend.highest(late.latenessS()) / (2 * Math.PI * faster);
    }

    private static SensorNumbers numbers(
            Control control, Measures measures, List<DefaultUsed> usual) {
        Optional<Control.Sensor> declared = control.sensor(measures);
        RigPath at =
                declared.map(Control.Sensor::declaredAt)
                        .orElse(CONTROL.child("sensors").child(measures.usualName()));
        var values = new Values(declared, measures, at, usual);
        Tolerance doubt =
                values.of(SensorKeys.BIAS, Control.Sensor::bias)
                        .map(Quantity::tolerance)
                        .orElse(Tolerance.NONE);
        return new SensorNumbers(
                measures,
                values.si(SensorKeys.RATE, Control.Sensor::rate, 0),
                values.si(SensorKeys.DELAY, Control.Sensor::delay, 0),
                values.si(SensorKeys.NOISE, Control.Sensor::noise, 0),
                declared.flatMap(Control.Sensor::bias).map(Quantity::si).orElse(0.0),
                deviation(doubt),
                values.si(SensorKeys.RANGE, Control.Sensor::range, NONE),
                values.si(SensorKeys.MISALIGNMENT, Control.Sensor::misalignment, 0),
                values.si(SensorKeys.DROPOUT, Control.Sensor::dropout, 0),
                values.si(SensorKeys.FILTER, Control.Sensor::filter, NONE));
    }

    /** Standard deviation of an offset: the mean of both sides where they differ. */
    private static double deviation(Tolerance doubt) {
        double half = (doubt.plus() + doubt.minus()) / 2;
        return doubt.form() == Tolerance.Form.BOUND ? half / Math.sqrt(3) : half / 2;
    }

    private static DefaultUsed told(RigPath at, String text) {
        return new DefaultUsed(at, text, UsualSensors.ORIGIN, DefaultUsed.Reader.FLIGHT);
    }

    /** The values of one sensor, declared or usual. */
    private record Values(
            Optional<Control.Sensor> declared,
            Measures measures,
            RigPath at,
            List<DefaultUsed> usual) {

        /** Empty where neither the file nor common practice says anything. */
        Optional<Quantity> of(Key<Quantity> key, Stated value) {
            Optional<Quantity> stated = declared.flatMap(value);
            if (stated.isPresent()) {
                return stated;
            }
            Optional<String> text = UsualSensors.text(measures, key);
            text.ifPresent(usually -> usual.add(told(at.child(key.name()), usually)));
            return text.map(UsualSensors::parse);
        }

        double si(Key<Quantity> key, Stated value, double nothing) {
            return of(key, value).map(Quantity::si).orElse(nothing);
        }
    }

    /** A value that a file may state of a sensor. */
    private interface Stated extends Function<Control.Sensor, Optional<Quantity>> {}
}
