package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.rig.CellType;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.Insulation;
import liftwright.rig.LimitName;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * A whole rig that warms as one set of equations: charge, slow voltages, temperatures of all wires,
 * joints, controllers, motors and cells, and the states of fuses are one vector; at each instant
 * the network is solved with everything as warm as that vector says. Knows rigs of exact values,
 * coefficients, one throttle, no intakes; straight from the records.
 */
final class HeatedRig implements Extrapolation.Model {

    /** How lines are cut. */
    interface Grid {
        double[] pieces(double lengthM, double finM);

        double[] shells(double innerM, double outerM);

        /** Places of the pieces' heat; in their middles unless said otherwise. */
        default double[] middles(double[] pieceM) {
            double[] at = new double[pieceM.length];
            double from = 0;
            for (int k = 0; k < at.length; k++) {
                at[k] = from + pieceM[k] / 2;
                from += pieceM[k];
            }
            return at;
        }

        /** Radii of the shells' heat; the geometric means of their edges unless said otherwise. */
        default double[] radii(double[] edge) {
            double[] node = new double[edge.length - 1];
            for (int k = 0; k < node.length; k++) {
                node[k] = Math.sqrt(edge[k] * edge[k + 1]);
            }
            return node;
        }
    }

    /** 60 shells, 48 pieces, finest at the ends. */
    static final Grid FINE =
            new Grid() {
                @Override
                public double[] pieces(double lengthM, double finM) {
                    return HeatLine.graded(lengthM, 48, 1.15);
                }

                @Override
                public double[] shells(double innerM, double outerM) {
                    return HeatLine.fine(innerM, outerM, 60);
                }
            };

    /**
     * Seven pieces and three shells, as the laws say a run is cut: the heat of the first piece a
     * tenth of a fin length from the end, each gap to the next longer by one ratio up to the
     * middle, edges midway; shells by powers of 2.4. What is left then is the error in time.
     */
    static final Grid SAME =
            new Grid() {
                @Override
                public double[] pieces(double lengthM, double finM) {
                    double x = Math.min(0.1 * finM, lengthM / 28);
                    double low = 1;
                    double high = 1e6;
                    for (int k = 0; k < 200; k++) {
                        double r = Math.sqrt(low * high);
                        if (x * (1 + 2 * (1 + r + r * r)) < lengthM / 2) {
                            low = r;
                        } else {
                            high = r;
                        }
                    }
                    double second = x * (1 + 2);
                    double third = second + 2 * x * low;
                    double[] end = {
                        (x + second) / 2,
                        (third - x) / 2,
                        (lengthM / 2 - second) / 2,
                        lengthM / 2 - third
                    };
                    return new double[] {end[0], end[1], end[2], end[3], end[2], end[1], end[0]};
                }

                @Override
                public double[] middles(double[] pieceM) {
                    double sum = 0;
                    for (double piece : pieceM) {
                        sum += piece;
                    }
                    double third = sum / 2 - pieceM[3];
                    double second = sum / 2 - 2 * pieceM[2];
                    double first = third - 2 * pieceM[1];
                    return new double[] {
                        first, second, third, sum / 2, sum - third, sum - second, sum - first
                    };
                }

                @Override
                public double[] shells(double innerM, double outerM) {
                    double wall = outerM / innerM - 1;
                    return new double[] {
                        1,
                        1 + wall * Math.pow(1 / 3.0, 2.4),
                        1 + wall * Math.pow(2 / 3.0, 2.4),
                        1 + wall
                    };
                }

                @Override
                public double[] radii(double[] edge) {
                    double wall = edge[3] - 1;
                    return new double[] {
                        1 + wall * Math.pow(0.55 / 3, 2.4),
                        1 + wall * Math.pow(1.55 / 3, 2.4),
                        1 + wall * Math.pow(2.55 / 3, 2.4)
                    };
                }
            };

    private static final double VISIBLE_EMISSIVITY = 0.9;

