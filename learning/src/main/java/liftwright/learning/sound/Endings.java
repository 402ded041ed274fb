package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Lines that end while the others go on, and where no line is left at their ratio. */
final class Endings {

    /** A line that ends this short before the others may just have been lost, s. */
    private static final double LEAST_S = 1;

    /** Share of windows with a line at its ratio above which it is taken to go on. */
    private static final double STILL = 0.25;

    private Endings() {}

    /**
     * @param fans of one type
     * @param trackers of the stretches in which they were followed
     * @param delayS that the sound took
     */
    static List<Event> of(List<FanSpeed> fans, List<Tracker> trackers, double delayS) {
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
                        events.add(new Event(fan.with(), at - half, at + 1.5 * half));
                    }
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
}
