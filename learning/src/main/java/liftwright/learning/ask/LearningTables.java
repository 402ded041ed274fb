package liftwright.learning.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.answer.Section;
import liftwright.answer.Section.Strips;
import liftwright.answer.Section.Table;
import liftwright.answer.Section.Waterfall;
import liftwright.answer.Value;
import liftwright.learning.explain.Attribution;
import liftwright.learning.explain.Explained;
import liftwright.learning.explain.NextTest;
import liftwright.learning.replay.Blocks;
import liftwright.learning.replay.Event;
import liftwright.learning.replay.MissingLift;
import liftwright.learning.replay.Replay;
import liftwright.learning.replay.Replayed;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.Band;

/** Tables and pictures of what a test taught. */
final class LearningTables {

    private static final String PREDICTED = "predicted";

    /** What is known of a day before anything turns. */
    private static final String AS_FOUND = "with charge and air as the log found them";

    /** More strips than these nobody looks at: those that leave their bands come first. */
    private static final int MOST_STRIPS = 24;

    private LearningTables() {}

    static Strips strips(Replay replay) {
        List<Strips.Strip> strips =
                ordered(replay).stream().limit(MOST_STRIPS).map(LearningTables::strip).toList();
        List<Strips.Event> events =
                replay.events().stream()
                        .map(
                                event ->
                                        new Strips.Event(
                                                event.timeS(),
                                                event.kind().words(),
                                                event.part().equals(Track.ALL) ? "" : event.part()))
                        .toList();
        return new Strips("strips", "Measured beside predicted", strips, events);
    }

    /** Lift first, then what leaves its band, then the rest as it was recorded. */
    private static List<Replayed> ordered(Replay replay) {
        List<Replayed> all = new ArrayList<>(replay.channels());
        all.sort((one, other) -> Integer.compare(rank(one), rank(other)));
        return all;
    }

    private static int rank(Replayed channel) {
        Track track = channel.watched().track();
        boolean lift =
                track.of().equals(Track.ALL)
                        && (track.signal() == Signal.THRUST
                                || track.signal() == Signal.SCALE
                                || track.signal() == Signal.TETHER_LOAD);
        return lift ? 0 : channel.outsideFromS().isPresent() ? 1 : 2;
    }

    private static Strips.Strip strip(Replayed channel) {
        Track track = channel.watched().track();
        Blocks blocks = channel.watched().blocks();
        int judged = Math.max(1, channel.blocks());
        List<Double> times = new ArrayList<>();
        List<Double> measured = new ArrayList<>();
        List<Double> expected = new ArrayList<>();
        List<Double> low = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        for (int k = 0; k < judged; k++) {
            times.add(blocks.timesS()[k]);
            measured.add(blocks.meansSi()[k]);
            expected.add(channel.expectedSi()[k]);
            low.add(channel.lowSi()[k]);
            high.add(channel.highSi()[k]);
        }
        return new Strips.Strip(
                track.name(),
                ChannelWords.field(track.signal()),
                track.of(),
                track.name(),
                times,
                measured,
                expected,
                low,
                high);
    }

    static Table channels(Replay replay) {
        List<List<Value>> rows = new ArrayList<>();
        for (Replayed channel : ordered(replay)) {
            Signal signal = channel.watched().track().signal();
            OptionalDouble from = channel.outsideFromS();
            rows.add(
                    List.of(
                            Value.words("replayed-channel", channel.watched().track().name()),
                            Value.words(
                                    "channel-standing",
                                    from.isEmpty()
                                            ? "within its band"
                                            : String.format(
                                                    Locale.ROOT,
                                                    "outside from %.1f s on",
                                                    from.getAsDouble())),
                            Value.of("channel-inside", channel.inside()),
                            ChannelWords.off(signal, channel.biasSi()),
                            ChannelWords.off(signal, channel.scatterSi()),
                            Value.of("channel-correlation", channel.correlation())));
        }
        return new Table(
                "channels",
                "Each channel beside its prediction",
                List.of(
                        "replayed-channel",
                        "channel-standing",
                        "channel-inside",
                        "channel-bias",
                        "channel-scatter",
                        "channel-correlation"),
                rows);
    }