    /** American gauges with Ω per 1000 ft and circular mils, AC 43.13-1B, table 11-9. */
    private static final double[][] WIRES = {
        {24, 28.40, 475},
        {22, 16.20, 755},
        {20, 9.88, 1216},
        {18, 6.23, 1900},
        {16, 4.81, 2426},
        {14, 3.06, 3831},
        {12, 2.02, 5874},
        {10, 1.26, 9354},
        {8, 0.70, 16983},
        {6, 0.44, 26818},
        {4, 0.28, 42615},
        {2, 0.18, 66500},
        {1, 0.15, 81700},
        {0, 0.12, 104500},
        {-1, 0.09, 133000},
        {-2, 0.07, 166500},
        {-3, 0.06, 210900}
    };

    private final Rig rig;
    private final AirTable film;
    private final double airK;
    private final double pascal;
    private final List<HeatLineModel> lines = new ArrayList<>();

    /** Places of each element in its line, and how often its resistance counts. */
    private final List<int[]> firstPlaces = new ArrayList<>();

    /** How many places at each end of an element lie nearer to it than a tenth of a fin length. */
    private final List<int[]> mouths = new ArrayList<>();

    private final List<double[]> ways = new ArrayList<>();
    private final DenseNetwork network;
    private final HotFan[] fans;
    private final int[] fanNode;
    private final double[] fullRadps;
    private final int fanAt;
    private final int packAt;
    private final int fuseAt;
    private final int size;
    private final List<FuseAt> fuses = new ArrayList<>();
    private final List<WornAt> worn = new ArrayList<>();
    private final List<Boolean> growing = new ArrayList<>();
    private final double[] emfV;
    private final double[] packOhm;
    private final double[] chainOhm;
    private double throttle;
    private double liftN = -1;
    private double factoredS;

    private record FuseAt(int chain, Element.Fuse fuse) {}

    /** A joint that grows worse above its limit. */
    private record WornAt(int chain, int place, double perS) {}

    /** Slots of a fan and of a pack. */
    private static final int FAN = 4;

    private static final int PACK = 5;

