package liftwright.numerics;

/**
 * Eigenvalues of a small real matrix of any kind: turned into Hessenberg form by elimination, then
 * by QR steps with the shift of Wilkinson, in complex numbers throughout [GOLUB13].
 *
 * <p>For some tens of rows. A matrix with fewer eigenvectors than eigenvalues is no error; such an
 * eigenvalue of multiplicity m is good to the m-th root of the last digit, as in every such method.
 */
public final class Eigenvalues {

    private static final int MOST_STEPS = 60;
    private static final int ODD_SHIFT = 10;

    private final int n;
    private final double[][] re;
    private final double[][] im;

    private Eigenvalues(double[] matrix, int n) {
        this.n = n;
        re = new double[n][n];
        im = new double[n][n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(matrix, i * n, re[i], 0, n);
        }
    }

    /**
     * @param matrix in: n × n, row by row, finite
     * @param real out: n real parts, in no order
     * @param imaginary out: n imaginary parts
     * @throws IllegalStateException where the steps do not settle, which for finite numbers they do
     */
    public static void of(double[] matrix, int n, double[] real, double[] imaginary) {
        if (matrix.length != n * n || real.length != n || imaginary.length != n) {
            throw new IllegalArgumentException("a matrix of n × n and room for n eigenvalues");
        }
        for (double each : matrix) {
            if (!Double.isFinite(each)) {
                throw new IllegalArgumentException("a matrix of finite numbers");
            }
        }
        var work = new Eigenvalues(matrix, n);
        work.hessenberg();
        work.fall();
        for (int k = 0; k < n; k++) {
            real[k] = work.re[k][k];
            imaginary[k] = work.im[k][k];
        }
    }

    /** Similar matrix with nothing below the first subdiagonal. */
    private void hessenberg() {
        for (int k = 1; k < n - 1; k++) {
            int pivot = k;
            for (int i = k + 1; i < n; i++) {
                pivot = Math.abs(re[i][k - 1]) > Math.abs(re[pivot][k - 1]) ? i : pivot;
            }
            if (re[pivot][k - 1] == 0) {
                continue;
            }
            swap(k, pivot);
            for (int i = k + 1; i < n; i++) {
                double by = re[i][k - 1] / re[k][k - 1];
                for (int j = k - 1; j < n; j++) {
                    re[i][j] -= by * re[k][j];
                }
                for (int j = 0; j < n; j++) {
                    re[j][k] += by * re[j][i];
                }
            }
        }
    }

    private void swap(int one, int other) {
        double[] row = re[one];
        re[one] = re[other];
        re[other] = row;
        for (int i = 0; i < n; i++) {
            double value = re[i][one];
            re[i][one] = re[i][other];
            re[i][other] = value;
        }
    }

    /** Splits eigenvalues off at the lower end, one by one. */
    private void fall() {
        double size = 0;
        for (int i = 0; i < n; i++) {
            for (int j = Math.max(0, i - 1); j < n; j++) {
                size = Math.max(size, Math.abs(re[i][j]));
            }
        }
        int low = n - 1;
        int steps = 0;
        while (low > 0) {
            int top = low;
            while (top > 0 && !isNothing(top, size)) {
                top--;
            }
            if (top > 0) {
                re[top][top - 1] = 0;
                im[top][top - 1] = 0;
            }
            if (top == low) {
                low--;
                steps = 0;
            } else {
                if (++steps > MOST_STEPS) {
                    throw new IllegalStateException("eigenvalues did not settle");
                }
                step(top, low, steps % ODD_SHIFT == 0);
            }
        }
    }

    private boolean isNothing(int row, double size) {
        double here =
                Math.hypot(re[row][row], im[row][row])
                        + Math.hypot(re[row - 1][row - 1], im[row - 1][row - 1]);
        double below = Math.hypot(re[row][row - 1], im[row][row - 1]);
        return below <= Math.ulp(1.0) * (here > 0 ? here : size);
    }

