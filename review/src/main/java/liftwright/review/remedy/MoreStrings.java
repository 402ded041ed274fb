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

/** More strings of cells side by side in every pack; their mass comes with them. */
final class MoreStrings {

    private static final int MOST = 4;

    private MoreStrings() {}

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
                                                "%d more %s of cells side by side in every pack",
                                                steps,
                                                steps == 1 ? "string" : "strings")),
                        Sentence.words("one string"),
                        steps -> changes(rig, groups, steps)));
    }

    private static List<Change> changes(Rig rig, Map<RigPath, Pack> groups, int steps) {
        List<Change> changes = new ArrayList<>();
        groups.forEach(
                (at, pack) -> {
                    int parallel = pack.parallel() + steps;
                    changes.add(new Change.Set(at.child("parallel"), Integer.toString(parallel)));
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
                                                                                    * pack.series()
                                                                                    * pack.cell()
                                                                                            .mass()
                                                                                            .si()))));
                });
        return changes;
    }
}
