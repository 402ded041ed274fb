package liftwright.learning.correct;

import java.util.Arrays;
import liftwright.learning.replay.Watched;
import liftwright.numerics.PositiveDefinite;

/**
 * One channel of one test: what makes measured and predicted blocks differ although every number is
 * right. Scatter is each block's own. The instrument's offset and gain are the same for all blocks.
 * What the model leaves out, k = 2, goes half with all blocks alike and half with each alone, since
 * nothing tells how it goes over time.
 */
final class Channel {

    /** Freedoms of Student's t, by which a block far off loses its weight. */
    private static final double FREEDOMS = 4;

    /** Least scatter over the greatest reading: no channel is exact. */
    private static final double LEAST = 1e-4;

    private final Watched watched;
    private final double[] weight;
    private PositiveDefinite factor;

    Channel(Watched watched) {
        this.watched = watched;
        weight = new double[watched.blocks().size()];
        Arrays.fill(weight, 1);
        factor = PositiveDefinite.of(covariance(), size());
    }

    int size() {
        return weight.length;
    }

    String name() {
        return watched.track().name();
    }

    private double own(int block) {
        double[] means = watched.blocks().meansSi();
        double greatest = 0;
        for (double mean : means) {
            greatest = Math.max(greatest, Math.abs(mean));
        }
        double scatter =
                watched.blocks().scatterSi()[block]
                        / Math.sqrt(Math.max(1, watched.blocks().counts()[block]));
        return Math.hypot(Math.hypot(scatter, LEAST * greatest + 1e-12), half(block));
    }

    /** Half the variance of what is left out. */
    private double half(int block) {
        double[] means = watched.blocks().meansSi();
        return watched.leftOutSi(means[block] - means[0]) / 2 / Math.sqrt(2);
    }

    private double[] covariance() {
        int n = size();
        double[] means = watched.blocks().meansSi();
        double offset = watched.track().errorSi() / 2;
        double gain = watched.track().errorShare() / 2;
        double[] covariance = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i * n + j] =
                        offset * offset
                                + gain * gain * means[i] * means[j]
                                + half(i) * half(j);
            }
            double own = own(i);
            covariance[i * n + i] += own * own / weight[i];
        }
        return covariance;
    }

    /** Measured less predicted, whitened. */
    void residual(double[] predicted, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] = watched.blocks().meansSi()[i] - predicted[i];
        }
        factor.whiten(out);
    }

    void whiten(double[] column) {
        factor.whiten(column);
    }

    /** Takes weight from blocks that lie far off by themselves; how many lost more than half. */
    int weigh(double[] predicted) {
        int n = size();
        double[] off = new double[n];
        for (int i = 0; i < n; i++) {
            off[i] = watched.blocks().meansSi()[i] - predicted[i];
        }
        double[] sorted = off.clone();
        Arrays.sort(sorted);
        double middle = sorted[n / 2];
        int lost = 0;
        for (int i = 0; i < n; i++) {
            double t = (off[i] - middle) / Math.hypot(own(i), half(i));
            weight[i] = (FREEDOMS + 1) / (FREEDOMS + t * t);
            weight[i] = Math.min(1, weight[i]);
            lost += weight[i] < 0.5 ? 1 : 0;
        }
        factor = PositiveDefinite.of(covariance(), n);
        return lost;
    }

    /** Root mean square of measured less predicted, SI. */
    double rmsSi(double[] predicted) {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            double off = watched.blocks().meansSi()[i] - predicted[i];
            sum += off * off;
        }
        return Math.sqrt(sum / size());
    }
}