    HeatedRig(Rig rig, Grid grid, AirTable film) {
        this.rig = rig;
        this.film = film;
        airK = rig.site().temperature().orElseThrow().si();
        pascal = rig.site().pressure().orElseThrow().si();
        double density = pascal / (287.05307 * airK);
        int at = 0;
        List<String> names = new ArrayList<>();
        List<DenseNetwork.Branch> branches = new ArrayList<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            HeatLine line = new HeatLine(airK);
            firstPlaces.add(places(chain, line, grid));
            lines.add(new HeatLineModel(line, at));
            at = lines.getLast().end();
            branches.add(
                    new DenseNetwork.Branch(node(names, chain.from()), node(names, chain.to())));
        }
        fanAt = at;
        fans = new HotFan[rig.fans().size()];
        fullRadps = new double[fans.length];
        fanNode = new int[fans.length];
        for (int f = 0; f < fans.length; f++) {
            Fan fan = rig.fans().get(f);
            fans[f] = new HotFan(fan.type(), density / 1.225);
            fanNode[f] = node(names, fan.id().text());
        }
        packAt = fanAt + FAN * fans.length;
        int packs = rig.packs().size();
        int[] packNode = new int[packs];
        for (int k = 0; k < packs; k++) {
            packNode[k] = node(names, rig.packs().get(k).id().text());
        }
        fuseAt = packAt + PACK * packs;
        for (int c = 0; c < branches.size(); c++) {
            List<Element> elements = rig.wiring().chains().get(c).elements();
            for (int k = 0; k < elements.size(); k++) {
                if (elements.get(k) instanceof Element.Fuse fuse) {
                    fuses.add(new FuseAt(c, fuse));
                }
                if (elements.get(k) instanceof Element.Joint joint
                        && joint.wear().growthPerS().isPresent()) {
                    double rate = joint.wear().growthPerS().get().si();
                    worn.add(new WornAt(c, firstPlaces.get(c)[k], rate));
                    growing.add(false);
                }
            }
        }
        size = fuseAt + fuses.size() + worn.size();
        network =
                new DenseNetwork(
                        names.size(),
                        branches.toArray(new DenseNetwork.Branch[0]),
                        packNode,
                        fanNode);
        emfV = new double[packs];
        packOhm = new double[packs];
        chainOhm = new double[branches.size()];
        fullSpeeds();
    }

    private static int node(List<String> names, String name) {
        if (!names.contains(name)) {
            names.add(name);
        }
        return names.indexOf(name);
    }

    private int[] places(Wiring.Chain chain, HeatLine line, Grid grid) {
        int[] first = new int[chain.elements().size() + 1];
        int[] mouth = new int[chain.elements().size()];
        mouths.add(mouth);
        List<Double> way = new ArrayList<>();
        double ohmBefore = -1;
        for (int k = 0; k < chain.elements().size(); k++) {
            Element element = chain.elements().get(k);
            first[k] = line.places().size();
            double own =
                    switch (element) {
                        case Element.Run run -> {
                            mouth[k] = run(run, line, grid);
                            yield -1;
                        }
                        case Element.Joint joint -> {
                            double one = joint.resistance().si() / 2;
                            between(line, ohmBefore, one);
                            line.lump(
                                    joint.heatCapacity().si(),
                                    one * joint.wear().damage().si(),
                                    toAir(
                                            joint.rating().map(q -> q.si()).orElse(0.0),
                                            one,
                                            joint.heatCapacity().si()));
                            yield one;
                        }
                        case Element.Fuse fuse -> {
                            double one = fuse.resistance().si();
                            between(line, ohmBefore, one);
                            double heat = fuse.heatCapacity().si();
                            line.lump(heat, one, toAir(fuse.rating().si(), one, heat));
                            yield one;
                        }
                        case Element.Pole pole -> {
                            double one = pole.contactor().resistance().si();
                            between(line, ohmBefore, one);
                            double rated = pole.contactor().rating().map(q -> q.si()).orElse(0.0);
                            double heat = pole.contactor().heatCapacity().si();
                            line.lump(heat, one, toAir(rated, one, heat));
                            yield one;
                        }
                    };
            double often =
                    switch (element) {
                        case Element.Run _, Element.Joint _ -> 2;
                        case Element.Fuse _, Element.Pole _ -> 1;
                    };
            while (way.size() < line.places().size()) {
                way.add(often);
            }
            ohmBefore = own;
        }
        first[chain.elements().size()] = line.places().size();
        ways.add(way.stream().mapToDouble(Double::doubleValue).toArray());
        return first;
    }

    /** Metal to metal by Wiedemann and Franz: L T / R at 320 K between two lumps. */
    private static void between(HeatLine line, double before, double own) {
        if (before >= 0) {
            line.metal(Math.max((before + own) / 2, 1e-6) / (2.44e-8 * 320));
        }
    }

    private int run(Element.Run run, HeatLine line, Grid grid) {
        double[] wire = wire(run.gauge());
        double area = wire[2] * Math.PI / 4 * 25.4e-6 * 25.4e-6;
        double inner = Math.sqrt(area / (Math.PI * 0.76));
        double outer = inner + run.covering().wall().si();
        double[] wall = wall(run.covering().material());
        var surface =
                new SurfaceReferee(
                        2 * outer,
                        airK,
                        pascal,
                        run.covering().air().si(),
                        VISIBLE_EMISSIVITY,
                        film);
        var usual =
                new SurfaceReferee(
                        2 * outer,
                        293.15,
                        101_325,
                        run.covering().air().si(),
                        VISIBLE_EMISSIVITY,
                        film);
        double free = 1 / Math.sqrt(run.covering().bundle());
        double out = free * usual.wattPerM(333.15) / 40;
        double across = 1 / (1 / out + Math.log(outer / inner) / (2 * Math.PI * wall[0]));
        double fin = Math.sqrt(HeatLine.COPPER_WPMK * area / across);
        double[] pieces = grid.pieces(run.length().si(), fin);
        double[] edges = grid.shells(inner, outer);
        line.wire(
                new HeatLine.Wire(
                        area * run.conductors(),
                        wire[1] / 304.8 / run.conductors(),
                        inner,
                        outer,
                        run.conductors(),
                        free,
                        wall[0],
                        wall[1],
                        run.length().si(),
                        surface::wattPerM),
                pieces,
                grid.middles(pieces),
                edges,
                grid.radii(edges));
        double least = Math.min(0.1 * fin, run.length().si() / 28);
        return (int)
                Arrays.stream(grid.middles(pieces)).filter(x -> x < least * (1 - 1e-6)).count();
    }

    private static double[] wire(int gauge) {
        return Arrays.stream(WIRES).filter(row -> row[0] == gauge).findFirst().orElseThrow();
    }

    /** Conductivity and heat capacity of insulation, as printed in the parts book. */
    private static double[] wall(Insulation material) {
        return switch (material) {
            case PVC -> new double[] {0.20, 1.7e6};
            case XLPE -> new double[] {0.29, 2.4e6};
            case ETFE -> new double[] {0.24, 3.3e6};
            case SILICONE -> new double[] {0.25, 1.55e6};
            case FEP -> new double[] {0.20, 2.5e6};
            case PTFE -> new double[] {0.25, 2.2e6};
        };
    }

    /**
     * A joint in its rating test (EIA-364-70): at 25 °C the rated current warms it by 30 K, its two
     * rated wires being the thinnest that stay below 30 K by themselves; never less than a sphere
     * of its volume gives off at 10 W/(m² K).
     */
    double toAir(double ratedA, double ohm, double capacity) {
        double volume = capacity / HeatLine.COPPER_JPM3K;
        double radius = Math.cbrt(3 * volume / (4 * Math.PI));
        double floor = 10 * 4 * Math.PI * radius * radius;
        if (ratedA == 0) {
            return floor;
        }
        for (int side = 1; ; side++) {
            for (int k = side == 1 ? 0 : WIRES.length - 1; k < WIRES.length; k++) {
                double area = WIRES[k][2] * Math.PI / 4 * 25.4e-6 * 25.4e-6;
                double inner = Math.sqrt(area / (Math.PI * 0.76));
                double outer = inner + 0.8e-3;
                var surface =
                        new SurfaceReferee(2 * outer, 298.15, 101_325, 0, VISIBLE_EMISSIVITY, film);
                double wallKm = Math.log(outer / inner) / (2 * Math.PI * 0.20);
                double rise = rise(ratedA / side, WIRES[k][1] / 304.8, surface, wallKm);
                if (rise <= 30) {
                    // What a wire that heats itself loses more for each kelvin, half way from its
                    // own temperature to the joint's.
                    double middle = 298.15 + (30 + rise) / 2;
                    double own = ratedA / side;
                    double across =
                            given(middle + 0.5, surface, wallKm)
                                    - given(middle - 0.5, surface, wallKm)
                                    - own * own * WIRES[k][1] / 304.8 * 0.00393;
                    double fins = 2 * side * Math.sqrt(HeatLine.COPPER_WPMK * area * across);
                    double whole = ratedA * ratedA * ohm / 30;
                    return Math.max(floor, whole - fins * (1 - rise / 30));
                }
            }
        }
    }

    static double copperRadiusM(int gauge) {
        return Math.sqrt(wire(gauge)[2] * 25.4e-6 * 25.4e-6 / 4 / 0.76);
    }

    /** The current that warms a long wire in the air of these tests to a temperature, A. */
    static double steadyA(
            int gauge,
            Insulation material,
            double wallM,
            int bundle,
            double airMps,
            double copperK) {
        double[] wire = wire(gauge);
        double inner = copperRadiusM(gauge);
        double outer = inner + wallM;
        var surface =
                new SurfaceReferee(
                        2 * outer,
                        WarmSketch.AIR_K,
                        WarmSketch.PASCAL,
                        airMps,
                        VISIBLE_EMISSIVITY,
                        AirTable.PRINTED);
        double wallKm = Math.log(outer / inner) / (2 * Math.PI * wall(material)[0]);
        double free = 1 / Math.sqrt(bundle);
        double low = WarmSketch.AIR_K;
        double high = copperK;
        for (int k = 0; k < 60; k++) {
            double skin = (low + high) / 2;
            if (skin + free * surface.wattPerM(skin) * wallKm < copperK) {
                low = skin;
            } else {
                high = skin;
            }
        }
        double warm = wire[1] / 304.8 * (1 + 0.00393 * (copperK - 293.15));
        return Math.sqrt(free * surface.wattPerM(low) / warm);
    }

    /** Heat through wall and surface from a copper temperature, W/m. */
    private static double given(double copperK, SurfaceReferee surface, double wallKm) {
        double low = 298.15;
        double high = copperK;
        for (int k = 0; k < 60; k++) {
            double skin = (low + high) / 2;
            if (skin + surface.wattPerM(skin) * wallKm < copperK) {
                low = skin;
            } else {
                high = skin;
            }
        }
        return surface.wattPerM(low);
    }

    /** Steady rise of a long wire in its test; 100 where it is beyond use. */
    private static double rise(
            double ampere, double ohmPerM, SurfaceReferee surface, double wallKm) {
        double low = 0;
        double high = 100;
        for (int k = 0; k < 60; k++) {
            double skin = (low + high) / 2;
            double given = surface.wattPerM(298.15 + skin);
            double copper = 298.15 + skin + given * wallKm;
            double made = ampere * ampere * ohmPerM * (1 + 0.00393 * (copper - 293.15));
            if (made > given) {
                low = skin;
            } else {
                high = skin;
            }
        }
        return high > 99 ? 100 : high + surface.wattPerM(298.15 + high) * wallKm;
    }

    // The state.

    double[] start() {
        double[] y = new double[size];
        Arrays.fill(y, 0, packAt, airK);
        Arrays.fill(y, fuseAt + fuses.size(), size, 1);
        for (int k = 0; k < rig.packs().size(); k++) {
            double kelvin = rig.packs().get(k).temperature().map(q -> q.si()).orElse(airK);
            y[packAt + PACK * k] = kelvin;
            y[packAt + PACK * k + 1] = kelvin;
        }
        return y;
    }

    /** All fans at one duty from now on. */
    void throttle(double share) {
        throttle = share;
        liftN = -1;
    }

    /** All fans at the duty that gives a sum of thrusts from now on. */
    void lift(double newton) {
        liftN = newton;
    }

    /**
     * Speeds to which the cooling streams refer: full duty on full packs, nothing sagging, cold.
     */
    private void fullSpeeds() {
        double volt = 0;
        for (Pack pack : rig.packs()) {
            volt =
                    Math.max(
                            volt,
                            pack.series()
                                    * pack.cell().openCircuit().orElseThrow().volt().getLast());
        }
        for (int f = 0; f < fans.length; f++) {
            fans[f].warm(298.15, 293.15, 293.15);
            fans[f].operate(volt, 1);
            fullRadps[f] = fans[f].speed;
        }
    }

    /** Takes a chain out. */
    void open(int chain) {
        network.open[chain] = true;
    }

    int fuses() {
        return fuses.size();
    }

    int chainOfFuse(int fuse) {
        return fuses.get(fuse).chain;
    }

    boolean isOpen(int chain) {
        return network.open[chain];
    }

    int fuseComponent(int fuse) {
        return fuseAt + fuse;
    }

    /**
     * Hottest place of an element; the mouth of a wire beside a lump counts for it. Of a wire the
     * places from a tenth of a fin length on: nearer than that it is as warm as its joint, whose
     * own limit speaks.
     */
    double elementK(double[] y, int chain, int element) {
        int from = firstPlaces.get(chain)[element];
        int to = firstPlaces.get(chain)[element + 1];
        List<Element> of = rig.wiring().chains().get(chain).elements();
        if (!(of.get(element) instanceof Element.Run)) {
            from -= element > 0 && of.get(element - 1) instanceof Element.Run ? 1 : 0;
            to += element + 1 < of.size() && of.get(element + 1) instanceof Element.Run ? 1 : 0;
        } else {
            from += mouths.get(chain)[element];
            to -= mouths.get(chain)[element];
        }
        double most = 0;
        for (int k = from; k < to; k++) {
            most = Math.max(most, y[lines.get(chain).of(k)]);
        }
        return most;
    }

    double junctionK(double[] y, int fan) {
        return y[fanAt + FAN * fan];
    }

    double sinkK(double[] y, int fan) {
        return y[fanAt + FAN * fan + 1];
    }

    double windingK(double[] y, int fan) {
        return y[fanAt + FAN * fan + 2];
    }

    double caseK(double[] y, int fan) {
        return y[fanAt + FAN * fan + 3];
    }

    double coreK(double[] y, int pack) {
        return y[packAt + PACK * pack];
    }

    double passedAs(double[] y, int pack) {
        return y[packAt + PACK * pack + 2];
    }

    /**
     * What the cells have given: rest voltage over the charge that passed (by its mean in 2000
     * parts), less C v²/2 of the slow voltages, J.
     */
    double givenJ(double[] y) {
        double sum = 0;
        for (int k = 0; k < emfV.length; k++) {
            Pack pack = rig.packs().get(k);
            double passed = passedAs(y, k);
            int parts = 2000;
            double volts = 0;
            for (int n = 0; n < parts; n++) {
                volts += open(pack, passed * (n + 0.5) / parts) / parts;
            }
            double kept = 0;
            for (int pair = 0; pair < pack.cell().settling().size(); pair++) {
                CellType.Settling settling = pack.cell().settling().get(pair);
                double slow = y[packAt + PACK * k + 3 + pair];
                kept += settling.time().si() / settling.resistance().si() * slow * slow / 2;
            }
            sum += pack.series() * (volts * passed - pack.parallel() * kept);
        }
        return sum;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public double allowed(int component) {
        if (component < packAt) {
            return 2e-3;
        }
        if (component >= fuseAt) {
            return 1e-5;
        }
        int pack = (component - packAt) / PACK;
        return switch ((component - packAt) % PACK) {
            case 0, 1 -> 2e-3;
            case 2 -> 1e-6 * rig.packs().get(pack).cell().capacity().orElseThrow().si();
            default -> 1e-5;
        };
    }

    // At an instant.

    private void operate(double[] y) {
        for (int k = 0; k < worn.size(); k++) {
            WornAt joint = worn.get(k);
            lines.get(joint.chain).worn(joint.place, y[fuseAt + fuses.size() + k]);
        }
        for (int c = 0; c < chainOhm.length; c++) {
            double sum = 0;
            for (int k = 0; k < ways.get(c).length; k++) {
                sum += ways.get(c)[k] * lines.get(c).ohm(y, k);
            }
            chainOhm[c] = sum;
        }
        for (int k = 0; k < emfV.length; k++) {
            Pack pack = rig.packs().get(k);
            int at = packAt + PACK * k;
            emfV[k] = pack.series() * (open(pack, y[at + 2]) - y[at + 3] - y[at + 4]);
            packOhm[k] =
                    pack.series() * cellOhm(pack) * warm(pack, y[at]) / pack.parallel()
                            + pack.interconnect().si();
        }
        for (int f = 0; f < fans.length; f++) {
            fans[f].warm(junctionK(y, f), windingK(y, f), caseK(y, f));
        }
        if (liftN < 0) {
            solve(throttle);
            return;
        }
        double low = 0;
        double high = 1;
        double near = Math.clamp(throttle, 0.05, 0.999);
        // From where it was last: a bracket, then halves of it made small by the secant.
        double at = near;
        double miss = missing(at);
        double step = 1e-4;
        while (true) {
            double next = Math.clamp(miss > 0 ? at + step : at - step, 1e-3, 1);
            double nextMiss = missing(next);
            if (Math.signum(nextMiss) != Math.signum(miss) || next == 1) {
                low = Math.min(at, next);
                high = Math.max(at, next);
                break;
            }
            at = next;
            miss = nextMiss;
            step *= 4;
        }
        double lowMiss = missing(low);
        double highMiss = missing(high);
        if (highMiss > 0) {
            throw new AssertionError("the reference cannot lift");
        }
        for (int k = 0; k < 100 && high - low > 1e-11; k++) {
            double secant = low + (high - low) * lowMiss / (lowMiss - highMiss);
            double middle = k % 3 == 2 ? (low + high) / 2 : secant;
            double m = missing(middle);
            if (m > 0) {
                low = middle;
                lowMiss = m;
            } else {
                high = middle;
                highMiss = m;
            }
            if (Math.abs(m) < 1e-9 * liftN) {
                break;
            }
        }
        throttle = (low + high) / 2;
    }

    private double missing(double share) {
        throttle = share;
        solve(share);
        double sum = 0;
        for (HotFan fan : fans) {
            sum += fan.thrust * fan.speed * fan.speed;
        }
        return liftN - sum;
    }

    private void solve(double share) {
        network.solve(emfV, packOhm, chainOhm, (fan, volt) -> fans[fan].busA(volt, share));
        boolean[] live = network.live();
        for (int f = 0; f < fans.length; f++) {
            if (live[fanNode[f]]) {
                fans[f].operate(network.volt[fanNode[f]], share);
            } else {
                fans[f].dead();
            }
        }
    }

    private static double cellOhm(Pack pack) {
        return pack.cell().resistance().orElseThrow().si();
    }

    private static double warm(Pack pack, double kelvin) {
        return Math.exp(pack.cell().temperatureCoefficient().si() * (1 / kelvin - 1 / 298.15));
    }

    private static double open(Pack pack, double passedAs) {
        double left =
                pack.charge().si()
                        - passedAs / (pack.parallel() * pack.cell().capacity().orElseThrow().si());
        List<Double> share = pack.cell().openCircuit().orElseThrow().charge();
        List<Double> volt = pack.cell().openCircuit().orElseThrow().volt();
        if (left <= share.getFirst()) {
            return volt.getFirst();
        }
        int k = 1;
        while (k < share.size() - 1 && share.get(k) < left) {
            k++;
        }
        return volt.get(k - 1)
                + (volt.get(k) - volt.get(k - 1))
                        * (left - share.get(k - 1))
                        / (share.get(k) - share.get(k - 1));
    }

    /** Speeds at an instant, rad/s. */
    double speed(double[] y, int fan) {
        operate(y);
        return fans[fan].speed;
    }

    @Override
    public void slope(double[] y, double[] f) {
        operate(y);
        Arrays.fill(f, 0);
        for (int c = 0; c < lines.size(); c++) {
            lines.get(c).ampere(network.branchA[c]);
            lines.get(c).slope(y, f);
        }
        for (int k = 0; k < fans.length; k++) {
            HotFan fan = fans[k];
            int at = fanAt + FAN * k;
            var cooling = rig.fans().get(k).type().controller().cooling();
            var heating = rig.fans().get(k).type().motor().heating();
            double stream = stream(k);
            double inner = cooling.junctionToSink().si() * (y[at] - y[at + 1]);
            double junction = cooling.junctionHeatCapacity().si();
            f[at] = (fan.controllerW(network.volt[fanNode[k]]) - inner) / junction;
            f[at + 1] =
                    (inner - cooling.toAir().si() * stream * (y[at + 1] - airK))
                            / (cooling.heatCapacity().si() - junction);
            double through = heating.windingToCase().si() * (y[at + 2] - y[at + 3]);
            f[at + 2] = (fan.windingW() - through) / heating.windingHeatCapacity().si();
            f[at + 3] =
                    (fan.ironW() + through - heating.caseToAir().si() * stream * (y[at + 3] - airK))
                            / heating.caseHeatCapacity().si();
        }
        for (int k = 0; k < emfV.length; k++) {
            pack(k, y, f);
        }
        for (int k = 0; k < fuses.size(); k++) {
            double tau = fuses.get(k).fuse.timeConstant().si();
            double gain = gain(fuses.get(k).fuse, network.branchA[fuses.get(k).chain]);
            f[fuseAt + k] = (gain - y[fuseAt + k]) / tau;
        }
        for (int k = 0; k < worn.size(); k++) {
            f[fuseAt + fuses.size() + k] = growing.get(k) ? worn.get(k).perS : 0;
        }
    }

    int growingJoints() {
        return worn.size();
    }

    /** How far such a joint is above its limit, K. */
    double aboveK(double[] y, int joint) {
        WornAt of = worn.get(joint);
        double limitK = rig.limits().si(LimitName.JOINT_TEMPERATURE);
        return y[lines.get(of.chain).of(of.place)] - limitK;
    }

    boolean grows(int joint) {
        return growing.get(joint);
    }

    /** Whether it grows from now on. */
    void grows(int joint, boolean does) {
        growing.set(joint, does);
    }

    /** (Ω/Ω_full)^0.7, at least 0.04. */
    private double stream(int fan) {
        return Math.max(0.04, Math.pow(fans[fan].speed / fullRadps[fan], 0.7));
    }

    private void pack(int k, double[] y, double[] f) {
        Pack pack = rig.packs().get(k);
        CellType cell = pack.cell();
        int at = packAt + PACK * k;
        double current = network.packA[k];
        double one = current / pack.parallel();
        double warm = warm(pack, y[at]);
        double heat = one * one * cellOhm(pack) * warm;
        for (int pair = 0; pair < cell.settling().size(); pair++) {
            double slow = y[at + 3 + pair];
            double ohm = cell.settling().get(pair).resistance().si() * warm;
            // R C grows with R: the capacitance is what stays.
            double tau = cell.settling().get(pair).time().si() * warm;
            heat += slow * slow / ohm;
            f[at + 3 + pair] = (ohm * one - slow) / tau;
        }
        CellType.Thermal thermal = cell.thermal();
        double links =
                current * current * pack.interconnect().si() / (pack.series() * pack.parallel());
        double through = thermal.coreToSurface().si() * (y[at] - y[at + 1]);
        f[at] = (heat - through) / (0.9 * thermal.heatCapacity().si());
        f[at + 1] =
                (links + through - thermal.toAir().si() * (y[at + 1] - airK))
                        / (0.1 * thermal.heatCapacity().si());
        f[at + 2] = current;
    }

    /**
     * 1 / (1 − exp(−t/τ)) with t by the published points in logarithms; beyond the last I² t stays;
     * below the first the square of I, without a jump, and never open at the rating.
     */
    static double gain(Element.Fuse fuse, double ampere) {
        var points = fuse.points();
        double doubt = fuse.timeDoubt().si();
        double tau = fuse.timeConstant().si();
        double current = Math.abs(ampere);
        double first = points.getFirst().current().si();
        if (current < first) {
            // The square of I, unless that opened it at its rating: it holds that for ever.
            double there = points.getFirst().time().si() * doubt;
            double share = 1 - Math.exp(-there / tau);
            double holds = fuse.rating().si();
            if (holds <= first * Math.sqrt(share) || holds >= first) {
                return current * current / (first * first) / share;
            }
            return current <= holds
                    ? current * current / (holds * holds)
                    : Math.pow(share, -Math.log(current / holds) / Math.log(first / holds));
        }
        double last = points.getLast().current().si();
        double time = points.getLast().time().si() * Math.pow(last / current, 2);
        for (int k = 1; k < points.size(); k++) {
            double low = points.get(k - 1).current().si();
            double high = points.get(k).current().si();
            if (current >= low && current <= high) {
                double share = Math.log(current / low) / Math.log(high / low);
                time =
                        Math.pow(points.get(k - 1).time().si(), 1 - share)
                                * Math.pow(points.get(k).time().si(), share);
            }
        }
        return 1 / (1 - Math.exp(-time * doubt / tau));
    }

    // The linear system: lines and bodies; charge, slow voltages and fuses are slow enough.

    private final List<double[]> bodies = new ArrayList<>();

    @Override
    public void factor(double[] y, double h) {
        operate(y);
        factoredS = h;
        for (int c = 0; c < lines.size(); c++) {
            lines.get(c).ampere(network.branchA[c]);
            lines.get(c).factor(y, h);
        }
        bodies.clear();
        for (int k = 0; k < fans.length; k++) {
            var cooling = rig.fans().get(k).type().controller().cooling();
            var heating = rig.fans().get(k).type().motor().heating();
            double stream = stream(k);
            double junction = cooling.junctionHeatCapacity().si();
            body(
                    fanAt + FAN * k,
                    junction,
                    cooling.heatCapacity().si() - junction,
                    cooling.junctionToSink().si(),
                    cooling.toAir().si() * stream);
            body(
                    fanAt + FAN * k + 2,
                    heating.windingHeatCapacity().si(),
                    heating.caseHeatCapacity().si(),
                    heating.windingToCase().si(),
                    heating.caseToAir().si() * stream);
        }
        for (int k = 0; k < emfV.length; k++) {
            CellType.Thermal thermal = rig.packs().get(k).cell().thermal();
            body(
                    packAt + PACK * k,
                    0.9 * thermal.heatCapacity().si(),
                    0.1 * thermal.heatCapacity().si(),
                    thermal.coreToSurface().si(),
                    thermal.toAir().si());
        }
    }

    private void body(int at, double inner, double outer, double between, double air) {
        bodies.add(
                new double[] {
                    at,
                    1 + factoredS * between / inner,
                    -factoredS * between / inner,
                    -factoredS * between / outer,
                    1 + factoredS * (between + air) / outer
                });
    }

    @Override
    public void solve(double[] f) {
        for (HeatLineModel line : lines) {
            line.solve(f);
        }
        for (double[] m : bodies) {
            int at = (int) m[0];
            double det = m[1] * m[4] - m[2] * m[3];
            double in = (m[4] * f[at] - m[2] * f[at + 1]) / det;
            double out = (m[1] * f[at + 1] - m[3] * f[at]) / det;
            f[at] = in;
            f[at + 1] = out;
        }
    }
}