    /** None where nothing happened. */
    static Optional<Table> events(Replay replay) {
        List<List<Value>> rows = new ArrayList<>();
        for (Event event : replay.events()) {
            rows.add(
                    List.of(
                            Value.of("happened-at", event.timeS()),
                            Value.words("part", event.part().equals(Track.ALL) ? "" : event.part()),
                            Value.words("happened", event.kind().words()),
                            Value.words("happened-on", event.channel())));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Table(
                                "events",
                                "What happened, in the order of time",
                                List.of("happened-at", "part", "happened", "happened-on"),
                                rows));
    }

    /** From what was predicted to what was measured. */
    static Waterfall attribution(MissingLift lift, Explained explained) {
        Attribution shares = explained.attribution();
        List<Waterfall.Step> steps = new ArrayList<>();
        for (Attribution.Share share : shares.shares()) {
            steps.add(
                    new Waterfall.Step(
                            share.group().words(),
                            Value.of(
                                    "lift-missing",
                                    -share.missingN(),
                                    band(-share.highN(), -share.lowN())),
                            ""));
        }
        boolean shared = !steps.isEmpty();
        if (!shared) {
            steps.add(
                    new Waterfall.Step(
                            "not shared out",
                            Value.of(
                                    "lift-missing",
                                    -lift.missingN(),
                                    band(-lift.band().high(), -lift.band().low())),
                            "the causes are listed below with what each would take"));
        }
        return new Waterfall(
                "missing-lift",
                "Where the missing lift went",
                new Waterfall.Step(
                        shared ? "as declared" : PREDICTED,
                        Value.of("lift-promised", shared ? shares.predictedN() : lift.predictedN()),
                        shared ? "with packs as full as the rig file says" : AS_FOUND),
                steps,
                new Waterfall.Step(
                        "measured",
                        Value.of("lift-measured", shared ? shares.measuredN() : lift.measuredN()),
                        lift.channel()),
                new Waterfall.Step(
                        PREDICTED, Value.of("lift-promised", lift.predictedN()), AS_FOUND));
    }

    private static Band band(double low, double high) {
        return new Band(
                Math.min(low, high), Math.max(low, high), 0.95, "posterior of the causes", 0, 0);
    }

    static Table causes(Explained explained) {
        List<List<Value>> rows = new ArrayList<>();
        for (Explained.Weighed weighed : explained.ranked()) {
            rows.add(
                    List.of(
                            Value.words("why-cause", weighed.cause().kind().words()),
                            Value.words("part", weighed.cause().part()),
                            Value.of("why-share", weighed.share()),
                            weighed.cause().kind().isNamed()
                                    ? Value.of(
                                            "why-takes",
                                            weighed.sizeN(),
                                            new Band(
                                                    Math.min(weighed.lowN(), weighed.highN()),
                                                    Math.max(weighed.lowN(), weighed.highN()),
                                                    0.90,
                                                    "posterior of the cause",
                                                    0,
                                                    0))
                                    : Value.words("why-takes", ""),
                            Value.words("why-size", weighed.size()),
                            Value.of("why-evidence", weighed.logFactor())));
        }
        return new Table(
                "causes",
                "Causes held against the readings, most probable first",
                List.of("why-cause", "part", "why-share", "why-takes", "why-size", "why-evidence"),
                rows);
    }

    /** None where no test is worth proposing. */
    static Optional<Section> next(Explained explained) {
        List<List<Value>> rows = new ArrayList<>();
        for (NextTest next : explained.next()) {
            rows.add(
                    List.of(
                            Value.words("next-test", next.words()),
                            Value.words("next-tells", next.tells()),
                            Value.of("next-information", next.nats()),
                            Value.of("next-time", 60 * next.costMin()),
                            Value.of("next-risk", next.risk())));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Table(
                                "next-tests",
                                "Tests that would tell more, most worth first",
                                List.of(
                                        "next-test",
                                        "next-tells",
                                        "next-information",
                                        "next-time",
                                        "next-risk"),
                                rows));
    }
}
