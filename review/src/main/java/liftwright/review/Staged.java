package liftwright.review;

import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.numerics.Work;

/**
 * A question about one rig that is answered bit by bit: first what the declared values give, then
 * with bands, then whole. Stages share what they computed. Not for several threads at once.
 */
public interface Staged {

    /**
     * The answer as far as that stage; stages may be asked in any order and left out.
     *
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped: a stopped answer carries no verdict
     * @throws liftwright.plant.parameters.ImpossibleValueException if a declared value is none that
     *     can be
     * @throws liftwright.plant.identify.NotToldException if a table makes no fan or cell
     */
    Optional<? extends Answer> answer(Stage stage, Work work);

    /**
     * The number that it judges by, over as many draws as the whole answer takes; empty where it
     * judges by none, or the work was stopped.
     */
    default Optional<Judged> judged(Work work) {
        return Optional.empty();
    }

    /**
     * Which declared values move the judged number most; empty where it judges by none, or the work
     * was stopped.
     */
    default Optional<Sensitivities> sensitivities(Work work) {
        return Optional.empty();
    }

    /**
     * The nominal answer of a rig whose declared values are those of one draw: every number of the
     * answer in that draw. What has tables of its own (strength of arms, rotors' inertia, hearing)
     * stands at its declared values. Safe to call from several threads.
     *
     * @param draw number of the draw, ≥ 0
     * @return empty where the draw makes no rig, or the question has no draws
     */
    default Optional<? extends Answer> drawn(int draw) {
        return Optional.empty();
    }
}
