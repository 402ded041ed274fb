package liftwright.plant.motion;

import java.util.List;
import java.util.Optional;

/**
 * How a body went up and came down.
 *
 * @param moments from the fault on; empty where only the figures were wanted
 * @param liftsN upward thrust at each of them, N
 * @param liftOff when it left the ground; empty where it never did or was in the air
 * @param atStop where it was when the kill first acted; empty where none did before the end
 * @param apex the highest point
 * @param greatestUpMps greatest upward speed, ≥ 0
 * @param comesDown whether it was falling or down by the end: false for a climb that nothing stops
 * @param impact the blow on the ground: its speed is below 0; empty where it never came down
 * @param contact when a line or mat first took hold; empty where none did
 * @param strike the first blow against what stands above
 * @param peaks of each line and mat, in their order
 * @param last where it was at the end
 * @param beyondLaw whether thrust worth telling acted where the law of axial inflow does not hold
 * @param failed whether it could not be followed to its end; the figures mean nothing then
 * @param closure energy that is not accounted for, over all that was turned over; about 1e-6
 */
public record RunawayPath(
        List<Moment> moments,
        List<Double> liftsN,
        Optional<Moment> liftOff,
        Optional<Moment> atStop,
        Moment apex,
        double greatestUpMps,
        boolean comesDown,
        Optional<Moment> impact,
        Optional<Moment> contact,
        Optional<Strike> strike,
        List<Peak> peaks,
        Moment last,
        boolean beyondLaw,
        boolean failed,
        double closure) {

    public RunawayPath {
        moments = List.copyOf(moments);
        liftsN = List.copyOf(liftsN);
        peaks = List.copyOf(peaks);
    }
}
