package liftwright.flight.loops;

import java.util.List;
import liftwright.plant.body.Inertia;

/**
 * Numbers of a rig at hover from which loops are made.
 *
 * @param massKg of the whole
 * @param inertia about the centre of mass, body axes
 * @param fans every fan, as in the rig's list
 * @param hoverV voltage at each fan's controller at hover, V
 * @param lags of sensors, computer and controllers
 * @param flexible what is not rigid
 * @param yawHeld whether turning about the upright axis must be held
 */
public record Craft(
        double massKg,
        Inertia inertia,
        List<Lifter> fans,
        List<Double> hoverV,
        Lags lags,
        Flexible flexible,
        boolean yawHeld) {

    public Craft {
        fans = List.copyOf(fans);
        hoverV = List.copyOf(hoverV);
    }
}
