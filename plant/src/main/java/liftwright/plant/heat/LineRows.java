package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import liftwright.physics.AircraftWire;
import liftwright.physics.Conductor;
import liftwright.physics.JointHeat;
import liftwright.physics.RatedWire;
import liftwright.physics.WireHeat;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.Element;
import liftwright.rig.Insulation;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
import liftwright.rig.book.PartsBook;

/**
 * The chains of the wiring as lines of bodies of heat: where each takes its numbers from the
 * parameter vector. Immutable.
 *
 * <p>A chain stands for a positive and a negative line; the positive one is computed, the other is
 * taken as its mirror without the fuse and the pole. So half a joint is one pole of it, and a run
 * counts twice in the resistance of its chain. Heat does not pass the ends of a chain.
 */
final class LineRows {

    /** Insulation of the wire of a rating test: PVC of 0.8 mm. */
    private static final double RATED_WALL_M = 0.8e-3;

    private static final double RATED_WALL_WPMK =
            PartsBook.insulation(Insulation.PVC).conductivityWpmK();

    /** A run shorter than this warms as if it were so long, m. */
    private static final double SHORTEST_M = 1e-3;

    /**
     * Heat through the metal of two lumps side by side goes with their conductance, G = L T / R
     * (Wiedemann and Franz), L = 2.44e-8 W·Ω/K² at 320 K.
     */
    private static final double LORENZ_WOHMPK = 2.44e-8 * 320;

    /** Least resistance between the middles of two lumps in that law, Ω. */
    private static final double LEAST_BETWEEN_OHM = 1e-6;

    private static final int NONE = -1;

    /** What one element takes from the vector. */
    private sealed interface Row {

        record Run(int kind, int length, int conductors) implements Row {}

        /**
         * @param poles in its resistance
         * @param damage row of the factor on its resistance
         * @param rated wire of its rating test; empty for one without a rating
         */
        record Lump(
                int resistance,
                int poles,
                int capacity,
                int damage,
                int growth,
                double ratedA,
                Optional<RatedWire> rated)
                implements Row {}
    }

    private final Lines lines;
    private final List<Row> rows = new ArrayList<>();
    private final FuseRows fuses = new FuseRows();
    private final WireKinds kinds = new WireKinds();
    private final double growthAboveK;

