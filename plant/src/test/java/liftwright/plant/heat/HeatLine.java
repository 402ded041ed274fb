package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A conductor with its joints as the heat equation has it: the copper along its length, the
 * insulation of every piece of it in many radial shells, joints as lumps between. No heat leaves
 * its two ends. The current is given and the same all along.
 *
 * <p>Heat along the insulation is left out: it conducts 2000 times less than copper.
 */
final class HeatLine {

    static final double COPPER_JPM3K = 3.45e6;
    static final double COPPER_WPMK = 390;
    static final double PER_K = 0.00393;

    private final List<Place> places = new ArrayList<>();

    /** Half of a place still to be passed before the next one, K/W. */
    private double openKpW = Double.NaN;

    private final double airK;

    /** A place along the line: a piece of copper with its shells, or a lump without. */
    static final class Place {
        final double capacity;
        final double ohm20;
        final double perK;
        final double[] shellCapacity;

        /** From the middle of the one before (the copper first) to the middle of a shell, W/K. */
        final double[] shellWpK;

        /** From the middle of the outermost (of the copper, of a lump) to the surface, W/K. */
        final double toSurfaceWpK;

        /** What leaves the surface at its temperature, W. */
        final DoubleUnaryOperator surfaceW;

        /** To the next place, W/K. */
        double nextWpK;

        Place(
                double capacity,
                double ohm20,
                double perK,
                double[] shellCapacity,
                double[] shellWpK,
                double toSurfaceWpK,
                DoubleUnaryOperator surfaceW) {
            this.capacity = capacity;
            this.ohm20 = ohm20;
            this.perK = perK;
            this.shellCapacity = shellCapacity;
            this.shellWpK = shellWpK;
            this.toSurfaceWpK = toSurfaceWpK;
            this.surfaceW = surfaceW;
        }
    }

    /**
     * A wire.
     *
     * @param areaM2 section of its copper (of all that lie side by side)
     * @param ohmPerM at 20 °C, of all together
     * @param innerM radius of the copper
     * @param outerM radius over the insulation
     * @param wires how many lie side by side, each with its own insulation
     * @param free share of their surface that is free to the air
     * @param insulationWpmK conductivity
     * @param insulationJpm3K heat capacity
     * @param lengthM of it
     * @param surfaceWpm what leaves a metre of one free wire at a surface temperature
     */
    record Wire(
            double areaM2,
            double ohmPerM,
            double innerM,
            double outerM,
            int wires,
            double free,
            double insulationWpmK,
            double insulationJpm3K,
            double lengthM,
            DoubleUnaryOperator surfaceWpm) {}

    HeatLine(double airK) {
        this.airK = airK;
    }

    /** What heat meets between the lump before and the lump that follows, K/W. */
    void metal(double kelvinPerW) {
        openKpW = kelvinPerW;
    }

    /** A joint, a fuse, a pole: one temperature, its own way to the air. */
    int lump(double capacity, double ohm, double toAirWpK) {
        join(0);
        places.add(
                new Place(
                        capacity,
                        ohm,
                        0,
                        new double[0],
                        new double[0],
                        Double.POSITIVE_INFINITY,
                        kelvin -> toAirWpK * (kelvin - airK)));
        openKpW = 0;
        return places.size() - 1;
    }

    /**
     * A wire cut into pieces.
     *
     * @param pieceM lengths of the pieces; the heat of one sits in its middle
     * @param edge radii between the shells over the inner one, from 1 outwards; the heat of a shell
     *     sits at the geometric mean of its edges
     * @return number of its first piece
     */
    int wire(Wire wire, double[] pieceM, double[] edge) {
        double[] node = new double[edge.length - 1];
        for (int k = 0; k < node.length; k++) {
            node[k] = Math.sqrt(edge[k] * edge[k + 1]);
        }
        double[] middle = new double[pieceM.length];
        double from = 0;
        for (int k = 0; k < pieceM.length; k++) {
            middle[k] = from + pieceM[k] / 2;
            from += pieceM[k];
        }
        return wire(wire, pieceM, middle, edge, node);
    }

    /**
     * The same with the heat of pieces and shells at places of one's own.
     *
     * @param atM place of each piece's heat from the beginning of the wire
     * @param node radius of each shell's heat over the inner one
     */
    int wire(Wire wire, double[] pieceM, double[] atM, double[] edge, double[] node) {
        int shells = node.length;
        int first = places.size();
        double perM = 1 / (COPPER_WPMK * wire.areaM2);
        for (int piece = 0; piece < pieceM.length; piece++) {
            double length = pieceM[piece];
            double[] capacity = new double[shells];
            double[] conductance = new double[shells];
            double all = length * wire.wires;
            double perLn = 2 * Math.PI * wire.insulationWpmK * all;
            double from = 1;
            for (int k = 0; k < shells; k++) {
                double in = wire.innerM * edge[k];
                double out = wire.innerM * edge[k + 1];
                capacity[k] = wire.insulationJpm3K * Math.PI * (out * out - in * in) * all;
                conductance[k] = perLn / Math.log(node[k] / from);
                from = node[k];
            }
            double surface = all * wire.free;
            join(perM * (piece == 0 ? atM[0] : (atM[piece] - atM[piece - 1]) / 2));
            places.add(
                    new Place(
                            COPPER_JPM3K * wire.areaM2 * length,
                            wire.ohmPerM * length,
                            PER_K,
                            capacity,
                            conductance,
                            perLn / Math.log(edge[shells] / from),
                            kelvin -> surface * wire.surfaceWpm.applyAsDouble(kelvin)));
            openKpW =
                    perM
                            * (piece + 1 == pieceM.length
                                    ? wire.lengthM - atM[piece]
                                    : (atM[piece + 1] - atM[piece]) / 2);
        }
        return first;
    }

    /** The same in shells of one ratio of radii. */
    int wire(Wire wire, double[] pieceM, int shells) {
        return wire(wire, pieceM, fine(wire.innerM, wire.outerM, shells));
    }

    /** Edges of shells of one ratio of radii. */
    static double[] fine(double innerM, double outerM, int shells) {
        double[] edge = new double[shells + 1];
        for (int k = 0; k <= shells; k++) {
            edge[k] = Math.pow(outerM / innerM, (double) k / shells);
        }
        return edge;
    }

    private void join(double halfKpW) {
        if (!places.isEmpty()) {
            double through = openKpW + halfKpW;
            if (through == 0) {
                throw new IllegalArgumentException("say what lies between two lumps");
            }
            places.getLast().nextWpK = 1 / through;
        }
    }

    /** Pieces of a length that grow from both ends to the middle by a ratio. */
    static double[] graded(double lengthM, int pieces, double ratio) {
        double[] piece = new double[pieces];
        double sum = 0;
        for (int k = 0; k < pieces; k++) {
            piece[k] = Math.pow(ratio, Math.min(k, pieces - 1 - k));
            sum += piece[k];
        }
        for (int k = 0; k < pieces; k++) {
            piece[k] *= lengthM / sum;
        }
        return piece;
    }

    List<Place> places() {
        return places;
    }

    double airK() {
        return airK;
    }
}
