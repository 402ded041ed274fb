package liftwright.plant.heat;

import liftwright.physics.Air;
import liftwright.physics.AircraftWire;
import liftwright.physics.Conductor;
import liftwright.physics.JointHeat;
import liftwright.physics.SurfaceExchange;
import liftwright.physics.WireHeat;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.rig.Element;
import liftwright.rig.Insulation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The kinds of wire of a rig: those of one gauge and covering share one table of exchange. */
final class WireKinds {

    /** Shells of insulation. */
    static final int SHELLS = 3;

    /** Excess at which the fin length of a wire is taken to cut it into cells, K. */
    private static final double USUAL_EXCESS_K = 40;

    private static final double USUAL_AIR_K = 293.15;

    private record Kind(AircraftWire wire, Insulation material, int wall, int bundle, int air) {}

    private final List<Kind> kinds = new ArrayList<>();
    private final Map<Kind, Integer> numbers = new HashMap<>();

    /** Number of the kind of a run; declares its parameters. */
    int declare(Element.Run run, ParameterRows table) {
        String place = run.declaredAt().toString();
        Kind kind =
                new Kind(
                        AircraftWire.of(run.gauge()),
                        run.covering().material(),
                        table.row(
                                run.declaredAt().child("wall"),
                                "insulation of the wire at " + place,
                                run.id(),
                                run.covering().wall(),
                                Range.POSITIVE),
                        run.covering().bundle(),
                        table.row(
                                run.declaredAt().child("air"),
                                "air across the wire at " + place,
                                run.id(),
                                run.covering().air(),
                                Range.NOT_NEGATIVE));
        return numbers.computeIfAbsent(
                kind,
                one -> {
                    kinds.add(one);
                    return kinds.size() - 1;
                });
    }

    int count() {
        return kinds.size();
    }

    /** Shares of the cells of a run at its declared values. */
    static double[] cells(Element.Run run) {
        AircraftWire wire = AircraftWire.of(run.gauge());
        WireHeat heat = heat(wire, run.covering().material(), run.covering().wall().si());
        double surface =
                SurfaceExchange.bundleFactor(run.covering().bundle())
                        * SurfaceExchange.wireWpmK(
                                heat.outerM(),
                                USUAL_AIR_K + USUAL_EXCESS_K,
                                USUAL_AIR_K,
                                Air.SEA_LEVEL_PA,
                                run.covering().air().si(),
                                SurfaceExchange.USUAL_EMISSIVITY);
        double across = 1 / (1 / surface + 1 / heat.wallWpmK());
        return LineGrid.shares(
                run.length().si(),
                JointHeat.finLengthM(Conductor.COPPER_WPMK, wire.areaM2(), across));
    }

    /** One metre of one wire of a kind, at a vector. */
    WireHeat heat(int kind, double[] p) {
        Kind of = kinds.get(kind);
        return heat(of.wire, of.material, p[of.wall]);
    }

    AircraftWire wire(int kind) {
        return kinds.get(kind).wire;
    }

    private static WireHeat heat(AircraftWire wire, Insulation material, double wallM) {
        WallData wall = WallData.of(material);
        return WireHeat.of(
                wire.areaM2(), wallM, wall.conductivityWpmK(), wall.capacityJpm3K(), SHELLS);
    }

    /** Makes the table of a kind. */
    void load(int kind, WireHeat heat, double[] p, double airK, double pascal, SurfaceTable table) {
        Kind of = kinds.get(kind);
        table.make(
                heat.outerM(),
                heat.toSurfaceWpmK(),
                SurfaceExchange.bundleFactor(of.bundle),
                airK,
                pascal,
                p[of.air]);
    }
}
