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

/**
 * More cells in every pack; their mass comes with them.
 *
 * @param most steps
 * @param one what a step adds
 * @param where it goes
 * @param inSeries whether a step adds a cell to each string, or a string to each pack
 */
record MoreCells(int most, String one, String where, boolean inSeries) {

    static final MoreCells IN_SERIES = new MoreCells(8, "cell", " in series", true);
    static final MoreCells SIDE_BY_SIDE =
            new MoreCells(4, "string", " of cells side by side", false);

    List<Candidate> of(Rig rig) {
        Map<RigPath, Pack> groups = new LinkedHashMap<>();
        rig.packs().forEach(pack -> groups.putIfAbsent(pack.declaredAt(), pack));
        if (groups.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        most,
                        steps ->
                                Sentence.words(
                                        String.format(
                                                Locale.ROOT,
                                                "%d more %s%s%s in every pack",
                                                steps,
                                                one,
                                                steps == 1 ? "" : "s",
                                                where)),
                        Sentence.words("one " + one),
                        steps -> changes(rig, groups, steps)));
    }

    private List<Change> changes(Rig rig, Map<RigPath, Pack> groups, int steps) {
        List<Change> changes = new ArrayList<>();
        groups.forEach(
                (at, pack) -> {
                    int now = inSeries ? pack.series() : pack.parallel();
                    int cells = steps * (inSeries ? pack.parallel() : pack.series());
                    changes.add(
                            new Change.Set(
                                    at.child(inSeries ? "series" : "parallel"),
                                    Integer.toString(now + steps)));
                    // A weighed pack grows by its new cells; a computed one does so by itself.
                    RigPath massAt = at.child("mass");
                    pack.mass()
                            .map(
                                    mass ->
                                            Written.like(
                                                    rig,
                                                    massAt,
                                                    mass,
                                                    mass.si() + cells * pack.cell().mass().si()))
                            .ifPresent(mass -> changes.add(new Change.Set(massAt, mass)));
                });
        return changes;
    }
}
