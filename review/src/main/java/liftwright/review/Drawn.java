package liftwright.review;

import java.util.Optional;
import java.util.function.Function;
import liftwright.answer.Answer;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.supply.CellDraw;

/** A plant whose declared values are those of one draw. */
final class Drawn {

    private Drawn() {}

    /**
     * A question's answer to one draw, as if it were declared; empty where a number of the draw
     * falls where nothing can be.
     *
     * @param question of such a plant
     */
    static Optional<? extends Answer> answer(
            Plant plant, long seed, int draw, Function<Plant, Staged> question) {
        return of(plant, seed, draw)
                .flatMap(one -> question.apply(one).answer(Stage.NOMINAL, Work.quiet()));
    }

    /** Empty where a number of the draw falls where nothing can be. */
    private static Optional<Plant> of(Plant plant, long seed, int draw) {
        double[] p = new double[plant.parameters().size()];
        double[] wide = Sample.asDeclared(plant);
        try {
            plant.parameters().draw(seed, draw, wide, p);
        } catch (ImpossibleValueException beyond) {
            return Optional.empty();
        }
        return Optional.of(plant.declaring(p, new CellDraw.Drawn(seed, draw, wide)));
    }
}
