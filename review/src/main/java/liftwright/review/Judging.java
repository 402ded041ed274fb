package liftwright.review;

import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.answer.Sentence;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.rig.Rig;

/**
 * How a question judges a rig: a number against what is asked of it.
 *
 * @param <J> what it judges by
 * @param <S> the number over draws
 */
interface Judging<J extends Judgement, S extends Sample<?>> {

    Settings settings();

    /** Least that is asked of the judged number. */
    double demand(Rig rig);

    /** Where in the rig file that is asked; empty where the task asks for its own length. */
    Optional<String> demandAt();

    /** Where what is asked comes from, in words; empty where its place in the file tells. */
    default Optional<String> demandOrigin(Rig rig) {
        return Optional.empty();
    }

    /** The plant that it is judged on. */
    default Plant assemble(Rig rig) {
        return Plant.assemble(rig);
    }

    /** The judged number at the declared values; cheap. */
    double nominal(Plant plant);

    /**
     * The number over draws.
     *
     * @param widthScale factor on the doubt of each declared input
     */
    S sample(Plant plant, double[] widthScale);

    /** What a sample that was pursued far enough says, beside the declared values. */
    J judgement(Pursuit<S> pursued);

    /** As far as a stage goes, on draws that may be there already; empty when stopped. */
    default Optional<J> judge(S sample, Stage stage, Work work) {
        return Pursuit.of(stage, sample, demand(sample.plant.rig()), settings(), work)
                .flatMap(pursued -> borneOut(pursued, stage, work))
                .map(this::judgement);
    }

    /**
     * What corrections turn into "holds" needs their evidence (architecture contract 9): where that
     * is lacking and the declared values do not hold by themselves, it cannot be told. Empty when
     * stopped.
     */
    private Optional<Pursuit<S>> borneOut(Pursuit<S> pursued, Stage stage, Work work) {
        Plant plant = pursued.sample().plant;
        Optional<Unproven> unproven = Unproven.of(plant);
        if (pursued.outcome() != Outcome.HOLDS || unproven.isEmpty()) {
            return Optional.of(pursued);
        }
        Plant declared = assemble(plant.rig().asDeclared());
        return Pursuit.of(
                        stage,
                        sample(declared, Sample.asDeclared(declared)),
                        demand(declared.rig()),
                        settings(),
                        work)
                .map(
                        without ->
                                switch (without.outcome()) {
                                    case HOLDS -> pursued;
                                    // Not told yet: the whole answer pursues it further.
                                    case NOT_JUDGED ->
                                            new Pursuit<>(
                                                    pursued.sample(),
                                                    Outcome.NOT_JUDGED,
                                                    pursued.draws());
                                    case DOES_NOT_HOLD, CANNOT_BE_TOLD ->
                                            new Pursuit<>(
                                                    pursued.sample(),
                                                    pursued.outcome(),
                                                    pursued.draws(),
                                                    Optional.of(unproven.get().reason()));
                                });
    }

    /** The judged number of a whole answer with its draws, told to others; empty when stopped. */
    default Optional<Judged> told(S sample, Work work) {
        return judge(sample, Stage.WHOLE, work)
                .map(
                        judgement ->
                                new Judged(
                                        field(),
                                        judgement.nominal(),
                                        demand(sample.plant.rig()),
                                        judgement.band(),
                                        sample.values(judgement.draws()),
                                        judgement.outcome()));
    }

    /** The number with its band, against the demand; empty when stopped. */
    default Optional<J> judge(Plant plant, Work work) {
        return judge(sample(plant, Sample.asDeclared(plant)), Stage.WHOLE, work);
    }

    /** Whether a draw costs so much that fewer of them have to do. */
    default boolean dear() {
        return false;
    }

    /**
     * What a change would cost elsewhere, so that no remedy trades one trouble for another; empty
     * where this question knows no such cost.
     *
     * @param before without the change
     * @param after with it
     */
    default Optional<SideEffect> sideEffect(Plant before, Plant after, Work work) {
        return Optional.empty();
    }

    /**
     * @param told what it costs, as the name of the remedy goes on
     * @param refusal why it is no remedy; empty where it costs no more than that
     */
    record SideEffect(Sentence told, Optional<Sentence> refusal) {}

    /** Field of the judged number; with {@code -demand} and {@code -gain} those of its kin. */
    String field();
}
