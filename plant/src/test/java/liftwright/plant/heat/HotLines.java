package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/** All chains of a rig as lines that warm, one behind the other in the state. */
final class HotLines {

    private final Rig rig;
    private final AirTable film;
    private final double airK;
    private final double pascal;
    private final List<HeatLineModel> models = new ArrayList<>();

    /** Places of each element in its line. */
    private final List<int[]> firstPlaces = new ArrayList<>();

    /** How many places at each end of an element lie nearer to it than a tenth of a fin length. */
    private final List<int[]> mouths = new ArrayList<>();

    /** How often the resistance of each place counts. */
    private final List<double[]> ways = new ArrayList<>();

    HotLines(Rig rig, RefereeGrid grid, AirTable film, double airK, double pascal) {
        this.rig = rig;
        this.film = film;
        this.airK = airK;
        this.pascal = pascal;
        int at = 0;
        for (Wiring.Chain chain : rig.wiring().chains()) {
            HeatLine line = new HeatLine(airK);
            firstPlaces.add(places(chain, line, grid));
            models.add(new HeatLineModel(line, at));
            at = models.getLast().end();
        }
    }

    private int[] places(Wiring.Chain chain, HeatLine line, RefereeGrid grid) {
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
                                    WireReferee.toAir(
                                            joint.rating().map(q -> q.si()).orElse(0.0),
                                            one,
                                            joint.heatCapacity().si(),
                                            film));
                            yield one;
                        }
                        case Element.Fuse fuse -> {
                            double one = fuse.resistance().si();
                            between(line, ohmBefore, one);
                            double heat = fuse.heatCapacity().si();
                            line.lump(
                                    heat,
                                    one,
                                    WireReferee.toAir(fuse.rating().si(), one, heat, film));
                            yield one;
                        }
                        case Element.Pole pole -> {
                            double one = pole.contactor().resistance().si();
                            between(line, ohmBefore, one);
                            double rated = pole.contactor().rating().map(q -> q.si()).orElse(0.0);
                            double heat = pole.contactor().heatCapacity().si();
                            line.lump(heat, one, WireReferee.toAir(rated, one, heat, film));
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

    private int run(Element.Run run, HeatLine line, RefereeGrid grid) {
        double[] wire = WireReferee.wire(run.gauge());
        double area = wire[2] * Math.PI / 4 * 25.4e-6 * 25.4e-6;
        double inner = Math.sqrt(area / (Math.PI * 0.76));
        double outer = inner + run.covering().wall().si();
        double[] wall = WireReferee.wall(run.covering().material());
        var surface =
                new SurfaceReferee(
                        2 * outer,
                        airK,
                        pascal,
                        run.covering().air().si(),
                        WireReferee.VISIBLE_EMISSIVITY,
                        film);
        var usual =
                new SurfaceReferee(
                        2 * outer,
                        293.15,
                        101_325,
                        run.covering().air().si(),
                        WireReferee.VISIBLE_EMISSIVITY,
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

    /** First component behind all lines. */
    int end() {
        return models.getLast().end();
    }

    HeatLineModel of(int chain) {
        return models.get(chain);
    }

    /** First place of an element in its line. */
    int place(int chain, int element) {
        return firstPlaces.get(chain)[element];
    }

    /** Resistance of a chain as warm as it is, out and back, Ω. */
    double ohm(double[] y, int chain) {
        double sum = 0;
        for (int k = 0; k < ways.get(chain).length; k++) {
            sum += ways.get(chain)[k] * models.get(chain).ohm(y, k);
        }
        return sum;
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
            most = Math.max(most, y[models.get(chain).of(k)]);
        }
        return most;
    }

    void slope(double[] branchA, double[] y, double[] f) {
        for (int c = 0; c < models.size(); c++) {
            models.get(c).ampere(branchA[c]);
            models.get(c).slope(y, f);
        }
    }

    void factor(double[] branchA, double[] y, double h) {
        for (int c = 0; c < models.size(); c++) {
            models.get(c).ampere(branchA[c]);
            models.get(c).factor(y, h);
        }
    }

    void solve(double[] f) {
        for (HeatLineModel line : models) {
            line.solve(f);
        }
    }
}
