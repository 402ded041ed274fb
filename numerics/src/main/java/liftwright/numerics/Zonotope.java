package liftwright.numerics;

import java.util.Arrays;

/**
 * The set {Σ t_i g_i : |t_i| ≤ 1} of some generators g_i in a space of few dimensions: what limbs
 * or fans within their ranges can do, about its middle. Its facets lie along d − 1 generators each;
 * all of them are looked at, which suits d ≤ 4 and some dozens of generators.
 *
 * <p>Source: Du, Quan, Yang and Cai, J. Guid. Control Dyn. 38(5), 2015, 978–984, for the distance.
 */
public final class Zonotope {

    /** Normals shorter than this, against the generators that make them, are none. */
    private static final double FLAT = 1e-10;

    /** What lies off a plane by less than this, over the longest vector, lies in it. */
    private static final double FLAT_POINT = 1e-9;

    private final int dimension;
    private final double[][] generators;
    private final double[] length;
    private final double[] normal;
    private double best;

    private Zonotope(int dimension, double[][] generators) {
        this.dimension = dimension;
        this.generators = generators;
        normal = new double[dimension];
        length = new double[generators.length];
        for (int k = 0; k < length.length; k++) {
            length[k] = Math.sqrt(dot(generators[k], generators[k]));
        }
    }

    /**
     * Least factor λ by which the set must grow to hold a point; infinite where the point lies off
     * what the generators span. A set that does not fill the space is one of fewer dimensions.
     *
     * @param generators in: one array of {@code point.length} numbers each, of like size
     * @param point in
     */
    public static double factorToHold(double[][] generators, double[] point) {
        double[][] axes = span(generators, point.length);
        if (axes.length == point.length) {
            Zonotope set = new Zonotope(point.length, generators);
            set.best = 0;
            set.facets(() -> set.share(point));
            return set.best;
        }
        double[] within = along(axes, point);
        double[] off = point.clone();
        for (int k = 0; k < axes.length; k++) {
            for (int i = 0; i < off.length; i++) {
                off[i] -= within[k] * axes[k][i];
            }
        }
        double size = Math.max(longest(generators), longest(new double[][] {point}));
        if (longest(new double[][] {off}) > FLAT_POINT * size) {
            return Double.POSITIVE_INFINITY;
        }
        double[][] flat = new double[generators.length][];
        for (int k = 0; k < flat.length; k++) {
            flat[k] = along(axes, generators[k]);
        }
        return axes.length == 0 ? 0 : factorToHold(flat, within);
    }

    private static double longest(double[][] vectors) {
        double most = 0;
        for (double[] vector : vectors) {
            most = Math.max(most, Math.sqrt(dot(vector, vector)));
        }
        return most;
    }

    /** Unit vectors at right angles that span the same space, the longest rest first. */
    private static double[][] span(double[][] generators, int dimension) {
        double[][] rest = new double[generators.length][];
        for (int k = 0; k < rest.length; k++) {
            rest[k] = generators[k].clone();
        }
        double least = FLAT_POINT * longest(generators);
        double[][] axes = new double[dimension][];
        int found = 0;
        while (found < dimension) {
            double[] next = {};
            double size = least;
            for (double[] vector : rest) {
                double length = Math.sqrt(dot(vector, vector));
                if (length > size) {
                    size = length;
                    next = vector;
                }
            }
            if (next.length == 0) {
                break;
            }
            double[] axis = next.clone();
            for (int i = 0; i < dimension; i++) {
                axis[i] /= size;
            }
            axes[found++] = axis;
            for (double[] vector : rest) {
                double share = dot(axis, vector);
                for (int i = 0; i < dimension; i++) {
                    vector[i] -= share * axis[i];
                }
            }
        }
        return Arrays.copyOf(axes, found);
    }

    private static double[] along(double[][] axes, double[] vector) {
        double[] out = new double[axes.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = dot(axes[i], vector);
        }
        return out;
    }

    /** Reach along a normal only grows with each generator: what is enough ends the sum. */
    private void share(double[] point) {
        double along = Math.abs(dot(normal, point));
        double reach = 0;
        for (double[] generator : generators) {
            reach += Math.abs(dot(normal, generator));
            if (reach > FLAT && along <= best * reach) {
                return;
            }
        }
        double share = reach > FLAT ? along / reach : along > FLAT ? Double.POSITIVE_INFINITY : 0;
        best = Math.max(best, share);
    }

