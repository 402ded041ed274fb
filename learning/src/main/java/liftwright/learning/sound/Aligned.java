package liftwright.learning.sound;

import java.util.Arrays;

/**
 * A common curve made to follow all fans alike. The curve that is found first goes through whatever
 * line is loudest, and hops by the fans' scatter where another becomes louder; lines that are then
 * followed at a steady ratio hop with it, from fan to fan. Where every fan's speed by itself is
 * known, the row of their lines is a pattern, and the curve is shifted to where the whole pattern
 * lies: the path of most support through shifts (dynamic programming [VITERBI67]). A step is cheap
 * where the fans go on as they did, and where they go on as the first curve says.
 */
final class Aligned {

    /** A quarter of a cell of the curve, so that its steps are whole ones here. */
    private static final int PER_CELL = 4;

    private static final double CELL = CommonCurve.CELL / PER_CELL;

    /** Shifts that are looked at, cells to each side: 6 %, more than fans of one type differ. */
    private static final int REACH = 40;

    private static final int SHIFTS = 2 * REACH + 1;

    /** What a step by one cell costs, in units of support. */
    private static final double STEP_COST = 0.08;

    private final Spectrogram spectra;
    private final double[] fullHz;

    private Aligned(Spectrogram spectra, double[] fullHz) {
        this.spectra = spectra;
        this.fullHz = fullHz;
    }

    /**
     * @param fullHz rate of the blades of each single fan at scale 1, of the run in which each ran
     *     by itself
     */
    static CommonCurve of(CommonCurve curve, Spectrogram spectra, double[] fullHz) {
        return curve.times(new Aligned(spectra, fullHz.clone()).factors(curve));
    }

    private double[] factors(CommonCurve curve) {
        int frames = curve.frames();
        byte[][] came = new byte[frames][SHIFTS];
        double[] best = new double[SHIFTS];
        double[] next = new double[SHIFTS];
        double before = 0;
        for (int k = 0; k < frames; k++) {
            double scale = curve.scale(k);
            if (scale == 0) {
                for (int s = 0; s < SHIFTS; s++) {
                    came[k][s] = (byte) s;
                }
                continue;
            }
            int moved = before == 0 ? 0 : (int) Math.round(Math.log(scale / before) / CELL);
            for (int s = 0; s < SHIFTS; s++) {
                came[k][s] = (byte) from(best, s, moved);
                next[s] =
                        best[came[k][s]]
                                - cost(came[k][s], s, moved)
                                + support(k, scale * Math.exp((s - REACH) * CELL));
            }
            System.arraycopy(next, 0, best, 0, SHIFTS);
            before = scale;
        }
        return walk(best, came);
    }

    private static int from(double[] best, int to, int moved) {
        int from = to;
        double most = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < SHIFTS; s++) {
            double value = best[s] - cost(s, to, moved);
            if (value > most) {
                most = value;
                from = s;
            }
        }
        return from;
    }

    /** The shift stays, or the curve hopped and the fans did not. */
    private static double cost(int from, int to, int moved) {
        return STEP_COST * Math.min(Math.abs(to - from), Math.abs(to - from + moved));
    }

    private static double[] walk(double[] best, byte[][] came) {
        int shift = 0;
        for (int s = 1; s < SHIFTS; s++) {
            shift = best[s] > best[shift] ? s : shift;
        }
        double[] factors = new double[came.length];
        Arrays.fill(factors, 1);
        for (int k = came.length - 1; k >= 0; k--) {
            factors[k] = Math.exp((shift - REACH) * CELL);
            shift = came[k][shift];
        }
        return factors;
    }

    /** Mean over the fans of what speaks for their lines at a scale. */
    private double support(int frame, double scale) {
        double sum = 0;
        for (double full : fullHz) {
            sum += CommonCurve.support(spectra, frame, full * scale, CELL);
        }
        return sum / fullHz.length;
    }
}
