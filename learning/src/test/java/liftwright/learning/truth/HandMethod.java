package liftwright.learning.truth;

import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Fan;
import liftwright.rig.FanType;

/**
 * What a builder does with a pencil: every fan gives its rated thrust times the square of the
 * throttle, as momentum theory has it where speed goes with throttle; what the load cell shows less
 * is missing.
 */
final class HandMethod {

    private HandMethod() {}

    /**
     * Missing lift, on average over the moments with at least four fifths of the most that was
     * promised.
     */
    static double missingN(SimulatedTest test) {
        Samples first =
                test.recording().all(Signal.THRUST).stream().findFirst().orElseThrow().samples();
        double most = 0;
        for (int k = 0; k < first.size(); k++) {
            most = Math.max(most, ratedN(test, first.timeS(k)));
        }
        double sum = 0;
        int count = 0;
        for (int k = 0; k < first.size(); k++) {
            double timeS = first.timeS(k);
            double rated = ratedN(test, timeS);
            if (rated >= 0.8 * most) {
                sum += rated - shownN(test, timeS);
                count++;
            }
        }
        return sum / Math.max(1, count);
    }

    private static double shownN(SimulatedTest test, double timeS) {
        double sum = 0;
        for (Track track : test.recording().all(Signal.THRUST)) {
            sum += track.samples().si(Math.max(0, track.samples().upTo(timeS)));
        }
        return sum;
    }

    private static double ratedN(SimulatedTest test, double timeS) {
        double sum = 0;
        for (int k = 0; k < test.rig().fans().size(); k++) {
            Fan fan = test.rig().fans().get(k);
            var rated = (FanType.Performance.AtSpeed) fan.type().performance();
            double throttle = test.profile().at(k, timeS);
            sum += rated.thrust().si() * fan.type().installation().si() * throttle * throttle;
        }
        return sum;
    }
}
