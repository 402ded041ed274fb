package liftwright.learning.sound;

/**
 * Speed of something that turns, as heard, over moments that rise.
 *
 * @param timesS middles of windows by the recording's clock, s
 * @param ratio of its speed to the reference
 * @param speedRadS rad/s
 * @param sdRadS standard deviation of the speed without what all share (clock, Doppler), rad/s
 * @param level power over noise of its strongest harmonic, nepers, median
 * @param seen share of its windows in which it was seen
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never shown
record Trace(
        double[] timesS,
        double[] ratio,
        double[] speedRadS,
        double[] sdRadS,
        double level,
        double seen) {

    int size() {
        return timesS.length;
    }

    double firstS() {
        return timesS[0];
    }

    double lastS() {
        return timesS[timesS.length - 1];
    }

    double medianRatio() {
        return Line.median(ratio);
    }
}
