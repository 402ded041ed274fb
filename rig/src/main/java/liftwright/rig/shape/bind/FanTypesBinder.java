package liftwright.rig.shape.bind;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.Intake;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Requirements;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.ControllerKeys;
import liftwright.rig.shape.words.FanTypeKeys;
import liftwright.rig.shape.words.IntakeKeys;
import liftwright.rig.shape.words.MotorKeys;
import liftwright.rig.shape.words.RotorKeys;
import liftwright.rig.table.BenchTable;

/** The fan types. */
final class FanTypesBinder {

    /** An open rotor's jet contracts to this share of the disc in ideal theory. */
    private static final double OPEN_JET_SHARE = 0.5;

    private final Ledger ledger;
    private final Shelf shelf;
    private final WarmthBinder warmth;

    FanTypesBinder(Ledger ledger, Shelf shelf) {
        this.ledger = ledger;
        this.shelf = shelf;
        this.warmth = new WarmthBinder(ledger);
    }

    Map<String, FanType> bind(Map<String, Stated<Fields>> declared) {
        var types = new LinkedHashMap<String, FanType>();
        declared.forEach((name, fields) -> types.put(name, type(name, fields.value())));
        return types;
    }

    private FanType type(String name, Fields fields) {
        boolean ducted = ledger.value(fields, FanTypeKeys.DUCTED);
        Quantity tip = ledger.value(fields, FanTypeKeys.TIP);
        Quantity hub = ledger.value(fields, FanTypeKeys.HUB);
        if (hub.si() >= tip.si()
                && fields.get(FanTypeKeys.HUB).isPresent()
                && fields.get(FanTypeKeys.TIP).isPresent()) {
            ledger.problems()
                    .add(
                            Code.OUT_OF_RANGE,
                            fields.spotOf(FanTypeKeys.HUB),
                            Measure.LENGTH.show(hub.si()),
                            "a hub smaller than the tip, " + Measure.LENGTH.show(tip.si()),
                            "");
        }
        Optional<BenchTable> bench = bench(fields);
        return new FanType(
                name,
                ducted,
                tip,
                hub,
                exitArea(fields, ducted, tip, hub),
                ledger.value(fields, FanTypeKeys.MASS),
                data(fields),
                performance(fields, bench),
                motor(fields, isFound(fields, bench)),
                rotor(Ledger.section(fields, FanTypeKeys.ROTOR), tip, hub),
                controller(fields),
                fields.get(FanTypeKeys.INTAKE).map(intake -> intake(ledger, intake)),
                ledger.computed(
                        fields,
                        FanTypeKeys.SWIRL,
                        ducted ? "0.15 ± 0.25 bound" : "1",
                        ducted
                                ? "common practice: −0.1 to 0.4 with stators"
                                : "common practice: an open rotor"),
                ledger.value(fields, FanTypeKeys.SCATTER),
                ledger.value(fields, FanTypeKeys.INSTALLATION),
                fields.get(FanTypeKeys.LOT)
                        .flatMap(
                                lot ->
                                        new LotBinder(ledger, shelf)
                                                .bind(lot, !fields.has(FanTypeKeys.SCATTER))),
                new FanType.Extremes(
                        ledger.value(fields, FanTypeKeys.NOISE),
                        ledger.value(fields, FanTypeKeys.REVERSED)));
    }

    private FanType.Rotor rotor(Fields fields, Quantity tip, Quantity hub) {
        boolean blade = fields.has(RotorKeys.BLADE_MASS) || fields.has(RotorKeys.BLADE_CENTRE);
        return new FanType.Rotor(
                fields.get(RotorKeys.TOP_SPEED),
                fields.get(RotorKeys.INERTIA),
                fields.get(RotorKeys.MASS),
                fields.get(RotorKeys.BLADES).map(OptionalInt::of).orElseGet(OptionalInt::empty),
                fields.get(RotorKeys.BLADE_MASS),
                blade
                        ? Optional.of(
                                ledger.computed(
                                        fields,
                                        RotorKeys.BLADE_CENTRE,
                                        Measure.LENGTH.show((tip.si() + hub.si()) / 4),
                                        "half way from hub to tip"))
                        : Optional.empty());
    }

    private Quantity exitArea(Fields fields, boolean ducted, Quantity tip, Quantity hub) {
        double ring =
                Math.max(0, Math.PI / 4 * (tip.si() * tip.si() - hub.si() * hub.si()))
                        + Double.MIN_NORMAL;
        double area = ducted ? ring : OPEN_JET_SHARE * ring;
        return fields.has(FanTypeKeys.EXIT_AREA) || hub.si() >= tip.si()
                ? ledger.value(fields, FanTypeKeys.EXIT_AREA)
                : ledger.computed(
                        fields,
                        FanTypeKeys.EXIT_AREA,
                        Measure.AREA.show(area) + " ± 5 %",
                        ducted
                                ? "the ring between hub and tip: a straight duct"
                                : "half the ring between hub and tip: an ideal open rotor");
    }

    private Optional<BenchTable> bench(Fields fields) {
        return fields.get(FanTypeKeys.BENCH)
                .flatMap(
                        path ->
                                shelf.bench(
                                        path, fields.spotOf(FanTypeKeys.BENCH), ledger.problems()));
    }

