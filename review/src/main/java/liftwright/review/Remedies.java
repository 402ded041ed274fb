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
import liftwright.plant.Plant;
import liftwright.review.remedy.Candidate;
import liftwright.rig.Change;
import liftwright.rig.Rig;

/**
 * Finds, for every way to change the rig, the least number of steps with which the verdict becomes
 * "holds". Each size is applied to the declaration, the plant is assembled anew and judged on the
 * same draws as the verdict itself.
 *
 * @param <J> what the question judges by
 */
final class Remedies<J extends Judgement> {

    private final Rig rig;
    private final Plant plant;
    private final J before;
    private final Judging<J, ?> judging;
    private final Work work;

    Remedies(Rig rig, Plant plant, J before, Judging<J, ?> judging, Work work) {
        this.rig = rig;
        this.plant = plant;
        this.before = before;
        this.judging = judging;
        this.work = work;
    }

    /** Those that clear the verdict first, then those that help, then those refused. */
    List<Remedy> find(List<Candidate> candidates) {
        List<Remedy> remedies = new ArrayList<>();
        if (!candidates.isEmpty()) {
            work.stage("remedies", candidates.size());
        }
        for (Candidate candidate : candidates) {
            if (work.stopped()) {
                break;
            }
            size(candidate).filter(this::isWorthSaying).ifPresent(remedies::add);
            work.done(1);
        }
        remedies.sort(Comparator.comparingInt(Remedies::rank));
        return remedies;
    }

    /** Where the number suffices and only a law is left, more of it is no help. */
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

    /** A rig with so many steps of a change, judged. */
    private record Tried<J extends Judgement>(int steps, Plant plant, J judgement) {

        boolean holds() {
            return judgement.holds();
        }

        /** The end of the band that is held against the demand. */
        double low() {
            return judgement.band().low();
        }
    }

    private Optional<Remedy> size(Candidate candidate) {
        int most = mostThatBinds(candidate);
        if (most == 0) {
            return Optional.empty();
        }
        double needed = neededNominal();
        int guess =
                Roots.leastStep(1, most, size -> nominal(candidate, size) >= needed).orElse(most);
        double none = before.band().low();
        var search = new LeastSize(most, guess, none, judging.demand(rig));
        Optional<Tried<J>> clears = Optional.empty();
        Optional<Tried<J>> helps = Optional.empty();
        while (search.isOpen() && !work.stopped()) {
            Optional<Tried<J>> tried = tried(candidate, search.next());
            double low = tried.map(Tried::low).orElse(none);
            if (tried.filter(Tried::holds).isPresent()) {
                clears = tried;
                search.clears(low);
            } else {
                helps = tried;
                search.fails(low);
            }
        }
        return (clears.isPresent() ? clears : helps).map(reached -> told(candidate, reached));
    }

    /**
     * Nominal ratio at which the lower end of the band would clear, were its distance in
     * proportion.
     */
    private double neededNominal() {
        double low = before.band().low();
        double demand = judging.demand(rig);
        if (demand <= 0) {
            return before.nominal() + demand - low; // a margin, which may be below nought
        }
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
                .map(revised -> judging.nominal(judging.assemble(revised)))
                .orElse(0.0);
    }

    /** Empty where the change gives no rig, or the work was stopped. */
    private Optional<Tried<J>> tried(Candidate candidate, int steps) {
        Optional<Rig> revised = Revised.with(rig, candidate.changes().apply(steps));
        if (revised.isEmpty()) {
            return Optional.empty();
        }
        Plant changed = judging.assemble(revised.get());
        return judging.judge(changed, Work.within(work))
                .map(judgement -> new Tried<>(steps, changed, judgement));
    }

    private Remedy told(Candidate candidate, Tried<J> tried) {
        J after = tried.judgement();
        List<Change> changes = candidate.changes().apply(tried.steps());
        Optional<Judging.SideEffect> cost =
                judging.sideEffect(plant, tried.plant(), Work.within(work));
        Sentence name =
                cost.map(Judging.SideEffect::told)
                        .map(candidate.name().apply(tried.steps())::then)
                        .orElseGet(() -> candidate.name().apply(tried.steps()));
        Optional<Sentence> broken =
                HardLimits.newlyBroken(plant, tried.plant())
                        .or(() -> cost.flatMap(Judging.SideEffect::refusal));
        if (broken.isPresent()) {
            return new Remedy(name, changes, new Remedy.Effect.Refused(broken.get()));
        }
        Value value = Value.of(judging.field(), after.nominal(), after.band());
        int common = Math.min(after.draws(), before.draws());
        Value difference =
                Value.of(
                        judging.field() + "-gain",
                        after.nominal() - before.nominal(),
                        Bands.ofDifference(
                                after.sample().values(common), before.sample().values(common)));
        return new Remedy(
                name,
                changes,
                after.holds()
                        ? new Remedy.Effect.Clears(value, difference, candidate.step())
                        : new Remedy.Effect.Helps(value, difference));
    }
}
