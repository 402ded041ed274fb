package liftwright.rig.shape.bind;

import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.CellType;
import liftwright.rig.Contactor;
import liftwright.rig.Cooling;
import liftwright.rig.Heating;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.words.CellKeys;
import liftwright.rig.shape.words.ControllerKeys;
import liftwright.rig.shape.words.MotorKeys;
import liftwright.rig.shape.words.WiringKeys;

/** How controllers, motors, cells and contactors warm; what is not declared goes by their mass. */
final class WarmthBinder {

    /** Mass of a controller that is weighed with its fan, share of the fan's. */
    private static final double CONTROLLER_SHARE = 0.15;

    /** Stands in after a problem; never handed out. */
    private static final double SOME_KG = 0.1;

    private final Ledger ledger;

    WarmthBinder(Ledger ledger) {
        this.ledger = ledger;
    }

    Cooling controller(Fields fields, Quantity fanMass) {
        double ownKg = ledger.value(fields, ControllerKeys.MASS).si();
        boolean own = ownKg > 0;
        Cooling usual = Cooling.usual(mass(own ? ownKg : CONTROLLER_SHARE * fanMass.si()));
        String origin =
                own
                        ? "by the mass of the controller; from memory, measure yours"
                        : "by 15 % of the fan's mass; from memory, measure yours";
        return new Cooling(
                value(fields, ControllerKeys.HEAT, usual.heatCapacity(), origin),
                value(fields, ControllerKeys.JUNCTION_TO_SINK, usual.junctionToSink(), origin),
                value(fields, ControllerKeys.JUNCTION_HEAT, usual.junctionHeatCapacity(), origin),
                value(fields, ControllerKeys.TO_AIR, usual.toAir(), origin));
    }

    Heating motor(Fields fields, Quantity fanMass) {
        Heating usual = Heating.usual(mass(fanMass.si()));
        String origin = "by the mass of the fan; from memory, measure yours";
        return new Heating(
                value(fields, MotorKeys.HEAT_WINDING, usual.windingHeatCapacity(), origin),
                value(fields, MotorKeys.HEAT_CASE, usual.caseHeatCapacity(), origin),
                value(fields, MotorKeys.TO_CASE, usual.windingToCase(), origin),
                value(fields, MotorKeys.TO_AIR, usual.caseToAir(), origin),
                fields.get(MotorKeys.HOTTEST),
                ledger.value(fields, MotorKeys.MAGNET),
                ledger.value(fields, MotorKeys.MAGNET_FADE));
    }

    CellType.Thermal cell(Fields type) {
        Fields fields = Ledger.section(type, CellKeys.THERMAL);
        CellType.Thermal usual =
                CellType.Thermal.usual(mass(ledger.value(type, CellKeys.MASS).si()));
        String origin = "by the mass of the cell; from memory, measure yours";
        return new CellType.Thermal(
                value(fields, CellKeys.HEAT, usual.heatCapacity(), origin),
                value(fields, CellKeys.CORE, usual.coreToSurface(), origin),
                value(fields, CellKeys.TO_AIR, usual.toAir(), origin));
    }

    Quantity pole(Fields contactor) {
        double usualJpK =
                contactor
                        .get(WiringKeys.RATING)
                        .map(rating -> Contactor.J_PER_K_A * rating.si())
                        .orElse(Contactor.USUAL_J_PER_K);
        return ledger.computed(
                contactor,
                WiringKeys.POLE_HEAT,
                bound(Measure.HEAT_CAPACITY, usualJpK, usualJpK / 2),
                contactor.has(WiringKeys.RATING)
                        ? "half a gram of copper for each ampere; from memory, measure yours"
                        : "100 g of copper; from memory, measure yours");
    }

    private static double mass(double kg) {
        return kg > 0 ? kg : SOME_KG;
    }

    private Quantity value(Fields fields, Key<Quantity> key, Quantity usual, String origin) {
        Tolerance doubt = usual.tolerance();
        return ledger.computed(fields, key, bound(measure(key), usual.si(), doubt.plus()), origin);
    }

    private static Measure measure(Key<Quantity> key) {
        return key.kind() instanceof Amount amount ? amount.measure() : Measure.RATIO;
    }

    /** As it would be written. */
    static String bound(Measure measure, double si, double halfSi) {
        return measure.show(si) + " ± " + measure.show(halfSi) + " bound";
    }
}
