package liftwright.learning.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.learning.explain.Explained;
import liftwright.learning.replay.Event;
import liftwright.learning.replay.Lag;
import liftwright.learning.replay.Replay;
import liftwright.learning.replay.Replayed;
import liftwright.learning.replay.Unread;
import liftwright.plant.recording.Track;
import liftwright.quantity.Measure;

/** What a builder should know of a test. */
final class LearningFindings {

    /** More channels than these are told as a number. */
    private static final int MOST_CHANNELS = 6;

    private LearningFindings() {}

    static List<Finding> of(Replay replay, Explained explained) {
        List<Finding> found = new ArrayList<>();
        replay.events().forEach(event -> found.add(event(event)));
        found.addAll(channels(replay));
        lags(replay.lags()).ifPresent(found::add);
        if (replay.wentS() < replay.driven().toS() - 1e-6) {
            found.add(
                    Finding.of(
                            Severity.WARNS,
                            "replay-ended",
                            Sentence.words("the plant cannot go on after ")
                                    .then(Measure.TIME, replay.wentS())
                                    .then(" of the recording: what comes later is not judged"),
                            "a cell is empty by then, or there is no operating point"));
        }
        for (Unread unread : replay.driven().unread()) {
            if (!drives(unread)) {
                found.add(
                        Finding.of(
                                Severity.NOTES,
                                "channel-not-predicted",
                                Sentence.words(unread.track().name() + " is not predicted"),
                                unread.why()));
            }
        }
        explained
                .notes()
                .forEach(
                        note ->
                                found.add(
                                        Finding.of(
                                                Severity.NOTES,
                                                "cause-note",
                                                Sentence.words(note),
                                                "told with the causes")));
        found.sort(Comparator.comparing(Finding::severity));
        return Folded.of(found);
    }

    private static boolean drives(Unread unread) {
        return switch (unread.track().signal()) {
            case THROTTLE, AIR_TEMPERATURE, AIR_PRESSURE, HUMIDITY -> true;
            default -> false;
        };
    }

    private static Finding event(Event event) {
        boolean whole = event.part().equals(Track.ALL);
        Severity severity =
                LearningVerdict.fails(event)
                        ? Severity.STOPS
                        : event.kind().isFault() ? Severity.WARNS : Severity.NOTES;
        return Finding.of(
                        severity,
                        "event-" + event.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        Sentence.words((whole ? "" : event.part() + ": ") + event.kind().words())
                                .then(" at ")
                                .then(Measure.TIME, event.timeS())
                                .then("; ")
                                .then(event.evidence()),
                        "read off the recording, held against the noise of that channel")
                .about(whole ? Optional.empty() : Optional.of(event.part()));
    }

    private static List<Finding> channels(Replay replay) {
        List<Finding> found = new ArrayList<>();
        int more = 0;
        List<Replayed> outside =
                replay.channels().stream()
                        .filter(channel -> channel.outsideFromS().isPresent())
                        .sorted(Comparator.comparingDouble(Replayed::inside))
                        .toList();
        for (Replayed channel : outside) {
            if (found.size() == MOST_CHANNELS) {
                more++;
                continue;
            }
            Track track = channel.watched().track();
            found.add(
                    Finding.of(
                                    Severity.WARNS,
                                    "channel-outside",
                                    Sentence.words(track.name() + " leaves its band from ")
                                            .then(
                                                    Measure.TIME,
                                                    channel.outsideFromS().getAsDouble())
                                            .then(" on"),
                                    "declared doubt, instrument and what the model leaves out do"
                                            + " not explain it")
                            .about(
                                    track.of().equals(Track.ALL)
                                            ? Optional.empty()
                                            : Optional.of(track.of()))
                            .judging(ChannelWords.off(track.signal(), channel.biasSi())));
        }
        if (more > 0) {
            found.add(
                    Finding.of(
                            Severity.WARNS,
                            "channels-outside",
                            Sentence.words(more + " more channels leave their bands"),
                            "they stand in the table of channels"));
        }
        return found;
    }

    /** One for all: a rig spools up in all its channels at once. */
    private static Optional<Finding> lags(List<Lag> lags) {
        if (lags.isEmpty()) {
            return Optional.empty();
        }
        double[] lagsS = lags.stream().mapToDouble(Lag::lagS).sorted().toArray();
        String which =
                lags.size() > MOST_CHANNELS
                        ? lags.size() + " channels come "
                        : lags.stream().map(Lag::channel).collect(Collectors.joining(", "))
                                + (lags.size() == 1 ? " comes " : " come ");
        Sentence from = Sentence.words(which).then(Measure.TIME, lagsS[0]);
        Sentence by =
                lags.size() == 1
                        ? from
                        : from.then(" to ").then(Measure.TIME, lagsS[lagsS.length - 1]);
        return Optional.of(
                Finding.of(
                        Severity.NOTES,
                        "channel-late",
                        by.then(
                                " later than the throttle: rotors that spool up, or clocks that differ"),
                        "found by sliding one along the other; taken out before they are compared"));
    }
}
