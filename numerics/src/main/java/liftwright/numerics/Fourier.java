package liftwright.numerics;

/**
 * Discrete Fourier transform of a length that is a power of two: radix-2 butterflies after a
 * bit-reversed order [COOLEY65]. One object serves one length, holds nothing but its tables and may
 * be shared by threads.
 */
public final class Fourier {

    private static final int LONGEST = 1 << 24;

    private final int size;
    private final double[] cosines;
    private final double[] sines;

    /**
     * @param size of the transforms: a power of two from 2 to 2²⁴
     * @throws IllegalArgumentException else
     */
    public Fourier(int size) {
        if (size < 2 || size > LONGEST || Integer.bitCount(size) != 1) {
            throw new IllegalArgumentException("no power of two from 2 to 2^24: " + size);
        }
        this.size = size;
        cosines = new double[size / 2];
        sines = new double[size / 2];
        for (int k = 0; k < size / 2; k++) {
            cosines[k] = Math.cos(2 * Math.PI * k / size);
            sines[k] = -Math.sin(2 * Math.PI * k / size);
        }
    }

    /** The least power of two that is not below {@code n}, n from 1 to 2²⁴. */
    public static int atLeast(int n) {
        if (n < 1 || n > LONGEST) {
            throw new IllegalArgumentException("no length from 1 to 2^24: " + n);
        }
        return n <= 2 ? 2 : Integer.highestOneBit(n - 1) << 1;
    }

    public int size() {
        return size;
    }

    /**
     * X_k = Σ x_n exp(−2πi k n / size), in place.
     *
     * @param re in: real parts; out: those of the transform
     * @param im in: imaginary parts; out: those of the transform
     */
    public void transform(double[] re, double[] im) {
        if (re.length != size || im.length != size) {
            throw new IllegalArgumentException("not " + size + " numbers");
        }
        reorder(re, im);
        for (int half = 1; half < size; half <<= 1) {
            int stride = size / (2 * half);
            for (int start = 0; start < size; start += 2 * half) {
                for (int k = 0; k < half; k++) {
                    butterfly(re, im, start + k, half, k * stride);
                }
            }
        }
    }

    private void butterfly(double[] re, double[] im, int upper, int half, int turn) {
        int lower = upper + half;
        double c = cosines[turn];
        double s = sines[turn];
        double x = re[lower] * c - im[lower] * s;
        double y = re[lower] * s + im[lower] * c;
        re[lower] = re[upper] - x;
        im[lower] = im[upper] - y;
        re[upper] += x;
        im[upper] += y;
    }

    private void reorder(double[] re, double[] im) {
        int mirrored = 0;
        for (int k = 1; k < size; k++) {
            int bit = size >> 1;
            while ((mirrored & bit) != 0) {
                mirrored ^= bit;
                bit >>= 1;
            }
            mirrored |= bit;
            if (k < mirrored) {
                swap(re, k, mirrored);
                swap(im, k, mirrored);
            }
        }
    }

    private static void swap(double[] values, int a, int b) {
        double kept = values[a];
        values[a] = values[b];
        values[b] = kept;
    }
}