    private LineRows(Rig rig, ParameterRows table) {
        growthAboveK = rig.limits().si(LimitName.JOINT_TEMPERATURE);
        Map<Double, RatedWire> rated = new HashMap<>();
        List<List<double[]>> places = new ArrayList<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            List<double[]> own = new ArrayList<>();
            for (Element element : chain.elements()) {
                own.add(places(element));
                rows.add(row(element, table, rated));
                if (element instanceof Element.Fuse fuse) {
                    fuses.declare(rows.size() - 1, fuse, table);
                }
            }
            places.add(own);
        }
        lines = new Lines(places);
    }

    static LineRows declare(Rig rig, ParameterRows table) {
        return new LineRows(rig, table);
    }

    private static double[] places(Element element) {
        return switch (element) {
            case Element.Run run ->
                    run.length().si() == 0 && run.length().tolerance().isNone()
                            ? Lines.NOTHING
                            : WireKinds.cells(run);
            case Element.Joint _, Element.Fuse _, Element.Pole _ -> Lines.LUMP;
        };
    }

    private Row row(Element element, ParameterRows table, Map<Double, RatedWire> rated) {
        String place = element.declaredAt().toString();
        return switch (element) {
            case Element.Run run ->
                    new Row.Run(
                            kinds.declare(run, table),
                            table.row(
                                    run.declaredAt().child("length"),
                                    "length of the wire at " + place,
                                    run.id(),
                                    run.length(),
                                    Range.NOT_NEGATIVE),
                            run.conductors());
            case Element.Joint joint ->
                    new Row.Lump(
                            table.row(
                                    joint.declaredAt().child("resistance"),
                                    "resistance of the joint at " + place,
                                    joint.id(),
                                    joint.resistance(),
                                    Range.NOT_NEGATIVE),
                            2,
                            table.row(
                                    joint.declaredAt().child("heat capacity"),
                                    "heat capacity of the joint at " + place,
                                    joint.id(),
                                    joint.heatCapacity(),
                                    Range.POSITIVE),
                            table.row(
                                    joint.declaredAt().child("damage"),
                                    "damage of the joint at " + place,
                                    joint.id(),
                                    joint.wear().damage(),
                                    Range.POSITIVE),
                            joint.wear()
                                    .growthPerS()
                                    .map(
                                            growth ->
                                                    table.row(
                                                            joint.declaredAt().child("growth"),
                                                            "growth of the joint at " + place,
                                                            joint.id(),
                                                            growth,
                                                            Range.NOT_NEGATIVE))
                                    .orElse(NONE),
                            amperes(joint.rating()),
                            rated(joint.rating(), rated));
            case Element.Fuse fuse ->
                    new Row.Lump(
                            table.row(
                                    fuse.declaredAt().child("resistance"),
                                    "resistance of the fuse at " + place,
                                    fuse.id(),
                                    fuse.resistance(),
                                    Range.NOT_NEGATIVE),
                            1,
                            table.row(
                                    fuse.declaredAt().child("heat capacity"),
                                    "heat capacity of the fuse at " + place,
                                    fuse.id(),
                                    fuse.heatCapacity(),
                                    Range.POSITIVE),
                            NONE,
                            NONE,
                            fuse.rating().si(),
                            rated(Optional.of(fuse.rating()), rated));
            case Element.Pole pole ->
                    new Row.Lump(
                            table.row(
                                    contactor(pole).child("resistance"),
                                    "resistance of a pole of contactor " + pole.contactor().name(),
                                    pole.id(),
                                    pole.contactor().resistance(),
                                    Range.NOT_NEGATIVE),
                            1,
                            table.row(
                                    contactor(pole).child("heat capacity"),
                                    "heat capacity of a pole of contactor "
                                            + pole.contactor().name(),
                                    pole.id(),
                                    pole.contactor().heatCapacity(),
                                    Range.POSITIVE),
                            NONE,
                            NONE,
                            amperes(pole.contactor().rating()),
                            rated(pole.contactor().rating(), rated));
        };
    }

    private static RigPath contactor(Element.Pole pole) {
        return RigPath.of("wiring", "contactors", pole.contactor().name());
    }

    private static double amperes(Optional<Quantity> rating) {
        return rating.map(Quantity::si).orElse(0.0);
    }

    private static Optional<RatedWire> rated(
            Optional<Quantity> rating, Map<Double, RatedWire> known) {
        return rating.filter(most -> most.si() > 0)
                .map(
                        most ->
                                known.computeIfAbsent(
                                        most.si(),
                                        ampere ->
                                                RatedWire.of(
                                                        ampere, RATED_WALL_M, RATED_WALL_WPMK)));
    }

    Lines lines() {
        return lines;
    }

    /** Number of the fuse of an element; −1 if it is none. Elements count through the rig. */
    int fuseOf(int element) {
        return fuses.of(element);
    }

    HeatNumbers newNumbers(int bodies, int fans) {
        int[] tableOf =
                IntStream.of(lines.cells).map(node -> kind(lines.elementOf[node])).toArray();
        int[] fuseNode =
                Arrays.stream(fuses.elements()).map(element -> lines.nodesOf[element][0]).toArray();
        return new HeatNumbers(lines, bodies, fans, kinds.count(), tableOf, fuseNode);
    }

    private int kind(int element) {
        return switch (rows.get(element)) {
            case Row.Run run -> run.kind;
            case Row.Lump _ -> throw new IllegalStateException("a lump has no table");
        };
    }

    /** Turns the vector into the numbers of all lines. */
    void load(double[] p, double airK, double pascal, HeatNumbers n) {
        n.airK = airK;
        WireHeat[] metre = new WireHeat[kinds.count()];
        for (int kind = 0; kind < metre.length; kind++) {
            metre[kind] = kinds.heat(kind, p);
            kinds.load(kind, metre[kind], p, airK, pascal, n.table[kind]);
        }
        for (int element = 0; element < rows.size(); element++) {
            switch (rows.get(element)) {
                case Row.Run run -> {
                    for (int node : lines.nodesOf[element]) {
                        cell(p, run, metre[run.kind], node, n);
                    }
                }
                case Row.Lump lump -> lump(p, lump, lines.nodesOf[element][0], n);
            }
        }
        for (int node = 0; node < lines.nodes; node++) {
            n.nextWpK[node] = lines.after[node] < 0 ? 0 : between(p, node, lines.after[node]);
        }
        fuses.load(p, n);
    }

    private double metres(double[] p, Row.Run run, int node) {
        return lengthM(p, run) * lines.share[node];
    }

    private static double lengthM(double[] p, Row.Run run) {
        return Math.max(p[run.length], SHORTEST_M);
    }

    private void cell(double[] p, Row.Run run, WireHeat metre, int node, HeatNumbers n) {
        int m = n.nodes;
        double all = metres(p, run, node) * run.conductors;
        AircraftWire wire = kinds.wire(run.kind);
        n.capacityJpK[node] = all * metre.conductorJpmK();
        n.capacityJpK[m + node] = all * metre.shellJpmK(0);
        n.capacityJpK[2 * m + node] = all * metre.shellJpmK(1);
        n.capacityJpK[3 * m + node] = all * metre.shellJpmK(2);
        n.wall1WpK[node] = all * metre.inwardWpmK(0);
        n.wall2WpK[node] = all * metre.inwardWpmK(1);
        n.wall3WpK[node] = all * metre.inwardWpmK(2);
        n.surfaceM[node] = all;
        n.ohm[node] = wire.ohmpm() * p[run.length] * lines.share[node] / run.conductors;
        n.ohmPerK[node] = Conductor.COPPER_PER_K;
        n.ways[node] = 2;
    }

    private void lump(double[] p, Row.Lump lump, int node, HeatNumbers n) {
        double asNew = p[lump.resistance] / lump.poles;
        double capacity = p[lump.capacity];
        double floor = JointHeat.floorWpK(capacity);
        n.capacityJpK[node] = capacity;
        n.ohm[node] = lump.damage < 0 ? asNew : asNew * p[lump.damage];
        n.ways[node] = lump.poles;
        n.growthAboveK[node] = growthAboveK;
        n.growthPerS[node] = lump.growth < 0 ? 0 : p[lump.growth];
        n.lumpAirWpK[node] =
                lump.rated
                        .map(
                                wire ->
                                        JointHeat.airWpK(
                                                lump.ratedA,
                                                asNew,
                                                2 * wire.finWpK(),
                                                wire.riseK(),
                                                floor))
                        .orElse(floor);
    }

    /** Conductance between neighbours in a line, W/K. */
    private double between(double[] p, int one, int other) {
        double k = way(p, one, other) + way(p, other, one);
        if (k > 0) {
            return 1 / k;
        }
        double ohm = (asNewOhm(p, one) + asNewOhm(p, other)) / 2;
        return LORENZ_WOHMPK / Math.max(ohm, LEAST_BETWEEN_OHM);
    }

    /**
     * From the place of a node half way to that of its neighbour in the same run, or to the end of
     * the run, K/W; a lump has nothing in between.
     */
    private double way(double[] p, int node, int neighbour) {
        return switch (rows.get(lines.elementOf[node])) {
            case Row.Run run -> {
                double place = lines.place[node];
                double share =
                        lines.elementOf[node] == lines.elementOf[neighbour]
                                ? Math.abs(lines.place[neighbour] - place) / 2
                                : Math.min(place, 1 - place);
                yield lengthM(p, run)
                        * share
                        / (Conductor.COPPER_WPMK * kinds.wire(run.kind).areaM2() * run.conductors);
            }
            case Row.Lump _ -> 0;
        };
    }

    private double asNewOhm(double[] p, int node) {
        return switch (rows.get(lines.elementOf[node])) {
            case Row.Run _ -> 0;
            case Row.Lump lump -> p[lump.resistance] / lump.poles;
        };
    }
}
