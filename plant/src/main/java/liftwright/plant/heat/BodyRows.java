package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.List;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Cooling;
import liftwright.rig.Fan;
import liftwright.rig.Heating;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * Controllers, motors and cells as bodies of two nodes each: where they take their numbers from the
 * parameter vector. Of a controller the inner node is the junction and the outer the sink; of a
 * motor winding and case; of a cell core and surface. Immutable.
 */
final class BodyRows {

    /**
     * Share of a cell's heat capacity that its core has, the rest being can or pouch; cylindrical
     * cells fitted with two nodes show 0.9 and more (from memory).
     */
    static final double CORE_SHARE = 0.9;

    private record Controller(int whole, int junction, int junctionToSink, int toAir) {}

    private record Motor(int winding, int frame, int between, int toAir, int fade) {}

    private record Cell(int capacity, int between, int toAir) {}

    private final Controller[] controllers;
    private final Motor[] motors;
    private final Cell[] cells;

    private BodyRows(Rig rig, ParameterRows table) {
        List<Controller> controller = new ArrayList<>();
        List<Motor> motor = new ArrayList<>();
        for (Fan fan : rig.fans()) {
            controller.add(controller(fan, table));
            motor.add(motor(fan, table));
        }
        controllers = controller.toArray(new Controller[0]);
        motors = motor.toArray(new Motor[0]);
        cells = rig.packs().stream().map(pack -> cell(pack, table)).toArray(Cell[]::new);
    }

    static BodyRows declare(Rig rig, ParameterRows table) {
        return new BodyRows(rig, table);
    }

    private static Controller controller(Fan fan, ParameterRows table) {
        Cooling cooling = fan.type().controller().cooling();
        String at = "controller";
        return new Controller(
                row(fan, at, "heat capacity", cooling.heatCapacity(), table),
                row(fan, at, "junction heat capacity", cooling.junctionHeatCapacity(), table),
                row(fan, at, "junction to sink", cooling.junctionToSink(), table),
                row(fan, at, "to air", cooling.toAir(), table));
    }

    private static Motor motor(Fan fan, ParameterRows table) {
        Heating heating = fan.type().motor().heating();
        String at = "motor";
        return new Motor(
                row(fan, at, "winding heat capacity", heating.windingHeatCapacity(), table),
                row(fan, at, "case heat capacity", heating.caseHeatCapacity(), table),
                row(fan, at, "winding to case", heating.windingToCase(), table),
                row(fan, at, "case to air", heating.caseToAir(), table),
                table.row(
                        RigPath.of("fan types", fan.type().name(), at, "magnet fade"),
                        "magnet fade of fan " + fan.type().name(),
                        fan.id(),
                        heating.magnetFade(),
                        Range.NOT_NEGATIVE));
    }

    private static int row(Fan fan, String part, String key, Quantity value, ParameterRows table) {
        return table.row(
                RigPath.of("fan types", fan.type().name(), part, key),
                key + " of the " + part + " of fan " + fan.type().name(),
                fan.id(),
                value,
                Range.POSITIVE);
    }

    private static Cell cell(Pack pack, ParameterRows table) {
        CellType.Thermal thermal = pack.cell().thermal();
        return new Cell(
                row(pack, "heat capacity", thermal.heatCapacity(), table),
                row(pack, "core to surface", thermal.coreToSurface(), table),
                row(pack, "surface to air", thermal.toAir(), table));
    }

    private static int row(Pack pack, String key, Quantity value, ParameterRows table) {
        return table.meanRow(
                RigPath.of("cells", pack.cell().name(), "thermal", key),
                key + " of cell " + pack.cell().name(),
                pack.id(),
                pack.series() * pack.parallel(),
                value,
                Range.POSITIVE);
    }

    int count() {
        return controllers.length + motors.length + 2 * cells.length;
    }

    int controller(int fan) {
        return fan;
    }

    int motor(int fan) {
        return controllers.length + fan;
    }

    int meanCell(int pack) {
        return controllers.length + motors.length + pack;
    }

    int warmestCell(int pack) {
        return controllers.length + motors.length + cells.length + pack;
    }

    void load(double[] p, HeatNumbers n) {
        for (int fan = 0; fan < motors.length; fan++) {
            Controller controller = controllers[fan];
            double junction = p[controller.junction];
            double sink = p[controller.whole] - junction;
            if (!(sink > 0)) {
                throw new ImpossibleValueException(
                        "heat capacity of a controller beside its junction", sink, Range.POSITIVE);
            }
            body(n, controller(fan), junction, sink, p[controller.junctionToSink]);
            n.fullAirWpK[controller(fan)] = p[controller.toAir];
            Motor motor = motors[fan];
            body(n, motor(fan), p[motor.winding], p[motor.frame], p[motor.between]);
            n.fullAirWpK[motor(fan)] = p[motor.toAir];
            n.fadePerK[fan] = p[motor.fade];
        }
        for (int pack = 0; pack < cells.length; pack++) {
            Cell cell = cells[pack];
            double core = CORE_SHARE * p[cell.capacity];
            double can = p[cell.capacity] - core;
            body(n, meanCell(pack), core, can, p[cell.between]);
            body(n, warmestCell(pack), core, can, p[cell.between]);
            n.fullAirWpK[meanCell(pack)] = p[cell.toAir];
            n.fullAirWpK[warmestCell(pack)] = p[cell.toAir];
        }
    }

    private static void body(
            HeatNumbers n, int body, double innerJpK, double outerJpK, double betweenWpK) {
        n.capacityJpK[n.inner(body)] = innerJpK;
        n.capacityJpK[n.outer(body)] = outerJpK;
        n.betweenWpK[body] = betweenWpK;
    }
}
