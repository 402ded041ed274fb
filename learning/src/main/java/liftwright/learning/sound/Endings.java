package liftwright.learning.sound;

import java.util.ArrayList;
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

    private Endings() {}

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
            double lastS = fan.timesS()[fan.size() - 1] + delayS;
            for (Tracker tracker : trackers) {
                if (fan.alone() && lastS >= tracker.fromS() && lastS <= tracker.toS()) {
                    double half = Listening.WINDOW_S / 2;
                    double ratio = tracker.ratio(fan.speedRadS()[fan.size() - 1], lastS);
                    double untilS = Math.min(tracker.toS() - 2 * half, lastS + 3);
                    boolean gone =
                            untilS - lastS > LEAST_S
                                    && tracker.goesOn(lastS, untilS)
                                    && tracker.present(ratio, lastS + 3 * half, untilS) < STILL;
                    if (gone) {
                        double at = lastS - delayS;
                        events.add(new Event(whose(fan, fans, voices), at - half, at + 1.5 * half));
                    }
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

    /**
     * Whose line ended: with it all that are not heard by themselves after it, for lines can change
     * owners; and all there are where fewer than two go on to tell ratios by.
     */
    private static List<String> whose(FanSpeed ended, List<FanSpeed> fans, List<Voice> voices) {
        double lastS = ended.timesS()[ended.size() - 1];
        Set<String> goOn = new HashSet<>();
        for (FanSpeed fan : fans) {
            if (fan.alone() && fan.timesS()[fan.size() - 1] > lastS + LEAST_S / 2) {
                goOn.add(fan.voice().fan());
            }
        }
        return voices.stream()
                .map(Voice::fan)
                .filter(fan -> goOn.size() < 2 || !goOn.contains(fan))
                .toList();
    }
}
