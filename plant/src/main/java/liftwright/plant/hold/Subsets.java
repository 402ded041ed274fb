package liftwright.plant.hold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Greatest of a sum over all subsets, and over all strengths between nothing and full: the support
 * of a zonotope. A sum that is straight in every strength is greatest with those at full that add
 * to it and the others at nothing, so no subset has to be tried.
 */
public final class Subsets {

    private Subsets() {}

    /**
     * Greatest Σ t_i c_i, 0 ≤ t_i ≤ 1.
     *
     * @param each c_i
     */
    public static Subset greatest(double[] each) {
        double sum = 0;
        List<Integer> fans = new ArrayList<>();
        for (int k = 0; k < each.length; k++) {
            if (each[k] > 0) {
                sum += each[k];
                fans.add(k);
            }
        }
        return new Subset(sum, fans);
    }

    /**
     * Greatest √((Σ t_i a_i)² + (Σ t_i b_i)²) + Σ t_i c_i, 0 ≤ t_i ≤ 1: a push in any direction of
     * a plane, and what goes with it whatever the direction.
     *
     * <p>For a direction φ it is the greatest sum of a_i cos φ + b_i sin φ + c_i. Which of these
     * are above nothing changes at two directions of each at most; between two such directions one
     * subset is the best, and its own greatest stands in closed form. So all that can be the best
     * are looked at, and no direction is missed.
     */
    public static Subset greatest(double[] a, double[] b, double[] c) {
        double[] turns = new double[2 * a.length + 1];
        int count = 0;
        for (int k = 0; k < a.length; k++) {
            double size = Math.hypot(a[k], b[k]);
            if (size > 0 && Math.abs(c[k]) <= size) {
                double at = Math.atan2(b[k], a[k]);
                double half = Math.acos(-c[k] / size);
                turns[count++] = upright(at - half);
                turns[count++] = upright(at + half);
            }
        }
        Arrays.sort(turns, 0, count);
        Subset worst = along(a, b, c, count == 0 ? 0 : (turns[count - 1] + turns[0]) / 2 + Math.PI);
        for (int k = 1; k < count; k++) {
            worst = worst.worse(along(a, b, c, (turns[k - 1] + turns[k]) / 2));
        }
        return worst;
    }

    /** An angle in one turn from −π. */
    private static double upright(double angle) {
        return Math.IEEEremainder(angle, 2 * Math.PI);
    }

    /** Those that add in one direction, with the most that just they come to. */
    private static Subset along(double[] a, double[] b, double[] c, double direction) {
        double cos = Math.cos(direction);
        double sin = Math.sin(direction);
        double sumA = 0;
        double sumB = 0;
        double sumC = 0;
        List<Integer> fans = new ArrayList<>();
        for (int k = 0; k < a.length; k++) {
            if (a[k] * cos + b[k] * sin + c[k] > 0) {
                sumA += a[k];
                sumB += b[k];
                sumC += c[k];
                fans.add(k);
            }
        }
        double load = Math.hypot(sumA, sumB) + sumC;
        return load > 0 ? new Subset(load, fans) : Subset.NONE;
    }
}