    /** H − σ = Q R, then R Q + σ. */
    private void step(int top, int low, boolean odd) {
        double[] shift = odd ? oddShift(low) : wilkinson(low);
        for (int k = top; k <= low; k++) {
            re[k][k] -= shift[0];
            im[k][k] -= shift[1];
        }
        int count = low - top;
        double[] c = new double[count];
        double[] sr = new double[count];
        double[] si = new double[count];
        for (int k = top; k < low; k++) {
            int g = k - top;
            double a = Math.hypot(re[k][k], im[k][k]);
            double b = Math.hypot(re[k + 1][k], im[k + 1][k]);
            double r = Math.hypot(a, b);
            if (b == 0) {
                c[g] = 1;
            } else if (a == 0) {
                c[g] = 0;
                sr[g] = re[k + 1][k] / b;
                si[g] = -im[k + 1][k] / b;
            } else {
                c[g] = a / r;
                double ur = re[k][k] / a;
                double ui = im[k][k] / a;
                sr[g] = (ur * re[k + 1][k] + ui * im[k + 1][k]) / r;
                si[g] = (ui * re[k + 1][k] - ur * im[k + 1][k]) / r;
            }
            rows(k, low, c[g], sr[g], si[g]);
        }
        for (int k = top; k < low; k++) {
            int g = k - top;
            columns(k, top, Math.min(low, k + 1), c[g], sr[g], si[g]);
        }
        for (int k = top; k <= low; k++) {
            re[k][k] += shift[0];
            im[k][k] += shift[1];
        }
    }

    /** Rows k and k+1 times [c s; −s̄ c]. */
    private void rows(int k, int low, double c, double sr, double si) {
        for (int j = k; j <= low; j++) {
            double xr = re[k][j];
            double xi = im[k][j];
            double yr = re[k + 1][j];
            double yi = im[k + 1][j];
            re[k][j] = c * xr + sr * yr - si * yi;
            im[k][j] = c * xi + sr * yi + si * yr;
            re[k + 1][j] = -sr * xr - si * xi + c * yr;
            im[k + 1][j] = -sr * xi + si * xr + c * yi;
        }
    }

    /** Columns k and k+1 times the same, transposed and conjugate. */
    private void columns(int k, int top, int last, double c, double sr, double si) {
        for (int i = top; i <= last; i++) {
            double xr = re[i][k];
            double xi = im[i][k];
            double yr = re[i][k + 1];
            double yi = im[i][k + 1];
            re[i][k] = c * xr + sr * yr + si * yi;
            im[i][k] = c * xi + sr * yi - si * yr;
            re[i][k + 1] = -sr * xr + si * xi + c * yr;
            im[i][k + 1] = -sr * xi - si * xr + c * yi;
        }
    }

    private double[] oddShift(int low) {
        return new double[] {
            re[low][low] + Math.hypot(re[low][low - 1], im[low][low - 1]), im[low][low]
        };
    }

    /** The eigenvalue of the last two rows that is nearer to the last element. */
    private double[] wilkinson(int low) {
        double ar = re[low - 1][low - 1];
        double ai = im[low - 1][low - 1];
        double dr = re[low][low];
        double di = im[low][low];
        // bc, and ((a − d)/2)² + bc
        double br = re[low - 1][low];
        double bi = im[low - 1][low];
        double cr = re[low][low - 1];
        double ci = im[low][low - 1];
        double pr = br * cr - bi * ci;
        double pi = br * ci + bi * cr;
        double hr = (ar - dr) / 2;
        double hi = (ai - di) / 2;
        double qr = hr * hr - hi * hi + pr;
        double qi = 2 * hr * hi + pi;
        double size = Math.hypot(qr, qi);
        double rr = Math.sqrt(Math.max(0, (size + qr) / 2));
        double ri = Math.copySign(Math.sqrt(Math.max(0, (size - qr) / 2)), qi);
        boolean plus = hr * rr + hi * ri < 0; // the root that brings it nearer to d
        double sign = plus ? 1 : -1;
        return new double[] {dr + hr + sign * rr, di + hi + sign * ri};
    }
}
