package liftwright.logbook.ask;

import java.util.ArrayList;
import java.util.List;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;

/** Stretches of a test in which the throttle stood still. */
final class Steps {

    /** A throttle within this of the step's mean stands still, share. */
    static final double STILL = 0.01;

    /** Shorter ones are no steps, s. */
    static final double LEAST_S = 1.0;

    /**
     * The first of a step is left out, for the rotors to settle: so much of it, at most a second.
     */
    private static final double SETTLING_SHARE = 0.25;

    private static final double SETTLING_MOST_S = 1.0;

    private Steps() {}

    /**
     * A step without its beginning.
     *
     * @param fromS on the clock of the test, s
     * @param toS likewise
     * @param throttle its level, share; 0 where none was recorded
     */
    record Step(double fromS, double toS, double throttle) {}

    /** In the order of time; the whole test where no throttle was recorded. */
    static List<Step> of(Recording recording) {
        List<Track> throttles = recording.all(Signal.THROTTLE);
        if (throttles.isEmpty()) {
            return whole(recording);
        }
        Samples times = throttles.getFirst().samples();
        var steps = new ArrayList<Step>();
        int from = 0;
        double sum = 0;
        for (int k = 0; k <= times.size(); k++) {
            double level = k < times.size() ? level(throttles, times.timeS(k)) : Double.NaN;
            boolean goesOn =
                    k < times.size() && (k == from || Math.abs(level - sum / (k - from)) <= STILL);
            if (!goesOn) {
                add(steps, times.timeS(from), times.timeS(k - 1), sum / (k - from));
                from = k;
                sum = 0;
            }
            sum += level;
        }
        return steps;
    }

    private static void add(List<Step> steps, double fromS, double toS, double throttle) {
        if (toS - fromS >= LEAST_S) {
            double settling = Math.min(SETTLING_MOST_S, SETTLING_SHARE * (toS - fromS));
            steps.add(new Step(fromS + settling, toS, throttle));
        }
    }

    /** Mean of all throttles at a time; before and after a track its ends hold. */
    private static double level(List<Track> throttles, double timeS) {
        double sum = 0;
        for (Track track : throttles) {
            Samples samples = track.samples();
            sum += samples.si(Math.max(0, samples.upTo(timeS)));
        }
        return sum / throttles.size();
    }

    private static List<Step> whole(Recording recording) {
        double from =
                recording.tracks().stream().mapToDouble(t -> t.samples().firstS()).min().orElse(0);
        double to =
                recording.tracks().stream().mapToDouble(t -> t.samples().lastS()).max().orElse(0);
        return recording.tracks().isEmpty() ? List.of() : List.of(new Step(from, to, 0));
    }

    /** A step of one test and one of another at the same throttle. */
    record Pair(Step first, Step second) {}

    /** Steps of two tests in their order: those at the same throttle belong together. */
    static List<Pair> pairs(List<Step> first, List<Step> second) {
        var pairs = new ArrayList<Pair>();
        int next = 0;
        for (Step step : first) {
            for (int k = next; k < second.size(); k++) {
                if (Math.abs(second.get(k).throttle() - step.throttle()) <= 2 * STILL) {
                    pairs.add(new Pair(step, second.get(k)));
                    next = k + 1;
                    break;
                }
            }
        }
        return pairs;
    }
}
