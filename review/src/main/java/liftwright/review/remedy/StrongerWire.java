package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.rig.Change;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.book.WireGauge;

/**
 * Wires that stay cooler: of a thicker gauge, several side by side, or with air across them. All
 * runs that are too hot are changed together. The mass of the copper is written beside them.
 */
final class StrongerWire {

    /** Gauges that are sold, thin to thick; −3 is 4/0. */
    private static final List<Integer> GAUGES =
            List.of(24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3);

    private static final int MOST_GAUGES = 8;
    private static final int MOST_MORE = 3;

    /** Air across a wire, m/s: a fan's own stream is faster, but no wire lies in it for long. */
    private static final int MOST_AIR_MPS = 12;

    private StrongerWire() {}

    private static int thicker(int gauge, int steps) {
        int at = 0;
        while (at < GAUGES.size() && GAUGES.get(at) > gauge) {
            at++;
        }
        // A gauge between two of the list begins with the next thicker one.
        int same = at < GAUGES.size() && GAUGES.get(at) == gauge ? at : at - 1;
        return GAUGES.get(Math.min(GAUGES.size() - 1, same + steps));
    }

    /** Thicker wire in place of the runs that are too hot. */
    static List<Candidate> thicker(Rig rig, Set<RigPath> places) {
        Together<Element.Run> hot = Together.at(places, Element.Run.class, rig);
        return heavier(
                hot,
                new Heavier(
                        MOST_GAUGES,
                        steps -> "wire of " + gauges(hot, steps) + " in place of " + gauges(hot, 0),
                        "one gauge",
                        (run, steps) ->
                                new Change.Set(
                                        run.declaredAt().child("run"),
                                        gauge(run, steps).toString()),
                        "thicker wire",
                        (run, steps) ->
                                WireMass.kg(run, gauge(run, steps).number(), run.conductors())
                                        - WireMass.kg(run, run.gauge(), run.conductors())));
    }

    /** More wires of the same gauge side by side. */
    static List<Candidate> parallel(Rig rig, Set<RigPath> places) {
        Together<Element.Run> hot = Together.at(places, Element.Run.class, rig);
        return heavier(
                hot,
                new Heavier(
                        MOST_MORE,
                        steps -> steps + " more of " + gauges(hot, 0) + " beside each wire",
                        "one wire",
                        (run, steps) ->
                                new Change.Set(
                                        run.declaredAt().child("conductors"),
                                        Integer.toString(run.conductors() + steps)),
                        "parallel wire",
                        (run, steps) -> WireMass.kg(run, run.gauge(), steps)));
    }

    /**
     * More copper.
     *
     * @param most steps it can go
     * @param name what so many steps do, in words
     * @param step one step, in words
     * @param edit of one run
     * @param part what the added mass is called in the file
     * @param addedKg to one run, kg
     */
    private record Heavier(
            int most,
            IntFunction<String> name,
            String step,
            BiFunction<Element.Run, Integer, Change> edit,
            String part,
            ToDoubleBiFunction<Element.Run, Integer> addedKg) {}

    private static List<Candidate> heavier(Together<Element.Run> hot, Heavier way) {
        IntFunction<Map<String, Double>> added =
                steps ->
                        WireMass.byMount(
                                hot.rig(),
                                hot.places(),
                                run -> way.addedKg.applyAsDouble(run, steps));
        return hot.candidate(
                way.most,
                steps ->
                        Sentence.words(way.name.apply(steps) + ", ")
                                .then(Measure.MASS, WireMass.sum(added.apply(steps)))
                                .then(" more"),
                Sentence.words(way.step),
                steps -> {
                    List<Change> changes =
                            new ArrayList<>(hot.each(run -> Stream.of(way.edit.apply(run, steps))));
                    changes.addAll(WireMass.changes(hot.rig(), way.part, added.apply(steps)));
                    return changes;
                });
    }

    private static WireGauge gauge(Element.Run run, int steps) {
        return new WireGauge(steps == 0 ? run.gauge() : thicker(run.gauge(), steps));
    }

    private static String gauges(Together<Element.Run> runs, int steps) {
        return runs.named(run -> gauge(run, steps).toString());
    }

    /** Air across the runs that are too hot, none slower than it is. */
    static List<Candidate> air(Rig rig, Set<RigPath> places) {
        Together<Element.Run> hot = Together.at(places, Element.Run.class, rig);
        return hot.candidate(
                MOST_AIR_MPS,
                steps ->
                        Sentence.words("air of ")
                                .then(Measure.SPEED, steps)
                                .then(" across the wires that are too hot"),
                Sentence.start().then(Measure.SPEED, 1),
                steps ->
                        hot.only(run -> run.covering().air().si() < steps)
                                .each(
                                        run ->
                                                Stream.of(
                                                        new Change.Set(
                                                                run.declaredAt().child("air"),
                                                                steps + " m/s"))));
    }
}
