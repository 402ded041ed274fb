package liftwright.plant.heat;

/**
 * How a run is cut into cells along itself: finest at its ends, where a joint's heat bends the
 * temperature within a fin length. The places at which the cells' temperatures stand are chosen,
 * each gap so much longer than its outer neighbour; the cells' edges lie midway between them. So
 * the bow of temperature that even heating makes is met exactly at the places, however unlike the
 * cells are (with places in the middles of unlike cells, the middle of a short run between cool
 * joints came out by several per cent of its rise too hot).
 */
final class LineGrid {

    /** Cells of a run; odd. */
    static final int CELLS = 7;

    /** Gaps from the first place to the middle one. */
    private static final int GAPS = CELLS / 2;

    /** First place from the end, and half the first gap, over the fin length. */
    private static final double END = 0.1;

    /** The same over the length of a run, at most: half of what even cells would have. */
    private static final double SHORT = 0.25 / CELLS;

    private LineGrid() {}

    /**
     * Places as shares of the length, in order.
     *
     * @param lengthM of the run, m
     * @param finM its fin length, m
     */
    static double[] places(double lengthM, double finM) {
        double first = Math.min(SHORT, END * finM / lengthM);
        double growth = growth((0.5 - first) / (2 * first));
        double[] places = new double[CELLS];
        double at = first;
        for (int k = 0; k < GAPS; k++) {
            places[k] = at;
            places[CELLS - 1 - k] = 1 - at;
            at += 2 * first * Math.pow(growth, k);
        }
        places[GAPS] = 0.5;
        return places;
    }

    /** Shares of the length that the cells around such places have; they sum to 1. */
    static double[] shares(double[] places) {
        double[] shares = new double[places.length];
        double from = 0;
        for (int k = 0; k < shares.length; k++) {
            double to = k + 1 < shares.length ? (places[k] + places[k + 1]) / 2 : 1;
            shares[k] = to - from;
            from = to;
        }
        return shares;
    }

    /** Growth at which the gaps to the middle add up to so many first ones; by bisection. */
    private static double growth(double gaps) {
        double low = 1;
        double high = 2;
        while (sum(high) < gaps) {
            high *= 2;
        }
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            if (sum(middle) < gaps) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double sum(double growth) {
        double sum = 0;
        for (int k = 0; k < GAPS; k++) {
            sum += Math.pow(growth, k);
        }
        return sum;
    }
}
