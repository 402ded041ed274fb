package liftwright.review;

import java.util.Optional;
import liftwright.plant.Plant;
import liftwright.rig.table.StartState;

/**
 * What heat is asked about.
 *
 * @param task what is flown
 * @param start what the parts start from; empty for the declared temperatures and charge
 */
public record HeatCase(Task task, Optional<StartState> start) {

    /** From the declared temperatures and charge. */
    public static HeatCase of(Task task) {
        return new HeatCase(task, Optional.empty());
    }

    HeatFlight flight(Plant plant, double[] p) {
        return new HeatFlight(plant.rig(), task, start, plant.weightN(p));
    }
}
