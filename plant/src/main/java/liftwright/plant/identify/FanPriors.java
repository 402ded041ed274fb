package liftwright.plant.identify;

import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;

/**
 * What is known of a fan unit before its rows are read. A declared motor value counts as one more
 * measurement; a claimed performance does not: rows replace it.
 *
 * @param speedConstant K_v, rad/s/V
 * @param winding Ω
 * @param noLoad I₀, A
 * @param onResistance of the controller's switches, Ω; taken as it is
 * @param switching k_sw, 1
 * @param fixedPower P_fix, W; taken as it is
 * @param tipM rotor diameter, m
 */
public record FanPriors(
        Optional<Quantity> speedConstant,
        Optional<Quantity> winding,
        Optional<Quantity> noLoad,
        double onResistance,
        Quantity switching,
        double fixedPower,
        double tipM) {

    /** As a fan type declares them. */
    public static FanPriors of(FanType type) {
        return new FanPriors(
                type.motor().speedConstant(),
                type.motor().windingResistance(),
                type.motor().noLoadCurrent(),
                type.controller().onResistance().si(),
                type.controller().switchingLoss(),
                type.controller().fixedPower().si(),
                type.tip().si());
    }
}