    private FanType.Data data(Fields fields) {
        return fields.has(FanTypeKeys.BENCH)
                ? ledger.computed(
                        fields, FanTypeKeys.DATA, "measured", "a bench table stands there")
                : ledger.computed(
                        fields,
                        FanTypeKeys.DATA,
                        "seller",
                        fields.has(FanTypeKeys.LOT)
                                ? "what the label is worth is told by the lot"
                                : "what is not said to be measured is worth 0.90 (+0.05/−0.15) of itself;"
                                        + " common practice");
    }

    /** Whether the motor's values can be found from rows; so too while no rows could be read. */
    private static boolean isFound(Fields fields, Optional<BenchTable> bench) {
        return fields.has(FanTypeKeys.BENCH) && bench.map(BenchTable::tellsMotor).orElse(true);
    }

    private FanType.Performance performance(Fields fields, Optional<BenchTable> bench) {
        if (bench.isEmpty()) {
            return claimed(fields);
        }
        boolean claims = fields.has(FanTypeKeys.COEFFICIENTS) || fields.has(FanTypeKeys.AT_SPEED);
        return new FanType.Performance.Measured(
                bench.get(), claims ? Optional.of(claimed(fields)) : Optional.empty());
    }

    private FanType.Performance claimed(Fields fields) {
        Optional<Fields> coefficients = fields.get(FanTypeKeys.COEFFICIENTS);
        if (coefficients.isPresent()) {
            return new FanType.Performance.Coefficients(
                    ledger.value(coefficients.get(), FanTypeKeys.K_THRUST),
                    ledger.value(coefficients.get(), FanTypeKeys.K_TORQUE));
        }
        Fields point = Ledger.section(fields, FanTypeKeys.AT_SPEED);
        return new FanType.Performance.AtSpeed(
                ledger.value(point, FanTypeKeys.SPEED),
                ledger.value(point, FanTypeKeys.THRUST),
                ledger.value(point, FanTypeKeys.SHAFT_POWER));
    }

    /**
     * @param found whether what is not declared is found from a bench table
     */
    private FanType.Motor motor(Fields type, boolean found) {
        Fields fields = Ledger.section(type, FanTypeKeys.MOTOR);
        if (!found && type.get(FanTypeKeys.MOTOR).isPresent()) {
            for (var key : MotorKeys.FOUND_ON_A_BENCH) {
                Requirements.require(fields, key, ledger.problems());
            }
        } else if (!found && type.has(FanTypeKeys.BENCH)) {
            Requirements.require(type, FanTypeKeys.MOTOR, ledger.problems());
        }
        return new FanType.Motor(
                motorValue(fields, MotorKeys.SPEED_CONSTANT, found),
                motorValue(fields, MotorKeys.WINDING, found),
                motorValue(fields, MotorKeys.NO_LOAD, found),
                fields.get(MotorKeys.POLE_PAIRS).map(OptionalInt::of).orElseGet(OptionalInt::empty),
                warmth.motor(fields, ledger.value(type, FanTypeKeys.MASS)));
    }

    private Optional<Quantity> motorValue(Fields fields, Key<Quantity> key, boolean found) {
        return found ? fields.get(key) : Optional.of(ledger.value(fields, key));
    }

    private FanType.Controller controller(Fields type) {
        Fields fields = Ledger.section(type, FanTypeKeys.CONTROLLER);
        return new FanType.Controller(
                ledger.value(fields, ControllerKeys.ON_RESISTANCE),
                fields.get(ControllerKeys.CURRENT_LIMIT),
                fields.get(ControllerKeys.TOP_VOLTAGE),
                fields.get(ControllerKeys.TOP_ELECTRICAL),
                fields.get(ControllerKeys.CAPACITANCE),
                fields.get(ControllerKeys.CAPACITOR_VOLTAGE),
                fields.get(ControllerKeys.CUT_OFF),
                ledger.value(fields, ControllerKeys.FIXED_POWER),
                ledger.value(fields, ControllerKeys.SWITCHING_LOSS),
                ledger.value(fields, ControllerKeys.MASS),
                new FanType.Switching(
                        fields.get(ControllerKeys.BRAKING),
                        fields.get(ControllerKeys.SWITCHING_FREQUENCY),
                        fields.get(ControllerKeys.CAPACITOR_RESISTANCE),
                        Optional.of(ledger.value(fields, ControllerKeys.DELAY)),
                        fields.get(ControllerKeys.SLEW)),
                warmth.controller(fields, ledger.value(type, FanTypeKeys.MASS)),
                new FanType.Misbehaviour(
                        ledger.value(fields, ControllerKeys.SIGNAL_LOSS),
                        ledger.value(fields, ControllerKeys.SURGE),
                        fields.get(ControllerKeys.IDLE)));
    }

    static Intake intake(Ledger ledger, Fields fields) {
        return new Intake(
                fields.spot().path(),
                ledger.value(fields, IntakeKeys.SCREEN),
                ledger.value(fields, IntakeKeys.FREE_AREA),
                ledger.value(fields, IntakeKeys.FACE),
                ledger.value(fields, IntakeKeys.SHARED_BY));
    }
}
