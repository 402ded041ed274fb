package liftwright.physics;

/**
 * The wire in a joint's rating test: the thinnest of the table whose own rise at the rated current
 * in still air is at most 30 K; where even the thickest rises more, several of it side by side.
 *
 * @param wire row of the table
 * @param conductors side by side, ≥ 1
 * @param riseK steady rise of the conductor by itself, at most {@link JointHeat#RATED_RISE_K}
 * @param finWpK conductance into all of them together on one side of the joint, W/K
 */
public record RatedWire(AircraftWire wire, int conductors, double riseK, double finWpK) {

    /**
     * Chooses it.
     *
     * @param ratedA rated current of the joint, A
     * @param wallM insulation of the wire, m
     * @param insulationWpmK its conductivity, W/(m·K)
     */
    public static RatedWire of(double ratedA, double wallM, double insulationWpmK) {
        if (!(ratedA > 0 && ratedA < Double.POSITIVE_INFINITY)
                || !(wallM > 0)
                || !(insulationWpmK > 0)) {
            throw new IllegalArgumentException("rating, wall and conductivity are above 0");
        }
        AircraftWire[] wires = AircraftWire.values();
        for (AircraftWire wire : wires) {
            RatedWire found = tried(wire, 1, ratedA, wallM, insulationWpmK);
            if (found.riseK <= JointHeat.RATED_RISE_K) {
                return found;
            }
        }
        int conductors = 2;
        RatedWire found;
        do {
            found = tried(wires[wires.length - 1], conductors, ratedA, wallM, insulationWpmK);
            conductors++;
        } while (found.riseK > JointHeat.RATED_RISE_K);
        return found;
    }

    private static RatedWire tried(
            AircraftWire wire, int conductors, double ratedA, double wallM, double insulationWpmK) {
        double inner = WireHeat.strandDiameterM(wire.areaM2());
        double outer = inner + 2 * wallM;
        WireSteady test =
                new WireSteady(
                        wire.ohmpm(),
                        outer,
                        2 * Math.PI * insulationWpmK / Math.log(outer / inner),
                        JointHeat.RATED_AIR_K,
                        Air.SEA_LEVEL_PA,
                        0,
                        SurfaceExchange.USUAL_EMISSIVITY);
        double each = ratedA / conductors;
        double rise = test.conductorK(each) - JointHeat.RATED_AIR_K;
        if (rise > JointHeat.RATED_RISE_K) {
            return new RatedWire(wire, conductors, rise, 0);
        }
        // Along the wire the temperature goes from the joint's to the wire's own.
        double middle = JointHeat.RATED_AIR_K + (JointHeat.RATED_RISE_K + rise) / 2;
        double across = test.slopeWpmK(each, middle);
        double fin = JointHeat.finWpK(Conductor.COPPER_WPMK, wire.areaM2(), across);
        return new RatedWire(wire, conductors, rise, conductors * fin);
    }
}
