package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Change;
import liftwright.rig.HoldingStand;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Ways to hold a stand down: ballast, feet farther apart, bolts. */
final class StandMoves {

    private static final double BALLAST_STEP_KG = 5;
    private static final int MOST_BALLAST = 200;
    private static final double FEET_STEP_M = 0.1;
    private static final int MOST_FEET = 15;
    private static final int BOLTS = 4;
    private static final String CLASS = "8.8";

    private StandMoves() {}

    static List<Candidate> of(Rig rig) {
        List<Candidate> all = new ArrayList<>();
        rig.restraint()
                .stand()
                .ifPresent(
                        stand -> {
                            all.add(ballast(rig, stand));
                            all.add(feet(rig, stand));
                            all.add(bolts(stand));
                            if (stand.bolts().isPresent()) {
                                all.add(moreBolts(stand, stand.bolts().get().count()));
                            }
                        });
        return all;
    }

    private static Candidate ballast(Rig rig, HoldingStand stand) {
        RigPath at = stand.declaredAt().child("mass");
        return new Candidate(
                MOST_BALLAST,
                steps ->
                        Sentence.words("put ")
                                .then(Measure.MASS, BALLAST_STEP_KG * steps)
                                .then(" of ballast on the stand, low and in its middle"),
                Sentence.start().then(Measure.MASS, BALLAST_STEP_KG),
                steps -> List.of(set(rig, at, stand.mass(), BALLAST_STEP_KG * steps)));
    }

    private static Candidate feet(Rig rig, HoldingStand stand) {
        RigPath apart = stand.declaredAt().child("feet apart");
        RigPath deep = stand.declaredAt().child("feet deep");
        return new Candidate(
                MOST_FEET,
                steps ->
                        Sentence.words("set the feet ")
                                .then(Measure.LENGTH, FEET_STEP_M * steps)
                                .then(" farther apart both ways"),
                Sentence.start().then(Measure.LENGTH, FEET_STEP_M),
                steps -> {
                    List<Change> changes = new ArrayList<>();
                    changes.add(set(rig, apart, stand.feetApart(), FEET_STEP_M * steps));
                    // Where the depth is not declared it follows.
                    if (rig.declaration().at(deep).isPresent()) {
                        changes.add(set(rig, deep, stand.feetDeep(), FEET_STEP_M * steps));
                    }
                    return changes;
                });
    }

    private static Candidate bolts(HoldingStand stand) {
        HoldingStand.BoltSize[] sizes = HoldingStand.BoltSize.values();
        RigPath at = stand.declaredAt();
        int count = stand.bolts().map(HoldingStand.Bolts::count).orElse(BOLTS);
        boolean strength = stand.bolts().flatMap(HoldingStand.Bolts::strength).isPresent();
        return new Candidate(
                sizes.length,
                steps ->
                        Sentence.words(
                                "bolt it down with "
                                        + count
                                        + " bolts "
                                        + sizes[steps - 1].name()
                                        + " of class "
                                        + CLASS
                                        + " in ground that holds as much"),
                Sentence.words("the next smaller size"),
                steps -> {
                    List<Change> changes = new ArrayList<>();
                    if (strength) {
                        changes.add(new Change.Remove(at.child("bolt strength")));
                    }
                    if (stand.bolts().isEmpty()) {
                        changes.add(new Change.Set(at.child("bolts"), Integer.toString(count)));
                    }
                    changes.add(new Change.Set(at.child("bolt size"), sizes[steps - 1].name()));
                    changes.add(new Change.Set(at.child("bolt class"), CLASS));
                    return changes;
                });
    }

    private static Candidate moreBolts(HoldingStand stand, int count) {
        RigPath at = stand.declaredAt().child("bolts");
        return new Candidate(
                6,
                steps -> Sentence.words(2 * steps + " more bolts of the same kind"),
                Sentence.words("2 bolts"),
                steps -> List.of(new Change.Set(at, Integer.toString(count + 2 * steps))));
    }

    /** More of a value, in the builder's unit. */
    static Change set(Rig rig, RigPath at, Quantity now, double more) {
        DoubleFunction<String> written = si -> Written.like(rig, at, now, Written.decimal(si));
        return new Change.Set(at, written.apply(now.si() + more));
    }
}
