package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Evidence;
import liftwright.answer.Sentence;
import liftwright.plant.Plant;
import liftwright.plant.hold.Held;
import liftwright.quantity.Measure;
import liftwright.review.people.People;
import liftwright.rig.DefaultUsed.Reader;
import liftwright.rig.Rig;

/** What an answer of restraint rests on. */
final class RestraintEvidence {

    /** Energy of a runaway that nothing accounts for: the bound of the stepper's own sums. */
    private static final double CLOSURE = 1e-4;

    private RestraintEvidence() {}

    static Evidence of(
            Rig rig,
            String rigDigest,
            Plant plant,
            Settings settings,
            int draws,
            int failed,
            Optional<Held> held) {
        double[] p = plant.parameters().nominal();
        Optional<Held.OnTether> tether = held.flatMap(Held::tether);
        return CorrectionWords.on(
                plant,
                new Evidence(
                        rigDigest,
                        "none",
                        settings.seed(),
                        draws,
                        Sentence.words(
                                        "every fan at full throttle as if alone, full packs, air of ")
                                .then(Measure.DENSITY, plant.siteDensityKgpm3(p))
                                .then(", motors cold (20 °C), level ground"),
                        laws(tether),
                        LiftEvidence.assumptions(rig, Set.of(Reader.ANY, Reader.RESTRAINT)),
                        List.of(
                                new Evidence.Check(
                                        "energy of the runaway closes",
                                        tether.map(on -> on.path().closure()).orElse(0.0),
                                        CLOSURE),
                                new Evidence.Check("draws without an operating point", failed, 0)),
                        MeasuredEvidence.of(rig)));
    }

    private static List<Evidence.Law> laws(Optional<Held.OnTether> tether) {
        List<Evidence.Law> laws =
                new ArrayList<>(
                        List.of(
                                new Evidence.Law(
                                        "a rigid stand on level ground",
                                        "statics; greatest over all subsets of fans by the support of their zonotope",
                                        "slow loads; sliding and turning not at once",
                                        true),
                                new Evidence.Law(
                                        "bolts",
                                        "pull straight with the distance from an edge; ISO 898-1; EN 1993-1-8, table 3.4, from memory",
                                        "a stiff foot; the ground about a bolt is not in it",
                                        true),
                                new Evidence.Law(
                                        "lines",
                                        "a spring and a damper that only pull",
                                        "straight up and down; anchor and body do not give",
                                        true),
                                new Evidence.Law(
                                        "runaway",
                                        "momentum theory with inflow, first-order motors, sagging packs",
                                        "upright in still air",
                                        tether.map(on -> !on.path().beyondLaw()).orElse(true)),
                                new Evidence.Law(
                                        "a standing person as an inverted pendulum",
                                        "Hof et al. 2005",
                                        "stiff, without a step",
                                        true)));
        laws.addAll(People.laws());
        return laws;
    }
}
