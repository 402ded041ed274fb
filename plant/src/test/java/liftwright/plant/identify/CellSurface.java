package liftwright.plant.identify;

import static liftwright.plant.RigSketch.si;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.RigSketch;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.CellType;
import liftwright.rig.Control;
import liftwright.rig.Cooling;
import liftwright.rig.Demands;
import liftwright.rig.FanType;
import liftwright.rig.Heating;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Magnets;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;
import liftwright.rig.Site;
import liftwright.rig.table.CellTests;
import liftwright.rig.table.StartState;

/**
 * One cell as a pack of a rig, emptied at the current that was measured: the surface as the plant
 * has it. The fan is a motor that does not turn, a resistor whose duty holds the current.
 */
final class CellSurface {

    /** Winding of that motor, Ω; it takes no heat to speak of. */
    private static final double OHM = 0.1;

    final double[] timeS;
    final double[] measuredK;

    /** Surface as computed at those times, K. */
    final double[] surfaceK;

    final double meanA;

    /**
     * @param type found from its tests
     * @param jpK heat capacity of the cell
     * @param wpK from its surface to the air
     */
    CellSurface(CellType type, CellTests.Run measured, double jpK, double wpK) {
        TestRows rows = TestRows.of(measured);
        timeS = rows.timeS;
        measuredK = rows.kelvin;
        surfaceK = new double[timeS.length];
        meanA = Arrays.stream(rows.currentA).skip(1).average().orElseThrow();
        double airK = measuredK[0];
        Plant plant = Plant.assembleHeated(rig(type, airK, jpK, wpK));
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        surfaceK[0] = airK;
        double volt = 3.9;
        for (int k = 1; k < timeS.length; k++) {
            int parts = k < 4 ? 6 : 1;
            for (int part = 0; part < parts; part++) {
                double duty = Math.min(1, Math.sqrt(rows.currentA[k] * OHM / volt));
                run.follow(new Order.Throttle(duty), (timeS[k] - timeS[k - 1]) / parts, at -> {});
                volt = run.network().loadTerminalV(0);
            }
            surfaceK[k] = surface(run);
        }
    }

    private static double surface(Discharge run) {
        return run.stateNow().rows().stream()
                .filter(row -> row.place() == StartState.Place.SURFACE)
                .findFirst()
                .map(StartState.Row::temperatureK)
                .orElseThrow()
                .orElseThrow();
    }

    double rmsK() {
        double sum = 0;
        for (int k = 1; k < timeS.length; k++) {
            sum += Math.pow(surfaceK[k] - measuredK[k], 2);
        }
        return Math.sqrt(sum / (timeS.length - 1));
    }

    /** When a temperature is first passed, s; infinite if never. */
    static double passedS(double[] timeS, double[] kelvin, double limitK) {
        for (int k = 1; k < timeS.length; k++) {
            if (kelvin[k] >= limitK) {
                double share = (limitK - kelvin[k - 1]) / (kelvin[k] - kelvin[k - 1]);
                return timeS[k - 1] + share * (timeS[k] - timeS[k - 1]);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static liftwright.rig.Rig rig(CellType found, double airK, double jpK, double wpK) {
        CellType type =
                new CellType(
                        found.name(),
                        found.chemistry(),
                        found.capacity(),
                        found.resistance(),
                        found.settling(),
                        found.resistanceOverCharge(),
                        found.ageing(),
                        found.temperatureCoefficient(),
                        si(0.046),
                        found.openCircuit(),
                        found.openCircuitDoubt(),
                        found.continuousCurrent(),
                        found.peakCurrent(),
                        found.measured(),
                        new CellType.Thermal(si(jpK), si(12 * 0.046), si(wpK)));
        RigSketch sketch = new RigSketch();
        sketch.site = new Site(si(0), Optional.of(si(airK)), Optional.of(si(101_325)), si(0));
        sketch.demands = new Demands(si(1), si(60), si(0.01), si(0.01));
        sketch.limits =
                new Limits(
                        java.util.Map.of(
                                LimitName.CELL_TEMPERATURE,
                                373.15,
                                LimitName.CELL_AT_START,
                                250.0));
        sketch.packs.add(
                new Pack(
                        PartId.of("p", 1),
                        RigPath.of("packs", "p"),
                        type,
                        1,
                        1,
                        si(0),
                        Optional.empty(),
                        si(0),
                        RigSketch.FRAME,
                        new liftwright.rig.Vec3(0, 0, 0),
                        si(1),
                        Optional.of(si(airK)),
                        Optional.empty()));
        sketch.fans.add(RigSketch.fan("f", 1, resistor()));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 1e-6));
        sketch.groups.add(
                new Control.Group(
                        "all",
                        RigPath.of("control", "groups", "all"),
                        List.copyOf(new ArrayList<>(List.of(PartId.of("f", 1)))),
                        si(1)));
        return sketch.rig();
    }

    private static FanType resistor() {
        FanType like = RigSketch.fanType("R");
        FanType.Controller own = like.controller();
        Heating mass =
                new Heating(
                        si(1e7), si(1e7), si(1e6), si(1e6), Optional.empty(), Magnets.EH, si(0));
        return new FanType(
                "R",
                true,
                like.tip(),
                like.hub(),
                like.exitArea(),
                like.mass(),
                FanType.Data.MEASURED,
                new FanType.Performance.Coefficients(si(1e-5), si(1e-7)),
                new FanType.Motor(
                        Optional.of(si(50)),
                        Optional.of(si(OHM)),
                        Optional.of(si(1000)),
                        OptionalInt.empty(),
                        mass),
                new FanType.Rotor(Optional.empty(), Optional.empty()),
                new FanType.Controller(
                        si(0),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        own.capacitance(),
                        own.capacitorVoltage(),
                        Optional.empty(),
                        si(0),
                        si(0),
                        si(0.12),
                        FanType.Switching.UNKNOWN,
                        new Cooling(si(1e7), si(1e6), si(1e6), si(1e6))),
                Optional.empty(),
                si(0.1),
                si(1),
                si(1),
                Optional.empty(),
                FanType.Extremes.USUAL);
    }
}
