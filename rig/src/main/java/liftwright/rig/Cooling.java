package liftwright.rig;

import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;

/**
 * How a controller warms: its switches in a junction, the junction on a sink, the sink in the fan's
 * own stream.
 *
 * @param heatCapacity of the whole controller with its sink, J/K
 * @param junctionToSink W/K
 * @param junctionHeatCapacity the part of the whole that follows the switches at once, J/K
 * @param toAir from the sink to the stream of the fan at full speed, W/K
 */
public record Cooling(
        Quantity heatCapacity,
        Quantity junctionToSink,
        Quantity junctionHeatCapacity,
        Quantity toAir) {

    /** Specific heat of a controller, mostly aluminium, copper and board, J/(kg K). */
    static final double J_PER_KG_K = 500;

    /** Junction to sink, W/(K kg): 15 W/K for a controller of 0.12 kg. */
    static final double JUNCTION_W_PER_KG_K = 15 / 0.12;

    static final double AIR_W_PER_KG_K = 15;

    /** Share of the whole capacity that the junction has. */
    public static final double JUNCTION_SHARE = 0.02;

    static final double CAPACITY_DOUBT = 0.4;
    static final double CONDUCTANCE_DOUBT = 0.5;

    private static final Dimension J_PER_K = new Dimension(2, 1, -2, 0, -1, 0);
    private static final Dimension W_PER_K = new Dimension(2, 1, -3, 0, -1, 0);

    /** What common controllers have by their mass, kg, above 0; from memory. */
    public static Cooling usual(double massKg) {
        double whole = J_PER_KG_K * massKg;
        return new Cooling(
                doubted(whole, J_PER_K, CAPACITY_DOUBT),
                doubted(JUNCTION_W_PER_KG_K * massKg, W_PER_K, CONDUCTANCE_DOUBT),
                doubted(JUNCTION_SHARE * whole, J_PER_K, CONDUCTANCE_DOUBT),
                doubted(AIR_W_PER_KG_K * massKg, W_PER_K, CONDUCTANCE_DOUBT));
    }

    /** A value that lies anywhere within a share of itself. */
    static Quantity doubted(double si, Dimension dimension, double share) {
        if (!(si > 0)) {
            throw new IllegalArgumentException("what warms has a mass");
        }
        return new Quantity(
                si,
                dimension,
                new Tolerance(
                        share * si, share * si, Tolerance.Form.BOUND, Tolerance.Scope.SHARED));
    }
}
