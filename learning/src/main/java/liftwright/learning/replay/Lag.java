package liftwright.learning.replay;

import java.util.Optional;

/**
 * How much later than expected a channel moves: a rotor that needs time to spool up, or clocks that
 * differ.
 *
 * @param channel its name
 * @param lagS later than expected; below 0 where it is earlier, s
 * @param left what scatter is left with it, over that without, 0 to 1
 */
public record Lag(String channel, double lagS, double left) {

    /** Farther apart than this, files belong aligned by their own start. */
    private static final double FARTHEST_S = 3;

    /** A lag is told where it takes so much of the squares away. */
    private static final double WORTH = 0.7;

    /** And where the channel then follows what is expected so well. */
    private static final double FOLLOWS = 0.9;

    private static final double FINEST_S = 0.05;

    /** That of a channel; empty where none is found. */
    static Optional<Lag> of(Driven driven, int channel) {
        Series series = Series.of(driven, channel);
        double stepS = Math.max(FINEST_S, series.everyS());
        if (series.size() < 30 || stepS > FARTHEST_S / 3) {
            return Optional.empty();
        }
        double none = left(driven, channel, series, 0);
        double best = none;
        double at = 0;
        int steps = (int) Math.floor(FARTHEST_S / stepS);
        for (int k = -steps; k <= steps; k++) {
            double left = left(driven, channel, series, k * stepS);
            if (left < best) {
                best = left;
                at = k * stepS;
            }
        }
        return best < WORTH * none && best < 1 - FOLLOWS && Math.abs(at) > stepS / 2
                ? Optional.of(
                        new Lag(driven.watched().get(channel).track().name(), at, best / none))
                : Optional.empty();
    }

    /** Squares left of a straight line of the expected onto the measured, over all squares. */
    private static double left(Driven driven, int channel, Series series, double lagS) {
        int n = series.size();
        double[] e = new double[n];
        double meanE = 0;
        double meanM = 0;
        for (int k = 0; k < n; k++) {
            e[k] = driven.at(channel, series.timesS()[k] - lagS);
            meanE += e[k] / n;
            meanM += series.measuredSi()[k] / n;
        }
        double ee = 0;
        double em = 0;
        double mm = 0;
        for (int k = 0; k < n; k++) {
            double de = e[k] - meanE;
            double dm = series.measuredSi()[k] - meanM;
            ee += de * de;
            em += de * dm;
            mm += dm * dm;
        }
        return ee > 0 && mm > 0 ? Math.max(0, 1 - em * em / (ee * mm)) : 1;
    }
}
