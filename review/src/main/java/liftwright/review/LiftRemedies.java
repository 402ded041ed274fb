package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Roots;
import liftwright.numerics.Work;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.review.remedy.Candidate;
import liftwright.review.remedy.Candidates;
import liftwright.rig.Change;
import liftwright.rig.Rig;

/**
 * Finds, for every way to change the rig, the least number of steps with which the verdict becomes
 * "holds". Each size is applied to the declaration, the plant is assembled anew and judged on the
 * same draws as the verdict itself.
 */
final class LiftRemedies {

    private final Rig rig;
    private final Plant plant;
    private final LiftJudgement before;
    private final Settings settings;
    private final Work work;

    LiftRemedies(Rig rig, Plant plant, LiftJudgement before, Settings settings, Work work) {
        this.rig = rig;
        this.plant = plant;
        this.before = before;
        this.settings = settings;
        this.work = work;
    }

    /** Those that clear the verdict first, then those that help, then those refused. */
    List<Remedy> find() {
        List<Remedy> remedies = new ArrayList<>();
        for (Candidate candidate : Candidates.forLift(rig)) {
            if (work.stopped()) {
                break;
            }
            size(candidate).filter(this::isWorthSaying).ifPresent(remedies::add);
        }
        remedies.sort(Comparator.comparingInt(LiftRemedies::rank));
        return remedies;
    }

    /** Where lift suffices and only a law is left, more lift is no help. */
    private boolean isWorthSaying(Remedy remedy) {
        return before.byNumbers() != Outcome.HOLDS
                || remedy.effect() instanceof Remedy.Effect.Clears;
    }

    private static int rank(Remedy remedy) {
        return switch (remedy.effect()) {
            case Remedy.Effect.Clears _ -> 0;
            case Remedy.Effect.Helps _ -> 1;
            case Remedy.Effect.Refused _ -> 2;
        };
    }

    /** A rig with the change, judged. */
    private record Tried(Plant plant, LiftJudgement judgement) {}

    private Optional<Remedy> size(Candidate candidate) {
        int most = mostThatBinds(candidate);
        if (most == 0) {
            return Optional.empty();
        }
        double needed = neededNominal();
        int steps =
                Roots.leastStep(1, most, size -> nominal(candidate, size) >= needed).orElse(most);
        Optional<Tried> tried = tried(candidate, steps);
        while (!holds(tried) && steps < most && !work.stopped()) {
            steps++;
            tried = tried(candidate, steps);
        }
        while (holds(tried) && steps > 1 && !work.stopped()) {
            Optional<Tried> smaller = tried(candidate, steps - 1);
            if (!holds(smaller)) {
                break;
            }
            steps--;
            tried = smaller;
        }
        int size = steps;
        return tried.map(reached -> told(candidate, size, reached));
    }

    private static boolean holds(Optional<Tried> tried) {
        return tried.isPresent() && tried.get().judgement().holds();
    }

    /**
     * Nominal ratio at which the lower end of the band would clear, were its distance in
     * proportion.
     */
    private double neededNominal() {
        double low = before.ratio().low();
        double demand = rig.demands().thrustToWeight().si();
        return low > 0 ? demand * before.nominal() / low : Double.MAX_VALUE;
    }

    /** A larger ring may put a fan where it cannot lean as declared, so not every size is a rig. */
    private int mostThatBinds(Candidate candidate) {
        int most = candidate.most();
        while (most > 0 && Revised.with(rig, candidate.changes().apply(most)).isEmpty()) {
            most--;
        }
        return most;
    }

    private double nominal(Candidate candidate, int steps) {
        return Revised.with(rig, candidate.changes().apply(steps))
                .map(
                        revised -> {
                            Plant changed = Plant.assemble(revised);
                            SteadyState state = changed.state();
                            double[] p = changed.parameters().nominal();
                            changed.solve(p, Effects.ALL, changed.workspace(), state);
                            return new CutOffs(revised).usableLiftN(state) / changed.weightN(p);
                        })
                .orElse(0.0);
    }

    /** Empty where the change gives no rig, or the work was stopped. */
    private Optional<Tried> tried(Candidate candidate, int steps) {
        Optional<Rig> revised = Revised.with(rig, candidate.changes().apply(steps));
        if (revised.isEmpty()) {
            return Optional.empty();
        }
        Plant changed = Plant.assemble(revised.get());
        double demand = revised.get().demands().thrustToWeight().si();
        return LiftJudge.judge(changed, demand, settings, work)
                .map(judgement -> new Tried(changed, judgement));
    }

    private Remedy told(Candidate candidate, int steps, Tried tried) {
        LiftJudgement after = tried.judgement();
        List<Change> changes = candidate.changes().apply(steps);
        Sentence name = candidate.name().apply(steps);
        Optional<Sentence> broken = HardLimits.newlyBroken(plant, tried.plant());
        if (broken.isPresent()) {
            return new Remedy(name, changes, new Remedy.Effect.Refused(broken.get()));
        }
        Value ratio = Value.of("thrust-to-weight", after.nominal(), after.ratio());
        int common = Math.min(after.draws(), before.draws());
        Value difference =
                Value.of(
                        "thrust-to-weight-gain",
                        after.nominal() - before.nominal(),
                        Bands.ofDifference(
                                after.sample().ratios(common), before.sample().ratios(common)));
        return new Remedy(
                name,
                changes,
                after.holds()
                        ? new Remedy.Effect.Clears(ratio, difference, candidate.step())
                        : new Remedy.Effect.Helps(ratio, difference));
    }
}
