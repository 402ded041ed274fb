package liftwright.rig;

import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/**
 * What lies around the copper of a run, and around the run.
 *
 * @param material of the insulation
 * @param declared whether the file names the material; else the least heat-proof stands in
 * @param wall thickness of the insulation, m, above 0
 * @param bundle how many insulated wires lie together, itself among them, ≥ 1
 * @param air speed of the air across the wire, m/s, ≥ 0
 * @param serviceClass temperature class of the insulation, K: that of the builder, else that of the
 *     parts book with the spread of its lists
 */
public record Covering(
        Insulation material,
        boolean declared,
        Quantity wall,
        int bundle,
        Quantity air,
        Quantity serviceClass) {

    /**
     * The class that stands in for a wire of which nothing is declared: PVC of the lowest grade.
     */
    public static final double LEAST_CLASS_K = 343.15;

    /** A wire of which nothing is known: plain PVC in still air, alone, 0.8 mm thick. */
    public static final Covering UNKNOWN =
            new Covering(
                    Insulation.PVC,
                    false,
                    Quantity.exact(0.8e-3, new Dimension(1, 0, 0, 0, 0, 0)),
                    1,
                    Quantity.exact(0, new Dimension(1, 0, -1, 0, 0, 0)),
                    Quantity.exact(LEAST_CLASS_K, new Dimension(0, 0, 0, 0, 1, 0)));

    public Covering {
        if (!(wall.si() > 0) || bundle < 1 || !(air.si() >= 0)) {
            throw new IllegalArgumentException(
                    "a wire has a wall, lies with itself at least, and air does not flow backwards");
        }
    }

    /** {@link #serviceClass()} in K, without its doubt. */
    public double classK() {
        return serviceClass().si();
    }
}
