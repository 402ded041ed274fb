package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import liftwright.physics.Air;
import liftwright.physics.AircraftWire;
import liftwright.physics.Conductor;
import liftwright.physics.JointHeat;
import liftwright.physics.SurfaceExchange;
import liftwright.physics.WireHeat;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Element;
import liftwright.rig.RigPath;
import liftwright.rig.book.BookInsulation;
import liftwright.rig.book.PartsBook;

/** The kinds of wire of a rig: those of one gauge and covering share one table of exchange. */
final class WireKinds {

    /** Shells of insulation. */
    static final int SHELLS = 3;

    /** Excess at which the fin length of a wire is taken to cut it into cells, K. */
    private static final double USUAL_EXCESS_K = 40;

    private static final double USUAL_AIR_K = 293.15;

    private static final Dimension CONDUCTIVITY = new Dimension(1, 1, -3, 0, -1, 0);
    private static final Dimension CAPACITY = new Dimension(-1, 1, -2, 0, -1, 0);

    private record Kind(
            AircraftWire wire, int conductivity, int capacity, int wall, int bundle, int air) {}

    private final List<Kind> kinds = new ArrayList<>();
    private final Map<Kind, Integer> numbers = new HashMap<>();

    /** Number of the kind of a run; declares its parameters. */
    int declare(Element.Run run, ParameterRows table) {
        String place = run.declaredAt().toString();
        Kind kind =
                new Kind(
                        AircraftWire.of(run.gauge()),
                        material(
                                run,
                                "conductivity",
                                PartsBook.insulation(run.covering().material()).conductivityWpmK(),
                                CONDUCTIVITY,
                                table),
                        material(
                                run,
                                "heat capacity",
                                PartsBook.insulation(run.covering().material()).heatJpm3K(),
                                CAPACITY,
                                table),
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

    /** What the parts book says of a material, in doubt for all wires alike. */
    private static int material(
            Element.Run run, String key, double si, Dimension dimension, ParameterRows table) {
        String word = run.covering().material().word();
        double doubt = BookInsulation.DOUBT_SHARE * si;
        return table.row(
                RigPath.of("parts book", "insulation", word, key),
                key + " of " + word,
                new Quantity(
                        si,
                        dimension,
                        new Tolerance(doubt, doubt, Tolerance.Form.BOUND, Tolerance.Scope.SHARED)),
                Range.POSITIVE);
    }

    int count() {
        return kinds.size();
    }

    /** Places of the cells of a run at its declared values, as shares of its length. */
    static double[] cells(Element.Run run) {
        AircraftWire wire = AircraftWire.of(run.gauge());
        BookInsulation material = PartsBook.insulation(run.covering().material());
        WireHeat heat =
                WireHeat.of(
                        wire.areaM2(),
                        run.covering().wall().si(),
                        material.conductivityWpmK(),
                        material.heatJpm3K(),
                        SHELLS);
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
        return LineGrid.places(
                run.length().si(),
                JointHeat.finLengthM(Conductor.COPPER_WPMK, wire.areaM2(), across));
    }

    /** One metre of one wire of a kind, at a vector. */
    WireHeat heat(int kind, double[] p) {
        Kind of = kinds.get(kind);
        return WireHeat.of(
                of.wire.areaM2(), p[of.wall], p[of.conductivity], p[of.capacity], SHELLS);
    }

    AircraftWire wire(int kind) {
        return kinds.get(kind).wire;
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
