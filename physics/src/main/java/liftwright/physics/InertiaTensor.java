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
}
