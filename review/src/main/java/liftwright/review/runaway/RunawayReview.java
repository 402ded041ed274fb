package liftwright.review.runaway;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.motion.RunawayPath;
import liftwright.quantity.Band;

/**
 * What a runaway of the rig does under each declared way to stop it.
 *
 * @param sections tables and plots, in reading order
 * @param findings in no order
 * @param runs one a way to stop it, in the order of {@link KillPath#of}: every fan at full from a
 *     hover at the height that is asked
 */
public record RunawayReview(List<Section> sections, List<Finding> findings, List<Run> runs) {

    public RunawayReview {
        sections = List.copyOf(sections);
        findings = List.copyOf(findings);
        runs = List.copyOf(runs);
    }

    /**
     * One runaway.
     *
     * @param kill what stops it
     * @param path at the declared values
     * @param apexM band of the apex; empty without draws or where nothing stops it
     * @param impactMps band of the speed at the ground, above 0; as that
     */
    public record Run(
            KillPath kill, RunawayPath path, Optional<Band> apexM, Optional<Band> impactMps) {

        /** Whether the kill ends it. */
        public boolean ends() {
            return !path.failed() && path.comesDown();
        }
    }

    /** The slowest of those that end it; empty where none does. */
    public Optional<Run> slowest() {
        return runs.stream()
                .filter(Run::ends)
                .max((a, b) -> Double.compare(a.kill.totalS(), b.kill.totalS()));
    }

    /**
     * At the declared values, with bands of their doubt.
     *
     * @param seed of every draw
     * @param draws for the bands; 0 for none
     * @param threads ≥ 1
     */
    public static RunawayReview of(Plant plant, long seed, int draws, int threads, Work work) {
        return of(plant, KillPath.of(plant.rig()), seed, draws, threads, work);
    }

    /**
     * The same with given ways to stop it, such as those whose times were measured.
     *
     * @param kills of {@link KillPath#of}, each as it is or {@link KillPath#measured}
     */
    public static RunawayReview of(
            Plant plant, List<KillPath> kills, long seed, int draws, int threads, Work work) {
        return RunawayRuns.of(plant, kills, seed, draws, threads, work).review();
    }
}
