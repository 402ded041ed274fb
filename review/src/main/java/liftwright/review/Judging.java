package liftwright.review;

import java.util.Optional;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.rig.Rig;

/**
 * How a question judges a rig: what a search for remedies needs of it.
 *
 * @param <J> what it judges by
 */
interface Judging<J extends Judgement> {

    /** Least that is asked of the judged number. */
    double demand(Rig rig);

    /** The judged number at the declared values; cheap. */
    double nominal(Plant plant);

    /** The number with its band, against the demand; empty when stopped. */
    Optional<J> judge(Plant plant, Work work);

    /** Field of the judged number. */
    String field();

    /** Field of a difference of two. */
    String gainField();
}
