package liftwright.review.cause.truth;

import static liftwright.review.cause.truth.Solid.cross;
import static liftwright.review.cause.truth.Solid.dot;
import static liftwright.review.cause.truth.Solid.minus;
import static liftwright.review.cause.truth.Solid.plus;
import static liftwright.review.cause.truth.Solid.times;

import java.util.ArrayList;
import java.util.List;

/** Bodies as mass points, and what sums over the points give. */
final class Cloud {

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Point(double kg, double[] at) {}

    private final List<Point> points = new ArrayList<>();

    void point(double kg, double[] at) {
        points.add(new Point(kg, at));
    }

    /**
     * A body of given radii of gyration: a pair of points on each axis.
     *
     * @param axes three unit vectors
     * @param gyrationM about each
     */
    void body(double kg, double[] middle, double[][] axes, double[] gyrationM) {
        double sum = dot(gyrationM, gyrationM);
        for (int k = 0; k < 3; k++) {
            double spread = sum / 2 - gyrationM[k] * gyrationM[k];
            double[] out = times(Math.sqrt(3 * spread), axes[k]);
            point(kg / 6, plus(middle, out));
            point(kg / 6, minus(middle, out));
        }
    }

    /** An even box: the eight nodes of a product of Gauss rules of two nodes. */
    void box(double kg, double[] middle, double[] edgesM) {
        for (int corner = 0; corner < 8; corner++) {
            double[] at = middle.clone();
            for (int k = 0; k < 3; k++) {
                at[k] += ((corner >> k & 1) == 0 ? -0.5 : 0.5) * edgesM[k] / Math.sqrt(3);
            }
            point(kg / 8, at);
        }
    }

    /** An even disk: a ring of points at radius/√2. */
    void disk(double kg, double[] middle, double[] axis, double radiusM) {
        double[] start = Math.abs(axis[0]) < 0.6 ? Solid.FORWARD : Solid.RIGHT;
        double[] across = cross(axis, start);
        across = times(radiusM / Math.sqrt(2 * dot(across, across)), across);
        for (int k = 0; k < 6; k++) {
            point(kg / 6, plus(middle, Solid.turn(axis, k * Math.PI / 3, across)));
        }
    }

    double kg() {
        return points.stream().mapToDouble(Point::kg).sum();
    }

    double[] centre() {
        double[] sum = {0, 0, 0};
        for (Point each : points) {
            sum = plus(sum, times(each.kg, each.at));
        }
        return times(1 / kg(), sum);
    }

    double[][] inertia(double[] about) {
        double[][] inertia = new double[3][3];
        for (Point each : points) {
            double[] r = minus(each.at, about);
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    inertia[i][j] += each.kg * ((i == j ? dot(r, r) : 0) - r[i] * r[j]);
                }
            }
        }
        return inertia;
    }
}
