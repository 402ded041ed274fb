package liftwright.review.cause.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.random.RandomGenerator;

/**
 * What the rows read over the sizes of a fault at one place: polynomials through points of the true
 * mechanics, of fourth degree for one size, of second for two.
 */
final class Surface {

    private final Wrong place;
    private final double step;
    private final int sizes;
    private final double[] middle;

    /** Coefficients over powers of size/step. */
    private final List<double[]> terms = new ArrayList<>();

    Surface(Wrong place, int sizes, Function<double[], double[]> rates, double[] middle) {
        this.place = place;
        this.sizes = sizes;
        this.middle = middle;
        step = place.most() / 2;
        if (sizes == 1) {
            double[][] f = new double[4][];
            int[] at = {-2, -1, 1, 2};
            for (int k = 0; k < 4; k++) {
                double way = place.kind().oneWay() ? at[k] * 0.5 : at[k];
                f[k] = Gauss.difference(rates.apply(new double[] {way * step}), middle, 1);
            }
            double unit = place.kind().oneWay() ? 2 : 1;
            for (int power = 1; power <= 4; power++) {
                double[] term = new double[middle.length];
                for (int i = 0; i < term.length; i++) {
                    double odd1 = (f[2][i] - f[1][i]) / 2;
                    double odd2 = (f[3][i] - f[0][i]) / 2;
                    double even1 = (f[2][i] + f[1][i]) / 2;
                    double even2 = (f[3][i] + f[0][i]) / 2;
                    term[i] =
                            Math.pow(unit, power)
                                    * switch (power) {
                                        case 1 -> (8 * odd1 - odd2) / 6;
                                        case 2 -> (16 * even1 - even2) / 12;
                                        case 3 -> (odd2 - 2 * odd1) / 6;
                                        default -> (even2 - 4 * even1) / 12;
                                    };
                }
                terms.add(term);
            }
            return;
        }
        double[][] way = {{step, 0}, {-step, 0}, {0, step}, {0, -step}, {step, step}};
        double[][] f = new double[5][];
        for (int k = 0; k < 5; k++) {
            f[k] = Gauss.difference(rates.apply(way[k]), middle, 1);
        }
        for (int term = 0; term < 5; term++) {
            double[] own = new double[middle.length];
            for (int i = 0; i < own.length; i++) {
                double x = (f[0][i] - f[1][i]) / 2;
                double xx = (f[0][i] + f[1][i]) / 2;
                double y = (f[2][i] - f[3][i]) / 2;
                double yy = (f[2][i] + f[3][i]) / 2;
                own[i] =
                        switch (term) {
                            case 0 -> x;
                            case 1 -> y;
                            case 2 -> xx;
                            case 3 -> yy;
                            default -> f[4][i] - x - y - xx - yy;
                        };
            }
            terms.add(own);
        }
    }

    double[] at(double[] size) {
        double x = size[0] / step;
        double y = sizes == 2 ? size[1] / step : 0;
        double[] powers =
                sizes == 1
                        ? new double[] {x, x * x, x * x * x, x * x * x * x}
                        : new double[] {x, y, x * x, y * y, x * y};
        double[] sum = middle.clone();
        for (int term = 0; term < powers.length; term++) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += powers[term] * terms.get(term)[i];
            }
        }
        return sum;
    }

    private double[][] slopes(Gauss gauss, double[] size) {
        double[][] white = new double[sizes][];
        double h = 0.02 * step;
        for (int k = 0; k < sizes; k++) {
            double[] more = size.clone();
            more[k] += h;
            double[] less = size.clone();
            less[k] -= h;
            white[k] = gauss.whitened(Gauss.difference(at(more), at(less), 0.5 / h));
        }
        return white;
    }

    /** Normal matrix of least squares, with a floor: the size is not above its most. */
    private double[][] normal(double[][] white) {
        double[][] m = new double[2][2];
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                m[i][j] =
                        i < sizes && j < sizes
                                ? dot(white[i], white[j]) + (i == j ? 1 / (4 * step * step) : 0)
                                : i == j ? 1 : 0;
            }
        }
        return m;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }

    /** Where the rows put the size: four rounds of Gauss and Newton. */
    double[] best(Function<double[], Gauss> around, double[] read) {
        double[] size = new double[sizes];
        for (int round = 0; round < 4; round++) {
            Gauss gauss = around.apply(at(size));
            double[][] white = slopes(gauss, size);
            double[] off = gauss.whitened(Gauss.difference(read, at(size), 1));
            double[][] m = normal(white);
            double[] b = new double[2];
            for (int k = 0; k < sizes; k++) {
                b[k] = dot(white[k], off);
            }
            double det = m[0][0] * m[1][1] - m[0][1] * m[1][0];
            double[] more = {
                (m[1][1] * b[0] - m[0][1] * b[1]) / det, (m[0][0] * b[1] - m[1][0] * b[0]) / det
            };
            for (int k = 0; k < sizes; k++) {
                size[k] = Math.clamp(size[k] + more[k], -1.6 * place.most(), 1.6 * place.most());
            }
        }
        return size;
    }

    /** Lower factor of the covariance there, a little wider. */
    double[][] about(Gauss gauss, double[] best) {
        double[][] m = normal(slopes(gauss, best));
        double det = m[0][0] * m[1][1] - m[0][1] * m[1][0];
        double wide = 1.5;
        double a = wide * Math.sqrt(m[1][1] / det);
        double b = -wide * wide * m[0][1] / det / a;
        double c = Math.sqrt(wide * wide * m[0][0] / det - b * b);
        return new double[][] {{a, 0}, {b, c}};
    }

    double[] near(double[] best, double[][] about, RandomGenerator random) {
        double u = random.nextGaussian();
        double v = random.nextGaussian();
        double[] size = best.clone();
        size[0] += about[0][0] * u;
        if (sizes == 2) {
            size[1] += about[1][0] * u + about[1][1] * v;
        }
        return size;
    }

    double density(double[] best, double[][] about, double[] size) {
        double u = (size[0] - best[0]) / about[0][0];
        double log = -0.5 * u * u - Math.log(about[0][0]) - 0.5 * Math.log(2 * Math.PI);
        if (sizes == 2) {
            double v = (size[1] - best[1] - about[1][0] * u) / about[1][1];
            log += -0.5 * v * v - Math.log(about[1][1]) - 0.5 * Math.log(2 * Math.PI);
        }
        return Math.exp(log);
    }
}
