package liftwright.physics;

/**
 * Inertia tensors of rigid bodies, kg·m². A tensor is six numbers of a symmetric matrix in the
 * order of the constants below; off the diagonal stand the elements of the matrix, so that {@link
 * #XY} is −∫ x y dm. The sum of two tensors about the same point is that of the bodies together.
 *
 * <p>Source: Landau and Lifshitz, Mechanics (vol. 1), §32.
 */
public final class InertiaTensor {

    public static final int SIZE = 6;

    public static final int XX = 0;
    public static final int YY = 1;
    public static final int ZZ = 2;
    public static final int XY = 3;
    public static final int XZ = 4;
    public static final int YZ = 5;

    /** Sweeps over the three pairs of axes; three or four already end below rounding. */
    private static final int MOST_SWEEPS = 30;

    private InertiaTensor() {}

    /**
     * Adds a point mass: the parallel-axis term of a body whose centre is there.
     *
     * @param massKg kg; negative takes one away
     * @param xM place from the point the tensor is about, m
     * @param tensor in, out: {@link #SIZE} numbers from {@code at}
     */
    public static void addPoint(
            double massKg, double xM, double yM, double zM, double[] tensor, int at) {
        tensor[at + XX] += massKg * (yM * yM + zM * zM);
        tensor[at + YY] += massKg * (xM * xM + zM * zM);
        tensor[at + ZZ] += massKg * (xM * xM + yM * yM);
        tensor[at + XY] -= massKg * xM * yM;
        tensor[at + XZ] -= massKg * xM * zM;
        tensor[at + YZ] -= massKg * yM * zM;
    }

    /**
     * Adds a body given by its moments about its own principal axes: R diag(a, b, c) Rᵀ.
     *
     * @param first moment about the first column of the frame, kg·m²
     * @param frame in: 3 × 3 turn, row by row, own axes to those of the tensor
     * @param frameAt first of its nine numbers
     * @param tensor in, out
     */
    public static void addTurned(
            double first,
            double second,
            double third,
            double[] frame,
            int frameAt,
            double[] tensor,
            int at) {
        for (int k = 0; k < 3; k++) {
            double moment = k == 0 ? first : k == 1 ? second : third;
            double x = frame[frameAt + k];
            double y = frame[frameAt + 3 + k];
            double z = frame[frameAt + 6 + k];
            tensor[at + XX] += moment * x * x;
            tensor[at + YY] += moment * y * y;
            tensor[at + ZZ] += moment * z * z;
            tensor[at + XY] += moment * x * y;
            tensor[at + XZ] += moment * x * z;
            tensor[at + YZ] += moment * y * z;
        }
    }

    /**
     * Angular acceleration from rest, I⁻¹ M, rad/s².
     *
     * @param tensor in: about the centre of mass
     * @param xNm moment about the centre of mass, N·m
     * @param acceleration out: three numbers from {@code to}
     * @throws ArithmeticException if the tensor is singular, as that of points on one line
     */
    public static void acceleration(
            double[] tensor,
            int at,
            double xNm,
            double yNm,
            double zNm,
            double[] acceleration,
            int to) {
        double a = tensor[at + XX];
        double b = tensor[at + YY];
        double c = tensor[at + ZZ];
        double d = tensor[at + XY];
        double e = tensor[at + XZ];
        double f = tensor[at + YZ];
        double coA = b * c - f * f;
        double coD = e * f - d * c;
        double coE = d * f - b * e;
        double determinant = a * coA + d * coD + e * coE;
        if (!(determinant > 1e-12 * a * b * c)) {
            throw new ArithmeticException("a body without extent about an axis turns at no rate");
        }
        acceleration[to] = (coA * xNm + coD * yNm + coE * zNm) / determinant;
        acceleration[to + 1] =
                (coD * xNm + (a * c - e * e) * yNm + (d * e - a * f) * zNm) / determinant;
        acceleration[to + 2] =
                (coE * xNm + (d * e - a * f) * yNm + (a * b - d * d) * zNm) / determinant;
    }

    /**
     * Principal moments and axes, by Jacobi's rotations.
     *
     * @param tensor in
     * @param moments out: three, ascending, kg·m²
     * @param axes out: 3 × 3, row by row; column k is the unit axis of moment k, right-handed
     */
    public static void principal(double[] tensor, int at, double[] moments, double[] axes) {
        double[] m = {
            tensor[at + XX], tensor[at + XY], tensor[at + XZ],
            tensor[at + XY], tensor[at + YY], tensor[at + YZ],
            tensor[at + XZ], tensor[at + YZ], tensor[at + ZZ]
        };
        double[] v = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double off = Math.abs(m[1]) + Math.abs(m[2]) + Math.abs(m[5]);
            if (off <= 1e-17 * (Math.abs(m[0]) + Math.abs(m[4]) + Math.abs(m[8]))) {
                break;
            }
            rotate(m, v, 0, 1);
            rotate(m, v, 0, 2);
            rotate(m, v, 1, 2);
        }
        int[] order = ascending(m[0], m[4], m[8]);
        for (int k = 0; k < 3; k++) {
            moments[k] = m[4 * order[k]];
            for (int row = 0; row < 3; row++) {
                axes[3 * row + k] = v[3 * row + order[k]];
            }
        }
        double handed =
                axes[2] * (axes[3] * axes[7] - axes[4] * axes[6])
                        + axes[5] * (axes[6] * axes[1] - axes[0] * axes[7])
                        + axes[8] * (axes[0] * axes[4] - axes[3] * axes[1]);
        if (handed < 0) {
            for (int row = 0; row < 3; row++) {
                axes[3 * row + 2] = -axes[3 * row + 2];
            }
        }
    }

    private static int[] ascending(double a, double b, double c) {
        if (a <= b) {
            return b <= c
                    ? new int[] {0, 1, 2}
                    : a <= c ? new int[] {0, 2, 1} : new int[] {2, 0, 1};
        }
        return a <= c ? new int[] {1, 0, 2} : b <= c ? new int[] {1, 2, 0} : new int[] {2, 1, 0};
    }

    /** One rotation in the plane of axes p and q that makes their common element zero. */
    private static void rotate(double[] m, double[] v, int p, int q) {
        double off = m[3 * p + q];
        if (off == 0) {
            return;
        }
        double theta = (m[4 * q] - m[4 * p]) / (2 * off);
        double t = Math.copySign(1, theta) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        double c = 1 / Math.sqrt(t * t + 1);
        double s = t * c;
        for (int k = 0; k < 3; k++) {
            double mkp = m[3 * k + p];
            double mkq = m[3 * k + q];
            m[3 * k + p] = c * mkp - s * mkq;
            m[3 * k + q] = s * mkp + c * mkq;
        }
        for (int k = 0; k < 3; k++) {
            double mpk = m[3 * p + k];
            double mqk = m[3 * q + k];
            m[3 * p + k] = c * mpk - s * mqk;
            m[3 * q + k] = s * mpk + c * mqk;
            double vkp = v[3 * k + p];
            double vkq = v[3 * k + q];
            v[3 * k + p] = c * vkp - s * vkq;
            v[3 * k + q] = s * vkp + c * vkq;
        }
        m[3 * p + q] = 0;
        m[3 * q + p] = 0;
    }
}
