package liftwright.logbook.ask;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.logbook.ask.LogbookAnswer.About;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.SamplesOf;
import liftwright.logbook.store.StoredTest;
import liftwright.numerics.Gaussian;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.QuantityWriter;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.evidence.Inputs;

/** In what two tests differ: the rig, the conditions, and what was read at the same throttle. */
public final class Compared {

    private static final int MOST_CHANGES = 60;

    private Compared() {}

    /**
     * One of the two.
     *
     * @param rig as it was; empty where its snapshot does not read
     */
    public record Side(StoredTest test, Optional<Rig> rig, Recording recording) {

        /**
         * @param reader of samples
         * @param most samples of a channel
         */
        public static Side of(Logbook logbook, StoredTest test, SamplesOf reader, int most)
                throws IOException {
            return new Side(test, logbook.rigOf(test).rig(), logbook.recording(test, reader, most));
        }
    }

    /** A channel at one step of both. */
    private record Met(Track track, Steps.Pair steps, StepMean first, StepMean second) {

        StepMean difference() {
            return first.to(second);
        }

        /** By how many half-widths they differ. */
        double distance() {
            StepMean difference = difference();
            return difference.si() == 0 ? 0 : Math.abs(difference.si()) / difference.halfSi();
        }
    }

    /** Compares them. */
    public static LogbookAnswer of(About about, Side first, Side second) {
        List<List<Value>> changes = changes(first, second);
        List<Met> met = met(first.recording(), second.recording());
        double clear = clear(met.size());
        long differing = met.stream().filter(one -> one.distance() > clear).count();
        var sections = new ArrayList<Section>();
        if (!changes.isEmpty()) {
            sections.add(changed(changes));
        }
        if (!met.isEmpty()) {
            sections.add(steps(met, clear));
        }
        var findings = new ArrayList<Finding>();
        if (changes.size() > MOST_CHANGES) {
            findings.add(
                    Finding.of(
                            Severity.NOTES,
                            "more-differs",
                            Sentence.words(changes.size() - MOST_CHANGES + " more values differ"),
                            "the table shows the first " + MOST_CHANGES));
        }
        return LogbookAnswer.of(
                about,
                met.isEmpty()
                        ? Outcome.CANNOT_BE_TOLD
                        : differing == 0 ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                Sentence.words(sentence(first, second, changes.size(), met.size(), differing)),
                findings,
                sections);
    }

    private static String sentence(Side first, Side second, int changes, int met, long differing) {
        String readings =
                met == 0
                        ? "no channel was read at the same throttle in both"
                        : differing == 0
                                ? "all "
                                        + LogbookAnswer.counted(met, "mean agrees", "means agree")
                                        + " within their doubts"
                                : differing
                                        + " of "
                                        + met
                                        + " means differ by more than their doubts";
        return first.test().id()
                + " and "
                + second.test().id()
                + ": "
                + readings
                + "; "
                + (changes == 0
                        ? "rig and conditions are the same as far as was written"
                        : LogbookAnswer.counted(
                                changes,
                                "thing of rig and conditions differs",
                                "things of rig and conditions differ"));
    }

    /**
     * Of many 95 % intervals some miss by chance: a difference counts as clear beyond what one of
     * them all would reach in 5 % of such comparisons (Bonferroni), in half-widths.
     */
    private static double clear(int comparisons) {
        return Gaussian.quantile(1 - 0.025 / Math.max(1, comparisons)) / Gaussian.quantile(0.975);
    }

    private static List<Met> met(Recording first, Recording second) {
        List<Steps.Pair> pairs = Steps.pairs(Steps.of(first), Steps.of(second));
        var met = new ArrayList<Met>();
        for (Track track : first.tracks()) {
            Optional<Track> other = second.track(track.signal(), track.of());
            if (track.signal() == Signal.THROTTLE || other.isEmpty()) {
                continue;
            }
            for (Steps.Pair pair : pairs) {
                StepMean.of(track, pair.first())
                        .flatMap(
                                one ->
                                        StepMean.of(other.get(), pair.second())
                                                .map(two -> new Met(track, pair, one, two)))
                        .ifPresent(met::add);
            }
        }
        return met;
    }

    private static Section.Table steps(List<Met> met, double clear) {
        var rows = new ArrayList<List<Value>>();
        for (Met one : met) {
            Signal signal = one.track().signal();
            StepMean difference = one.difference();
            rows.add(
                    List.of(
                            Value.words("channel", one.track().name()),
                            Value.of("step-throttle", one.steps().first().throttle()),
                            Readings.of(signal, one.first().si(), one.first().band()),
                            Readings.of(signal, one.second().si(), one.second().band()),
                            Readings.difference(
                                    signal, difference.si(), Optional.of(difference.band())),
                            Value.words(
                                    "step-told",
                                    one.distance() > clear
                                            ? "differs"
                                            : one.distance() > 1 ? "perhaps" : "within doubt")));
        }
        return new Section.Table(
                "compared-steps",
                "Means at the same throttle",
                List.of(
                        "channel",
                        "step-throttle",
                        "step-first",
                        "step-second",
                        "step-difference",
                        "step-told"),
                rows);
    }

    private static Section.Table changed(List<List<Value>> changes) {
        return new Section.Table(
                "compared-rig",
                "What differs in rig and conditions",
                List.of("changed-path", "in-first", "in-second"),
                changes.subList(0, Math.min(MOST_CHANGES, changes.size())));
    }

    private static List<List<Value>> changes(Side first, Side second) {
        Map<String, String> was = said(first);
        Map<String, String> is = said(second);
        var paths = new TreeSet<>(was.keySet());
        paths.addAll(is.keySet());
        var rows = new ArrayList<List<Value>>();
        for (String path : paths) {
            String one = was.getOrDefault(path, Inputs.NOTHING);
            String other = is.getOrDefault(path, Inputs.NOTHING);
            if (!one.equals(other)) {
                rows.add(
                        List.of(
                                Value.words("changed-path", path),
                                Value.words("in-first", one),
                                Value.words("in-second", other)));
            }
        }
        return rows;
    }

    private static Map<String, String> said(Side side) {
        TestEntry entry = side.test().entry();
        var said = new TreeMap<String, String>();
        side.rig().ifPresent(rig -> said.putAll(Inputs.of(rig).byPath()));
        if (side.rig().isEmpty()) {
            said.put("rig", entry.rig().digest());
        }
        said.put("test/card", entry.card().map(CardId::text).orElse(Inputs.NOTHING));
        said.put("test/instruments", String.join(", ", entry.instruments()));
        var weather = entry.weather();
        Map.of(
                        "air", weather.air(),
                        "pressure", weather.pressure(),
                        "humidity", weather.humidity(),
                        "wind", weather.wind(),
                        "gust", weather.gust())
                .forEach(
                        (name, value) ->
                                value.ifPresent(
                                        q -> said.put("weather/" + name, QuantityWriter.write(q))));
        return said;
    }
}
