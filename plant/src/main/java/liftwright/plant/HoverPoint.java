package liftwright.plant;

import java.util.List;
import liftwright.plant.balance.MomentLedger;
import liftwright.plant.body.Beams;
import liftwright.plant.body.MassProperties;

/**
 * A rig the moment its lift is its weight, with nothing done yet against what turns it.
 *
 * @param converged whether the voltages settled; the rest means nothing where they did not
 * @param lifts whether the fans give the weight at all; where not, the ledger is that of full
 *     throttle
 * @param throttle 0 to 1
 * @param mass of the whole, wearer included
 * @param ledger what turns it
 * @param yawDampingPerS momentum drag over inertia about the upright axis, c/I, 1/s
 * @param gives how far the mounts on beams give under thrust
 */
public record HoverPoint(
        boolean converged,
        boolean lifts,
        double throttle,
        MassProperties mass,
        MomentLedger ledger,
        double yawDampingPerS,
        List<Beams.Give> gives) {

    public HoverPoint {
        gives = List.copyOf(gives);
    }
}
