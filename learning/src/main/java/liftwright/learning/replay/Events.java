package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import liftwright.answer.Sentence;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.Measure;

/** Everything that happened in a recording, in the order of time. */
final class Events {

    /** Events of one part closer together than this are one, s. */
    private static final double ONE_S = 2;

    /** A recording that ends above this throttle ends under load. */
    private static final double LOAD = 0.15;

    private Events() {}

    /**
     * @param driven has followed the run at the declared values
     * @param channels beside their bands
     */
    static List<Event> in(Driven driven, List<Replayed> channels) {
        List<Event> found = new ArrayList<>();
        for (int k = 0; k < channels.size(); k++) {
            Track track = driven.watched().get(k).track();
            Series series = Series.of(driven, k);
            if (series.size() == 0) {
                continue;
            }
            found.addAll(PartEvents.of(driven, track, series));
            found.addAll(LimitEvents.of(driven.plant(), track, series));
            turning(channels.get(k)).ifPresent(found::add);
        }
        found.addAll(ThrottleEvents.of(driven));
        endsAtLoad(driven).ifPresent(found::add);
        found.sort(
                Comparator.comparingDouble(Event::timeS)
                        .thenComparing(Event::kind)
                        .thenComparing(Event::part));
        return merged(found);
    }

    /** What several channels show of one thing is told once, by the one that says most. */
    private static List<Event> merged(List<Event> all) {
        List<Event> told = new ArrayList<>();
        for (Event event : all) {
            boolean known =
                    told.stream()
                            .anyMatch(
                                    other ->
                                            event.timeS() - other.timeS() < ONE_S
                                                    && other.part().equals(event.part())
                                                    && same(other.kind(), event.kind()));
            if (known) {
                told.replaceAll(
                        other ->
                                event.timeS() - other.timeS() < ONE_S
                                                && other.part().equals(event.part())
                                                && same(other.kind(), event.kind())
                                                && event.kind().compareTo(other.kind()) < 0
                                        ? event
                                        : other);
            } else {
                told.add(event);
            }
        }
        return withoutFollowers(told);
    }

    private static final Set<Event.Kind> OF_A_FAN =
            new TreeSet<>(
                    Set.of(
                            Event.Kind.NEVER_TURNED,
                            Event.Kind.FAN_STOPPED,
                            Event.Kind.LOST_SPEED,
                            Event.Kind.CURRENT_GONE,
                            Event.Kind.LOST_CURRENT));

    private static boolean same(Event.Kind one, Event.Kind other) {
        return one == other || (OF_A_FAN.contains(one) && OF_A_FAN.contains(other));
    }

    /** A pack that gives less, or less thrust in all, because a fan stopped is no news. */
    private static List<Event> withoutFollowers(List<Event> told) {
        return told.stream()
                .filter(
                        event ->
                                !(event.kind() == Event.Kind.LOST_CURRENT
                                                || event.kind() == Event.Kind.LOST_SPEED)
                                        || told.stream().noneMatch(other -> leads(other, event)))
                .toList();
    }

    private static boolean leads(Event other, Event event) {
        return Math.abs(other.timeS() - event.timeS()) < ONE_S
                && !other.part().equals(event.part())
                && (other.kind() == Event.Kind.FAN_STOPPED
                        || other.kind() == Event.Kind.CURRENT_GONE);
    }

    private static Optional<Event> turning(Replayed channel) {
        Track track = channel.watched().track();
        OptionalDouble from = channel.outsideFromS();
        if (!Channels.turns(track.signal()) || from.isEmpty()) {
            return Optional.empty();
        }
        int block = 0;
        while (channel.watched().blocks().timesS()[block] < from.getAsDouble()) {
            block++;
        }
        return Optional.of(
                new Event(
                        Event.Kind.TURNING,
                        from.getAsDouble(),
                        Track.ALL,
                        track.name(),
                        Sentence.words(track.name() + " ")
                                .then(Measure.MOMENT, channel.watched().blocks().meansSi()[block])
                                .then(", expected between ")
                                .then(Measure.MOMENT, channel.lowSi()[block])
                                .then(" and ")
                                .then(Measure.MOMENT, channel.highSi()[block])));
    }

    private static Optional<Event> endsAtLoad(Driven driven) {
        double most = 0;
        for (int fan = 0; fan < driven.plant().rig().fans().size(); fan++) {
            most = Math.max(most, driven.throttle(fan, driven.toS()));
        }
        return most <= LOAD
                ? Optional.empty()
                : Optional.of(
                        new Event(
                                Event.Kind.ENDS_AT_LOAD,
                                driven.toS(),
                                Track.ALL,
                                Signal.THROTTLE.word(),
                                Sentence.words("the last throttle is ")
                                        .then(Measure.PERCENT, most)
                                        .then(
                                                ": what came after is not in it; a recording cut"
                                                        + " off by a failure looks like this")));
    }
}
