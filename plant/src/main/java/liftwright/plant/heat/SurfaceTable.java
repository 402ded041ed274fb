package liftwright.plant.heat;

import liftwright.physics.AirFilm;
import liftwright.physics.SurfaceExchange;

/**
 * Conductance from the outermost shell of a wire to the air, per metre, against how much warmer the
 * shell is. Entries lie at eighths of each octave, so that what goes by a power of the difference
 * is followed evenly: linear between them errs by less than 0.1 %. Below the first entry and beyond
 * the last the nearest one holds, and so it does where the film would leave the range of {@link
 * AirFilm}.
 */
final class SurfaceTable {

    /** First entry of each side, K. */
    static final double LEAST_K = 0x1p-4;

    /** Last entry of a shell warmer than the air, K. */
    static final double MOST_WARM_K = 0x1p9;

    /** Last entry of a shell colder than the air, K. */
    static final double MOST_COLD_K = 0x1p6;

    /** Distance kept from the ends of a range, for rounding, K. */
    private static final double EDGE_K = 1e-6;

    /** So far right that exponent and three bits of the fraction stay: eighths of an octave. */
    private static final int SHIFT = 49;

    private static final int FIRST = (int) (Double.doubleToRawLongBits(LEAST_K) >> SHIFT);
    private static final int WARM =
            (int) (Double.doubleToRawLongBits(MOST_WARM_K) >> SHIFT) - FIRST;
    private static final int COLD =
            (int) (Double.doubleToRawLongBits(MOST_COLD_K) >> SHIFT) - FIRST;

    /** Entries of one table: warm, then cold. */
    static final int SIZE = WARM + 1 + COLD + 1;

    /** Between an entry and the next: what a difference of 0 would have, and the rise. */
    private final double[] foot = new double[SIZE];

    private final double[] rise = new double[SIZE];

    private final Side warm = new Side(0, WARM, 1);
    private final Side cold = new Side(WARM + 1, COLD, -1);

    /** What the entries were made from; unlike any at first. */
    private double outerM;

    private double toSurfaceWpmK;
    private double free;
    private double airK;
    private double pascal;
    private double airMps;

    /**
     * Tells what the entries are made from; where that is what it was, they stand.
     *
     * @param outerM outer diameter of the wire, m
     * @param toSurfaceWpmK from the shell to the surface, W/(m·K)
     * @param free share of the surface that is free, 1
     * @param airMps air across it, m/s
     */
    void make(
            double outerM,
            double toSurfaceWpmK,
            double free,
            double airK,
            double pascal,
            double airMps) {
        if (this.outerM == outerM
                && this.toSurfaceWpmK == toSurfaceWpmK
                && this.free == free
                && this.airK == airK
                && this.pascal == pascal
                && this.airMps == airMps) {
            return;
        }
        this.outerM = outerM;
        this.toSurfaceWpmK = toSurfaceWpmK;
        this.free = free;
        this.airK = airK;
        this.pascal = pascal;
        this.airMps = airMps;
        warm.clear();
        cold.clear();
    }

    private static double at(int entry) {
        return Double.longBitsToDouble((long) (FIRST + entry) << SHIFT);
    }

    /**
     * Entries for shells warmer than the air, or colder, made one after another as far as they are
     * asked for: few wires come near the last, and fewer below the air.
     */
    private final class Side {
        private final int from;
        private final int last;
        private final int sign;

        /** Entries that stand. */
        private int made;

        private double share;
        private double before;

        Side(int from, int last, int sign) {
            this.from = from;
            this.last = last;
            this.sign = sign;
        }

        void clear() {
            made = 0;
            share = 1;
            before = 0;
        }

        /** Place of the entry that a difference lies beyond; the least stands for what is below. */
        int place(double size) {
            int k = (int) (Double.doubleToRawLongBits(size) >> SHIFT) - FIRST;
            int entry = Math.min(k, last);
            if (entry + 1 >= made) {
                makeUpTo(Math.min(entry + 1, last));
            }
            return from + entry;
        }

        /** Makes entries up to one whose rise the next one gives. */
        private void makeUpTo(int entry) {
            double coldestK = 2 * AirFilm.COLDEST_K - airK + EDGE_K;
            double warmestK = 2 * AirFilm.WARMEST_K - airK - EDGE_K;
            for (int k = made; k <= entry; k++) {
                double shellK = sign * at(k);
                double surface = 0;
                for (int again = 0; again < 3; again++) {
                    surface =
                            free
                                    * SurfaceExchange.wireWpmK(
                                            outerM,
                                            Math.clamp(airK + share * shellK, coldestK, warmestK),
                                            airK,
                                            pascal,
                                            airMps,
                                            SurfaceExchange.USUAL_EMISSIVITY);
                    share = toSurfaceWpmK / (toSurfaceWpmK + surface);
                }
                double value = share * surface;
                if (k > 0) {
                    double slope = (value - before) / (at(k) - at(k - 1));
                    foot[from + k - 1] = before - slope * at(k - 1);
                    rise[from + k - 1] = slope;
                }
                foot[from + k] = value; // holds beyond the last
                rise[from + k] = 0;
                before = value;
            }
            made = entry + 1;
        }
    }

    /** Conductance, W/(m·K), of a shell so much warmer than the air, K. */
    double conductanceWpmK(double warmerK) {
        double size = Math.max(Math.abs(warmerK), LEAST_K);
        int k = (warmerK >= 0 ? warm : cold).place(size);
        return foot[k] + rise[k] * size;
    }

    /** Slope of the heat given, d(g·ΔT)/dΔT, W/(m·K). */
    double slopeWpmK(double warmerK) {
        double size = Math.max(Math.abs(warmerK), LEAST_K);
        int k = (warmerK >= 0 ? warm : cold).place(size);
        return foot[k] + 2 * rise[k] * size;
    }
}
