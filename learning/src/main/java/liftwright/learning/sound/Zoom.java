package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.List;
import liftwright.numerics.Fourier;
import liftwright.numerics.Quantiles;

/**
 * Lines near a reference, window by window. The spectra of the harmonics are laid over each other
 * by ratio of speed, since the h-th parts two fans h times as far; places where their summed
 * evidence peaks are lines, and each line's ratio is the mean of its harmonics' by inverse
 * variance, each from a parabola through the logarithms at its peak.
 */
final class Zoom {

    /** Ratios that are looked at: 1 ± this. */
    static final double REACH = 0.09;

    private static final int CELLS = 1800;
    private static final double CELL = 2 * REACH / CELLS;

    /** Power over noise from which a harmonic counts, nepers. */
    private static final double NOISE = 2.2;

    private static final double LEAST_SCORE = 1.5;

    /**
     * Variance of a frequency at the peak of a Hann window of T with power ρ over its noise is this
     * / (ρ T²). From the weights' moments: (6 / 4π²) · (28.1 / 12) / 1.5, where 28.1 / 12 = 2.34 is
     * the Hann window's loss against the Cramér–Rao bound [RIFE74].
     */
    static final double VARIANCE = 6 / (4 * Math.PI * Math.PI) * 2.342 / 1.5;

    private final List<Harmonic> harmonics = new ArrayList<>();
    private final Reference reference;
    private final double windowS;

    @SuppressWarnings("ArrayRecordComponent") // never compared, never shown
    private record Harmonic(double hz, Baseband sound, double[] hann, Fourier fourier) {}

    /**
     * @param fullHz rate of the blades at scale and ratio 1
     * @param many harmonics at most
     * @param windowS length of a window, s
     */
    Zoom(Waveform sound, Reference reference, double fullHz, int many, double windowS) {
        this.reference = reference;
        this.windowS = windowS;
        double highest = reference.highest();
        for (int h = 1; h <= many; h++) {
            double hz = h * fullHz;
            if (h > 1 && hz * highest * (1 + REACH) > 0.47 * sound.rateHz()) {
                break;
            }
            Baseband baseband = Baseband.of(sound, reference, hz, hz * highest * REACH * 1.15);
            int length = Math.max(8, (int) Math.round(windowS * baseband.rateHz()));
            harmonics.add(
                    new Harmonic(
                            hz,
                            baseband,
                            Spectrogram.hann(length),
                            new Fourier(Fourier.atLeast(4 * length))));
        }
    }

    double windowS() {
        return windowS;
    }

    /**
     * Least distance of two ratios that are told apart at a scale: 1.5 bins of the first harmonic.
     */
    double resolution(double scale) {
        return 1.5 / (windowS * harmonics.getFirst().hz() * scale);
    }

    /** Lines of a window about a moment, by rising ratio. */
    List<Peak> peaks(double middleS) {
        double scale = reference.scaleAt(middleS);
        double[][] logs = new double[harmonics.size()][];
        double[] evidence = new double[CELLS + 1];
        for (int h = 0; h < logs.length; h++) {
            logs[h] = overNoise(harmonics.get(h), middleS, scale);
            for (int c = 0; c <= CELLS; c++) {
                evidence[c] += Math.max(0, logs[h][c] - NOISE);
            }
        }
        var peaks = new ArrayList<Peak>();
        for (int c = 1; c < CELLS; c++) {
            if (evidence[c] >= LEAST_SCORE
                    && evidence[c] > evidence[c - 1]
                    && evidence[c] >= evidence[c + 1]) {
                peaks.add(peak(c, evidence[c], logs, scale));
            }
        }
        return peaks;
    }

    /** Logarithm of power over noise on the grid of ratios. */
    private double[] overNoise(Harmonic harmonic, double middleS, double scale) {
        int size = harmonic.fourier().size();
        double[] re = new double[size];
        double[] im = new double[size];
        harmonic.sound().window(middleS, harmonic.hann(), re, im);
        harmonic.fourier().transform(re, im);
        double perRatio = harmonic.hz() * scale * size / harmonic.sound().rateHz();
        double[] power = new double[size];
        for (int k = 0; k < size; k++) {
            power[k] = re[k] * re[k] + im[k] * im[k] + 1e-30;
        }
        double[] grid = new double[CELLS + 1];
        for (int c = 0; c <= CELLS; c++) {
            double place = (c * CELL - REACH) * perRatio;
            int k = (int) Math.floor(place);
            double share = place - k;
            double low = Math.log(power[Math.floorMod(k, size)]);
            double high = Math.log(power[Math.floorMod(k + 1, size)]);
            grid[c] = low + share * (high - low);
        }
        double floor = floor(grid);
        for (int c = 0; c <= CELLS; c++) {
            grid[c] -= floor;
        }
        return grid;
    }

    /**
     * Logarithm of the mean power of noise, from the quieter third: a band can be full of lines.
     */
    private static double floor(double[] grid) {
        // The cumulative distribution of noise power is 1 − exp(−p / mean).
        return Quantiles.ofPart(grid.clone(), 0, grid.length, grid.length * 3 / 10)
                - Math.log(-Math.log(0.7));
    }

    private Peak peak(int cell, double score, double[][] logs, double scale) {
        double sum = 0;
        double weights = 0;
        double level = 0;
        for (int h = 0; h < logs.length; h++) {
            double bin = 1 / (windowS * harmonics.get(h).hz() * scale);
            int top = climb(logs[h], cell, (int) Math.ceil(0.6 * bin / CELL));
            if (top < 0 || logs[h][top] < NOISE) {
                continue;
            }
            level = Math.max(level, logs[h][top]);
            double variance = VARIANCE * bin * bin / Math.exp(logs[h][top]);
            sum += (top * CELL - REACH + 1 + parabola(logs[h], top, bin)) / variance;
            weights += 1 / variance;
        }
        if (weights == 0) {
            double bin = 1 / (windowS * harmonics.getFirst().hz() * scale);
            return new Peak(cell * CELL - REACH + 1, bin / 2, score, level);
        }
        return new Peak(sum / weights, Math.sqrt(1 / weights), score, level);
    }

    /** Greatest cell within reach that is a peak; −1 where the greatest lies at the edge. */
    private static int climb(double[] log, int cell, int reach) {
        int top = cell;
        for (int c = Math.max(1, cell - reach); c <= Math.min(CELLS - 1, cell + reach); c++) {
            if (log[c] > log[top]) {
                top = c;
            }
        }
        boolean peak =
                top > 0 && top < CELLS && log[top] >= log[top - 1] && log[top] >= log[top + 1];
        return peak ? top : -1;
    }

    /**
     * Vertex of the parabola through the top and two points a third of a bin away, from the top.
     */
    private static double parabola(double[] log, int top, double bin) {
        int step = Math.max(1, (int) Math.round(bin / 3 / CELL));
        if (top - step < 0 || top + step > CELLS) {
            return 0;
        }
        double bend = log[top - step] - 2 * log[top] + log[top + step];
        return bend >= 0 ? 0 : CELL * step * 0.5 * (log[top - step] - log[top + step]) / bend;
    }
}
