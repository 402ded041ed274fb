package liftwright.learning.explain;

/**
 * Sizes of a cause, evenly in their logarithm: every octave between the least and the most is as
 * likely, and a grid may cover a part of them.
 *
 * @param sign of all sizes
 * @param fromLog where it begins, ln of the amount
 * @param toLog where it ends; equal where the cause has one size
 * @param size how many
 * @param logShare ln of the share of the prior that each stands for
 */
record Grid(double sign, double fromLog, double toLog, int size, double logShare) {

    static Grid whole(Hypothesis hypothesis, int count) {
        double most = Math.abs(hypothesis.most());
        if (!hypothesis.isSized()) {
            return new Grid(Math.signum(hypothesis.most()), Math.log(most), Math.log(most), 1, 0);
        }
        double least = Math.min(hypothesis.least(), most / 2);
        return new Grid(
                Math.signum(hypothesis.most()),
                Math.log(least),
                Math.log(most),
                count,
                -Math.log(count));
    }

    double at(int k) {
        return sign * Math.exp(fromLog + (toLog - fromLog) * (k + 0.5) / size);
    }

    /** As many between two of them, these and one more to either side included. */
    Grid within(int from, int to) {
        if (size == 1) {
            return this;
        }
        int low = Math.max(0, from - 1);
        int high = Math.min(size - 1, to + 1);
        double step = (toLog - fromLog) / size;
        double part = (high - low + 1.0) / size;
        return new Grid(
                sign,
                fromLog + low * step,
                fromLog + (high + 1) * step,
                size,
                logShare + Math.log(part));
    }
}
