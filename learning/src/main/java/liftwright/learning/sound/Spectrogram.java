package liftwright.learning.sound;

import liftwright.numerics.Fourier;
import liftwright.numerics.Quantiles;

/**
 * Short-time power spectra, each over its own noise: Hann windows of {@value #WINDOW_S} s (the next
 * power of two samples), a quarter of a window apart. Noise is the median over a third of an octave
 * to either side, so that a line does not hide in its own floor.
 */
final class Spectrogram {

    static final double WINDOW_S = 0.08;

    private static final int CENTRES = 96;
    private static final int LEAST_BINS = 14;

    private final double binHz;
    private final double hopS;
    private final double firstS;
    private final float[][] excess;
    private final double[] loudness;

    private Spectrogram(
            double binHz, double hopS, double firstS, float[][] excess, double[] loudness) {
        this.binHz = binHz;
        this.hopS = hopS;
        this.firstS = firstS;
        this.excess = excess;
        this.loudness = loudness;
    }

    static Spectrogram of(Waveform sound) {
        int window = Fourier.atLeast((int) Math.ceil(WINDOW_S * sound.rateHz()));
        int hop = window / 4;
        int frames = Math.max(0, (sound.samples().length - window) / hop + 1);
        var fourier = new Fourier(window);
        double[] hann = hann(window);
        float[][] excess = new float[frames][];
        double[] loudness = new double[frames];
        double[] re = new double[window];
        double[] im = new double[window];
        double[] power = new double[window / 2];
        double[] scratch = new double[window / 2];
        for (int k = 0; k < frames; k++) {
            for (int n = 0; n < window; n++) {
                re[n] = hann[n] * sound.samples()[k * hop + n];
                im[n] = 0;
            }
            fourier.transform(re, im);
            for (int n = 0; n < power.length; n++) {
                power[n] = re[n] * re[n] + im[n] * im[n] + 1e-20;
                loudness[k] += power[n];
            }
            excess[k] = excess(power, scratch);
        }
        return new Spectrogram(
                sound.rateHz() / window,
                hop / sound.rateHz(),
                window / 2.0 / sound.rateHz(),
                excess,
                loudness);
    }

    static double[] hann(int size) {
        double[] hann = new double[size];
        for (int n = 0; n < size; n++) {
            hann[n] = 0.5 - 0.5 * Math.cos(2 * Math.PI * (n + 0.5) / size);
        }
        return hann;
    }

    /** ln of power over the noise about it. */
    private static float[] excess(double[] power, double[] scratch) {
        float[] excess = new float[power.length];
        double step = Math.log(power.length - 1.0) / (CENTRES - 1);
        double before = 0;
        double beforeFloor = 0;
        int from = 0;
        for (int c = 0; c < CENTRES; c++) {
            int centre = (int) Math.round(Math.exp(c * step));
            if (c > 0 && centre <= from) {
                continue;
            }
            double floor = Math.log(floor(power, centre, scratch));
            for (int n = from; n <= Math.min(centre, power.length - 1); n++) {
                double share = centre == before ? 1 : (n - before) / (centre - before);
                double here = c == 0 ? floor : beforeFloor + share * (floor - beforeFloor);
                excess[n] = (float) (Math.log(power[n]) - here);
            }
            from = centre + 1;
            before = centre;
            beforeFloor = floor;
        }
        return excess;
    }

    private static double floor(double[] power, int centre, double[] scratch) {
        int low = Math.max(1, Math.min((int) (centre / 1.26), centre - LEAST_BINS));
        int high = Math.min(power.length, Math.max((int) (centre * 1.26), centre + LEAST_BINS));
        int count = high - low;
        System.arraycopy(power, low, scratch, 0, count);
        // The median of noise power, which is exponential, is ln 2 of its mean.
        return Quantiles.ofPart(scratch, 0, count, count / 2) / Math.log(2);
    }

    int frames() {
        return excess.length;
    }

    double hopS() {
        return hopS;
    }

    /** Middle of a frame, s. */
    double timeS(int frame) {
        return firstS + frame * hopS;
    }

    /** All power of a frame, over any common unit. */
    double loudness(int frame) {
        return loudness[frame];
    }

    double highestHz() {
        return binHz * (excess.length == 0 ? 0 : excess[0].length - 2);
    }

    /** Greatest ln of power over noise between two frequencies; −1 beyond what was recorded. */
    double peak(int frame, double lowHz, double highHz) {
        int low = (int) Math.floor(lowHz / binHz);
        int high = (int) Math.ceil(highHz / binHz);
        float[] row = excess[frame];
        if (high >= row.length || low < 1) {
            return -1;
        }
        double most = -1;
        for (int n = low; n <= high; n++) {
            most = Math.max(most, row[n]);
        }
        return most;
    }
}
