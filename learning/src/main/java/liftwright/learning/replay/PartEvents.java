package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import liftwright.answer.Sentence;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.Measure;

/** What happened to a fan or a pack by what it did against what it was told. */
final class PartEvents {

    /** A channel tells of its part from this share of its greatest expected value on. */
    private static final double TELLS = 0.25;

    /** And from this throttle on. */
    private static final double THROTTLE = 0.15;

    /** Below this ratio nothing turns or flows. */
    private static final double NOTHING = 0.2;

    /** A fan that was told to turn for so long without turning never turned, s. */
    private static final double NEVER_S = 3;

    private static final int LEAST_SAMPLES = 4;

    private PartEvents() {}

    static List<Event> of(Driven driven, Track track, Series series) {
        boolean tells =
                switch (track.signal()) {
                    case SPEED, CURRENT, THRUST, WINDING_CURRENT -> true;
                    default -> false;
                };
        return tells ? found(driven, track, series) : List.of();
    }

    private static List<Event> found(Driven driven, Track track, Series series) {
        int[] loaded = loaded(driven, track, series);
        List<Event> found = new ArrayList<>();
        if (loaded.length < LEAST_SAMPLES) {
            return found;
        }
        double[] times = IntStream.of(loaded).mapToDouble(k -> series.timesS()[k]).toArray();
        double[] ratio =
                IntStream.of(loaded)
                        .mapToDouble(k -> series.measuredSi()[k] / series.expectedSi()[k])
                        .toArray();
        never(track, times, ratio).ifPresent(found::add);
        if (found.isEmpty()) {
            double[] expected =
                    IntStream.of(loaded).mapToDouble(k -> series.expectedSi()[k]).toArray();
            double[] error =
                    DoubleStream.of(expected)
                            .map(si -> Math.hypot(track.errorSi() / si, track.errorShare()))
                            .toArray();
            for (Jumps.Jump jump : Jumps.in(times, ratio, expected, error)) {
                event(track, series, loaded, times, jump).ifPresent(found::add);
            }
        }
        return found;
    }

    private static int[] loaded(Driven driven, Track track, Series series) {
        double most = 0;
        for (double si : series.expectedSi()) {
            most = Math.max(most, si);
        }
        double least = TELLS * most;
        if (!(most > 0)) {
            return new int[0];
        }
        List<Integer> fans = new ArrayList<>();
        for (int fan = 0; fan < driven.plant().rig().fans().size(); fan++) {
            if (driven.plant().rig().fans().get(fan).id().text().equals(track.of())) {
                fans.add(fan);
            }
        }
        return IntStream.range(0, series.size())
                .filter(k -> series.expectedSi()[k] >= least)
                .filter(
                        k ->
                                fans.isEmpty()
                                        || driven.throttle(fans.getFirst(), series.timesS()[k])
                                                >= THROTTLE)
                .toArray();
    }

    private static Optional<Event> never(Track track, double[] times, double[] ratio) {
        boolean longEnough = times[times.length - 1] - times[0] >= NEVER_S;
        double most = 0;
        for (double of : ratio) {
            most = Math.max(most, of);
        }
        if (!longEnough || Noise.median(ratio) > NOTHING || most > 2 * NOTHING) {
            return Optional.empty();
        }
        return Optional.of(
                new Event(
                        Event.Kind.NEVER_TURNED,
                        times[0],
                        track.of(),
                        track.name(),
                        Sentence.words(track.name() + " shows ")
                                .then(Measure.PERCENT, Noise.median(ratio))
                                .then(" of what its throttle gives, from the start")));
    }

    private static Optional<Event> event(
            Track track, Series series, int[] loaded, double[] times, Jumps.Jump jump) {
        boolean rises = jump.after() > jump.before();
        boolean turns = track.signal() == Signal.SPEED || track.signal() == Signal.THRUST;
        if (rises && (jump.before() < NOTHING * 2 || !turns)) {
            return Optional.empty(); // it comes back, or follows something else
        }
        boolean gone = jump.after() < NOTHING;
        Event.Kind kind =
                rises
                        ? Event.Kind.RAN_AWAY
                        : turns
                                ? gone ? Event.Kind.FAN_STOPPED : Event.Kind.LOST_SPEED
                                : gone ? Event.Kind.CURRENT_GONE : Event.Kind.LOST_CURRENT;
        Measure measure = Measures.of(track.signal());
        int at = loaded[jump.at()];
        int before = loaded[Math.max(0, jump.at() - 1)];
        return Optional.of(
                new Event(
                        kind,
                        times[jump.at()],
                        track.of(),
                        track.name(),
                        Sentence.words(track.name() + " from ")
                                .then(measure, series.measuredSi()[before])
                                .then(" to ")
                                .then(measure, series.measuredSi()[at])
                                .then(" while ")
                                .then(measure, series.expectedSi()[at])
                                .then(" was expected: ")
                                .then(Measure.PERCENT, jump.before())
                                .then(" of it before, ")
                                .then(Measure.PERCENT, jump.after())
                                .then(" after; told from a change of ")
                                .then(Measure.PERCENT, jump.threshold())
                                .then(" on")));
    }
}
