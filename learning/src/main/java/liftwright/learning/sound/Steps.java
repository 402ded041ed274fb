package liftwright.learning.sound;

import java.util.Arrays;

/** Levels laid through what is heard, changed at most twice: least squares over all places. */
final class Steps {

    /** Changes looked at: none, one, two. */
    private static final int COUNT = 3;

    private final double[] sum;
    private final double[] squares;

    /**
     * @param course 0 where nothing is heard
     * @param stride only each of so many samples is looked at
     */
    Steps(double[] course, int stride) {
        double[] heard = new double[course.length / stride + 1];
        int count = 0;
        for (int i = 0; i < course.length; i += stride) {
            if (course[i] > 0) {
                heard[count++] = course[i];
            }
        }
        sum = new double[count + 1];
        squares = new double[count + 1];
        for (int k = 0; k < count; k++) {
            sum[k + 1] = sum[k] + heard[k];
            squares[k + 1] = squares[k] + heard[k] * heard[k];
        }
    }

    /** What is left of the squares with no change, with one, with two. */
    double[] left() {
        int count = sum.length - 1;
        double[] before = new double[count + 1];
        for (int to = 0; to <= count; to++) {
            before[to] = about(0, to);
        }
        double[] left = new double[COUNT];
        left[0] = before[count];
        for (int changes = 1; changes < COUNT; changes++) {
            double[] now = new double[count + 1];
            Arrays.fill(now, Double.POSITIVE_INFINITY);
            for (int to = 0; to <= count; to++) {
                for (int at = 0; at <= to; at++) {
                    now[to] = Math.min(now[to], before[at] + about(at, to));
                }
            }
            left[changes] = now[count];
            before = now;
        }
        return left;
    }

    /** Squares about the mean between two places. */
    private double about(int from, int to) {
        if (to == from) {
            return 0;
        }
        double all = sum[to] - sum[from];
        return Math.max(0, squares[to] - squares[from] - all * all / (to - from));
    }
}
