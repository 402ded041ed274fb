package liftwright.plant.thrust;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.physics.FanLaw;
import liftwright.physics.FanUnit;
import liftwright.physics.MotorLaw;
import liftwright.physics.Screen;
import liftwright.plant.identify.FanUnknown;
import liftwright.plant.identify.LotWorth;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Intake;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * All fan units of a rig: where each takes its numbers from the parameter vector, and what the
 * numbers make of it. Immutable.
 *
 * <p>Motors are cold unless {@link #warm warmed}: winding resistance at 20 °C, switches at 25 °C,
 * K_v as declared. A hot motor gives up to 11 % more thrust at full duty (physics: warm magnets
 * turn faster).
 */
public final class FanBank {

    /**
     * What a seller's thrust figure is worth until it is measured, 0.90 (+0.05/−0.15); common
     * practice.
     */
    public static final Quantity SELLERS_WORTH =
            new Quantity(
                    0.90,
                    Dimension.NONE,
                    new Tolerance(0.05, 0.15, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED));

    /** Index that stands for "none". */
    private static final int NONE = -1;

    /** Places in the parameter vector of one unit; {@link #NONE} where it has no such number. */
    private record Rows(
            Rotor rotor,
            int scatter,
            int installation,
            int worth,
            int speedConstant,
            int winding,
            int noLoad,
            int onResistance,
            int currentLimit,
            int switching,
            int fixedPower,
            int exitArea,
            int freeArea,
            int face,
            int share,
            boolean wire,
            int sharedBy) {}

    /** How thrust and torque coefficients follow from the declared numbers. */
    private sealed interface Rotor {
        record AtSpeed(int speed, int thrust, int shaftPower) implements Rotor {}

        record Coefficients(int thrust, int torque) implements Rotor {}

        /** From rows of a stand; a drift that is not there is {@link #NONE}. */
        record Fitted(
                int thrust, int torque, int thrustDrift, int torqueDrift, double referenceRadps)
                implements Rotor {}
    }

    private final List<Fan> fans;
    private final Rows[] rows;

    private FanBank(List<Fan> fans, Rows[] rows) {
        this.fans = fans;
        this.rows = rows;
    }

    /** Declares the parameters of all fans. */
    public static FanBank declare(Rig rig, ParameterRows table) {
        Map<PartId, Control.Group> groups = new HashMap<>();
        for (Control.Group group : rig.control().groups()) {
            group.fans().forEach(fan -> groups.put(fan, group));
        }
        Rows[] rows = new Rows[rig.fans().size()];
        for (int k = 0; k < rows.length; k++) {
            Fan fan = rig.fans().get(k);
            rows[k] = rows(fan, Optional.ofNullable(groups.get(fan.id())), table);
        }
        return new FanBank(rig.fans(), rows);
    }

    private static Rows rows(Fan fan, Optional<Control.Group> group, ParameterRows table) {
        FanType type = fan.type();
        Declaring declare = new Declaring(table, fan);
        RigPath motor = declare.type.child("motor");
        RigPath controller = declare.type.child("controller");
        Optional<Intake> intake = fan.intake();
        Optional<FittedRows> fitted = FittedRows.of(type, table);
        Optional<LotWorth> lot = LotWorth.of(type);
        return new Rows(
                fitted.map(FanBank::rotor).orElseGet(() -> rotor(declare, type.performance())),
                declare.ofType("scatter", lot.map(LotWorth::scatter).orElse(type.scatter())),
                table.row(
                        fan.installation().at(),
                        "installation factor of " + fan.type().name(),
                        fan.id(),
                        fan.installation().value(),
                        Range.NOT_NEGATIVE),
                worth(declare, lot.map(LotWorth::worth)),
                found(fitted, FanUnknown.SPEED_CONSTANT)
                        .orElseGet(
                                () ->
                                        declare.row(
                                                motor,
                                                "speed constant",
                                                declared(type, type.motor().speedConstant()))),
                found(fitted, FanUnknown.WINDING)
                        .orElseGet(
                                () ->
                                        declare.row(
                                                motor,
                                                "winding resistance",
                                                declared(type, type.motor().windingResistance()))),
                found(fitted, FanUnknown.NO_LOAD)
                        .orElseGet(
                                () ->
                                        declare.row(
                                                motor,
                                                "no-load current",
                                                declared(type, type.motor().noLoadCurrent()),
                                                Range.NOT_NEGATIVE)),
                declare.row(
                        controller,
                        "on-resistance",
                        // Its doubt is in the winding resistance that the rows gave beside it.
                        fitted.isPresent()
                                ? Quantity.exact(
                                        type.controller().onResistance().si(),
                                        type.controller().onResistance().dimension())
                                : type.controller().onResistance(),
                        Range.NOT_NEGATIVE),
                type.controller()
                        .currentLimit()
                        .map(limit -> declare.row(controller, "current limit", limit))
                        .orElse(NONE),
                found(fitted, FanUnknown.SWITCHING)
                        .orElseGet(
                                () ->
                                        declare.row(
                                                controller,
                                                "switching loss",
                                                type.controller().switchingLoss(),
                                                Range.NOT_NEGATIVE)),
                declare.row(
                        controller,
                        "fixed power",
                        type.controller().fixedPower(),
                        Range.NOT_NEGATIVE),
                declare.ofType("exit area", type.exitArea()),
                intake.map(
                                before ->
                                        declare.row(
                                                before.declaredAt(),
                                                "free area",
                                                before.freeArea(),
                                                Range.SHARE))
                        .orElse(NONE),
                intake.map(before -> declare.row(before.declaredAt(), "face", before.face()))
                        .orElse(NONE),
                group.map(
                                own ->
                                        table.row(
                                                own.declaredAt().child("share"),
                                                "share of control group " + own.name(),
                                                fan.id(),
                                                own.share(),
                                                Range.DUTY))
                        .orElse(NONE),
                intake.map(before -> isWire(before.screen())).orElse(false),
                intake.map(Intake::sharedBy).orElse(1));
    }

    /** What the label is worth: as its lot was measured, else as sellers' figures go. */
    private static int worth(Declaring declare, Optional<Quantity> ofLot) {
        FanType type = declare.fan.type();
        if (ofLot.isPresent()) {
            return declare.table.row(
                    declare.type.child("lot"),
                    "what the lot of " + type.name() + " is worth of its label",
                    declare.fan.id(),
                    ofLot.get(),
                    Range.NOT_NEGATIVE);
        }
        return switch (type.data()) {
            case SELLER ->
                    declare.table.row(
                            declare.type.child("data"),
                            "what the seller's thrust of " + type.name() + " is worth",
                            declare.fan.id(),
                            SELLERS_WORTH,
                            Range.NOT_NEGATIVE);
            case MEASURED, ESTIMATE -> NONE;
        };
    }

    private static boolean isWire(Intake.Screen screen) {
        return switch (screen) {
            case WIRE -> true;
            case PERFORATED_PLATE -> false;
        };
    }

    private static Optional<Integer> found(Optional<FittedRows> fitted, FanUnknown unknown) {
        return fitted.flatMap(rows -> rows.row(unknown));
    }

    private static Rotor rotor(FittedRows fitted) {
        return new Rotor.Fitted(
                fitted.row(FanUnknown.THRUST).orElseThrow(),
                fitted.row(FanUnknown.TORQUE).orElseThrow(),
                fitted.row(FanUnknown.THRUST_DRIFT).orElse(NONE),
                fitted.row(FanUnknown.TORQUE_DRIFT).orElse(NONE),
                fitted.referenceRadps());
    }

    private static Rotor rotor(Declaring declare, FanType.Performance performance) {
        return switch (performance) {
            case FanType.Performance.AtSpeed point -> {
                RigPath at = declare.type.child("at speed");
                yield new Rotor.AtSpeed(
                        declare.row(at, "speed", point.speed()),
                        declare.row(at, "thrust", point.thrust()),
                        declare.row(at, "shaft power", point.shaftPower()));
            }
            case FanType.Performance.Coefficients coefficients -> {
                RigPath at = declare.type.child("coefficients");
                yield new Rotor.Coefficients(
                        declare.row(at, "thrust", coefficients.thrust()),
                        declare.row(at, "torque", coefficients.torque()));
            }
            case FanType.Performance.Measured _ ->
                    throw new IllegalArgumentException("rows of a stand are fitted");
        };
    }

    private static Quantity declared(FanType type, Optional<Quantity> value) {
        return value.orElseThrow(() -> unfitted(type, "a bench table"));
    }

    /** A rig file is refused before it gets here. */
    private static IllegalStateException unfitted(FanType type, String file) {
        return new IllegalStateException(
                "the values of " + type.name() + " are to be found from " + file);
    }

    /** Rows of one fan's values. */
    private static final class Declaring {
        private final ParameterRows table;
        private final Fan fan;
        private final RigPath type;

        Declaring(ParameterRows table, Fan fan) {
            this.table = table;
            this.fan = fan;
            type = RigPath.of("fan types", fan.type().name());
        }

        int ofType(String key, Quantity value) {
            return row(type, key, value);
        }

        int row(RigPath at, String key, Quantity value) {
            return row(at, key, value, Range.POSITIVE);
        }

        int row(RigPath at, String key, Quantity value, Range range) {
            String label = key + " of fan " + fan.type().name();
            return table.row(at.child(key), label, fan.id(), value, range);
        }
    }

    public List<Fan> fans() {
        return fans;
    }

    /** New numbers for one thread. */
    public FanUnits newUnits() {
        return new FanUnits(fans.size());
    }

    /**
     * Turns the vector into coefficients and duties.
     *
     * @param densityKgpm3 air density, kg/m³
     * @param groupShare duty of the fan's control group; else 1
     * @param intake with intake losses
     * @param installation with installation factors and what the label is worth (lot, seller)
     */
    public void load(
            double[] p,
            double densityKgpm3,
            boolean groupShare,
            boolean intake,
            boolean installation,
            FanUnits units) {
        double density = FanLaw.densityFactor(densityKgpm3);
        for (int k = 0; k < rows.length; k++) {
            Rows row = rows[k];
            double thrust;
            double torque;
            switch (row.rotor) {
                case Rotor.AtSpeed at -> {
                    double speed = p[at.speed];
                    thrust = p[at.thrust] / (speed * speed);
                    torque = p[at.shaftPower] / (speed * speed * speed);
                }
                case Rotor.Coefficients at -> {
                    thrust = p[at.thrust];
                    torque = p[at.torque];
                }
                case Rotor.Fitted at -> {
                    thrust = p[at.thrust];
                    torque = p[at.torque];
                }
            }
            drift(p, row.rotor, units.unit, k * FanUnit.COEFFICIENTS);
            thrust *= p[row.scatter];
            if (intake && row.face >= 0) {
                thrust *= FanLaw.installedThrustFactor(intakeLoss(p, k));
            }
            if (installation) {
                thrust *= p[row.installation];
                if (row.worth >= 0) {
                    thrust *= p[row.worth];
                }
            }
            int at = k * FanUnit.COEFFICIENTS;
            double[] unit = units.unit;
            unit[at + FanUnit.THRUST] = thrust * density;
            unit[at + FanUnit.TORQUE] = torque * density;
            unit[at + FanUnit.KV] = p[row.speedConstant];
            unit[at + FanUnit.RESISTANCE] = p[row.winding] + p[row.onResistance];
            unit[at + FanUnit.NO_LOAD] = p[row.noLoad];
            unit[at + FanUnit.NO_LOAD_SLOPE] = 0;
            unit[at + FanUnit.SWITCHING] = p[row.switching];
            unit[at + FanUnit.FIXED] = p[row.fixedPower];
            unit[at + FanUnit.CURRENT_LIMIT] =
                    row.currentLimit >= 0 ? p[row.currentLimit] : Double.POSITIVE_INFINITY;
            units.duty[k] = groupShare && row.share >= 0 ? p[row.share] : 1;
        }
    }

    /**
     * Warms the units just loaded: weaker magnets, more resistance of windings and switches.
     *
     * @param magnetK K
     * @param windingK K
     * @param switchK K
     */
    public void warm(double[] p, double magnetK, double windingK, double switchK, FanUnits units) {
        for (int k = 0; k < rows.length; k++) {
            int at = k * FanUnit.COEFFICIENTS;
            Rows row = rows[k];
            units.unit[at + FanUnit.KV] = MotorLaw.kvAt(p[row.speedConstant], magnetK);
            units.unit[at + FanUnit.RESISTANCE] =
                    MotorLaw.windingAt(p[row.winding], windingK)
                            + MotorLaw.switchAt(p[row.onResistance], switchK);
        }
    }

    /**
     * Warms one unit that was loaded before.
     *
     * @param magnetK K
     * @param fadePerK loss of magnetism, 1/K
     * @param windingK K
     * @param switchK K
     */
    public void warm(
            double[] p,
            int fan,
            double magnetK,
            double fadePerK,
            double windingK,
            double switchK,
            FanUnits units) {
        int at = fan * FanUnit.COEFFICIENTS;
        Rows row = rows[fan];
        double winding = MotorLaw.windingAt(p[row.winding], windingK);
        double whole = winding + MotorLaw.switchAt(p[row.onResistance], switchK);
        units.unit[at + FanUnit.KV] = MotorLaw.kvAt(p[row.speedConstant], magnetK, fadePerK);
        units.unit[at + FanUnit.RESISTANCE] = whole;
        units.windingShare[fan] = winding / whole;
    }

    private static void drift(double[] p, Rotor rotor, double[] unit, int at) {
        switch (rotor) {
            case Rotor.AtSpeed _ -> steady(unit, at);
            case Rotor.Coefficients _ -> steady(unit, at);
            case Rotor.Fitted own -> {
                unit[at + FanUnit.THRUST_DRIFT] = own.thrustDrift >= 0 ? p[own.thrustDrift] : 0;
                unit[at + FanUnit.TORQUE_DRIFT] = own.torqueDrift >= 0 ? p[own.torqueDrift] : 0;
                unit[at + FanUnit.REFERENCE_SPEED] = own.referenceRadps;
            }
        }
    }

    private static void steady(double[] unit, int at) {
        unit[at + FanUnit.THRUST_DRIFT] = 0;
        unit[at + FanUnit.TORQUE_DRIFT] = 0;
        unit[at + FanUnit.REFERENCE_SPEED] = 1;
    }

    /**
     * Added total-pressure loss K of a fan's intake over its exit dynamic pressure; 0 without one.
     * Fans behind one face are taken as equal. Holds up to {@link FanLaw#GREATEST_INTAKE_LOSS}.
     */
    public double intakeLoss(double[] p, int fan) {
        Rows row = rows[fan];
        if (row.face < 0) {
            return 0;
        }
        double loss =
                row.wire
                        ? Screen.wireScreenLoss(p[row.freeArea])
                        : Screen.perforatedPlateLoss(p[row.freeArea]);
        return Screen.referredToExit(loss, row.sharedBy * p[row.exitArea], p[row.face]);
    }
}
