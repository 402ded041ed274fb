package liftwright.learning.sound;

/**
 * The sound about one harmonic, turned back by the phase of the reference and thinned: a fan that
 * turns at the ratio r of the reference stands still at (r − 1) times the harmonic's frequency.
 */
final class Baseband {

    private static final int LOBES = 4;

    private final double fromS;
    private final double rateHz;
    private final double[] re;
    private final double[] im;

    private Baseband(double fromS, double rateHz, double[] re, double[] im) {
        this.fromS = fromS;
        this.rateHz = rateHz;
        this.re = re;
        this.im = im;
    }

    /**
     * @param perScaleHz frequency of the harmonic at scale 1
     * @param widthHz farthest frequency from its middle that is of use
     */
    static Baseband of(Waveform sound, Reference reference, double perScaleHz, double widthHz) {
        double rate = sound.rateHz();
        int thin = Math.max(1, (int) (rate / (3.2 * widthHz)));
        double[] filter = filter(thin);
        int first = Math.max(0, (int) Math.ceil(reference.fromS() * rate));
        int last = Math.min(sound.samples().length, (int) (reference.toS() * rate));
        int count = Math.max(0, last - first);
        float[] x = new float[count];
        float[] y = new float[count];
        for (int n = 0; n < count; n++) {
            double turns = perScaleHz * reference.turnsAt((first + n) / rate);
            double angle = -2 * Math.PI * (turns - Math.rint(turns));
            x[n] = (float) (sound.samples()[first + n] * Math.cos(angle));
            y[n] = (float) (sound.samples()[first + n] * Math.sin(angle));
        }
        int out = count / thin;
        double[] re = new double[out];
        double[] im = new double[out];
        for (int k = 0; k < out; k++) {
            for (int j = 0; j < filter.length; j++) {
                int n = k * thin + j - filter.length / 2;
                if (n >= 0 && n < count) {
                    re[k] += filter[j] * x[n];
                    im[k] += filter[j] * y[n];
                }
            }
        }
        return new Baseband(first / rate, rate / thin, re, im);
    }

    /** Low pass: a sinc of the new rate's half under a Hann window. */
    private static double[] filter(int thin) {
        int half = LOBES * thin;
        double[] filter = new double[2 * half + 1];
        double sum = 0;
        for (int j = -half; j <= half; j++) {
            double place = Math.PI * j / thin * 0.8;
            double sinc = j == 0 ? 1 : Math.sin(place) / place;
            filter[j + half] = sinc * (1 + Math.cos(Math.PI * j / (half + 1.0)));
            sum += filter[j + half];
        }
        for (int j = 0; j < filter.length; j++) {
            filter[j] /= sum;
        }
        return filter;
    }

    double rateHz() {
        return rateHz;
    }

    /** Copies a Hann-weighted window about a moment; zeros outside what was recorded. */
    void window(double middleS, double[] hann, double[] toRe, double[] toIm) {
        int from = (int) Math.round((middleS - fromS) * rateHz - hann.length / 2.0);
        for (int n = 0; n < toRe.length; n++) {
            int place = from + n;
            boolean there = n < hann.length && place >= 0 && place < re.length;
            toRe[n] = there ? hann[n] * re[place] : 0;
            toIm[n] = there ? hann[n] * im[place] : 0;
        }
    }
}
