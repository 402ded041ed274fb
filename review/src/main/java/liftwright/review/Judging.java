package liftwright.review;

import java.util.Optional;
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
                .map(this::judgement);
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
