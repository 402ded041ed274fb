package liftwright.learning.replay;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A channel beside its prediction, block by block.
 *
 * @param watched what was measured
 * @param expectedSi at the declared values
 * @param lowSi lower end of the 95 % band of what its instrument shows
 * @param highSi upper end
 * @param lag how much later it moves than expected, which is taken out; empty where none was found
 * @param blocks how many of the blocks are judged: those that the plant reaches
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
public record Replayed(
        Watched watched,
        double[] expectedSi,
        double[] lowSi,
        double[] highSi,
        Optional<Lag> lag,
        int blocks) {

    /** A stay outside is told from so many blocks on... */
    private static final int LEAST_BLOCKS = 3;

    /** ...and this share of all. */
    private static final double LEAST_SHARE = 0.05;

    /** Measured less expected, SI. */
    public double residualSi(int block) {
        return watched.blocks().meansSi()[block] - expectedSi[block];
    }

    /** Whether a block's mean lies within the band. */
    public boolean isInside(int block) {
        double si = watched.blocks().meansSi()[block];
        return si >= lowSi[block] && si <= highSi[block];
    }

    /** Share of the blocks that lie within the band. */
    public double inside() {
        int inside = 0;
        for (int k = 0; k < blocks; k++) {
            inside += isInside(k) ? 1 : 0;
        }
        return blocks == 0 ? 1 : (double) inside / blocks;
    }

    /** Mean of the residuals, SI. */
    public double biasSi() {
        double sum = 0;
        for (int k = 0; k < blocks; k++) {
            sum += residualSi(k);
        }
        return blocks == 0 ? 0 : sum / blocks;
    }

    /** Standard deviation of the residuals about their mean, SI. */
    public double scatterSi() {
        double bias = biasSi();
        double sum = 0;
        for (int k = 0; k < blocks; k++) {
            sum += (residualSi(k) - bias) * (residualSi(k) - bias);
        }
        return blocks < 2 ? 0 : Math.sqrt(sum / (blocks - 1));
    }

    /** Correlation of each residual with the next, −1 to 1; 0 where they do not scatter. */
    public double correlation() {
        double bias = biasSi();
        double next = 0;
        double all = 0;
        for (int k = 0; k < blocks; k++) {
            double off = residualSi(k) - bias;
            all += off * off;
            next += k + 1 < blocks ? off * (residualSi(k + 1) - bias) : 0;
        }
        return all > 0 ? next / all : 0;
    }

    /**
     * From when on it stays outside its band for long enough to be told, on the clock of the
     * recording, s; empty where it does not.
     */
    public OptionalDouble outsideFromS() {
        int needed = Math.max(LEAST_BLOCKS, (int) Math.ceil(LEAST_SHARE * blocks));
        int stay = 0;
        for (int k = 0; k < blocks; k++) {
            stay = isInside(k) ? 0 : stay + 1;
            boolean untilTheEnd = k == blocks - 1 && stay >= Math.min(2, blocks);
            if (stay >= needed || untilTheEnd) {
                return OptionalDouble.of(watched.blocks().timesS()[k - stay + 1]);
            }
        }
        return OptionalDouble.empty();
    }
}
