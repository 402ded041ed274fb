package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.Measure;

/** A throttle at a fan that leaves the one that was commanded for all. */
final class ThrottleEvents {

    /** A smaller difference is one of scale, not of command. */
    private static final double LEAST = 0.05;

    private static final double SIGMAS = 6;

    /** A difference stays for so long, s. */
    private static final double STAYS_S = 0.5;

    private ThrottleEvents() {}

    /** None where a flight computer gives each fan a throttle of its own. */
    static List<Event> of(Driven driven) {
        List<Event> found = new ArrayList<>();
        Recording recording = driven.recording();
        Optional<Track> all = recording.track(Signal.THROTTLE, Track.ALL);
        boolean shared =
                switch (driven.plant().rig().control().kind()) {
                    case SHARED_THROTTLE -> true;
                    case FLIGHT_COMPUTER -> false;
                };
        if (all.isEmpty() || !shared) {
            return found;
        }
        for (Track track : recording.all(Signal.THROTTLE)) {
            if (!track.equals(all.get())) {
                leaves(track, all.get()).ifPresent(found::add);
            }
        }
        return found;
    }

    private static Optional<Event> leaves(Track own, Track all) {
        Samples of = own.samples();
        Samples command = all.samples();
        double least =
                Math.max(
                        LEAST,
                        SIGMAS
                                * Math.hypot(
                                        Noise.of(Bands.values(of)),
                                        Noise.of(Bands.values(command))));
        int from = -1;
        for (int k = 0; k < of.size(); k++) {
            double timeS = of.timeS(k);
            boolean beside = timeS >= command.firstS() && timeS <= command.lastS();
            double off = beside ? of.si(k) - command.at(timeS) : 0;
            if (Math.abs(off) <= least) {
                from = -1;
                continue;
            }
            from = from < 0 ? k : from;
            if (timeS - of.timeS(from) >= STAYS_S) {
                return Optional.of(event(own, of.timeS(from), of.si(k), command.at(timeS), least));
            }
        }
        return Optional.empty();
    }

    private static Event event(
            Track own, double timeS, double share, double commanded, double least) {
        return new Event(
                Event.Kind.THROTTLE_MOVED,
                timeS,
                own.of(),
                own.name(),
                Sentence.words(own.name() + " ")
                        .then(Measure.PERCENT, share)
                        .then(" while ")
                        .then(Measure.PERCENT, commanded)
                        .then(" was commanded; told from a difference of ")
                        .then(Measure.PERCENT, least)
                        .then(" on"));
    }
}
