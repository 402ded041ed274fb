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
}
