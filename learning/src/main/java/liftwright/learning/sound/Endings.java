package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Lines that end while the others go on, and where no line is left at their ratio. */
final class Endings {

    /** A line that ends this short before the others may just have been lost, s. */
    private static final double LEAST_S = 1;

    /** Share of windows with a line at its ratio above which it is taken to go on. */
    private static final double STILL = 0.25;

    /** An echo keeps a line alive for as long, from memory of rooms, s. */
    private static final double ECHO_S = 0.15;

    private Endings() {}

    /** While all change their speed by more than this, any line may be lost. */
    private static final double STEADY = 1.08;

    /**
     * @param fans of one type, as far as they are heard
     * @param voices all of that type that ran
     * @param trackers of the stretches in which they were followed
     * @param delayS that the sound took
     */
    static List<Event> of(
            List<FanSpeed> fans, List<Voice> voices, List<Tracker> trackers, double delayS) {
        var events = new ArrayList<Event>();
        for (FanSpeed fan : fans) {
            for (int k = 0; fan.alone() && k < fan.size(); k++) {
                double at = fan.timesS()[k];
                boolean last = k + 1 == fan.size() || fan.timesS()[k + 1] > at + LEAST_S;
                if (last && beside(fan, fans, at) && gone(fan, k, trackers, delayS)) {
                    events.add(event(fan, at, fans, voices));
                }
            }
        }
        // One that gives up does not take others with it: then it is not told which of them it was.
        for (int k = 0; k + 1 < events.size(); k++) {
            for (int n = k + 1; n < events.size(); n++) {
                if (Math.abs(events.get(k).fromS() - events.get(n).fromS()) < Listening.WINDOW_S) {
                    return List.of();
                }
            }
        }
        // What takes several lines at one moment may as well be the reference that broke.
        long claimed = fans.stream().filter(FanSpeed::alone).count();
        if (events.size() > 1 && 2L * events.size() > claimed) {
            return List.of();
        }
        events.sort(Comparator.comparingDouble(Event::fromS));
        return events;
    }

    private static Event event(
            FanSpeed ended, double lastS, List<FanSpeed> fans, List<Voice> voices) {
        double half = Listening.WINDOW_S / 2;
        Set<String> goOn = goOn(ended, lastS, fans);
        boolean sure = goOn.size() >= 2;
        List<String> whose =
                voices.stream()
                        .map(Voice::fan)
                        .filter(fan -> !sure || !goOn.contains(fan))
                        .toList();
        // Where the rest tell no ratio, a window that reaches beyond the end may have lost the
        // line.
        double laterS = sure ? 1.5 * half : 1.5 * half + Listening.WINDOW_S;
        return new Event(whose, lastS - half - ECHO_S, lastS + laterS);
    }

    /** Whether nothing is left of a fan's line after one of its windows, while the others go on. */
    private static boolean gone(FanSpeed fan, int window, List<Tracker> trackers, double delayS) {
        double lastS = fan.timesS()[window] + delayS;
        double half = Listening.WINDOW_S / 2;
        for (Tracker tracker : trackers) {
            if (lastS >= tracker.fromS() && lastS <= tracker.toS()) {
                double ratio = tracker.ratio(fan.speedRadS()[window], lastS);
                double untilS = Math.min(tracker.toS() - 2 * half, lastS + 3);
                return untilS - lastS > LEAST_S
                        && tracker.goesOn(lastS, untilS)
                        && tracker.changes(lastS - half, lastS + LEAST_S) < STEADY
                        && tracker.present(ratio, lastS + 3 * half, untilS) < STILL;
            }
        }
        return false;
    }

    /**
     * Whether another fan was followed by itself until then or longer: a line that is alone is what
     * it is measured against, and its end may as well be that one's.
     */
    private static boolean beside(FanSpeed ended, List<FanSpeed> fans, double lastS) {
        return fans.stream()
                .anyMatch(
                        fan ->
                                !fan.voice().equals(ended.voice())
                                        && heard(fan, lastS - LEAST_S, lastS));
    }

    private static boolean heard(FanSpeed fan, double fromS, double toS) {
        return fan.alone() && Arrays.stream(fan.timesS()).anyMatch(t -> t > fromS && t < toS);
    }

    /**
     * Fans that are heard by themselves soon after a line ended. The line is of none of them, where
     * there are two at least to tell ratios by; of the rest any may be meant, for lines can change
     * owners.
     */
    private static Set<String> goOn(FanSpeed ended, double lastS, List<FanSpeed> fans) {
        Set<String> goOn = new HashSet<>();
        for (FanSpeed fan : fans) {
            if (!fan.voice().equals(ended.voice())
                    && heard(fan, lastS + LEAST_S / 2, lastS + 2 * LEAST_S)) {
                goOn.add(fan.voice().fan());
            }
        }
        return goOn;
    }
}
