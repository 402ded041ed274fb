package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.CellType;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * A rig of the same values whose parts each have numbers of their own, so that one of them can be
 * wrong alone. What was in doubt for all of a kind together is exact here: that doubt is taken from
 * the rig as it is declared.
 */
final class Opened {

    private final Map<String, FanType> types = new HashMap<>();
    private final Map<String, CellType> cells = new HashMap<>();

    private Opened() {}

    static Rig of(Rig rig) {
        Opened opened = new Opened();
        List<Fan> fans = rig.fans().stream().map(opened::fan).toList();
        List<Pack> packs = rig.packs().stream().map(opened::pack).toList();
        return rig.asDeclared().with(fans).fedBy(packs).wired(opened.wiring(rig.wiring()));
    }

    private static Quantity each(Quantity of) {
        return of.tolerance().scope() == Tolerance.Scope.EACH
                ? of
                : new Quantity(
                        of.si(),
                        of.dimension(),
                        new Tolerance(0, 0, Tolerance.Form.NORMAL, Tolerance.Scope.EACH));
    }

    private static Optional<Quantity> each(Optional<Quantity> of) {
        return of.map(Opened::each);
    }

    private Fan fan(Fan fan) {
        return new Fan(
                fan.id(),
                fan.declaredAt(),
                types.computeIfAbsent(fan.type().name(), _ -> type(fan.type())),
                fan.mount(),
                fan.at(),
                fan.blows(),
                fan.leans(),
                fan.seat(),
                fan.spin(),
                fan.intake(),
                fan.installation(),
                fan.serial());
    }

    private static FanType type(FanType type) {
        FanType.Motor motor = type.motor();
        return new FanType(
                type.name(),
                type.ducted(),
                type.tip(),
                type.hub(),
                type.exitArea(),
                type.mass(),
                type.data(),
                performance(type.performance()),
                new FanType.Motor(
                        each(motor.speedConstant()),
                        motor.windingResistance(),
                        motor.noLoadCurrent(),
                        motor.polePairs(),
                        motor.heating()),
                type.rotor(),
                type.controller(),
                type.intake(),
                type.swirl(),
                each(type.scatter()),
                type.installation(),
                type.lot(),
                type.extremes());
    }

    private static FanType.Performance performance(FanType.Performance of) {
        return switch (of) {
            case FanType.Performance.AtSpeed(var speed, var thrust, var power) ->
                    new FanType.Performance.AtSpeed(speed, thrust, each(power));
            case FanType.Performance.Coefficients(var thrust, var torque) ->
                    new FanType.Performance.Coefficients(thrust, each(torque));
            case FanType.Performance.Measured measured -> measured;
        };
    }

    private Pack pack(Pack pack) {
        return new Pack(
                pack.id(),
                pack.declaredAt(),
                cells.computeIfAbsent(pack.cell().name(), _ -> cell(pack.cell())),
                pack.series(),
                pack.parallel(),
                pack.extraMass(),
                pack.mass(),
                each(pack.interconnect()),
                pack.mount(),
                pack.at(),
                each(pack.charge()),
                pack.temperature(),
                pack.serial());
    }

    private static CellType cell(CellType cell) {
        return new CellType(
                cell.name(),
                cell.chemistry(),
                each(cell.capacity()),
                each(cell.resistance()),
                cell.settling(),
                cell.resistanceOverCharge(),
                cell.ageing(),
                cell.temperatureCoefficient(),
                cell.mass(),
                cell.openCircuit(),
                cell.openCircuitDoubt(),
                cell.continuousCurrent(),
                cell.peakCurrent(),
                cell.measured(),
                cell.thermal());
    }

    private Wiring wiring(Wiring wiring) {
        List<Wiring.Chain> chains = new ArrayList<>();
        for (Wiring.Chain chain : wiring.chains()) {
            chains.add(
                    new Wiring.Chain(
                            chain.id(),
                            chain.from(),
                            chain.to(),
                            chain.elements().stream().map(Opened::element).toList()));
        }
        return new Wiring(
                chains,
                wiring.contactors(),
                wiring.preCharge(),
                wiring.kills(),
                wiring.grounds(),
                wiring.discharge());
    }

    private static Element element(Element element) {
        return switch (element) {
            case Element.Run run ->
                    new Element.Run(
                            run.id(),
                            run.declaredAt(),
                            run.gauge(),
                            run.conductors(),
                            each(run.length()),
                            run.covering());
            case Element.Joint joint ->
                    new Element.Joint(
                            joint.id(),
                            joint.declaredAt(),
                            joint.kind(),
                            each(joint.resistance()),
                            joint.rating(),
                            joint.wear(),
                            joint.heatCapacity());
            case Element.Fuse fuse ->
                    new Element.Fuse(
                            fuse.id(),
                            fuse.declaredAt(),
                            fuse.rating(),
                            each(fuse.resistance()),
                            fuse.breaks(),
                            fuse.voltage(),
                            fuse.opening(),
                            fuse.heatCapacity());
            case Element.Pole pole -> pole;
        };
    }
}
