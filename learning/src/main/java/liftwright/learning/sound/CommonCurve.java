package liftwright.learning.sound;

import java.util.Arrays;
import java.util.List;

/**
 * How all fans speed up and down together: at each moment the scale of speed, or silence, that the
 * lines of the spectra support best along a whole path (dynamic programming [VITERBI67] over a
 * logarithmic scale).
 *
 * <p>Support of a scale is the mean over fans of the weighted power over noise, in logarithms, at
 * the first harmonics of the rate of their blades, weights 1/h. Half the rate has lines at its even
 * harmonics alone and twice the rate loses the odd ones, so both have less.
 */
final class CommonCurve {

    /** Step of the scale that is looked at, neper. */
    static final double CELL = 0.006;

    private static final int FARTHEST = 20;
    private static final int HARMONICS = 4;
    private static final double LOWEST_HZ = 130;

    /**
     * Below this power over noise, in nepers, nothing counts: 9 dB, met by noise one time in 3000.
     */
    private static final double NOISE = 2.1;

    private static final double MOST = 6;

    /** What a step to the next cell costs, and one to or from silence. */
    private static final double STEP_COST = 0.06;

    private static final double TURN_COST = 4;

    /** Least support of a fan that is heard. */
    private static final double LEAST = 0.7;

    private final double[] timesS;
    private final double[] scale;
    private final double[] support;

    private CommonCurve(double[] timesS, double[] scale, double[] support) {
        this.timesS = timesS;
        this.scale = scale;
        this.support = support;
    }

    /**
     * @param fullHz rate of the blades of each fan at scale 1; like ones once
     * @param lowest least scale that is looked for
     * @param highest greatest scale
     * @param spread how far single fans are from the common scale, relative
     */
    static CommonCurve of(
            Spectrogram spectra,
            List<Double> fullHz,
            double lowest,
            double highest,
            double spread) {
        double slowest = fullHz.stream().mapToDouble(v -> v).min().orElseThrow();
        double from = Math.max(lowest, LOWEST_HZ / slowest);
        int cells = Math.max(1, (int) Math.ceil(Math.log(highest / from) / CELL) + 1);
        int frames = spectra.frames();
        double[] timesS = new double[frames];
        double[] best = new double[cells + 1];
        Arrays.fill(best, -1e9);
        best[cells] = 0;
        short[][] came = new short[frames][cells + 1];
        float[][] supports = new float[frames][];
        double[] next = new double[cells + 1];
        for (int k = 0; k < frames; k++) {
            timesS[k] = spectra.timeS(k);
            supports[k] = support(spectra, k, fullHz, from, cells, spread);
            advance(best, next, came[k], supports[k]);
            System.arraycopy(next, 0, best, 0, best.length);
        }
        double[] scale = new double[frames];
        double[] support = new double[frames];
        int cell = greatest(best);
        for (int k = frames - 1; k >= 0; k--) {
            if (cell < cells) {
                scale[k] = from * Math.exp(cell * CELL);
                support[k] = supports[k][cell];
            }
            cell = came[k][cell];
        }
        return new CommonCurve(timesS, scale, support);
    }

    private static int greatest(double[] best) {
        int most = 0;
        for (int c = 1; c < best.length; c++) {
            if (best[c] > best[most]) {
                most = c;
            }
        }
        return most;
    }

    /** The last cell stands for silence. */
    private static void advance(double[] best, double[] next, short[] came, float[] support) {
        int silence = best.length - 1;
        int loudest = 0;
        for (int c = 0; c < silence; c++) {
            if (best[c] > best[loudest]) {
                loudest = c;
            }
            int from = silence;
            double most = best[silence] - TURN_COST;
            for (int d = -FARTHEST; d <= FARTHEST; d++) {
                int other = c + d;
                if (other < 0 || other >= silence) {
                    continue;
                }
                double value = best[other] - STEP_COST * Math.abs(d);
                if (value > most) {
                    most = value;
                    from = other;
                }
            }
            next[c] = most + support[c] - LEAST;
            came[c] = (short) from;
        }
        boolean stays = best[silence] >= best[loudest] - TURN_COST;
        next[silence] = stays ? best[silence] : best[loudest] - TURN_COST;
        came[silence] = (short) (stays ? silence : loudest);
    }

    private static float[] support(
            Spectrogram spectra,
            int frame,
            List<Double> fullHz,
            double from,
            int cells,
            double spread) {
        float[] sharp = new float[cells];
        for (int c = 0; c < cells; c++) {
            double scale = from * Math.exp(c * CELL);
            for (double full : fullHz) {
                sharp[c] += (float) support(spectra, frame, full * scale, CELL);
            }
            sharp[c] /= fullHz.size();
        }
        int reach = (int) Math.round(spread / CELL);
        if (reach == 0) {
            return sharp;
        }
        return smooth(sharp, reach);
    }

    /**
     * What speaks for a fan whose blades pass at this rate.
     *
     * @param wide of the rate, relative
     */
    static double support(Spectrogram spectra, int frame, double rateHz, double wide) {
        double support = 0;
        for (int h = 1; h <= HARMONICS; h++) {
            double hz = h * rateHz;
            double over = spectra.peak(frame, hz * (1 - wide / 2), hz * (1 + wide / 2));
            if (over < 0 && h == 1) {
                break;
            }
            support += Math.max(0, Math.min(over, MOST) - NOISE) / h;
        }
        return support;
    }

    /** Triangular weights: the middle of a group of lines has the most. */
    private static float[] smooth(float[] sharp, int reach) {
        float[] smooth = new float[sharp.length];
        double weights = 2; // two lines near each other are a group already
        for (int c = 0; c < sharp.length; c++) {
            double sum = 0;
            for (int d = -reach; d <= reach; d++) {
                if (c + d >= 0 && c + d < sharp.length) {
                    sum += sharp[c + d] * (1 - Math.abs(d) / (reach + 1.0));
                }
            }
            smooth[c] = (float) (sum / weights);
        }
        return smooth;
    }

    /** The same with each moment's scale times a factor. */
    CommonCurve times(double[] factors) {
        double[] product = new double[scale.length];
        for (int k = 0; k < product.length; k++) {
            product[k] = scale[k] * factors[k];
        }
        return new CommonCurve(timesS, product, support);
    }

    int frames() {
        return scale.length;
    }

    double timeS(int frame) {
        return timesS[frame];
    }

    /** 0 in silence. */
    double scale(int frame) {
        return scale[frame];
    }

    double support(int frame) {
        return support[frame];
    }
}
