package liftwright.learning.sound;

/**
 * A smooth scale of speed over one stretch of sound, against which single fans turn at nearly
 * constant ratios. What is measured against it does not depend on how well it follows: its phase is
 * known exactly, and only what changes within a window smears.
 */
final class Reference {

    private final double fromS;
    private final double stepS;
    private final double[] scale;
    private final double[] turns;

    /**
     * @param fromS time of the first value, s
     * @param stepS between values, s
     * @param scale &gt; 0, at least two values
     */
    Reference(double fromS, double stepS, double[] scale) {
        this.fromS = fromS;
        this.stepS = stepS;
        this.scale = scale.clone();
        turns = new double[scale.length];
        for (int k = 1; k < scale.length; k++) {
            turns[k] = turns[k - 1] + stepS * (scale[k - 1] + scale[k]) / 2;
        }
    }

    /**
     * Frames {@code from} to {@code to} of a curve, smoothed over {@code reach} frames to each
     * side.
     */
    static Reference of(CommonCurve curve, int from, int to, int reach) {
        double[] logs = logs(curve, from, to);
        double[] scale = new double[to - from];
        for (int k = from; k < to; k++) {
            double sum = 0;
            double weights = 0;
            int wide = Math.min(reach, Math.min(k - from, to - 1 - k));
            for (int j = k - wide; j <= k + wide; j++) {
                double weight = 1 + Math.cos(Math.PI * (j - k) / (wide + 1.0));
                sum += weight * logs[j - from];
                weights += weight;
            }
            scale[k - from] = Math.exp(sum / weights);
        }
        return new Reference(curve.timeS(from), curve.timeS(from + 1) - curve.timeS(from), scale);
    }

    /** Short silence within a stretch is bridged. */
    private static double[] logs(CommonCurve curve, int from, int to) {
        double[] logs = new double[to - from];
        int before = -1;
        for (int k = 0; k < logs.length; k++) {
            if (curve.scale(from + k) == 0) {
                continue;
            }
            logs[k] = Math.log(curve.scale(from + k));
            for (int j = before + 1; before >= 0 && j < k; j++) {
                logs[j] = logs[before] + (logs[k] - logs[before]) * (j - before) / (k - before);
            }
            before = k;
        }
        return logs;
    }

    double fromS() {
        return fromS;
    }

    double toS() {
        return fromS + stepS * (scale.length - 1);
    }

    double stepS() {
        return stepS;
    }

    int size() {
        return scale.length;
    }

    double scaleAt(double timeS) {
        double place = place(timeS);
        int k = (int) place;
        return scale[k] + (place - k) * (scale[k + 1] - scale[k]);
    }

    /** Integral of the scale since its start, s. */
    double turnsAt(double timeS) {
        double place = place(timeS);
        int k = (int) place;
        double part = place - k;
        return turns[k] + stepS * part * (scale[k] + part * (scale[k + 1] - scale[k]) / 2);
    }

    double highest() {
        double most = 0;
        for (double value : scale) {
            most = Math.max(most, value);
        }
        return most;
    }

    private double place(double timeS) {
        return Math.max(0, Math.min(scale.length - 1.000_001, (timeS - fromS) / stepS));
    }
}
