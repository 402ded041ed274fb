package liftwright.trials.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.plant.Plant;
import liftwright.plant.Runaway;
import liftwright.plant.motion.RunawayCase;
import liftwright.plant.motion.RunawayCase.Start;
import liftwright.plant.motion.RunawayCase.Trigger;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Surroundings;
import liftwright.review.people.People;
import liftwright.review.runaway.AllowedHeight;
import liftwright.review.runaway.KillPath;
import liftwright.rig.LimitName;

/**
 * How high a rig may go, and how near people may come, with its kills as slow as they were measured
 * at worst: every fan at full from a hover, untied.
 *
 * @param paths one a way to stop that was timed and takes thrust away
 * @param demandedM the height that is asked for, m
 * @param impactLimitMps greatest speed at the ground
 * @param keepOutM how far those who are not crew stay away, a fan breaking at the highest apex, m;
 *     empty where no fan turns
 */
public record Heights(
        List<OfPath> paths, double demandedM, double impactLimitMps, Optional<Double> keepOutM) {

    public Heights {
        paths = List.copyOf(paths);
    }

    /**
     * @param path name of the way to stop
     * @param kill with the worst measured times, and the reaction as declared
     * @param allowed from how high a runaway may begin
     * @param apexM of one that begins at the demanded height
     * @param impactMps its speed at the ground
     */
    public record OfPath(
            String path, KillPath kill, AllowedHeight allowed, double apexM, double impactMps) {}

    /** The least height over all ways to stop, m; empty where one allows none. */
    public Optional<Double> allowedM() {
        double least = Double.POSITIVE_INFINITY;
        for (OfPath path : paths) {
            switch (path.allowed) {
                case AllowedHeight.UpTo(double heightM, var _) -> least = Math.min(least, heightM);
                case AllowedHeight.None _, AllowedHeight.Endless _ -> {
                    return Optional.empty();
                }
            }
        }
        return paths.isEmpty() ? Optional.empty() : Optional.of(least);
    }

    /** The way to stop after which a runaway goes highest. */
    public Optional<OfPath> worst() {
        return paths.stream().max((a, b) -> Double.compare(a.apexM, b.apexM));
    }

    /** Those of a rig with a proof of its kills. */
    public static Heights of(Plant plant, KillProof proof) {
        double limitMps = plant.rig().limits().si(LimitName.IMPACT_SPEED);
        double demandedM = plant.rig().demands().height().si();
        List<OfPath> paths = new ArrayList<>();
        double raisedM = 0;
        for (ProofPath path : ProofPath.of(plant.rig())) {
            Optional<KillPath> kill = measured(plant, path, proof);
            if (kill.isPresent()) {
                RunawayPath run = run(plant, kill.get(), demandedM);
                raisedM = Math.max(raisedM, run.apex().heightM() - demandedM);
                paths.add(
                        new OfPath(
                                path.name(),
                                kill.get(),
                                AllowedHeight.of(plant, kill.get(), limitMps),
                                run.apex().heightM(),
                                run.impact().map(at -> Math.abs(at.upMps())).orElse(0.0)));
            }
        }
        return new Heights(
                paths, demandedM, limitMps, People.keepOutM(plant, Math.max(0, raisedM)));
    }

    /**
     * The way to stop with its worst measured times; empty where none were, or where it does
     * nothing.
     */
    static Optional<KillPath> measured(Plant plant, ProofPath path, KillProof proof) {
        Optional<PathProof> own =
                proof.paths().stream().filter(one -> one.path().equals(path.name())).findFirst();
        Optional<KillPath> kill =
                KillPath.of(plant.rig()).stream()
                        .filter(one -> one.source().equals(path.source()))
                        .filter(one -> one.acts() != KillPath.Acts.NOTHING)
                        .findFirst();
        return own.filter(one -> one.half().isPresent())
                .flatMap(
                        one ->
                                kill.map(
                                        found ->
                                                found.measured(
                                                        one.half().orElseThrow().highS(),
                                                        one.tenth().orElseThrow().highS())));
    }

    private static RunawayPath run(Plant plant, KillPath kill, double fromM) {
        Runaway runaway = plant.runaway();
        runaway.load(plant.parameters().nominal());
        return runaway.run(
                new RunawayCase(
                        new Trigger.AllFull(),
                        fromM > 0 ? new Start.Hover(fromM) : new Start.Ground(),
                        kill.stop(),
                        Surroundings.OPEN,
                        kill.stop().firstS() + 25),
                false);
    }
}
