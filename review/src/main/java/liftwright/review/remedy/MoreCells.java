package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import liftwright.answer.Sentence;
import liftwright.rig.Change;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** More cells in series in every pack; their mass comes with them. */
final class MoreCells {

    private static final int MOST = 8;

    private MoreCells() {}

    static List<Candidate> of(Rig rig) {
        Map<RigPath, Pack> groups = new LinkedHashMap<>();
        rig.packs().forEach(pack -> groups.putIfAbsent(pack.declaredAt(), pack));
        if (groups.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        MOST,
                        steps ->
                                Sentence.words(
                                        String.format(
                                                Locale.ROOT,
                                                "%d more %s in series in every pack",
                                                steps,
                                                steps == 1 ? "cell" : "cells")),
                        Sentence.words("one cell"),
                        steps -> changes(rig, groups, steps)));
    }

    private static List<Change> changes(Rig rig, Map<RigPath, Pack> groups, int steps) {
        List<Change> changes = new ArrayList<>();
        groups.forEach(
                (at, pack) -> {
                    int series = pack.series() + steps;
                    changes.add(new Change.Set(at.child("series"), Integer.toString(series)));
                    // A weighed pack grows by its new cells; a computed one does so by itself.
                    pack.mass()
                            .ifPresent(
                                    mass ->
                                            changes.add(
                                                    new Change.Set(
                                                            at.child("mass"),
                                                            Written.like(
                                                                    rig,
                                                                    at.child("mass"),
                                                                    mass,
                                                                    mass.si()
                                                                            + steps
                                                                                    * pack
                                                                                            .parallel()
                                                                                    * pack.cell()
                                                                                            .mass()
                                                                                            .si()))));
                });
        return changes;
    }
}
