package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.rig.Change;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Charge the packs further before the flight. */
final class FullCharge {

    private static final double STEP = 0.01;

    private FullCharge() {}

    static List<Candidate> of(Rig rig) {
        Map<RigPath, Pack> groups = new LinkedHashMap<>();
        rig.packs().stream()
                .filter(pack -> pack.charge().si() < 1)
                .filter(pack -> rig.declaration().at(pack.declaredAt().child("charge")).isPresent())
                .forEach(pack -> groups.putIfAbsent(pack.declaredAt(), pack));
        double least = groups.values().stream().mapToDouble(p -> p.charge().si()).min().orElse(1);
        int most = (int) Math.ceil((1 - least) / STEP - 1e-9);
        if (most == 0) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        most,
                        steps ->
                                Sentence.words("charge the packs by ")
                                        .then(Measure.PERCENT, steps * STEP)
                                        .then(" more, none beyond full"),
                        Sentence.start().then(Measure.PERCENT, STEP),
                        steps -> changes(rig, groups, steps)));
    }

    private static List<Change> changes(Rig rig, Map<RigPath, Pack> groups, int steps) {
        List<Change> changes = new ArrayList<>();
        groups.forEach(
                (at, pack) ->
                        changes.add(
                                new Change.Set(
                                        at.child("charge"),
                                        Written.like(
                                                rig,
                                                at.child("charge"),
                                                pack.charge(),
                                                Math.min(1, pack.charge().si() + steps * STEP)))));
        return changes;
    }
}
