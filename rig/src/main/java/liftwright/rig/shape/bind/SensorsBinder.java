package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Control;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.SensorKeys;

/** Sensors, estimator and loops of a flight computer. */
final class SensorsBinder {

    private static final Dimension PER_ROOT_HERTZ = new Dimension(0, 0, 0, 0, 0, 0, 1);

    /** What only a flight asks of a sensor. */
    private static final List<Key<?>> FLIGHT =
            List.of(
                    SensorKeys.NOISE,
                    SensorKeys.RATE,
                    SensorKeys.DELAY,
                    SensorKeys.MISALIGNMENT,
                    SensorKeys.DROPOUT,
                    SensorKeys.FILTER,
                    SensorKeys.BIAS,
                    SensorKeys.RANGE);

    private final Ledger ledger;

    SensorsBinder(Ledger ledger) {
        this.ledger = ledger;
    }

    List<Control.Sensor> sensors(Fields control) {
        var sensors = new ArrayList<Control.Sensor>();
        control.get(SensorKeys.SENSORS)
                .orElse(Map.of())
                .forEach((name, stated) -> sensors.add(sensor(name, stated.value())));
        return sensors;
    }

    private Control.Sensor sensor(String name, Fields fields) {
        Optional<Control.Measures> measures = measures(name, fields);
        return new Control.Sensor(
                name,
                fields.spot().path(),
                ledger.value(fields, SensorKeys.COUNT),
                measures,
                sensed(fields, SensorKeys.NOISE, measures, PER_ROOT_HERTZ),
                fields.get(SensorKeys.RATE),
                fields.get(SensorKeys.DELAY),
                fields.get(SensorKeys.MISALIGNMENT),
                fields.get(SensorKeys.DROPOUT),
                fields.get(SensorKeys.FILTER),
                sensed(fields, SensorKeys.BIAS, measures, Dimension.NONE),
                sensed(fields, SensorKeys.RANGE, measures, Dimension.NONE));
    }

    /**
     * As declared, or as the name says. Of what is read by no flight nothing but its count counts.
     */
    private Optional<Control.Measures> measures(String name, Fields fields) {
        if (fields.has(SensorKeys.MEASURED)) {
            return fields.get(SensorKeys.MEASURED);
        }
        Optional<Control.Measures> named = Control.Sensor.named(name);
        if (named.isEmpty() && FLIGHT.stream().anyMatch(fields::has)) {
            List<String> names =
                    List.of(Control.Measures.values()).stream()
                            .map(Control.Measures::usualName)
                            .toList();
            ledger.problems()
                    .add(
                            Code.UNKNOWN_WORD,
                            fields.spot(),
                            "the sensor "
                                    + Problems.quote(name)
                                    + ", which does not say what it"
                                    + " measures",
                            "one of the names "
                                    + String.join(", ", names)
                                    + ", or the key “measures”",
                            Nearest.to(name, names)
                                    .map(near -> "Perhaps “" + near + "” is meant.")
                                    .orElse("Write for example “measures: turn rate”."));
        }
        return named;
    }

    /** A value whose unit must be that of what the sensor measures. */
    private Optional<Quantity> sensed(
            Fields fields,
            Key<Quantity> key,
            Optional<Control.Measures> measures,
            Dimension density) {
        Optional<Stated<Quantity>> stated = fields.stated(key);
        if (stated.isPresent() && measures.isPresent()) {
            Dimension needed = measures.get().dimension().times(density);
            if (!stated.get().value().dimension().equals(needed)) {
                wrongUnit(key, stated.get().spot(), measures.get(), density);
            }
        }
        return stated.map(Stated::value);
    }

    private void wrongUnit(
            Key<Quantity> key, Spot spot, Control.Measures measures, Dimension density) {
        String unit =
                switch (measures) {
                    case TURN_RATE -> Measure.TURN_RATE.unit();
                    case ACCELERATION -> Measure.ACCELERATION.unit();
                    case HEIGHT, POSITION -> Measure.HEIGHT.unit();
                    case VELOCITY -> Measure.SPEED.unit();
                    case HEADING -> Measure.ANGLE.unit();
                };
        ledger.problems()
                .add(
                        Code.WRONG_UNIT,
                        spot,
                        "the unit of “" + key.name() + "”",
                        "what the sensor measures, in "
                                + unit
                                + (density.equals(Dimension.NONE) ? "" : "/√Hz"),
                        "");
    }

    static Control.Estimator estimator(Fields control) {
        return control.get(SensorKeys.ESTIMATOR)
                .map(
                        fields ->
                                new Control.Estimator(
                                        fields.get(SensorKeys.ESTIMATOR_KIND),
                                        fields.get(SensorKeys.BANDWIDTH)))
                .orElse(Control.Estimator.UNDECLARED);
    }

    Map<Control.LoopName, Control.Loop> loops(Fields control) {
        var loops = new EnumMap<Control.LoopName, Control.Loop>(Control.LoopName.class);
        control.get(SensorKeys.LOOPS)
                .orElse(Map.of())
                .forEach(
                        (name, stated) -> {
                            Control.LoopName loop = SensorKeys.LOOP_NAMES.get(name);
                            if (loop == null) {
                                unknownLoop(name, stated.spot());
                            } else {
                                loops.put(loop, loop(stated.value()));
                            }
                        });
        return loops;
    }

    private void unknownLoop(String name, Spot spot) {
        ledger.problems()
                .add(
                        Code.UNKNOWN_WORD,
                        spot,
                        "the loop " + Problems.quote(name),
                        "one of " + String.join(", ", SensorKeys.LOOP_NAMES.keySet()),
                        Nearest.advice(name, SensorKeys.LOOP_NAMES.keySet()));
    }

    private static Control.Loop loop(Fields fields) {
        return new Control.Loop(
                fields.get(SensorKeys.CROSSOVER),
                fields.get(SensorKeys.MARGIN),
                fields.get(SensorKeys.INTEGRAL));
    }
}
