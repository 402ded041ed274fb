package liftwright.review;

import java.util.Optional;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.supply.CellDraw;

/** A plant whose declared values are those of one draw. */
final class Drawn {

    private Drawn() {}

    /** Empty where a number of the draw falls where nothing can be. */
    static Optional<Plant> of(Plant plant, long seed, int draw) {
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