    /**
     * Signed distance of a point from the boundary: above 0 inside. Outside it is a bound: the
     * greatest distance by which the point misses a facet's plane, with a minus.
     */
    public static double depth(double[][] generators, double[] point) {
        Zonotope set = new Zonotope(point.length, generators);
        set.best = Double.POSITIVE_INFINITY;
        set.facets(() -> set.depth(point));
        return set.best == Double.POSITIVE_INFINITY ? 0 : set.best;
    }

    private void depth(double[] point) {
        double along = Math.abs(dot(normal, point));
        double reach = 0;
        for (double[] generator : generators) {
            reach += Math.abs(dot(normal, generator));
            if (reach - along >= best) {
                return;
            }
        }
        best = reach - along;
    }

    private interface Facet {
        /** The next facet has the unit vector {@link #normal}. */
        void seen();
    }

    private void facets(Facet facet) {
        choose(new int[dimension - 1], 0, 0, facet);
    }

    private void choose(int[] chosen, int next, int from, Facet facet) {
        if (next == chosen.length) {
            if (normal(chosen)) {
                facet.seen();
            }
            return;
        }
        for (int k = from; k < generators.length; k++) {
            chosen[next] = k;
            choose(chosen, next + 1, k + 1, facet);
        }
    }

    /** Unit vector across all the chosen; false where they do not fix one. */
    private boolean normal(int[] chosen) {
        double size = 1;
        for (int k : chosen) {
            size *= length[k];
        }
        switch (dimension) {
            case 3 -> across(generators[chosen[0]], generators[chosen[1]]);
            case 4 -> across(generators[chosen[0]], generators[chosen[1]], generators[chosen[2]]);
            default -> cofactors(chosen);
        }
        double across = Math.sqrt(dot(normal, normal));
        if (!(across > FLAT * size)) {
            return false;
        }
        for (int axis = 0; axis < dimension; axis++) {
            normal[axis] /= across;
        }
        return true;
    }

    private void across(double[] a, double[] b) {
        normal[0] = a[1] * b[2] - a[2] * b[1];
        normal[1] = a[2] * b[0] - a[0] * b[2];
        normal[2] = a[0] * b[1] - a[1] * b[0];
    }

    private void across(double[] a, double[] b, double[] c) {
        double m01 = b[0] * c[1] - b[1] * c[0];
        double m02 = b[0] * c[2] - b[2] * c[0];
        double m03 = b[0] * c[3] - b[3] * c[0];
        double m12 = b[1] * c[2] - b[2] * c[1];
        double m13 = b[1] * c[3] - b[3] * c[1];
        double m23 = b[2] * c[3] - b[3] * c[2];
        normal[0] = a[1] * m23 - a[2] * m13 + a[3] * m12;
        normal[1] = -(a[0] * m23 - a[2] * m03 + a[3] * m02);
        normal[2] = a[0] * m13 - a[1] * m03 + a[3] * m01;
        normal[3] = -(a[0] * m12 - a[1] * m02 + a[2] * m01);
    }

    private void cofactors(int[] chosen) {
        for (int axis = 0; axis < dimension; axis++) {
            double[][] minor = new double[chosen.length][chosen.length];
            for (int row = 0; row < chosen.length; row++) {
                for (int col = 0, at = 0; col < dimension; col++) {
                    if (col != axis) {
                        minor[row][at++] = generators[chosen[row]][col];
                    }
                }
            }
            normal[axis] = (axis % 2 == 0 ? 1 : -1) * determinant(minor);
        }
    }

    /** By elimination with the largest pivot; the argument is used up. */
    private static double determinant(double[][] m) {
        double product = 1;
        for (int k = 0; k < m.length; k++) {
            int pivot = k;
            for (int i = k + 1; i < m.length; i++) {
                if (Math.abs(m[i][k]) > Math.abs(m[pivot][k])) {
                    pivot = i;
                }
            }
            if (m[pivot][k] == 0) {
                return 0;
            }
            if (pivot != k) {
                double[] swap = m[k];
                m[k] = m[pivot];
                m[pivot] = swap;
                product = -product;
            }
            product *= m[k][k];
            for (int i = k + 1; i < m.length; i++) {
                double factor = m[i][k] / m[k][k];
                for (int j = k; j < m.length; j++) {
                    m[i][j] -= factor * m[k][j];
                }
            }
        }
        return product;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
