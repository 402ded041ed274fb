package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.rig.Change;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
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

    /** One run for each place in the file. */
    private static Map<RigPath, Element.Run> runs(Rig rig, Set<RigPath> places) {
        Map<RigPath, Element.Run> runs = new LinkedHashMap<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            for (Element element : chain.elements()) {
                if (element instanceof Element.Run run && places.contains(run.declaredAt())) {
                    runs.putIfAbsent(run.declaredAt(), run);
                }
            }
        }
        return runs;
    }

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
        Map<RigPath, Element.Run> runs = runs(rig, places);
        if (runs.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        MOST_GAUGES,
                        steps ->
                                Sentence.words(
                                                "wire of "
                                                        + gauges(runs, steps)
                                                        + " in place of "
                                                        + gauges(runs, 0)
                                                        + ", ")
                                        .then(Measure.MASS, WireMass.sum(added(rig, runs, steps)))
                                        .then(" more"),
                        Sentence.words("one gauge"),
                        steps -> {
                            List<Change> changes = new ArrayList<>();
                            runs.forEach(
                                    (at, run) ->
                                            changes.add(
                                                    new Change.Set(
                                                            at.child("run"),
                                                            gauge(run, steps).toString())));
                            changes.addAll(
                                    WireMass.changes(rig, "thicker wire", added(rig, runs, steps)));
                            return changes;
                        }));
    }

    private static WireGauge gauge(Element.Run run, int steps) {
        return new WireGauge(steps == 0 ? run.gauge() : thicker(run.gauge(), steps));
    }

    private static String gauges(Map<RigPath, Element.Run> runs, int steps) {
        return String.join(
                " and ",
                runs.values().stream()
                        .map(run -> gauge(run, steps).toString())
                        .distinct()
                        .toList());
    }

    private static Map<String, Double> added(Rig rig, Map<RigPath, Element.Run> runs, int steps) {
        return WireMass.byMount(
                rig,
                List.copyOf(runs.keySet()),
                run ->
                        WireMass.kg(run, gauge(run, steps).number(), run.conductors())
                                - WireMass.kg(run, run.gauge(), run.conductors()));
    }

    /** More wires of the same gauge side by side. */
    static List<Candidate> parallel(Rig rig, Set<RigPath> places) {
        Map<RigPath, Element.Run> runs = runs(rig, places);
        if (runs.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        MOST_MORE,
                        steps ->
                                Sentence.words(
                                                steps
                                                        + " more of "
                                                        + gauges(runs, 0)
                                                        + " beside each wire, ")
                                        .then(Measure.MASS, WireMass.sum(beside(rig, runs, steps)))
                                        .then(" more"),
                        Sentence.words("one wire"),
                        steps -> {
                            List<Change> changes = new ArrayList<>();
                            runs.forEach(
                                    (at, run) ->
                                            changes.add(
                                                    new Change.Set(
                                                            at.child("conductors"),
                                                            Integer.toString(
                                                                    run.conductors() + steps))));
                            changes.addAll(
                                    WireMass.changes(
                                            rig, "parallel wire", beside(rig, runs, steps)));
                            return changes;
                        }));
    }

    private static Map<String, Double> beside(Rig rig, Map<RigPath, Element.Run> runs, int steps) {
        return WireMass.byMount(
                rig, List.copyOf(runs.keySet()), run -> WireMass.kg(run, run.gauge(), steps));
    }

    /** Air across the runs that are too hot, none slower than it is. */
    static List<Candidate> air(Rig rig, Set<RigPath> places) {
        Map<RigPath, Element.Run> runs = runs(rig, places);
        if (runs.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        MOST_AIR_MPS,
                        steps ->
                                Sentence.words("air of ")
                                        .then(Measure.SPEED, steps)
                                        .then(" across the wires that are too hot"),
                        Sentence.start().then(Measure.SPEED, 1),
                        steps -> {
                            List<Change> changes = new ArrayList<>();
                            runs.forEach(
                                    (at, run) -> {
                                        if (run.covering().air().si() < steps) {
                                            changes.add(
                                                    new Change.Set(
                                                            at.child("air"), steps + " m/s"));
                                        }
                                    });
                            return changes;
                        }));
    }
}
