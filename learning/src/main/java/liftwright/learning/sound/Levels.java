package liftwright.learning.sound;

import liftwright.numerics.Fourier;
import liftwright.numerics.Quantiles;

/**
 * Power spectra of a recording, a tenth of a second apart, for what its recorder did to it: how
 * loud its floor is at each moment, and how its mean falls off with frequency.
 */
final class Levels {

    static final double HOP_S = 0.1;

    private static final double WINDOW_S = 0.04;

    /** Share of the moments in which a frequency is free of lines, at least. */
    private static final double FREE = 0.2;

    private final double binHz;
    private final float[][] logs;
    private final double[] loudness;

    private Levels(double binHz, float[][] logs, double[] loudness) {
        this.binHz = binHz;
        this.logs = logs;
        this.loudness = loudness;
    }

    static Levels of(Waveform sound) {
        int window = Fourier.atLeast((int) Math.ceil(WINDOW_S * sound.rateHz()));
        int hop = Math.max(1, (int) (HOP_S * sound.rateHz()));
        int frames = Math.max(0, (sound.samples().length - window) / hop + 1);
        var fourier = new Fourier(window);
        double[] hann = Spectrogram.hann(window);
        double[] re = new double[window];
        double[] im = new double[window];
        float[][] logs = new float[frames][window / 2];
        double[] loudness = new double[frames];
        for (int k = 0; k < frames; k++) {
            for (int n = 0; n < window; n++) {
                re[n] = hann[n] * sound.samples()[k * hop + n];
                im[n] = 0;
            }
            fourier.transform(re, im);
            double sum = 1e-20;
            for (int n = 0; n < window / 2; n++) {
                double power = re[n] * re[n] + im[n] * im[n] + 1e-20;
                logs[k][n] = (float) Math.log(power);
                sum += n == 0 ? 0 : power;
            }
            loudness[k] = Math.log(sum);
        }
        return new Levels(sound.rateHz() / window, logs, loudness);
    }

    int frames() {
        return logs.length;
    }

    int bins() {
        return logs.length == 0 ? 0 : logs[0].length;
    }

    double binHz() {
        return binHz;
    }

    /** Mean over time of the logarithm of power in each bin, nepers. */
    double[] mean() {
        double[] mean = new double[bins()];
        for (float[] row : logs) {
            for (int n = 0; n < mean.length; n++) {
                mean[n] += row[n] / logs.length;
            }
        }
        return mean;
    }

    /**
     * How the floor stands at each moment, over a common level, nepers of power: the median over
     * frequency of what each bin has more than when it is quiet. Lines raise few bins.
     */
    double[] floor() {
        double[] quiet = quiet();
        double[] floor = new double[logs.length];
        double[] over = new double[quiet.length];
        for (int k = 0; k < floor.length; k++) {
            for (int n = 0; n < over.length; n++) {
                over[n] = logs[k][n] - quiet[n];
            }
            floor[k] = Quantiles.ofPart(over, 0, over.length, over.length / 2);
        }
        return floor;
    }

    private double[] quiet() {
        double[] quiet = new double[bins()];
        double[] row = new double[logs.length];
        for (int n = 0; n < quiet.length; n++) {
            for (int k = 0; k < row.length; k++) {
                row[k] = logs[k][n];
            }
            quiet[n] = Quantiles.ofPart(row, 0, row.length, (int) (FREE * row.length));
        }
        return quiet;
    }

    /** Logarithm of all power at each moment, nepers. */
    double[] loudness() {
        return loudness.clone();
    }
}
