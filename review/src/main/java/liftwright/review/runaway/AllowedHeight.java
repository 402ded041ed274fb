package liftwright.review.runaway;

import liftwright.plant.Plant;
import liftwright.plant.Runaway;
import liftwright.plant.motion.RunawayCase;
import liftwright.plant.motion.RunawayCase.Start;
import liftwright.plant.motion.RunawayCase.Trigger;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Surroundings;

/**
 * From how high a runaway may begin so that it ends no harder than the limit: every fan at full
 * from a hover on full packs, untied, stopped one way. At the declared values.
 */
public sealed interface AllowedHeight {

    /** No greater height is tried, m. */
    double MOST_M = 30;

    /** Heights are found to this, m. */
    double CLOSE_M = 0.001;

    /**
     * Up to a height.
     *
     * @param heightM of the soles, at most {@link #MOST_M}
     * @param apexM of the runaway from there
     */
    record UpTo(double heightM, double apexM) implements AllowedHeight {}

    /**
     * From no height: one that begins at the ground ends harder.
     *
     * @param apexM of that one
     * @param impactMps its speed at the ground
     */
    record None(double apexM, double impactMps) implements AllowedHeight {}

    /** From no height: it stops nothing, or could not be followed. */
    record Endless() implements AllowedHeight {}

    /**
     * Finds it by halving.
     *
     * @param limitMps greatest speed at the ground
     */
    static AllowedHeight of(Plant plant, KillPath kill, double limitMps) {
        if (kill.acts() == KillPath.Acts.NOTHING) {
            return new Endless();
        }
        Runaway runaway = plant.runaway();
        runaway.load(plant.parameters().nominal());
        RunawayPath least = run(runaway, kill, CLOSE_M);
        if (least.failed() || least.impact().isEmpty()) {
            return new Endless();
        }
        if (impactMps(least) > limitMps) {
            return new None(least.apex().heightM(), impactMps(least));
        }
        double fits = CLOSE_M;
        double over = MOST_M;
        RunawayPath best = least;
        while (over - fits > CLOSE_M / 2) {
            double middle = (fits + over) / 2;
            RunawayPath path = run(runaway, kill, middle);
            boolean holds =
                    !path.failed() && path.impact().isPresent() && impactMps(path) <= limitMps;
            if (holds) {
                fits = middle;
                best = path;
            } else {
                over = middle;
            }
        }
        return new UpTo(fits, best.apex().heightM());
    }

    private static double impactMps(RunawayPath path) {
        return path.impact().map(at -> Math.abs(at.upMps())).orElse(0.0);
    }

    private static RunawayPath run(Runaway runaway, KillPath kill, double fromM) {
        return runaway.run(
                new RunawayCase(
                        new Trigger.AllFull(),
                        new Start.Hover(fromM),
                        kill.stop(),
                        Surroundings.OPEN,
                        RunawayRuns.horizonS(kill.stop())),
                false);
    }
}
